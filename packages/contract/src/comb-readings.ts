import { instant } from '@combside/record/entry';
import { combReadingBody } from '@combside/record/kinds/comb-reading';
import { z } from 'zod';
import { photographHash } from './photograph.ts';

/**
 * `POST /api/comb-readings`: stored photographs of combs that the server shall read, one after the other, when it has
 * time. Asking again is harmless, and tells how far it is. At most 500 at a time.
 *
 * The same message to `POST /api/comb-readings/cancel` takes back those that still wait; what is being read or was read
 * stays, and is told.
 */
export const combReadingsAsked = z.strictObject({ photographs: z.array(photographHash).min(1).max(500) });

/** How far the reading of one photograph is. */
export const combReadingTold = z.object({
  photograph: photographHash,
  /** Version of the reader that reads, or has read, it. */
  readerVersion: z.int().min(1),
  state: z.enum(['waiting', 'reading', 'read', 'refused', 'failed']),
  askedAt: instant,
  finishedAt: instant.nullable(),
  /** Why it was refused, or what the reading cannot say: ids, each with a sentence (`comb.reason.<id>`). */
  reasons: z.array(z.string()),
});
export type CombReadingTold = z.infer<typeof combReadingTold>;

/** `unknown`: photographs whose bytes have not arrived, or that this account may not see. */
export const combReadingsTold = z.object({
  readings: z.array(combReadingTold),
  unknown: z.array(photographHash),
});
export type CombReadingsTold = z.infer<typeof combReadingsTold>;

/**
 * `GET /api/comb-readings/<hash>`: what the machine made of one photograph. A proposal: it becomes part of the record, and
 * evidence, only when a person looks at it and keeps it.
 */
export const combReadingProposed = combReadingTold.extend({
  part: z.object({ reader: combReadingBody.shape.reader, cells: combReadingBody.shape.cells }).nullable(),
});
export type CombReadingProposed = z.infer<typeof combReadingProposed>;
