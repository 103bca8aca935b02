import { z } from 'zod';
import { calendarDate, identifier } from '../entry.ts';
import type { Kind } from './kind.ts';

/**
 * Bees or what they lived in went from one apiary to another: moved by their keeper, sold, lent. Names nobody; whose
 * apiaries they are, the register says. Null where the other end is not in the register.
 */
export const movementBody = z.strictObject({
  from: identifier.nullable(),
  to: identifier.nullable(),
  what: z.enum(['colonies', 'nuclei', 'swarms', 'package bees', 'queens', 'combs', 'empty hives', 'equipment']),
  /** How many of them; null when nobody knows. */
  quantity: z.int().min(1).max(100_000).nullable(),
  /** Those that the register knows one by one. */
  colonies: z.array(identifier).max(1000),
  how: z.enum(['moved', 'sold', 'given', 'lent', 'not known']),
  /** The day lies between these two, both included; equal when it is known. */
  earliest: calendarDate,
  latest: calendarDate,
  knownBy: z.enum([
    'told by the keeper',
    'written by the keeper',
    'seen by an inspector',
    'transport paper',
    'imported',
  ]),
  /** False: it was entered in error, and nothing came or went. */
  happened: z.boolean(),
});
export type MovementBody = z.infer<typeof movementBody>;

export const movement: Kind<MovementBody> = {
  kind: 'movement',
  version: 2,
  about: ['movement'],
  erasable: false,
  body: movementBody,
  writer: 'anyone',
  fold: { as: 'register', into: 'movement' },
  steps: [
    {
      name: 'an entry made in error can be taken back',
      lift: (body) => ({ ...(body as MovementBody), happened: true }),
    },
  ],
};
