import { batchLimit, page, scopeName } from '@combside/record/transport';
import { z } from 'zod';

/** `POST /api/pull`: entries of one scope after a position, in commit order. */
export const pull = z.strictObject({
  scope: scopeName,
  after: z.int().min(0),
  limit: z.int().min(1).max(batchLimit),
});
export type Pull = z.infer<typeof pull>;

export const pullAnswer = page;
export type PullAnswer = z.infer<typeof pullAnswer>;
