import { createHash, createPublicKey, generateKeyPairSync, randomBytes, sign, verify } from 'node:crypto';
import type { Chance, Hasher, Keys, Signer, Verifier } from '@combside/record/ports';

/** The record's ports on Node, for a device that lives as long as the command. */

export const hasher: Hasher = {
  sha256: async (bytes) => new Uint8Array(createHash('sha256').update(bytes).digest()),
};

export const chance: Chance = { bytes: (count) => new Uint8Array(randomBytes(count)) };

/** Checks P-256 signatures; a text that is no point of the curve signs nothing. */
export const verifier: Verifier = {
  verify: async (publicKey, bytes, signature) => {
    const point = Buffer.from(publicKey, 'base64url');
    if (point.length !== 65 || point[0] !== 4) return false;
    const coordinate = (from: number): string => point.subarray(from, from + 32).toString('base64url');
    try {
      const key = createPublicKey({
        format: 'jwk',
        key: { kty: 'EC', crv: 'P-256', x: coordinate(1), y: coordinate(33) },
      });
      return verify('sha256', bytes, { key, dsaEncoding: 'ieee-p1363' }, signature);
    } catch {
      return false;
    }
  },
};

/** Keys in memory, one for each device, gone with the command. */
export function keysInMemory(): Keys {
  const signers = new Map<string, Signer>();
  return {
    signerFor: async (device) => {
      const known = signers.get(device);
      if (known) return known;
      const { privateKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
      const { x, y } = createPublicKey(privateKey).export({ format: 'jwk' });
      const point = Buffer.concat([
        Buffer.from([4]),
        Buffer.from(x ?? '', 'base64url'),
        Buffer.from(y ?? '', 'base64url'),
      ]);
      const signer: Signer = {
        publicKey: point.toString('base64url'),
        sign: async (bytes) => new Uint8Array(sign('sha256', bytes, { key: privateKey, dsaEncoding: 'ieee-p1363' })),
      };
      signers.set(device, signer);
      return signer;
    },
  };
}
