import { identifier, instant } from '@combside/record/entry';
import { z } from 'zod';

/** Query of `GET /api/visits`: newest first. Without a district: all that are granted. */
export const visitsAsked = z.strictObject({
  district: z.string().max(80).optional(),
  inspector: identifier.optional(),
  /** Only visits to this apiary. */
  apiary: identifier.optional(),
  from: instant.optional(),
  to: instant.optional(),
  /** Each word stands in the name, number or address of the apiary, or in the name of the inspector. */
  text: z.string().max(200).optional(),
  /** Some colony of the visit got one of these results; words of casework, joined by `|`. */
  results: z.string().min(1).max(400).optional(),
  limit: z.coerce.number().int().min(1).max(200).default(50),
  after: z.string().max(400).optional(),
});
export type VisitsAsked = z.infer<typeof visitsAsked>;

/** How many colonies of a visit got which result; `result` is a word of casework, or `not assessed`. */
export const resultCount = z.object({ result: z.string(), colonies: z.int() });

export const visitLine = z.object({
  visit: identifier,
  apiary: identifier,
  /** Null while the apiary's own entry has not arrived. */
  apiaryName: z.string().nullable(),
  district: z.string().nullable(),
  inspector: identifier,
  inspectorName: z.string().nullable(),
  reason: z.string(),
  plannedFor: instant.nullable(),
  startedAt: instant.nullable(),
  endedAt: instant.nullable(),
  colonies: z.int(),
  results: z.array(resultCount),
});
export type VisitLine = z.infer<typeof visitLine>;

export const visits = z.object({ visits: z.array(visitLine), next: z.string().nullable() });
export type Visits = z.infer<typeof visits>;
