import { entry, identifier, instant } from '@combside/record/entry';
import { apiaryBody } from '@combside/record/kinds/apiary';
import { keeperBody } from '@combside/record/kinds/keeper';
import { z } from 'zod';
import { apiaryLine } from './apiaries.ts';
import { keeperState, movementState } from './folded.ts';
import { person } from './people.ts';

/** Query of `GET /api/register/search`: any words, in any order, in names, numbers, addresses, telephone and mail. */
export const registerSearched = z.strictObject({
  text: z.string().max(200),
  district: z.string().max(80).optional(),
  limit: z.coerce.number().int().min(1).max(100).default(30),
});
export type RegisterSearched = z.infer<typeof registerSearched>;

export const registerHit = z.object({
  type: z.enum(['apiary', 'keeper']),
  id: identifier,
  name: z.string(),
  number: z.string().nullable(),
  /** Null for a keeper, who may have apiaries in several. */
  district: z.string().nullable(),
  /** For an apiary its keeper's name. */
  at: z.string().nullable(),
});
export type RegisterHit = z.infer<typeof registerHit>;

/** `more` where further ones match; then more words are needed, not more pages. */
export const registerHits = z.object({ hits: z.array(registerHit), more: z.boolean() });
export type RegisterHits = z.infer<typeof registerHits>;

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

/** Query of `GET /api/register/unsettled`: what waits for somebody's word. */
export const unsettledAsked = z.strictObject({
  district: z.string().max(80).optional(),
  limit: z.coerce.number().int().min(1).max(200).default(100),
  after: z.string().max(400).optional(),
});
export type UnsettledAsked = z.infer<typeof unsettledAsked>;

export const unsettledLine = z.object({
  type: z.enum(['apiary', 'keeper', 'colony']),
  id: identifier,
  name: z.string(),
  district: z.string().nullable(),
  /** For a colony, where it stands. */
  apiary: identifier.nullable(),
  contested: z.boolean(),
  /** Proposed changes that the register has not answered yet. */
  proposals: z.int(),
});
export type UnsettledLine = z.infer<typeof unsettledLine>;
export const unsettled = z.object({ lines: z.array(unsettledLine), next: z.string().nullable() });
export type Unsettled = z.infer<typeof unsettled>;

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

/** `GET /api/keepers/<id>`: a keeper with the apiaries, and the records that are read as part of this one. */
export const keeperPage = z.object({
  keeper: keeperState,
  apiaries: z.array(apiaryLine),
  /** What came to these apiaries and what left them, the newest 200. */
  movements: z.array(movementState),
  /** Names of the apiaries at either end of the movements, as far as they may be read. */
  otherEnds: z.array(z.object({ apiary: identifier, name: z.string() })),
  mergedHere: z.array(z.object({ id: identifier, name: z.string() })),
  people: z.array(person),
  position: z.int(),
});
export type KeeperPage = z.infer<typeof keeperPage>;

/** `GET /api/register/entries/<type>/<id>`: all entries about one thing, so that a device that changes it can name them. */
export const entriesOfOne = z.object({ items: z.array(z.object({ entry, receivedAt: instant })) });
export type EntriesOfOne = z.infer<typeof entriesOfOne>;
