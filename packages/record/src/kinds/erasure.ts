import { z } from 'zod';
import { identifier } from '../entry.ts';
import type { Kind } from './kind.ts';

/** Bodies that were forgotten, with the reason. Only erasable kinds may be named; the envelopes stay, so chains stay whole. */
export const erasureBody = z.strictObject({
  /** Entries about the same entity whose body and salt are gone. */
  entries: z.array(identifier).min(1).max(1000),
  /** A reason id known to casework, for example `retention over`. No personal data. */
  reason: z.string().min(1).max(80),
});
export type ErasureBody = z.infer<typeof erasureBody>;

export const erasure: Kind<ErasureBody> = {
  kind: 'erasure',
  version: 1,
  about: 'any',
  erasable: false,
  body: erasureBody,
  writer: 'office',
  fold: { as: 'erasure' },
  steps: [],
};
