import { expect, test } from 'vitest';
import { decodeText } from './decode.ts';

const said = 'Imker;Standort\r\nJörg Müßig;Öd – 3 €\r\n';
const utf16 = (little: boolean, mark: boolean) => {
  const bytes: number[] = mark ? (little ? [0xff, 0xfe] : [0xfe, 0xff]) : [];
  for (const sign of said) {
    const code = sign.codePointAt(0) ?? 0;
    bytes.push(...(little ? [code & 255, code >> 8] : [code >> 8, code & 255]));
  }
  return Uint8Array.from(bytes);
};
// Windows-1252 (WHATWG Encoding Standard, index windows-1252): en dash 0x96, euro sign 0x80; the letters as Latin-1.
const western = Uint8Array.from([...said].map((sign) => ({ '–': 0x96, '€': 0x80 })[sign] ?? sign.codePointAt(0) ?? 0));

test.each([
  ['UTF-8', new TextEncoder().encode(said), 'UTF-8'],
  ['UTF-8 with its mark', new TextEncoder().encode(`\uFEFF${said}`), 'UTF-8'],
  ['UTF-16, little end first', utf16(true, true), 'UTF-16'],
  ['UTF-16, big end first', utf16(false, true), 'UTF-16'],
  ['UTF-16 without a mark', utf16(true, false), 'UTF-16'],
  ['UTF-16 without a mark, big end first', utf16(false, false), 'UTF-16'],
  ['Windows-1252', western, 'Windows-1252'],
] as const)('%s is read letter by letter', (_, bytes, encoding) => {
  const read = decodeText(bytes);
  expect(read.text.replace(/^\uFEFF/, '')).toBe(said);
  expect(read.encoding).toBe(encoding);
});
