import { identifier, instant } from '@combside/record/entry';
import { z } from 'zod';
import { combStanding } from './comb-standing.ts';
import { photographHash } from './photograph.ts';

/**
 * Query of `GET /api/comb-photographs`: photographs taken at the combs of colonies, newest first. Without a district: all
 * that are granted.
 */
export const combPhotographsAsked = z.strictObject({
  district: z.string().max(80).optional(),
  apiary: identifier.optional(),
  visit: identifier.optional(),
  standing: combStanding.optional(),
  limit: z.coerce.number().int().min(1).max(500).default(60),
  after: z.string().max(400).optional(),
});
export type CombPhotographsAsked = z.infer<typeof combPhotographsAsked>;

export const combPhotographLine = z.object({
  hash: photographHash,
  colony: identifier,
  /** Empty while the colony's own entry has not arrived. */
  label: z.string(),
  visit: identifier,
  /** Where the colony stood when it was photographed. */
  apiary: identifier,
  apiaryName: z.string().nullable(),
  takenAt: instant,
  caption: z.string(),
  standing: combStanding,
  /** Why it was refused or given up: ids, each with a sentence (`comb.reason.<id>`); empty otherwise. */
  reasons: z.array(z.string()),
});
export type CombPhotographLine = z.infer<typeof combPhotographLine>;

export const combPhotographs = z.object({
  photographs: z.array(combPhotographLine),
  next: z.string().nullable(),
  /** How many of all that were asked for, whatever their standing, wait for the server, and how many it is reading. */
  waiting: z.int(),
  reading: z.int(),
});
export type CombPhotographs = z.infer<typeof combPhotographs>;
