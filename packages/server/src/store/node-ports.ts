import { createHash, createPublicKey, type KeyObject, randomBytes, verify } from 'node:crypto';
import type { Chance, Hasher, Verifier, WallClock } from '@combside/record/ports';

/** The record's ports on Node. */
export const hasher: Hasher = {
  sha256: async (bytes) => new Uint8Array(createHash('sha256').update(bytes).digest()),
};

/** Keys already read, newest last; a push checks hundreds of entries with the same one. */
const keysRead = new Map<string, KeyObject | null>();
const keysRemembered = 2000;

export const verifier: Verifier = {
  verify: async (publicKey, bytes, signature) => {
    const key = keyOf(publicKey);
    return key !== null && verify('sha256', bytes, { key, dsaEncoding: 'ieee-p1363' }, signature);
  },
};

export const chance: Chance = { bytes: (count) => new Uint8Array(randomBytes(count)) };

/** The machine's clock. Everything of the server that asks what time it is asks a clock that was handed to it. */
export const wallClock: WallClock = { now: () => Date.now() };

/**
 * A clock for tests and rehearsals: it showed `start` when this process began, and goes on from there.
 *
 * @param start milliseconds since 1970-01-01T00:00Z
 */
export function clockFrom(start: number): WallClock {
  return { now: () => Math.floor(start + performance.now()) };
}

/** An uncompressed P-256 point as a key, or null for text that is none. */
function keyOf(publicKey: string): KeyObject | null {
  const known = keysRead.get(publicKey);
  if (known !== undefined) return known;
  const point = Buffer.from(publicKey, 'base64url');
  let key: KeyObject | null = null;
  if (point.length === 65 && point[0] === 4) {
    const coordinate = (from: number): string => point.subarray(from, from + 32).toString('base64url');
    try {
      key = createPublicKey({ format: 'jwk', key: { kty: 'EC', crv: 'P-256', x: coordinate(1), y: coordinate(33) } });
    } catch {
      // Not a point of the curve: no signature can be right.
    }
  }
  if (keysRead.size >= keysRemembered) keysRead.delete(keysRead.keys().next().value as string);
  keysRead.set(publicKey, key);
  return key;
}
