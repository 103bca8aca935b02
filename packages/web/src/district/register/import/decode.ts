export interface Decoded {
  readonly text: string;
  /** Name of the encoding as people know it. */
  readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252';
}

/** How many bytes are looked at for the zero bytes that tell UTF-16 from everything else. */
const lookedAt = 4096;

/**
 * Finds the encoding of a text by its byte order mark, else by its bytes: UTF-16 by its many zero bytes, UTF-8 where it
 * is whole, and else Windows-1252, in which spreadsheets of western Europe are still saved and every byte is a letter.
 */
export function decodeText(bytes: Uint8Array): Decoded {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return { text: decoded(bytes, 'utf-16le'), encoding: 'UTF-16' };
  if (first === 0xfe && second === 0xff) return { text: decoded(bytes, 'utf-16be'), encoding: 'UTF-16' };
  const zeros = [0, 0];
  const end = Math.min(bytes.length, lookedAt);
  for (let at = 0; at < end; at++) if (bytes[at] === 0) zeros[at % 2] = (zeros[at % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = zeros;
  // In UTF-16 nearly every second byte of a western text is zero, on one side only.
  if (odd > end / 6 && even < odd / 10) return { text: decoded(bytes, 'utf-16le'), encoding: 'UTF-16' };
  if (even > end / 6 && odd < even / 10) return { text: decoded(bytes, 'utf-16be'), encoding: 'UTF-16' };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'UTF-8' };
  } catch {
    return { text: fromWindows1252(bytes), encoding: 'Windows-1252' };
  }
}

function decoded(bytes: Uint8Array, encoding: string): string {
  return new TextDecoder(encoding).decode(bytes);
}

/** Letters of the bytes 0x80 to 0x9f (WHATWG Encoding Standard, index windows-1252); every other byte is its own letter. */
const letters =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f' +
  '\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';

/** Some versions of Node read windows-1252 as Latin-1 and lose these letters, so they are read by the table. */
function fromWindows1252(bytes: Uint8Array): string {
  return decoded(bytes, 'iso-8859-1').replace(/[\u0080-\u009f]/g, (byte) => letters[byte.charCodeAt(0) - 0x80] ?? byte);
}
