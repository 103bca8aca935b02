import { z } from 'zod';
import { identifier } from '../entry.ts';
import type { Kind } from './kind.ts';

/** A colony as the register knows it. Hive type and brood frames present are the only things an examination prefills. */
export const colonyBody = z.strictObject({
  apiary: identifier,
  label: z.string().min(1).max(40),
  /** Id of a hive type known to casework, for example `langstroth-deep`. */
  hiveType: z.string().min(1).max(60),
  /** Brood boxes from the floor upward, with the brood frames each holds. */
  broodBoxes: z.array(z.strictObject({ box: z.string().min(1).max(40), frames: z.int().min(0).max(30) })).max(10),
  hiveState: z.enum(['living', 'dead', 'stored combs', 'gone']),
});
export type ColonyBody = z.infer<typeof colonyBody>;

export const colony: Kind<ColonyBody> = {
  kind: 'colony',
  version: 1,
  about: ['colony'],
  erasable: false,
  body: colonyBody,
  writer: 'anyone',
  fold: { as: 'register', into: 'colony' },
  steps: [],
};
