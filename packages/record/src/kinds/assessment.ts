import { z } from 'zod';
import { identifier, instant } from '../entry.ts';
import type { Kind } from './kind.ts';

const probability = z.number().gt(0).lt(1);

/** What was known before the look, as the reasoning took it. It may tell of other keepers: it goes on no paper. */
export const circumstancesKnown = z.strictObject({
  /** Colonies with a confirmed disease among those looked at in the district. */
  district: z.array(
    z.strictObject({
      condition: z.string().min(1).max(60),
      confirmed: z.int().min(0),
      examined: z.int().min(1),
      /** What was counted: `2027, april to september`. */
      about: z.string().max(200),
    }),
  ),
  earlierCaseAtApiary: z.boolean().nullable(),
  contactOfCase: z.boolean().nullable(),
  honeyPositive: z.boolean().nullable(),
  exposure: z.enum(['none known', 'apiary affected', 'operation affected', 'not known']),
});
export type CircumstancesKnown = z.infer<typeof circumstancesKnown>;

/** A prior that the inspector set, with the reason. */
export const priorChanged = z.strictObject({
  condition: z.string().min(1).max(60),
  value: probability,
  low: probability.nullable(),
  high: probability.nullable(),
  reason: z.string().min(1).max(1000),
});
export type PriorChanged = z.infer<typeof priorChanged>;

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
  /** Null where it was not written down: version 1 did not keep it. */
  circumstances: circumstancesKnown.nullable(),
  /** What the inspector changed of it, and why. */
  priorChanges: z.array(priorChanged),
  /** Entries of the readings of comb photographs that were weighed; empty before version 3, which weighed none. */
  combReadings: z.array(identifier).max(200),
  scienceVersion: z.string().max(40),
  pack: z.strictObject({ id: z.string().max(60), version: z.string().max(40) }),
});
export type AssessmentBody = z.infer<typeof assessmentBody>;

export const assessment: Kind<AssessmentBody> = {
  kind: 'assessment',
  version: 3,
  about: ['colony'],
  erasable: false,
  body: assessmentBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'assessments', newestFirstBy: (body) => body.statedAt },
  steps: [
    {
      name: 'what was known before the look, and what the inspector changed of it',
      lift: (body) => ({ ...(body as AssessmentBody), circumstances: null, priorChanges: [] }),
    },
    {
      name: 'which readings of comb photographs were weighed',
      lift: (body) => ({ ...(body as AssessmentBody), combReadings: [] }),
    },
  ],
};
