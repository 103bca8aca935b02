import { identifier } from '@combside/record/entry';
import { z } from 'zod';

/** Query of `GET /api/register/unsettled`: what waits for somebody's word. */
export const unsettledAsked = z.strictObject({
  district: z.string().max(80).optional(),
  limit: z.coerce.number().int().min(1).max(200).default(100),
  after: z.string().max(400).optional(),
});
export type UnsettledAsked = z.infer<typeof unsettledAsked>;

export const unsettledLine = z.object({
  type: z.enum(['apiary', 'keeper', 'colony']),
  id: identifier,
  name: z.string(),
  district: z.string().nullable(),
  /** For a colony, where it stands. */
  apiary: identifier.nullable(),
  contested: z.boolean(),
  /** Proposed changes that the register has not answered yet. */
  proposals: z.int(),
});
export type UnsettledLine = z.infer<typeof unsettledLine>;
export const unsettled = z.object({ lines: z.array(unsettledLine), next: z.string().nullable() });
export type Unsettled = z.infer<typeof unsettled>;
