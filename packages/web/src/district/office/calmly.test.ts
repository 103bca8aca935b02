import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Calmly } from './calmly.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function counted() {
  const times: number[] = [];
  const since = Date.now();
  return { times, calmly: new Calmly(1000, () => void times.push(Date.now() - since)) };
}

test('the first is done at once, those close behind it once, when it has rested', () => {
  const { calmly, times } = counted();
  for (let at = 0; at < 900; at += 100) {
    calmly.act();
    vi.advanceTimersByTime(100);
  }
  vi.advanceTimersByTime(5000);
  expect(times).toEqual([0, 1000]);
});

test('however much comes, it is done at most once in each rest, and the last is not lost', () => {
  const { calmly, times } = counted();
  for (let at = 0; at < 3500; at += 50) {
    calmly.act();
    vi.advanceTimersByTime(50);
  }
  vi.advanceTimersByTime(5000);
  expect(times).toEqual([0, 1000, 2000, 3000, 4000]);
});

test('one that comes alone waits for nothing', () => {
  const { calmly, times } = counted();
  calmly.act();
  vi.advanceTimersByTime(1500);
  calmly.act();
  expect(times).toEqual([0, 1500]);
});

test('what was stopped does nothing more, and may begin again', () => {
  const { calmly, times } = counted();
  calmly.act();
  calmly.act();
  calmly.stop();
  vi.advanceTimersByTime(5000);
  calmly.act();
  expect(times).toEqual([0, 5000]);
});
