import { isDay } from '@combside/calendar/day';
import {
  amounts,
  combSideCounts,
  countClasses,
  depths,
  examination,
  examinationBody,
  hiveStates,
  holds,
  lights,
  sticks,
  testResults,
  tissues,
} from '@combside/record/kinds/examination';
import { checkEvidence, type Evidence } from '@combside/science/diagnosis/evidence';
import { testIds } from '@combside/science/diagnosis/test-figures';
import { diseases, signs } from '@combside/science/signs/catalogue';
import { z } from 'zod';

const count = z.int().min(0);
const probability = z.number().gt(0).lt(1);
const day = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/, 'expected a day as YYYY-MM-DD')
  .refine(isDay, 'expected a day that the calendar has');
const yesNo = z.boolean().nullable().default(null);
const days = z.number().min(0).nullable().default(null);
const condition = z.enum(diseases);

const look = z
  .strictObject({
    depth: z.enum(depths),
    framesHeld: count.nullable().default(null),
    framesSeen: count.nullable().default(null),
    sides: z.enum(combSideCounts).nullable().default(null),
    beesShaken: yesNo,
    light: z.enum(lights).nullable().default(null),
    hold: z.enum(holds).nullable().default(null),
    cellsOpened: count.nullable().default(null),
    cellsSuspicious: count.nullable().default(null),
    sealedBroodCombSides: z.number().min(0).nullable().default(null),
  })
  .describe('How the colony was looked at. What is left out was not stated, which is never read as the better answer.');

const answer = z.discriminatedUnion('outcome', [
  z.strictObject({ outcome: z.literal('not seen') }),
  z.strictObject({
    outcome: z.literal('seen'),
    count: z.enum(countClasses).exactOptional().describe('For signs counted in cells, by the worst comb.'),
    amount: z.enum(amounts).exactOptional().describe('For signs that have a degree.'),
    frames: z.int().min(1).exactOptional().describe('On how many brood frames.'),
  }),
]);

const circumstances = z
  .strictObject({
    district: z
      .array(
        z.strictObject({
          disease: condition,
          confirmed: count,
          examined: z.int().min(1),
          about: z.string().default(''),
        }),
      )
      .default([]),
    earlierCaseAtApiary: yesNo,
    contactOfCase: yesNo,
    honeyPositive: yesNo,
    exposure: z.enum(['none known', 'apiary affected', 'operation affected', 'not known']).default('not known'),
    daysSinceMedicine: days,
    daysSinceCombChange: days,
    maskingDays: days,
    priorChanges: z
      .array(
        z.strictObject({
          disease: condition,
          value: probability,
          low: probability.exactOptional(),
          high: probability.exactOptional(),
          reason: z.string().min(1),
        }),
      )
      .default([]),
  })
  .prefault({})
  .describe('What was known before the look. Left out: nothing.');

/** Evidence as the reasoning takes it, from JSON. The type holds it to what science asks for. */
export const evidenceInput: z.ZodType<Evidence> = z
  .strictObject({
    hive: z.enum(hiveStates).default('living'),
    look,
    signs: z
      .partialRecord(z.enum(signs.map((sign) => sign.id)), answer)
      .default({})
      .describe('By sign. A sign that is left out was not looked for, which says nothing.'),
    ropeTests: z
      .array(
        z.strictObject({
          tissue: z.enum(tissues),
          stick: z.enum(sticks),
          threadMillimetres: z.number().min(0).max(300),
          snapsBack: yesNo,
        }),
      )
      .default([]),
    tests: z
      .array(
        z.strictObject({
          test: z.enum(testIds),
          result: z.enum(testResults),
          readOn: day.exactOptional(),
          batch: z.string().exactOptional(),
          expires: day.exactOptional(),
        }),
      )
      .default([]),
    frameCounts: z
      .array(z.strictObject({ frame: z.string(), cellsAffected: count }))
      .default([])
      .describe('Cells affected, for every brood frame looked at, the sound ones too.'),
    circumstances,
    earlier: z
      .array(
        z.strictObject({
          daysAgo: z.number().min(0),
          suspect: z.boolean(),
          answered: z.enum(['not yet', 'positive', 'negative']).default('not yet'),
        }),
      )
      .default([]),
    suspicionStands: z.boolean().default(false),
  })
  .meta({ title: 'Evidence', description: 'Evidence as the reasoning takes it.' });

/** An examination of the record, in its newest version. */
export const examinationInput = examinationBody.meta({
  title: 'Examination',
  description: `The body of an examination entry, version ${examination.version}. One of an older version is read too.`,
});

/** What was read, and as what. */
export type Read =
  | { readonly as: 'examination'; readonly examination: z.infer<typeof examinationInput> }
  | { readonly as: 'evidence'; readonly evidence: Evidence };

/**
 * An examination of the record or evidence, told apart by `observedAt`, which every examination has and no evidence.
 *
 * @throws RangeError naming each field, what is allowed there and what was given
 */
export function readInput(given: unknown): Read {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    throw new RangeError(`give one object, an examination or evidence, not ${shown(given)}`);
  }
  if (!('observedAt' in given)) {
    const evidence = checked('evidence', evidenceInput, given);
    checkEvidence(evidence);
    return { as: 'evidence', evidence };
  }
  // A body does not carry its version. Version 1 had no tests; the named step that lifts it adds them.
  const lifted = 'tests' in given ? given : examination.steps.reduce((body: unknown, step) => step.lift(body), given);
  return { as: 'examination', examination: checked('examination', examinationInput, lifted) };
}

function checked<T>(what: string, schema: z.ZodType<T>, given: unknown): T {
  const read = schema.safeParse(given);
  if (read.success) return read.data;
  const told = read.error.issues.map((issue) => {
    const where = issue.path.reduce<string>(
      (path, key) => (typeof key === 'number' ? `${path}[${key}]` : `${path}.${String(key)}`),
      what,
    );
    const found = issue.path.reduce<unknown>(
      (at, key) => (at as Record<PropertyKey, unknown> | undefined)?.[key],
      given,
    );
    return `${where}: ${issue.message}, but was ${shown(found)}`;
  });
  throw new RangeError(told.join('\n'));
}

function shown(value: unknown): string {
  const text = value === undefined ? 'left out' : JSON.stringify(value);
  return text.length > 120 ? `${text.slice(0, 120)}…` : text;
}
