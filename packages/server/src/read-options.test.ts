import { loadWords } from '@combside/words/load-words';
import { describe, expect, test } from 'vitest';
import { readOptions } from './read-options.ts';

const words = await loadWords('en', ['server']);
const read = (...args: string[]) => readOptions(args, undefined, words);

test('without options the server keeps ./data and listens on this machine, by the machine’s clock', () => {
  expect(read()).toEqual({ data: './data', port: 4680, demo: false });
});

describe('what does not fit is told in a sentence', () => {
  test.each([
    [['--port', '65536'], /--port .* 65536/],
    [['--address', 'office.example'], /--address .* office.example/],
    [['--pack', 'nowhere'], /--pack .* nowhere/],
    [['--map', 'land.png'], /--map .* land.png/],
    [['--nonsense'], /no option --nonsense/],
    // A day alone, or a time without its zone, is no instant.
    [['--clock', '2028-02-29'], /--clock .* 2028-02-29$/],
    [['--clock', '2028-02-29T09:00:00'], /--clock /],
    [['--clock', '2028-13-29T09:00:00Z'], /--clock /],
  ])('%j', (args, sentence) => {
    expect(read(...args)).toMatch(sentence);
  });
});

test('the demonstration is planted for this machine alone, never over an agency’s own database', () => {
  expect(read('--demo')).toMatchObject({ demo: true });
  const withheld = { demo: false, demoWithheld: true };
  expect(read('--demo', '--host', '0.0.0.0')).toMatchObject(withheld);
  expect(read('--demo', '--address', 'https://office.example')).toMatchObject(withheld);
  expect(readOptions(['--demo'], 'postgresql://records.office.example/combside', words)).toMatchObject(withheld);
});

describe('a clock for rehearsals', () => {
  const asked = ['--clock', '2028-02-29T10:00:00+01:00'];

  test.each([[[]], [['--host', '127.0.0.1']], [['--host', 'localhost']], [['--host', '::1']]])(
    'goes on from the instant given where only this machine can reach it: %j',
    (host) => {
      const options = read(...asked, ...host);
      if (typeof options === 'string' || !options.clock) throw new Error(`refused: ${JSON.stringify(options)}`);
      const [first, second] = [options.clock.now(), options.clock.now()];
      expect(first).toBeGreaterThan(Date.parse('2028-02-29T09:00:00Z'));
      expect(second).toBeGreaterThanOrEqual(first);
    },
  );

  test.each([[['--host', '0.0.0.0']], [['--address', 'https://office.example']]])(
    'is refused where others could write by it: %j',
    (open) => {
      expect(read(...asked, ...open)).toMatch(/for tests and rehearsals on this machine alone/);
    },
  );

  test('is refused over an agency’s own database', () => {
    expect(readOptions(asked, 'postgresql://records.office.example/combside', words)).toMatch(/DATABASE_URL/);
  });
});
