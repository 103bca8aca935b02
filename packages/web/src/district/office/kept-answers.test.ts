import { districts } from '@combside/contract/districts';
import { QueryObserver } from '@tanstack/react-query';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { keepAnswersFor, keptAnswers } from './kept-answers.ts';
import { type Query, queryOf, said } from './query.ts';

const given = { districts: [{ district: 'Hazel', invented: true, apiaries: 3, colonies: 9, visits: 2 }] };
let office: () => Promise<Response>;
beforeEach(() => {
  keptAnswers.clear();
  vi.useFakeTimers({ now: Date.UTC(2026, 4, 1, 9), toFake: ['Date'] });
  vi.stubGlobal('fetch', () => office());
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

const says = (body: unknown) => () => Promise.resolve(Response.json(body));
const refuses = (status: number) => () => Promise.resolve(new Response('{}', { status }));
const isSilent = () => Promise.reject(new TypeError('fetch failed'));

/** A place on a screen that asks: what it shows, first and when the office has had its say. */
function place(address = '/api/districts') {
  const observer = new QueryObserver(keptAnswers, { queryKey: [address], queryFn: () => said(districts, address) });
  const read = (): Query<unknown> => queryOf(observer.getCurrentResult(), observer.getCurrentResult().data);
  let told: () => void = () => undefined;
  const leave = observer.subscribe(() => told());
  return {
    read,
    leave,
    settled: async () => {
      while (observer.getCurrentResult().isFetching) await new Promise<void>((resolve) => (told = resolve));
      return read();
    },
  };
}

describe('what was asked of the office', () => {
  test('is on its way, then there, of the moment it was answered', async () => {
    office = says(given);
    const { read, settled, leave } = place();
    expect(read()).toMatchObject({ state: 'asking', answer: null, answeredAt: null, failure: null });
    expect(await settled()).toMatchObject({ state: 'there', answer: given, answeredAt: '2026-05-01T09:00:00.000Z' });
    leave();
  });

  test('stays in sight while a newer one fails to come, and says of when it is', async () => {
    office = says(given);
    const { read, settled, leave } = place();
    await settled();
    office = isSilent;
    vi.setSystemTime(Date.UTC(2026, 4, 1, 10));
    read().again();
    expect(await settled()).toMatchObject({
      state: 'failed',
      failure: 'no connection',
      answer: given,
      answeredAt: '2026-05-01T09:00:00.000Z',
    });
    office = says(given);
    read().again();
    expect(await settled()).toMatchObject({ state: 'there', answeredAt: '2026-05-01T10:00:00.000Z' });
    leave();
  });

  test('a failure stays said while it is asked again', async () => {
    office = isSilent;
    const { read, settled, leave } = place();
    expect(await settled()).toMatchObject({ state: 'failed', answer: null, answeredAt: null });
    let answer: (response: Response) => void = () => undefined;
    office = () => new Promise((resolve) => (answer = resolve));
    read().again();
    expect(keptAnswers.isFetching()).toBe(1);
    expect(read().state).toBe('failed');
    answer(Response.json(given));
    expect((await settled()).state).toBe('there');
    leave();
  });

  test('whoever comes back sees what stood there, and that it is asked again', async () => {
    office = says(given);
    const first = place();
    await first.settled();
    first.leave();
    const again = place();
    expect(again.read()).toMatchObject({ state: 'asking', answer: given, answeredAt: '2026-05-01T09:00:00.000Z' });
    expect((await again.settled()).state).toBe('there');
    again.leave();
  });

  test.each([
    [404, 'not there'],
    [403, 'not there'],
    [400, 'wrong address'],
  ])('the answer %i says %s, in place of what was kept', async (status, state) => {
    office = says(given);
    const { read, settled, leave } = place();
    await settled();
    office = refuses(status);
    read().again();
    expect(await settled()).toMatchObject({ state, answer: null, answeredAt: null, failure: null });
    leave();
  });

  test('an answer of another shape failed because it was not understood', async () => {
    office = says({ districts: 'many' });
    const { settled, leave } = place();
    expect(await settled()).toMatchObject({ state: 'failed', failure: 'not understood', answer: null });
    leave();
  });
});

describe('the answers kept', () => {
  const ask = (address: string) =>
    keptAnswers.fetchQuery({ queryKey: [address], queryFn: () => said(districts, address) });
  const isKept = (address: string) => keptAnswers.getQueryData([address]) !== undefined;

  test('are the last forty, besides those in sight', async () => {
    office = says(given);
    const { settled, leave } = place('/api/in-sight');
    await settled();
    for (let at = 1; at <= 42; at++) {
      vi.setSystemTime(Date.UTC(2026, 4, 1, 9, at));
      await ask(`/api/${at}`);
    }
    expect([1, 2, 3, 42].map((at) => isKept(`/api/${at}`))).toEqual([false, false, true, true]);
    expect(isKept('/api/in-sight')).toBe(true);
    leave();
  });

  test('are one person’s only', async () => {
    office = says(given);
    keepAnswersFor('one');
    await ask('/api/districts');
    keepAnswersFor('one');
    expect(isKept('/api/districts')).toBe(true);
    keepAnswersFor('another');
    expect(isKept('/api/districts')).toBe(false);
  });
});
