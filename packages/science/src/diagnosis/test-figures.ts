import type { SourcedValue } from '@combside/sources/sourced-value';
import { band } from '../signs/levels.ts';

/** A share with the counts it came from, where they were printed or can be rebuilt from the printed percentages. */
export interface Rate {
  readonly value: SourcedValue;
  /** Positive among tested; draws then follow the Jeffreys posterior Beta(x + 1/2, n - x + 1/2). */
  readonly counts?: { readonly positive: number; readonly of: number };
}

/** Whether spores must be expected in the colony anyway, disease or not. */
export type Exposure = 'none known' | 'apiary affected' | 'operation affected' | 'not known';

/** What one test is, how good it is, and what it costs. */
export interface TestFigure {
  readonly target: 'american-foulbrood' | 'european-foulbrood';
  readonly place: 'hive' | 'laboratory';
  /** What it needs: it can only be done when that is there. */
  readonly material: 'diseased cell' | 'scale or smear' | 'bees' | 'honey' | 'debris';
  /** Chance of a positive result in a colony with signs of the disease. */
  readonly sensitivity: Rate;
  /** Chance of a positive result without the disease, by what is known of spores around. */
  readonly falsePositive: Readonly<Record<Exposure, Rate>>;
  /** True when the sensitivity was published with its sample; screens say "no published figure" otherwise. */
  readonly published: boolean;
  /** Minutes at the hive, or days until a laboratory answers: a setting with a default. */
  readonly cost: SourcedValue;
}

/**
 * A published share. Where all or none were positive the share is moved off the end by half a count (Jeffreys), since
 * no probability is 0 or 1.
 */
function counted(positive: number, of: number, about: Partial<SourcedValue>): Rate {
  const atEnd = positive === 0 || positive === of;
  return {
    value: {
      value: atEnd ? (positive + 0.5) / (of + 1) : positive / of,
      unit: 'probability',
      standing: 'published',
      sources: [],
      sampleSize: of,
      ...about,
    },
    counts: { positive, of },
  };
}

const guessed = (low: number, high: number, doubts: string, sources: SourcedValue['sources'] = []): Rate => ({
  value: band(low, high, { doubts, sources }),
});

const everywhere = (rate: Rate): Readonly<Record<Exposure, Rate>> => ({
  'none known': rate,
  'apiary affected': rate,
  'operation affected': rate,
  'not known': rate,
});

const minutes = (value: number, doubts: string, sources: SourcedValue['sources'] = []): SourcedValue => ({
  value,
  unit: 'minutes',
  standing: 'setting',
  sources,
  doubts,
});
const days = (value: number, doubts: string, sources: SourcedValue['sources'] = []): SourcedValue => ({
  value,
  unit: 'days',
  standing: 'setting',
  sources,
  doubts,
});

const none = 'No published figure found.';

const cultureOfBeesWithoutDisease: Readonly<Record<Exposure, Rate>> = {
  'none known': counted(2, 56, {
    sources: ['HK89'],
    population: 'hives of apiaries without American foulbrood, Australia',
    doubts: 'Printed as 3.8 %; the counts give 3.6 %.',
  }),
  'apiary affected': counted(12, 46, {
    sources: ['HK89'],
    population: 'normal-looking hives in apiaries with American foulbrood, Australia',
  }),
  'operation affected': {
    value: {
      value: 0.82,
      low: 0.72,
      high: 0.89,
      unit: 'probability',
      standing: 'published',
      sources: ['LF05'],
      population: 'colonies without signs in affected operations, brood-chamber bees; 77 % for bees from supers',
      sampleSize: 73,
    },
    counts: { positive: 60, of: 73 },
  },
  'not known': guessed(0.03, 0.8, 'Between the published ends of 2/56 and 82 %.', ['HK89', 'LF05']),
};

