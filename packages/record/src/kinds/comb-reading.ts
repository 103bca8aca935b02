import { z } from 'zod';
import { identifier, instant } from '../entry.ts';
import { photographReference } from './examination.ts';
import type { Kind } from './kind.ts';

/** Most cells kept of one photograph: three times a full comb side. */
export const mostCellsKept = 20_000;

/**
 * A photograph of one comb side, read cell by cell, and what a person said beside the machine. `cells` is what the machine
 * read and is never changed; `corrections` is what a person says of single cells. Only an accepted reading is evidence.
 */
export const combReadingBody = z.strictObject({
  visit: identifier,
  apiary: identifier,
  /** When the comb was photographed. */
  observedAt: instant,
  photograph: photographReference,
  place: z.strictObject({
    box: z.string().max(40),
    frame: z.int().min(1).max(30).nullable(),
    side: z.enum(['a', 'b']).nullable(),
  }),
  reader: z.strictObject({
    /** Version of the reading as the program numbers it. */
    version: z.int().min(1),
    /** Pixels of the photograph as stored. */
    picture: z.strictObject({ width: z.int().min(1).max(16_383), height: z.int().min(1).max(16_383) }),
    /** Distance of cell centres in the middle of the range, in pixels. */
    pitchPx: z.number().min(0).max(16_383),
    /** What the reading says it cannot say: ids. */
    warnings: z.array(z.string().min(1).max(60)).max(40),
    /** Corners that a person set before the reading, in pixels as stored; null when the whole photograph was read. */
    region: z
      .array(z.strictObject({ x: z.number(), y: z.number() }))
      .min(3)
      .max(40)
      .nullable(),
    /** Cappings that stand out from their neighbours, the most outlying first: the cell's place in `cells`, and why. */
    secondLook: z
      .array(
        z.strictObject({
          cell: z
            .int()
            .min(0)
            .max(mostCellsKept - 1),
          outlying: z.number(),
          why: z.string().min(1).max(40),
        }),
      )
      .max(100),
  }),
  /** Records of 12 bytes, base64url, one for each cell; casework packs and unpacks them. */
  cells: z.strictObject({
    count: z.int().min(0).max(mostCellsKept),
    packed: z
      .string()
      .max(mostCellsKept * 16)
      .regex(/^[A-Za-z0-9_-]*$/, 'expected base64url'),
  }),
  /**
   * The cell by its place in `cells`, counted from 0, and the class that a person gives it. The machine's own class given
   * again means that the person looked and agreed.
   */
  corrections: z
    .array(
      z.strictObject({
        cell: z
          .int()
          .min(0)
          .max(mostCellsKept - 1),
        class: z.string().min(1).max(40),
      }),
    )
    .max(mostCellsKept),
  accepted: z.boolean(),
});
export type CombReadingBody = z.infer<typeof combReadingBody>;

export const combReading: Kind<CombReadingBody> = {
  kind: 'comb-reading',
  version: 1,
  about: ['colony'],
  erasable: false,
  body: combReadingBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'combReadings', newestFirstBy: (body) => body.observedAt },
  steps: [],
};
