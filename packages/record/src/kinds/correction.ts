import { z } from 'zod';
import { identifier } from '../entry.ts';
import type { Kind } from './kind.ts';

/** Says what an earlier entry should have said, and why. The screen shows both; the earlier one stays. */
export const correctionBody = z.strictObject({
  corrects: identifier,
  reason: z.string().min(1).max(500),
  /** Version of the corrected entry's kind in which `body` is written. */
  version: z.int().min(1),
  /** The whole body as it should have been. */
  body: z.unknown(),
});
export type CorrectionBody = z.infer<typeof correctionBody>;

export const correction: Kind<CorrectionBody> = {
  kind: 'correction',
  version: 1,
  about: 'any',
  erasable: 'as corrected',
  body: correctionBody,
  writer: 'anyone',
  fold: { as: 'correction' },
  steps: [],
};
