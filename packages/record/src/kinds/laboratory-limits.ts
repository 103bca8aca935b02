import { z } from 'zod';
import { calendarDate } from '../entry.ts';
import type { Kind } from './kind.ts';

/**
 * The limits one laboratory stated for one of its methods on one material, as it stated them. A later statement stands
 * beside the earlier ones, so that an old report is still read by the limits of its day. None is built in anywhere.
 */
export const laboratoryLimitsBody = z.strictObject({
  laboratory: z.string().min(1).max(200),
  /** As its reports name it. */
  method: z.string().min(1).max(200),
  /** What is tested, as its reports name it. */
  material: z.string().min(1).max(200),
  /** Colony-forming units per gram, per bee or per millilitre. */
  unit: z.enum(['g', 'bee', 'ml']),
  /** Day on which the laboratory stated them: they hold from then on, until it states others. */
  statedOn: calendarDate,
  /** Where that is written. Names nobody. */
  source: z.string().min(1).max(500),
  /** Its classes, the first from 0, each next one higher. */
  classes: z
    .array(z.strictObject({ name: z.string().min(1).max(200), from: z.number().min(0) }))
    .min(1)
    .max(50),
  /** How many colonies on a plate it counts, both included; null where it states none. */
  countable: z.strictObject({ lowest: z.int().min(0).max(10_000), highest: z.int().min(1).max(10_000) }).nullable(),
});
export type LaboratoryLimitsBody = z.infer<typeof laboratoryLimitsBody>;

export const laboratoryLimits: Kind<LaboratoryLimitsBody> = {
  kind: 'laboratory-limits',
  version: 1,
  about: ['laboratory'],
  erasable: false,
  body: laboratoryLimitsBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'limits', newestFirstBy: ({ statedOn }) => statedOn },
  steps: [],
};
