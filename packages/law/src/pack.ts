import { isDay } from '@combside/calendar/day';
import { z } from 'zod';

/** What a fact can be. A pack's rules start, meet and end duties by these words. */
export const factKinds = [
  'suspicion',
  'suspicion lifted',
  'confirmed',
  'notifiable find',
  'notified',
  'specimen sent',
  'result negative',
  'other cause found',
  'masked look',
  'standstill notice served',
  'destroyed',
  'treated',
  'look without signs',
  'all colonies looked at',
  'zone searched',
  'disinfection accepted',
  'released',
] as const;
export type FactKind = (typeof factKinds)[number];

const factKind = z.enum(factKinds);

/** The law's own word where it sets no number. */
export const promptnesses = [
  'at once',
  'without delay',
  'as soon as possible',
  'as the notice says',
  'until ended',
  'the law names no time',
] as const;

/** What kind of thing has to be done. */
export const dutyKinds = [
  'notify',
  'standstill',
  'specimen',
  'look again',
  'look at all colonies',
  'destroy',
  'serve notice',
  'search zone',
  'ask the authority',
] as const;
export type DutyKind = (typeof dutyKinds)[number];

/** Who owes it; the office's own titles are put in by its documents. */
export const owers = ['keeper', 'inspector', 'office', 'laboratory'] as const;

/**
 * How firmly a rule stands.
 * - `published`: the passage itself was seen
 * - `secondary`: seen only as quoted by somebody else
 * - `from memory`: not confirmed; never computed with, shown as "ask the authority"
 * - `invented`: made up for a demonstration
 */
export const ruleStandings = ['published', 'secondary', 'from memory', 'invented'] as const;

const span = z.strictObject({
  count: z.int().min(1).max(1000),
  unit: z.enum(['hours', 'days', 'weeks', 'months', 'years']),
});

/** Where a rule stands in its law. `source` is a key of the pack's own list of sources. */
const authority = {
  article: z.string().min(1).max(80),
  source: z.string().min(1).max(60),
  standing: z.enum(ruleStandings),
  /** What is doubtful about it, or what it leaves open; empty when nothing is. */
  doubts: z.string().max(400).default(''),
};

const id = z.string().regex(/^[a-z0-9-]+$/, 'expected small letters, digits and hyphens');

/** One rule: when this fact is written down, that is owed by then. */
export const rule = z.strictObject({
  id,
  /** The fact that starts the clock, and for which conditions or finds; empty for all notifiable ones. */
  when: z.strictObject({ fact: factKind, conditions: z.array(z.string().max(60)) }),
  duty: z.enum(dutyKinds),
  owedBy: z.enum(owers),
  /** One duty for each colony, or one for the whole apiary. */
  scope: z.enum(['colony', 'apiary']),
  /** Not earlier than so long after the start; null when the law names no earliest time. */
  notBefore: span.nullable(),
  /** Not later than so long after the start; null when the law sets no number. */
  within: span.nullable(),
  /** The law's own word where it sets no number. */
  promptness: z.enum(promptnesses).nullable(),
  /** Facts that meet the duty, and facts that end it without its being met. */
  metBy: z.array(factKind),
  endedBy: z.array(factKind),
  /** How often it has to be met; two looks without signs, for example. */
  times: z.int().min(1).max(10).default(1),
  /** Between two of them at least so long. */
  gap: span.nullable().default(null),
  /** Radius of a zone in kilometres, where the duty is one of a zone. */
  radiusKilometres: z.number().positive().nullable().default(null),
  ...authority,
});
export type Rule = z.infer<typeof rule>;

/** A suspicion that the pack itself makes from a named sign or test. No probability ever does. */
export const suspicionRule = z.strictObject({
  id,
  condition: z.string().min(1).max(60),
  on: z.discriminatedUnion('what', [
    z.strictObject({ what: z.literal('sign'), sign: z.string().min(1).max(60) }),
    z.strictObject({
      what: z.literal('rope test'),
      /** The thread at least so long when it broke. */
      millimetres: z.number().positive(),
    }),
    z.strictObject({ what: z.literal('test'), test: z.string().min(1).max(60) }),
  ]),
  ...authority,
});
export type SuspicionRule = z.infer<typeof suspicionRule>;

/** For how long "nothing seen" means nothing, after a medicine or a change of combs. */
const masking = z.strictObject({
  after: z.enum(['medicine', 'comb change']),
  conditions: z.array(z.string().max(60)),
  period: span,
  ...authority,
});

/** A jurisdiction's rules as data. Every rule names its article; every value must be confirmed by the authority. */
export const pack = z
  .strictObject({
    id,
    title: z.string().min(1).max(200),
    version: z.string().min(1).max(40),
    jurisdiction: z.string().min(1).max(120),
    /** True for a made-up place: every paper and screen says so. */
    invented: z.boolean(),
    /** What a reader has to know before using it. */
    notice: z.string().min(1).max(600),
    readOn: z.string().refine(isDay, 'expected a day such as 2026-05-04'),
    sources: z.record(z.string(), z.strictObject({ title: z.string().min(1), seenAt: z.string() })),
    notifiable: z.array(z.strictObject({ condition: z.string().min(1).max(60), ...authority })),
    notifiableFinds: z.array(z.strictObject({ find: z.string().min(1).max(60), ...authority })),
    suspicion: z.array(suspicionRule),
    masking: z.array(masking),
    rules: z.array(rule).min(1),
  })
  .superRefine((given, context) => {
    const used = [...given.notifiable, ...given.notifiableFinds, ...given.suspicion, ...given.masking, ...given.rules];
    for (const one of used) {
      if (!Object.hasOwn(given.sources, one.source)) {
        context.addIssue({
          code: 'custom',
          message: `source "${one.source}" (${one.article}) is not in the pack's list of sources`,
        });
      }
      if (one.standing === 'invented' && !given.invented) {
        context.addIssue({ code: 'custom', message: `${one.article} is invented, but the pack says that it is not` });
      }
    }
    const ids = [...given.rules, ...given.suspicion].map((one) => one.id);
    for (const repeated of ids.filter((one, index) => ids.indexOf(one) !== index)) {
      context.addIssue({ code: 'custom', message: `two rules are called "${repeated}"` });
    }
    for (const one of given.rules) {
      if (one.within === null && one.promptness === null) {
        context.addIssue({
          code: 'custom',
          message: `rule "${one.id}" says neither within what time nor with what promptness; unknown is said as "the law names no time"`,
        });
      }
    }
  });
export type Pack = z.infer<typeof pack>;

/**
 * Reads a pack.
 *
 * @param data the parsed JSON of `pack.json`
 * @throws RangeError naming each field that is wrong and what was expected there
 */
export function readPack(data: unknown): Pack {
  const read = pack.safeParse(data);
  if (read.success) return read.data;
  const lines = read.error.issues.map((issue) => `${issue.path.join('.') || 'pack'}: ${issue.message}`);
  throw new RangeError(`the pack cannot be read:\n  ${lines.join('\n  ')}`);
}

/** Whether this pack makes the condition notifiable. */
export function isNotifiable(of: Pack, condition: string): boolean {
  return of.notifiable.some((one) => one.condition === condition);
}
