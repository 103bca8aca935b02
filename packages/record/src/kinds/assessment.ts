import { z } from 'zod';
import { identifier, instant } from '../entry.ts';
import type { Kind } from './kind.ts';

/**
 * What the inspector concluded from one examination, with what the reasoning said at that moment.
 * Suspicion is the inspector's act or a pack's rule on a named sign; no probability makes it.
 */
export const assessmentBody = z.strictObject({
  /** Id of the examination entry it rests on. */
  examination: identifier,
  visit: identifier,
  statedAt: instant,
  /** The word on the result, known to casework: `suspect`, `nothing seen with this look`, ... */
  result: z.string().min(1).max(60),
  /** Conditions under suspicion, by id; empty unless the result is `suspect`. */
  suspected: z.array(z.string().max(60)),
  /** Who made the suspicion: the inspector, or the named rule of a pack. */
  basis: z.enum(['inspector', 'pack rule']),
  rule: z.string().max(80).nullable(),
  /** Conditions in the order in which the reasoning put them, with point probability and 90 % interval. */
  differential: z.array(
    z.strictObject({
      condition: z.string().max(60),
      probability: z.number().min(0).max(1),
      low: z.number().min(0).max(1).nullable(),
      high: z.number().min(0).max(1).nullable(),
    }),
  ),
  nextCheck: z.string().max(60).nullable(),
  scienceVersion: z.string().max(40),
  pack: z.strictObject({ id: z.string().max(60), version: z.string().max(40) }),
});
export type AssessmentBody = z.infer<typeof assessmentBody>;

export const assessment: Kind<AssessmentBody> = {
  kind: 'assessment',
  version: 1,
  about: ['colony'],
  erasable: false,
  body: assessmentBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'assessments', newestFirstBy: (body) => body.statedAt },
  steps: [],
};
