import { toHex, utf8 } from '../bytes.ts';
import type { Hasher } from '../ports.ts';
import { type AcceptanceCase, equal } from './case.ts';

// FIPS 180-4, SHA-256; the examples of NIST's "Cryptographic Standards and Guidelines: Examples with Intermediate
// Values" (abc, the 448-bit message), and the digests of no bytes and of a million times "a" (NIST CAVP; from memory).
const examples: readonly [string, string][] = [
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
];

export const hasherCases: readonly AcceptanceCase<Hasher>[] = [
  {
    name: 'published examples of SHA-256',
    async check(hasher) {
      for (const [text, digest] of examples) {
        equal(toHex(await hasher.sha256(utf8(text))), digest, `SHA-256 of ${text.length} letters`);
      }
    },
  },
  {
    name: 'a view into a larger buffer hashes as itself',
    async check(hasher) {
      const view = utf8('xxabcxx').subarray(2, 5);
      equal(toHex(await hasher.sha256(view)), examples[1]?.[1], 'SHA-256 of a view');
    },
  },
  {
    name: 'many at once do not mix',
    async check(hasher) {
      const texts = Array.from({ length: 100 }, (_, i) => `text ${i}`);
      const together = await Promise.all(texts.map((text) => hasher.sha256(utf8(text))));
      for (const [i, text] of texts.entries()) {
        equal(toHex(together[i] ?? new Uint8Array()), toHex(await hasher.sha256(utf8(text))), text);
      }
    },
  },
];
