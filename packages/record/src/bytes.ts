import { RecordError } from './errors.ts';

/** Bytes to text and back, in pure code: the pure floors have no TextEncoder and no Buffer. */

/** UTF-8 (RFC 3629). @throws RecordError `bad bytes` for a lone surrogate, which has no encoding */
export function utf8(text: string): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(text.length * 3);
  let length = 0;
  for (let i = 0; i < text.length; i++) {
    let point = text.charCodeAt(i);
    if (point < 0x80) {
      bytes[length++] = point;
      continue;
    }
    if (point >= 0xd800 && point <= 0xdfff) {
      const low = i + 1 < text.length ? text.charCodeAt(i + 1) : 0;
      if (point > 0xdbff || low < 0xdc00 || low > 0xdfff) {
        throw new RecordError('bad bytes', `half a character at position ${i}; delete it and type it again`);
      }
      point = 0x10000 + ((point - 0xd800) << 10) + (low - 0xdc00);
      i++;
    }
    if (point < 0x800) {
      bytes[length++] = 0xc0 | (point >> 6);
    } else {
      if (point < 0x10000) {
        bytes[length++] = 0xe0 | (point >> 12);
      } else {
        bytes[length++] = 0xf0 | (point >> 18);
        bytes[length++] = 0x80 | ((point >> 12) & 0x3f);
      }
      bytes[length++] = 0x80 | ((point >> 6) & 0x3f);
    }
    bytes[length++] = 0x80 | (point & 0x3f);
  }
  return bytes.slice(0, length);
}

const hexPairs = Array.from({ length: 256 }, (_, byte) => byte.toString(16).padStart(2, '0'));

/** Lower-case hexadecimal. */
export function toHex(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += hexPairs[byte];
  return text;
}

/** @throws RecordError `bad bytes` */
export function fromHex(text: string): Uint8Array<ArrayBuffer> {
  if (!/^(?:[0-9a-f]{2})*$/.test(text)) throw new RecordError('bad bytes', 'expected lower-case hexadecimal');
  const bytes = new Uint8Array(text.length / 2);
  for (let i = 0; i < bytes.length; i++) bytes[i] = Number.parseInt(text.slice(2 * i, 2 * i + 2), 16);
  return bytes;
}

const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const sextets = new Int8Array(128).fill(-1);
for (let i = 0; i < 64; i++) sextets[alphabet.charCodeAt(i)] = i;

/** base64url without padding (RFC 4648, section 5). */
export function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const left = bytes.length - i;
    const three = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    text += alphabet.charAt(three >> 18) + alphabet.charAt((three >> 12) & 63);
    if (left > 1) text += alphabet.charAt((three >> 6) & 63);
    if (left > 2) text += alphabet.charAt(three & 63);
  }
  return text;
}

/** @throws RecordError `bad bytes`, also for stray bits at the end, so that each value has one text */
export function fromBase64Url(text: string): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let bits = 0;
  let held = 0;
  let length = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    const sextet = code < 128 ? (sextets[code] ?? -1) : -1;
    if (sextet < 0) throw new RecordError('bad bytes', `not base64url at position ${i}`);
    bits = ((bits << 6) | sextet) & 0xffff;
    held += 6;
    if (held >= 8) {
      held -= 8;
      bytes[length++] = (bits >> held) & 0xff;
    }
  }
  if (text.length % 4 === 1 || (bits & ((1 << held) - 1)) !== 0) {
    throw new RecordError('bad bytes', 'base64url ends in the middle of a byte');
  }
  return bytes;
}

/** One array after the other. */
export function joined(first: Uint8Array, second: Uint8Array): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(first.length + second.length);
  bytes.set(first, 0);
  bytes.set(second, first.length);
  return bytes;
}
