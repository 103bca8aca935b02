import { fromBase64Url, toBase64Url } from '@combside/record/bytes';
import type { Chance, Hasher, Verifier, WallClock } from '@combside/record/ports';

/** The record's ports on the browser's own cryptography. They need a secure context: https, or localhost. */

export const ecdsa = { name: 'ECDSA', namedCurve: 'P-256' } as const;
export const ecdsaSha256 = { name: 'ECDSA', hash: 'SHA-256' } as const;

export const webHasher: Hasher = {
  sha256: async (bytes) => new Uint8Array(await crypto.subtle.digest('SHA-256', bytes as BufferSource)),
};

const keysRemembered = 500;
const publicKeys = new Map<string, Promise<CryptoKey | null>>();

export const webVerifier: Verifier = {
  async verify(publicKey, bytes, signature) {
    let key = publicKeys.get(publicKey);
    if (key === undefined) {
      key = crypto.subtle.importKey('raw', fromBase64Url(publicKey), ecdsa, true, ['verify']).catch(() => null); // not a point of the curve: no signature can be right
      if (publicKeys.size >= keysRemembered) publicKeys.clear();
      publicKeys.set(publicKey, key);
    }
    const read = await key;
    if (read === null) return false;
    return crypto.subtle.verify(ecdsaSha256, read, signature as BufferSource, bytes as BufferSource);
  },
};

export const webChance: Chance = { bytes: (count) => crypto.getRandomValues(new Uint8Array(count)) };

export const webClock: WallClock = { now: () => Date.now() };

/** The uncompressed point of a public key, base64url. */
export async function publicKeyText(key: CryptoKey): Promise<string> {
  return toBase64Url(new Uint8Array(await crypto.subtle.exportKey('raw', key)));
}
