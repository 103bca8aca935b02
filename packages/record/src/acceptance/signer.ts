import { fromBase64Url, fromHex, toBase64Url, utf8 } from '../bytes.ts';
import type { Keys, Verifier } from '../ports.ts';
import { type AcceptanceCase, equal, truly } from './case.ts';

export interface SigningSubject {
  readonly keys: Keys;
  readonly verifier: Verifier;
  /** The same keys, opened again as after a restart; absent where keys live in memory only. */
  readonly again?: () => Promise<Keys>;
}

// RFC 6979, appendix A.2.5: ECDSA on P-256 with SHA-256, message "sample" (from memory; the case fails if it is wrong).
const published = {
  publicKey:
    '0460fed4ba255a9d31c961eb74c6356d68c049b8923b61fa6ce669622e60f29fb67903fe1008b8bc99a41ae9e95628bc64f2f1b20c2d7e9f5177a3c294d4462299',
  signature:
    'efd48b2aacb6a8fd1140dd9cd45e81d69d2c877b56aaf991c34d0ea84eaf3716f7cb1c942d657c41d436c7a1b6e29f65f3e900dbb9aff4064dc4ab2f843acda8',
  message: 'sample',
};

const device = '01900000-0001-7000-8000-000000000001';
const other = '01900000-0001-7000-8000-000000000002';

export const signerCases: readonly AcceptanceCase<SigningSubject>[] = [
  {
    name: 'a published signature verifies, and no longer when a bit is turned',
    async check({ verifier }) {
      const key = toBase64Url(fromHex(published.publicKey));
      const signature = fromHex(published.signature);
      truly(await verifier.verify(key, utf8(published.message), signature), 'the published signature verifies');
      truly(!(await verifier.verify(key, utf8('sampld'), signature)), 'another message does not');
      const turned = signature.slice();
      turned[40] = (turned[40] ?? 0) ^ 1;
      truly(!(await verifier.verify(key, utf8(published.message), turned)), 'a turned bit does not');
    },
  },
  {
    name: 'what a signer signs verifies with its key and with no other',
    async check({ keys, verifier }) {
      const signer = await keys.signerFor(device);
      const stranger = await keys.signerFor(other);
      const bytes = utf8('Flügelstich 🐝');
      const signature = await signer.sign(bytes);
      equal(signature.length, 64, 'bytes of a raw signature');
      equal(fromBase64Url(signer.publicKey).length, 65, 'bytes of a public key');
      truly(signer.publicKey !== stranger.publicKey, 'two devices have two keys');
      truly(await verifier.verify(signer.publicKey, bytes, signature), 'own key');
      truly(!(await verifier.verify(stranger.publicKey, bytes, signature)), 'another key');
      truly(!(await verifier.verify(signer.publicKey, utf8('other'), signature)), 'other bytes');
    },
  },
  {
    name: 'a device keeps its key',
    async check({ keys, verifier, again }) {
      const [one, two] = await Promise.all([keys.signerFor(device), keys.signerFor(device)]);
      equal(two.publicKey, one.publicKey, 'asked twice at once');
      if (again === undefined) return;
      const signer = await (await again()).signerFor(device);
      equal(signer.publicKey, one.publicKey, 'after a restart');
      truly(await verifier.verify(one.publicKey, utf8('x'), await signer.sign(utf8('x'))), 'signs as before');
    },
  },
  {
    name: 'what is no key or no signature verifies nothing, without an error',
    async check({ keys, verifier }) {
      const { publicKey } = await keys.signerFor(device);
      truly(!(await verifier.verify(publicKey, utf8('x'), new Uint8Array(64))), 'zeros');
      truly(!(await verifier.verify(publicKey, utf8('x'), new Uint8Array(3))), 'too short');
      truly(!(await verifier.verify('A'.repeat(87), utf8('x'), new Uint8Array(64))), 'a point off the curve');
    },
  },
];
