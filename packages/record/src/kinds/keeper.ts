import { z } from 'zod';
import type { Kind } from './kind.ts';

/** A beekeeper. All personal data of keepers stands in this kind alone, so it can be erased without losing a finding. */
export const keeperBody = z.strictObject({
  name: z.string().min(1).max(200),
  number: z.string().max(60).nullable(),
  addressWords: z.string().max(500),
  telephone: z.string().max(60),
  email: z.string().max(200),
  language: z.string().max(20),
  trade: z.enum(['hobby', 'sideline', 'commercial', 'migratory', 'not known']),
});
export type KeeperBody = z.infer<typeof keeperBody>;

export const keeper: Kind<KeeperBody> = {
  kind: 'keeper',
  version: 1,
  about: ['keeper'],
  erasable: true,
  body: keeperBody,
  writer: 'anyone',
  fold: { as: 'register', into: 'keeper' },
  steps: [],
};