/** Every test whose result may be recorded. */
export const testFigures = {
  'holst-milk': {
    target: 'american-foulbrood',
    place: 'hive',
    material: 'scale or smear',
    sensitivity: guessed(0.5, 0.95, `${none} Called not totally reliable.`, ['HOLST']),
    falsePositive: everywhere(guessed(0.01, 0.15, none, ['HOLST'])),
    published: false,
    cost: minutes(25, 'Clears in 10-20 minutes at 37 degrees, and the warmth must be at hand.', ['HOLST']),
  },
  'lateral-flow-afb': {
    target: 'american-foulbrood',
    place: 'hive',
    material: 'diseased cell',
    sensitivity: guessed(
      0.6,
      0.97,
      'No validation figure found for the older kits; a newer one is called "high" without figures in its abstract.',
      ['EXT-KIT', 'LFD26'],
    ),
    falsePositive: everywhere(guessed(0.002, 0.05, none, ['EXT-KIT'])),
    published: false,
    cost: minutes(8, 'Shake, drop and about 3 minutes to the control line.', ['EXT-KIT']),
  },
  'lamp-afb': {
    target: 'american-foulbrood',
    place: 'hive',
    material: 'diseased cell',
    sensitivity: counted(62, 63, {
      value: 0.9841,
      sources: ['LAMP23'],
      doubts: 'Printed as 98.41 %; the sample is not in the abstract, 62 of 63 fits.',
    }),
    falsePositive: everywhere({
      value: {
        value: 0.01,
        low: 0.001,
        high: 0.05,
        unit: 'probability',
        standing: 'expert band',
        sources: ['LAMP23'],
        doubts: 'Printed specificity 100 %, not taken literally: 99 % is used.',
      },
    }),
    published: true,
    cost: minutes(60, 'Our estimate of incubation and handling.'),
  },
  'microscopy-brood-afb': {
    target: 'american-foulbrood',
    place: 'laboratory',
    material: 'diseased cell',
    sensitivity: guessed(0.7, 0.98, none),
    falsePositive: everywhere(guessed(0.005, 0.05, none)),
    published: false,
    cost: days(3, 'One working day at one reference laboratory, and the post.', ['USDA-92']),
  },
  'culture-brood-afb': {
    target: 'american-foulbrood',
    place: 'laboratory',
    material: 'diseased cell',
    sensitivity: guessed(0.85, 0.99, none, ['FOR14']),
    falsePositive: everywhere(guessed(0.001, 0.02, none)),
    published: false,
    cost: days(7, 'Three days of incubation, and the post.', ['NZ-LAB']),
  },
  'pcr-brood-afb': {
    target: 'american-foulbrood',
    place: 'laboratory',
    material: 'diseased cell',
    sensitivity: guessed(0.9, 0.99, none),
    falsePositive: everywhere(guessed(0.002, 0.03, none)),
    published: false,
    cost: days(4, 'Analysis of two hours, and the post.', ['QPCR10']),
  },
  'culture-bees-afb': {
    target: 'american-foulbrood',
    place: 'laboratory',
    material: 'bees',
    sensitivity: counted(21, 21, {
      sources: ['LF05'],
      population: 'colonies with clinical signs, more than 100 adult bees each',
    }),
    falsePositive: cultureOfBeesWithoutDisease,
    published: true,
    cost: days(7, 'Three days of incubation, and the post.', ['NZ-LAB']),
  },
  'culture-honey-afb': {
    target: 'american-foulbrood',
    place: 'laboratory',
    material: 'honey',
    sensitivity: guessed(0.3, 0.9, none, ['NZ-WHAT']),
    falsePositive: everywhere({
      value: {
        value: 29 / 292,
        unit: 'probability',
        standing: 'arithmetic',
        sources: ['HOR-HON'],
        sampleSize: 292,
        doubts: 'Bulk honey by beekeeper: (12 + 17) of 315 - 23; not the honey of one colony.',
      },
      counts: { positive: 29, of: 292 },
    }),
    published: false,
    cost: days(7, 'Three days of incubation, and the post.', ['NZ-LAB']),
  },
  'culture-debris-afb': {
    target: 'american-foulbrood',
    place: 'laboratory',
    material: 'debris',
    sensitivity: guessed(0.4, 0.9, none, ['EBE23', 'FOR14']),
    falsePositive: {
      ...everywhere(guessed(0.02, 0.2, none, ['FOR14'])),
      'operation affected': guessed(0.3, 0.85, none, ['LF05']),
      'not known': guessed(0.02, 0.7, none),
    },
    published: false,
    cost: days(7, 'Three days of incubation, and the post.', ['NZ-LAB']),
  },
  'lateral-flow-efb': {
    target: 'european-foulbrood',
    place: 'hive',
    material: 'diseased cell',
    sensitivity: {
      value: {
        value: 0.96,
        low: 0.806,
        high: 0.99,
        unit: 'probability',
        standing: 'published',
        sources: ['TOM09', 'LFD21'],
        sampleSize: 184,
        population: 'field samples, United Kingdom; the lower end is the United States trial (68 of 76)',
      },
    },
    falsePositive: everywhere({
      value: {
        value: 0.01,
        low: 0.002,
        high: 0.03,
        unit: 'probability',
        standing: 'published',
        sources: ['TOM09'],
        doubts: 'About 1 %; how many samples were without disease is not in the abstract.',
      },
    }),
    published: true,
    cost: minutes(8, 'Shake, drop and about 3 minutes to the control line.', ['EXT-KIT']),
  },
  'microscopy-brood-efb': {
    target: 'european-foulbrood',
    place: 'laboratory',
    material: 'diseased cell',
    sensitivity: counted(75, 77, {
      sources: ['LFD21'],
      doubts: 'Printed as 97.40 %; 75 of 77 rebuilt from the percentage.',
    }),
    falsePositive: everywhere(guessed(0.01, 0.1, none)),
    published: true,
    cost: days(3, 'One working day at one reference laboratory, and the post.', ['USDA-92']),
  },
  'qpcr-bees-efb': {
    target: 'european-foulbrood',
    place: 'laboratory',
    material: 'bees',
    sensitivity: {
      value: {
        value: 0.935,
        low: 0.84,
        high: 0.98,
        unit: 'probability',
        standing: 'published',
        sources: ['EFB-RT'],
        sampleSize: 88,
        population: 'brood-nest bees against visual inspection, apiaries',
        doubts: 'The ends are ours: the counts are not in the abstract.',
      },
    },
    falsePositive: everywhere({
      value: {
        value: 0.414,
        low: 0.3,
        high: 0.54,
        unit: 'probability',
        standing: 'published',
        sources: ['EFB-RT'],
        sampleSize: 88,
        doubts: 'The ends are ours: the counts are not in the abstract.',
      },
    }),
    published: true,
    cost: days(4, 'Analysis of two hours, and the post.', ['QPCR10']),
  },
  'pcr-bees-efb': {
    target: 'european-foulbrood',
    place: 'laboratory',
    material: 'bees',
    sensitivity: counted(16, 16, { sources: ['EFB-DEB'], doubts: 'Counts rebuilt from the percentages.' }),
    falsePositive: everywhere(counted(3, 18, { sources: ['EFB-DEB'], doubts: 'Counts rebuilt from the percentages.' })),
    published: true,
    cost: days(4, 'Analysis of two hours, and the post.', ['QPCR10']),
  },
  'pcr-honey-efb': {
    target: 'european-foulbrood',
    place: 'laboratory',
    material: 'honey',
    sensitivity: counted(13, 15, { sources: ['EFB-DEB'], doubts: 'Counts rebuilt from the percentages.' }),
    falsePositive: everywhere(counted(3, 19, { sources: ['EFB-DEB'], doubts: 'Counts rebuilt from the percentages.' })),
    published: true,
    cost: days(4, 'Analysis of two hours, and the post.', ['QPCR10']),
  },
  'pcr-debris-efb': {
    target: 'european-foulbrood',
    place: 'laboratory',
    material: 'debris',
    sensitivity: counted(15, 21, { sources: ['EFB-DEB'], doubts: 'Counts rebuilt from the percentages.' }),
    falsePositive: everywhere(counted(3, 15, { sources: ['EFB-DEB'], doubts: 'Counts rebuilt from the percentages.' })),
    published: true,
    cost: days(4, 'Analysis of two hours, and the post.', ['QPCR10']),
  },
} as const satisfies Record<string, TestFigure>;

