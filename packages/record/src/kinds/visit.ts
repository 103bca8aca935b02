import { z } from 'zod';
import { identifier, instant } from '../entry.ts';
import type { Kind } from './kind.ts';

/** One inspector at one apiary, from arrival to exit. A later `visit` entry supersedes the earlier through `replaces`. */
export const visitBody = z.strictObject({
  apiary: identifier,
  inspector: identifier,
  /** Why the visit is made: a reason id known to casework, for example `routine` or `contact`. */
  reason: z.string().min(1).max(60),
  /** By what right the inspector is there: `consent`, `power of entry`, ... known to casework. */
  power: z.string().min(1).max(60),
  plannedFor: instant.nullable(),
  startedAt: instant.nullable(),
  endedAt: instant.nullable(),
  coloniesCounted: z.int().min(0).nullable(),
  /** Weather and season warnings shown at the start, each with what the inspector answered. */
  warnings: z.array(z.strictObject({ warning: z.string().max(80), answer: z.string().max(300) })),
  temperatureCelsius: z.number().min(-40).max(60).nullable(),
  /** Colonies left unopened at the end, with the reason, so that "still open" is never silent. */
  leftOpen: z.array(z.strictObject({ colony: identifier, reason: z.string().max(200) })),
});
export type VisitBody = z.infer<typeof visitBody>;

export const visit: Kind<VisitBody> = {
  kind: 'visit',
  version: 1,
  about: ['visit'],
  erasable: false,
  body: visitBody,
  writer: 'anyone',
  fold: { as: 'register', into: 'visit' },
  steps: [],
};
