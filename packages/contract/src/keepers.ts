import { identifier } from '@combside/record/entry';
import { z } from 'zod';

/** Query of `GET /api/keepers`. */
export const keepersAsked = z.strictObject({
  limit: z.coerce.number().int().min(1).max(500).default(50),
  after: z.string().max(400).optional(),
});
export type KeepersAsked = z.infer<typeof keepersAsked>;
export const keeperLine = z.object({
  keeper: identifier,
  name: z.string(),
  number: z.string().nullable(),
  apiaries: z.int(),
});
export type KeeperLine = z.infer<typeof keeperLine>;
export const keepers = z.object({ keepers: z.array(keeperLine), next: z.string().nullable() });
export type Keepers = z.infer<typeof keepers>;
