import { z } from 'zod';
import { calendarDate, identifier, instant } from '../entry.ts';
import type { Kind } from './kind.ts';

/** Sides of a comb, as the inspector names them. */
export const combSides = ['a', 'b'] as const;

/** How many sides of the combs of a box were looked at. */
export const combSideCounts = ['both', 'one'] as const;

/** Whether a sign was there. A sign not in the list was not looked for, which is not the same as not seen. */
export const outcomes = ['seen', 'not seen'] as const;

/** How many cells show a sign, by comb: 1-10, 11-100, more than 100. */
export const countClasses = ['1-10', '11-100', 'over 100'] as const;

/** How much of a sign that is not counted in cells. */
export const amounts = ['slight', 'marked'] as const;

/** What the cell of a rope test held. */
export const tissues = ['too fresh', 'moist brown', 'part dry', 'dry scale'] as const;

/** What the thread was drawn with. */
export const sticks = ['rough and dry', 'smooth or wet'] as const;

export const threadColours = ['white', 'yellow', 'coffee', 'dark brown', 'black', 'grey'] as const;

export const testResults = ['positive', 'negative', 'failed'] as const;

/** What the hive was when it was opened. */
export const hiveStates = ['living', 'dead', 'stored combs'] as const;

/** How deep a look was, from the most to the least. */
export const depths = ['full', 'part', 'tops', 'outside', 'laboratory only'] as const;
export type Depth = (typeof depths)[number];

/** What the closing button stated. */
export const claims = ['nothing seen', 'signs seen', 'not judged'] as const;

/** Which light fell on the cell floors. */
export const lights = ['sun over the shoulder', 'torch', 'shade', 'poor'] as const;

/** How the frame was held. */
export const holds = ['top bar toward the viewer', 'top bar away', 'flat'] as const;

/** Where on the comb: the box (as the colony's record names it), the frame counted from the same end, and the side. */
const place = z.strictObject({
  box: z.string().max(40),
  frame: z.int().min(1).max(30).nullable(),
  side: z.enum(combSides).nullable(),
});

/** One sign that was looked for. */
export const signLooked = z.strictObject({
  sign: z.string().min(1).max(60),
  outcome: z.enum(outcomes),
  /** For cell signs that were seen. */
  count: z.enum(countClasses).nullable(),
  /** For signs that are not counted in cells. */
  amount: z.enum(amounts).nullable(),
  places: z.array(
    z.strictObject({
      ...place.shape,
      cellsOpened: z.int().min(0).max(10_000).nullable(),
      cellsAffected: z.int().min(0).max(10_000).nullable(),
    }),
  ),
});
export type SignLooked = z.infer<typeof signLooked>;

export const ropeTest = z.strictObject({
  ...place.shape,
  tissue: z.enum(tissues),
  stick: z.enum(sticks),
  /** Length of the thread when it broke, in millimetres; 0 when none was drawn. */
  threadMillimetres: z.number().min(0).max(300),
  snapsBack: z.boolean().nullable(),
  colour: z.enum(threadColours).nullable(),
});
export type RopeTest = z.infer<typeof ropeTest>;

/** One test read at the hive: a kit, the milk test. What a laboratory answers is written down by the laboratory's own entry. */
export const hiveTest = z.strictObject({
  /** Id of a test known to casework, for example `lateral-flow-afb`. */
  test: z.string().min(1).max(60),
  /** What was put to it: `diseased cell`, `scale or smear`, ... */
  material: z.string().min(1).max(40),
  result: z.enum(testResults),
  readOn: calendarDate.nullable(),
  /** As printed on the kit; empty where none was read off. */
  batch: z.string().max(60),
  /** Last day of use printed on the kit. */
  expires: calendarDate.nullable(),
});
export type HiveTest = z.infer<typeof hiveTest>;

/** What the keeper answered about medicine or comb change; both can mask disease. */
const asked = z.strictObject({
  asked: z.boolean(),
  answer: z.enum(['none', 'yes', 'not known']).nullable(),
  lastOn: calendarDate.nullable(),
  what: z.string().max(200),
});

export const photographReference = z.strictObject({
  /** SHA-256 of the original bytes. */
  hash: z.string().regex(/^[0-9a-f]{64}$/),
  mediaType: z.string().max(60),
  bytes: z.int().min(1),
  takenAt: instant,
  caption: z.string().max(300),
});
export type PhotographReference = z.infer<typeof photographReference>;

/**
 * One colony, looked at once by one author. Closing the colony seals it; thereafter only corrections.
 * What was looked at is never prefilled: `null` means that nothing was stated.
 */
export const examinationBody = z.strictObject({
  visit: identifier,
  apiary: identifier,
  observedAt: instant,
  hiveState: z.enum(hiveStates),
  depth: z.enum(depths),
  claim: z.enum(claims),
  boxes: z.array(
    z.strictObject({
      box: z.string().min(1).max(40),
      framesHeld: z.int().min(0).max(30),
      framesSeen: z.int().min(0).max(30),
      sides: z.enum(combSideCounts),
    }),
  ),
  beesShaken: z.boolean().nullable(),
  light: z.enum(lights).nullable(),
  hold: z.enum(holds).nullable(),
  /** Sealed brood in comb sides (a full side is 1), in quarters. */
  sealedBroodCombSides: z.number().min(0).max(60).nullable(),
  signs: z.array(signLooked),
  ropeTests: z.array(ropeTest),
  tests: z.array(hiveTest),
  /** Beetle, mites and the like found at the same opening. */
  finds: z.array(
    z.strictObject({
      find: z.string().min(1).max(60),
      outcome: z.enum(outcomes),
      amount: z.enum(amounts).nullable(),
    }),
  ),
  medicines: asked,
  combChanges: asked,
  measurements: z.array(
    z.strictObject({ what: z.string().min(1).max(60), value: z.number(), unit: z.string().min(1).max(30) }),
  ),
  remarks: z.string().max(5000),
  photographs: z.array(photographReference),
});
export type ExaminationBody = z.infer<typeof examinationBody>;

export const examination: Kind<ExaminationBody> = {
  kind: 'examination',
  version: 2,
  about: ['colony'],
  erasable: false,
  body: examinationBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'examinations', newestFirstBy: (body) => body.observedAt },
  steps: [
    { name: 'tests at the hive are written down', lift: (body) => ({ ...(body as ExaminationBody), tests: [] }) },
  ],
};
