import { z } from 'zod';
import { identifier } from '../entry.ts';
import type { Kind } from './kind.ts';

/** Why an entry of the same entity was written, in the author's words. May name people, so it can be erased. */
export const reasonBody = z.strictObject({ explains: identifier, text: z.string().min(1).max(1000) });
export type ReasonBody = z.infer<typeof reasonBody>;

export const reason: Kind<ReasonBody> = {
  kind: 'reason',
  version: 1,
  about: ['keeper', 'apiary', 'colony', 'movement'],
  erasable: true,
  body: reasonBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'reasons' },
  steps: [],
};
