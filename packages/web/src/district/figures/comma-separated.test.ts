import { expect, test } from 'vitest';
import { commaSeparated } from './comma-separated.ts';

test('rows are written as RFC 4180 asks, and no cell can act as a formula', () => {
  // Rules 1, 6 and 7 of section 2: CR LF, quotes around commas and line breaks, quotes doubled.
  expect(
    commaSeparated([
      ['name', 'n', 'share'],
      ['Hazel "Bank", north', 2, 0.5],
      ['two\nlines', null, 1],
      ['=1+1', '-x', '@y'].map((one) => one),
      [' =1+1', '\n\u00a0@y', ' x=1'],
    ]),
  ).toBe(
    `name,n,share\r\n"Hazel ""Bank"", north",2,0.5\r\n"two\nlines",,1\r\n'=1+1,'-x,'@y\r\n' =1+1,"'\n\u00a0@y", x=1\r\n`,
  );
});
