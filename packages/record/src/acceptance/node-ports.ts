import { createHash, createPublicKey, generateKeyPairSync, type KeyObject, sign, verify } from 'node:crypto';
import { fromBase64Url, toBase64Url } from '../bytes.ts';
import type { Chance, Hasher, Keys, Signer, Verifier, WallClock } from '../ports.ts';

/** The record's ports on Node, for tests and benchmarks. Keys live in memory. */

export const nodeHasher: Hasher = {
  sha256: async (bytes) => new Uint8Array(createHash('sha256').update(bytes).digest()),
};

const publicKeys = new Map<string, KeyObject | null>();

export const nodeVerifier: Verifier = {
  async verify(publicKey, bytes, signature) {
    let key = publicKeys.get(publicKey);
    if (key === undefined) {
      key = readPublicKey(publicKey);
      publicKeys.set(publicKey, key);
    }
    return key !== null && verify('sha256', bytes, { key, dsaEncoding: 'ieee-p1363' }, signature);
  },
};

function readPublicKey(publicKey: string): KeyObject | null {
  const point = fromBase64Url(publicKey);
  const coordinate = (from: number) => toBase64Url(point.slice(from, from + 32));
  try {
    return createPublicKey({ format: 'jwk', key: { kty: 'EC', crv: 'P-256', x: coordinate(1), y: coordinate(33) } });
  } catch {
    return null;
  }
}

export function nodeSigner(): Signer {
  const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const { x = '', y = '' } = publicKey.export({ format: 'jwk' });
  const point = new Uint8Array([4, ...fromBase64Url(x), ...fromBase64Url(y)]);
  return {
    publicKey: toBase64Url(point),
    sign: async (bytes) => new Uint8Array(sign('sha256', bytes, { key: privateKey, dsaEncoding: 'ieee-p1363' })),
  };
}

export function nodeKeys(): Keys {
  const signers = new Map<string, Signer>();
  return {
    async signerFor(device) {
      const signer = signers.get(device) ?? nodeSigner();
      signers.set(device, signer);
      return signer;
    },
  };
}

/** Bytes that look like chance and repeat with the seed (xorshift32). For tests only. */
export function seededChance(seed: number): Chance {
  let state = (Math.imul(seed, 0x9e3779b1) ^ 0x5bd1e995) >>> 0 || 1;
  return {
    bytes(count) {
      const bytes = new Uint8Array(count);
      for (let i = 0; i < count; i++) {
        state ^= state << 13;
        state ^= state >>> 17;
        state ^= state << 5;
        state >>>= 0;
        bytes[i] = state >>> 24;
      }
      return bytes;
    },
  };
}

/** A clock that stands until it is moved. */
export interface HandClock extends WallClock {
  milliseconds: number;
}

export function handClock(milliseconds: number): HandClock {
  return {
    milliseconds,
    now() {
      return this.milliseconds;
    },
  };
}
