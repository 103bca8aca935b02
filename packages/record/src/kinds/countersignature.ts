import { z } from 'zod';
import { identifier, sha256Hex } from '../entry.ts';
import type { Kind } from './kind.ts';

/** The office vouches that a device's chain belongs to the person it names: written once for the first entry of a chain. */
export const countersignatureBody = z.strictObject({
  /** Id of the chain's first entry, of kind `device`. */
  entry: identifier,
  /** SHA-256 of that envelope without its signature. */
  envelopeHash: sha256Hex,
});
export type CountersignatureBody = z.infer<typeof countersignatureBody>;

export const countersignature: Kind<CountersignatureBody> = {
  kind: 'countersignature',
  version: 1,
  about: ['device'],
  erasable: false,
  body: countersignatureBody,
  writer: 'office',
  fold: { as: 'list', into: 'countersignatures' },
  steps: [],
};
