import { identifier } from '@combside/record/entry';
import { apiaryBody } from '@combside/record/kinds/apiary';
import { keeperBody } from '@combside/record/kinds/keeper';
import { z } from 'zod';

/** Query of `GET /api/register/rows`: the register as it stands, for import, export and the search for duplicates. */
export const registerRowsAsked = z.strictObject({
  type: z.enum(['apiary', 'keeper']),
  /** Apiaries of one district, or the keepers of apiaries there. Without: all that are granted. */
  district: z.string().max(80).optional(),
  limit: z.coerce.number().int().min(1).max(5000).default(2000),
  after: z.string().max(400).optional(),
});
export type RegisterRowsAsked = z.infer<typeof registerRowsAsked>;

const rowBase = {
  id: identifier,
  /** Entries whose values stand there, contested ones included: a change replaces them all. */
  standing: z.array(identifier),
  mergedInto: identifier.nullable(),
  /** Records that were looked at and found to be different ones. */
  notTheSame: z.array(identifier),
};
export const apiaryRow = z.object({ ...rowBase, type: z.literal('apiary'), body: apiaryBody });
export const keeperRow = z.object({ ...rowBase, type: z.literal('keeper'), body: keeperBody });
export type ApiaryRow = z.infer<typeof apiaryRow>;
export type KeeperRow = z.infer<typeof keeperRow>;

export const registerRows = z.object({
  rows: z.array(z.discriminatedUnion('type', [apiaryRow, keeperRow])),
  next: z.string().nullable(),
});
export type RegisterRows = z.infer<typeof registerRows>;
