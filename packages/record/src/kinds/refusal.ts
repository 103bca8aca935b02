import { z } from 'zod';
import { identifier, sha256Hex } from '../entry.ts';
import type { Kind } from './kind.ts';

/** The office did not take an entry. It keeps the envelope, so that the chain can go on; this says why the body is missing. */
export const refusalBody = z.strictObject({
  entry: identifier,
  seq: z.int().min(1),
  envelopeHash: sha256Hex,
  /** A reason id, for example `not your district` or `wrong body`. No personal data. */
  reason: z.string().min(1).max(200),
});
export type RefusalBody = z.infer<typeof refusalBody>;

export const refusal: Kind<RefusalBody> = {
  kind: 'refusal',
  version: 1,
  about: ['device'],
  erasable: false,
  body: refusalBody,
  writer: 'office',
  fold: { as: 'list', into: 'refusals' },
  steps: [],
};
