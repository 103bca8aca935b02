import { expect, test } from 'vitest';
import { onceEach } from './once-each.ts';

test('a line that stands on two pages is shown once, at its first place', () => {
  const pages = [{ lines: ['oak', 'ash'] }, { lines: ['ash', 'elm'] }];
  const shown = onceEach(
    pages,
    ({ lines }) => lines,
    (line) => line,
  );
  expect(shown).toEqual(['oak', 'ash', 'elm']);
  expect(
    onceEach(
      null,
      () => ['oak'],
      (line) => line,
    ),
  ).toEqual([]);
});
