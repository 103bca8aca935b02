import type { WholeAssessment } from '@combside/science/diagnosis/assess';
import { z } from 'zod';

const between = z.tuple([z.number(), z.number()]);
const interval = z
  .strictObject({ low: z.number(), high: z.number(), lowBetween: between, highBetween: between })
  .describe('90 of 100 draws fall into it. The two further pairs tell where each end itself may lie (95 %).');
const estimate = z.strictObject({ point: z.number(), interval });
const sentence = z
  .strictObject({
    id: z.string(),
    values: z.record(z.string(), z.union([z.string(), z.number(), z.strictObject({ word: z.string() })])),
  })
  .describe('A sentence by the id of its message and what is put into it.');
const sources = z.array(z.string()).describe('Keys of the bibliography.');
const sourced = z.looseObject({
  value: z.number(),
  unit: z.string(),
  standing: z.string().describe('`published`, `expert band`, `arithmetic`, `setting`, ...'),
  sources,
});
const said = z.strictObject({ id: z.string(), sentence });

const check = z.strictObject({
  check: z.string(),
  place: z.enum(['hive', 'laboratory']),
  lossAvoided: z.number(),
  cost: z.number().describe('Minutes at the hive, days in the laboratory.'),
  lossAvoidedPerMinute: z.number().nullable(),
  doubtRemoved: z.number().describe('Bits.'),
  chancePositive: z.number(),
  how: sentence,
  sources,
});

/** The whole assessment as JSON. The test beside holds it to what the reasoning returns. */
const assessment = z.strictObject({
  version: z.int(),
  jointStates: z.int(),
  states: z.array(said),
  line: sentence,
  diseases: z
    .array(
      z.strictObject({
        disease: z.string(),
        point: z.number(),
        interval,
        prior: z.number(),
        priorBetween: between,
        priorSteps: z.array(
          z.strictObject({ id: z.string(), value: sourced, about: z.string().optional(), concernsOthers: z.boolean() }),
        ),
        inWords: z.string(),
        stages: z.strictObject({ early: estimate, advanced: estimate }).optional(),
      }),
    )
    .describe('Greatest posterior first.'),
  none: estimate,
  notifiable: z.strictObject({ diseases: z.array(z.string()), point: z.number(), interval }),
  convergence: z.strictObject({ draws: z.int(), seed: z.int(), widestEnd: z.number() }),
  reasons: z.strictObject({
    leading: z.string(),
    rival: z.string(),
    reasons: z.array(
      z.strictObject({
        node: z.string(),
        outcome: z.enum(['seen', 'not seen', 'positive', 'negative']),
        forLeading: z.number().describe('Shift of the log-odds of the leading condition, natural logarithm.'),
        forRival: z.number(),
        direction: z.enum(['for', 'against', 'neither']),
        strength: z.string(),
        sentence,
        sources,
        expertBand: z.boolean(),
      }),
    ),
    silent: z.array(z.strictObject({ node: z.string(), why: z.string(), sentence })),
  }),
  next: z.strictObject({
    first: z.array(z.strictObject({ step: z.string(), sentence })),
    atHive: z.array(check),
    inLaboratory: z.array(check),
    notPossible: z.array(z.strictObject({ check: z.string(), why: z.string(), sentence })),
  }),
  notLookedFor: z.array(z.string()),
  couldHaveMissed: z.strictObject({
    rows: z.array(z.strictObject({ cells: z.int(), chance: z.number(), low: z.number(), high: z.number() })),
    tooLittleBrood: z.boolean(),
    limits: z.array(z.string()),
    sentence,
  }),
  timeSinceOnset: z
    .strictObject({
      atLeastDays: z.number(),
      atLeastBetween: z.tuple([z.number(), z.number()]),
      atMostDays: z.null().describe('Always open.'),
      basis: z.array(z.string()),
      oftenMonths: z.boolean(),
      sentence,
      sources,
    })
    .nullable(),
  severity: z
    .strictObject({
      frames: z.array(z.strictObject({ frame: z.string(), cellsAffected: z.int(), score: z.int().min(0).max(3) })),
      sum: z.int(),
      mean: z.number(),
    })
    .nullable(),
  cautions: z.array(said),
  advice: z.array(z.strictObject({ id: z.string(), sentence, sources })),
  standing: z.strictObject({ expertBands: z.int(), published: z.int() }),
});

/** What `combside diagnose --json` prints. */
export const diagnosis = z
  .strictObject({
    readAs: z.enum(['examination', 'evidence']),
    pack: z.strictObject({ id: z.string(), version: z.string(), invented: z.boolean() }),
    result: z
      .string()
      .nullable()
      .describe('The word of the result, by acts and rules, never by a probability; null for evidence.'),
    suspicionRule: z
      .strictObject({ id: z.string(), condition: z.string(), article: z.string() })
      .nullable()
      .describe('The rule of the pack that makes a suspicion of this, if one does.'),
    setAside: z.array(z.string()).describe('Words written by a newer version, not weighed.'),
    assessment,
  })
  .meta({ title: 'Diagnosis', description: 'What the reasoning says.' });

export type Diagnosis = Omit<z.infer<typeof diagnosis>, 'assessment'> & { readonly assessment: WholeAssessment };
