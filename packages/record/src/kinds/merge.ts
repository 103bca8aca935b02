import { z } from 'zod';
import { identifier } from '../entry.ts';
import type { Kind } from './kind.ts';

/**
 * Whether two records are the same keeper, or the same place. It is about the record that would step back, and names the
 * other one. `same`: it is read as part of the other; both histories stay, and a later `two` takes the merge back.
 * `two`: looked at, they are different ones. The newest word on each other record stands.
 */
export const mergeBody = z.strictObject({
  other: identifier,
  verdict: z.enum(['same', 'two']),
  reason: z.string().max(500),
});
export type MergeBody = z.infer<typeof mergeBody>;

export const merge: Kind<MergeBody> = {
  kind: 'merge',
  version: 1,
  about: ['keeper', 'apiary'],
  erasable: false,
  body: mergeBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'merges' },
  steps: [],
};
