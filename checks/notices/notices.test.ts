import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { noticeText } from './notices.ts';

const house = join(import.meta.dirname, '../..');

test('NOTICE.md is current (npm run notices writes it)', () => {
  const written = readFileSync(join(house, 'NOTICE.md'), 'utf8');
  expect(written === noticeText(house), 'dependencies changed: run npm run notices').toBe(true);
});

test('it names libraries, fonts and no tool of development', () => {
  const text = noticeText(house);
  for (const name of ['zod ', 'pdfkit ', 'react ', 'SIL OPEN FONT LICENSE']) expect(text).toContain(name);
  for (const name of ['- vitest ', '- typescript ', '- vite ']) expect(text).not.toContain(name);
});
