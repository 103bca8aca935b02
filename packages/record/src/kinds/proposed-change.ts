import { z } from 'zod';
import { identifier } from '../entry.ts';
import type { Kind } from './kind.ts';

/** A difference between the register and the site, proposed by an inspector; the register changes only when it is settled. */
export const proposedChangeBody = z.strictObject({
  visit: identifier.nullable(),
  /** Field of the register entry, for example `coloniesRegistered`. */
  field: z.string().min(1).max(60),
  from: z.union([z.string(), z.number(), z.boolean(), z.null()]),
  to: z.union([z.string(), z.number(), z.boolean(), z.null()]),
  reason: z.string().max(500),
});
export type ProposedChangeBody = z.infer<typeof proposedChangeBody>;

export const proposedChange: Kind<ProposedChangeBody> = {
  kind: 'proposed-change',
  version: 1,
  about: ['apiary', 'colony'],
  erasable: false,
  body: proposedChangeBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'proposals' },
  steps: [],
};