export type TestId = keyof typeof testFigures;

/** Every test, in the order of the table. */
export const testIds = Object.keys(testFigures) as TestId[];

/** One test's figures. */
export function figureOf(test: TestId): TestFigure {
  return testFigures[test];
}

/**
 * How much a positive and a negative result move the odds.
 *
 * @param sensitivity chance of a positive with the disease, in (0, 1]
 * @param falsePositive chance of a positive without it, in (0, 1)
 * @throws RangeError when a chance is out of range
 */
export function likelihoodRatios(sensitivity: number, falsePositive: number): { positive: number; negative: number } {
  if (!(sensitivity > 0 && sensitivity <= 1)) throw new RangeError(`sensitivity ${sensitivity} must lie in (0, 1]`);
  if (!(falsePositive > 0 && falsePositive < 1)) {
    throw new RangeError(`false-positive chance ${falsePositive} must lie in (0, 1)`);
  }
  return { positive: sensitivity / falsePositive, negative: (1 - sensitivity) / (1 - falsePositive) };
}

/**
 * What a positive and a negative result are worth at a given prevalence.
 *
 * @param prevalence in (0, 1)
 * @throws RangeError when a chance is out of range
 */
export function predictiveValues(
  prevalence: number,
  sensitivity: number,
  falsePositive: number,
): { positive: number; negative: number } {
  if (!(prevalence > 0 && prevalence < 1)) throw new RangeError(`prevalence ${prevalence} must lie in (0, 1)`);
  likelihoodRatios(sensitivity, falsePositive);
  const truePositive = prevalence * sensitivity;
  const trueNegative = (1 - prevalence) * (1 - falsePositive);
  return {
    positive: truePositive / (truePositive + (1 - prevalence) * falsePositive),
    negative: trueNegative / (trueNegative + prevalence * (1 - sensitivity)),
  };
}
