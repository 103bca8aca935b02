import { z } from 'zod';
import { identifier } from '../entry.ts';
import type { Kind } from './kind.ts';

/** The office found an entry's clock more than 24 hours ahead of its own. The entry is kept and loses ties. */
export const clockFlagBody = z.strictObject({
  entry: identifier,
  aheadMilliseconds: z.int().positive(),
});
export type ClockFlagBody = z.infer<typeof clockFlagBody>;

export const clockFlag: Kind<ClockFlagBody> = {
  kind: 'clock-flag',
  version: 1,
  about: 'any',
  erasable: false,
  body: clockFlagBody,
  writer: 'office',
  fold: { as: 'clock flag' },
  steps: [],
};
