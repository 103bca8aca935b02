import { identifier } from '@combside/record/entry';
import { z } from 'zod';

/** Query of `GET /api/colonies`: a label, with words of the apiary in front or behind: `hazel bank 3`. */
export const coloniesSearched = z.strictObject({
  text: z.string().min(1).max(200),
  limit: z.coerce.number().int().min(1).max(100).default(20),
});
export type ColoniesSearched = z.infer<typeof coloniesSearched>;

export const colonyHit = z.object({
  colony: identifier,
  label: z.string(),
  apiary: identifier,
  apiaryName: z.string(),
  lastResult: z.string().nullable(),
});
export type ColonyHit = z.infer<typeof colonyHit>;

/** Colonies by apiary and label; `more` where further ones match. */
export const coloniesFound = z.object({ colonies: z.array(colonyHit), more: z.boolean() });
export type ColoniesFound = z.infer<typeof coloniesFound>;
