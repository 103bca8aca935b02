import { z } from 'zod';
import { identifier, sha256Hex } from '../entry.ts';
import type { Kind } from './kind.ts';

/**
 * Second entry of a chain that takes over from a cloned or restored device: names the entries that were first sealed
 * under the predecessor and now follow, sealed anew with the same identifier, salt and body.
 */
export const resealingBody = z.strictObject({
  predecessor: identifier,
  originals: z.array(z.strictObject({ entry: identifier, seq: z.int().min(1), envelopeHash: sha256Hex })).max(10_000),
});
export type ResealingBody = z.infer<typeof resealingBody>;

export const resealing: Kind<ResealingBody> = {
  kind: 'resealing',
  version: 1,
  about: ['device'],
  erasable: false,
  body: resealingBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'resealings' },
  steps: [],
};
