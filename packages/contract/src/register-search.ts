import { identifier } from '@combside/record/entry';
import { z } from 'zod';

/** Query of `GET /api/register/search`: any words, in any order, in names, numbers, addresses, telephone and mail. */
export const registerSearched = z.strictObject({
  text: z.string().max(200),
  district: z.string().max(80).optional(),
  limit: z.coerce.number().int().min(1).max(100).default(30),
});
export type RegisterSearched = z.infer<typeof registerSearched>;

export const registerHit = z.object({
  type: z.enum(['apiary', 'keeper']),
  id: identifier,
  name: z.string(),
  number: z.string().nullable(),
  /** Null for a keeper, who may have apiaries in several. */
  district: z.string().nullable(),
  /** For an apiary its keeper's name. */
  at: z.string().nullable(),
});
export type RegisterHit = z.infer<typeof registerHit>;

/** `more` where further ones match; then more words are needed, not more pages. */
export const registerHits = z.object({ hits: z.array(registerHit), more: z.boolean() });
export type RegisterHits = z.infer<typeof registerHits>;
