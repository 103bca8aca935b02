import { identifier, instant } from '@combside/record/entry';
import { z } from 'zod';
import { visitLine } from './visits.ts';

/** Query of `GET /api/owed`: what is still to be done. Without a district: all that are granted. */
export const owedAsked = z.strictObject({ district: z.string().max(80).optional() });
export type OwedAsked = z.infer<typeof owedAsked>;

/** What the law asks and nobody has met yet. Ids are those of the rule pack. */
export const dutyLine = z.object({
  duty: z.string(),
  rule: z.string(),
  owedBy: z.string(),
  condition: z.string().nullable(),
  apiary: identifier,
  apiaryName: z.string().nullable(),
  colony: identifier.nullable(),
  colonyLabel: z.string().nullable(),
  since: instant,
  notBefore: instant.nullable(),
  /** Null where the law names no time, or nobody is sure of it. */
  due: instant.nullable(),
  promptness: z.string().nullable(),
  late: z.boolean(),
  article: z.string(),
});
export type DutyLine = z.infer<typeof dutyLine>;

export const owed = z.object({
  /** Under way, planned, or asked for without a day; at most 500, and `more` says that there are others. */
  visits: z.array(visitLine),
  more: z.boolean(),
  duties: z.array(dutyLine),
  now: instant,
  position: z.int(),
});
export type Owed = z.infer<typeof owed>;
