import { z } from 'zod';
import { identifier } from '../entry.ts';
import type { Kind } from './kind.ts';

/** First entry of every chain: the public key, the person who signs with it, and the device it takes over from, if any. */
export const deviceBody = z.strictObject({
  /** P-256 public key, uncompressed point (65 bytes), base64url. */
  publicKey: z.string().regex(/^[A-Za-z0-9_-]{87}$/),
  person: identifier,
  /** The device whose unsent entries this one re-sealed after a clone or restore was detected. */
  predecessor: identifier.nullable(),
  /** What the person calls it, for example "phone in the van". */
  name: z.string().max(80),
});
export type DeviceBody = z.infer<typeof deviceBody>;

export const device: Kind<DeviceBody> = {
  kind: 'device',
  version: 1,
  about: ['device'],
  erasable: false,
  body: deviceBody,
  writer: 'anyone',
  fold: { as: 'register', into: 'device' },
  steps: [],
};
