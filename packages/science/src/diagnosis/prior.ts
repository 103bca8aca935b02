import type { SourcedValue } from '@combside/sources/sourced-value';
import type { Chance } from '../random/seeded.ts';
import { type DiseaseId, diseases } from '../signs/catalogue.ts';
import { band } from '../signs/levels.ts';
import { drawFactor, drawProbability } from './bands.ts';
import type { Circumstances, Evidence } from './evidence.ts';

/** Why a prior is what it is, one step at a time. */
export interface PriorStep {
  readonly id:
    | 'assumed'
    | 'district-count'
    | 'earlier-case-at-apiary'
    | 'contact-of-case'
    | 'honey-positive'
    | 'earlier-suspicion'
    | 'changed-by-hand';
  /** A probability for the first step and for a change by hand, else a factor on the odds. */
  readonly value: SourcedValue;
  readonly about?: string;
  /** True when it tells of other keepers: shown behind one tap, printed on no paper handed over. */
  readonly concernsOthers: boolean;
}

/** The prior of one disease. */
export interface DiseasePrior {
  readonly disease: DiseaseId;
  /** Point value with its ends, and how firmly it stands. */
  readonly value: SourcedValue;
  readonly steps: readonly PriorStep[];
  /** Where the first step is a count: what draws follow. */
  readonly counts?: { readonly confirmed: number; readonly examined: number };
}

export interface Prior {
  readonly diseases: readonly DiseasePrior[];
  /** Share of American foulbrood that is advanced when found. */
  readonly advancedShare: SourcedValue;
}

/** Assumed where nothing is known: expert bands, per colony examined. */
const assumed: Readonly<Record<DiseaseId, SourcedValue>> = {
  'american-foulbrood': band(0.002, 0.05),
  'european-foulbrood': band(0.005, 0.1),
  chalkbrood: band(0.02, 0.25),
  sacbrood: band(0.01, 0.15),
  'varroa-damage': band(0.02, 0.25),
  'chilled-or-starved': band(0.01, 0.12),
  stonebrood: band(0.0002, 0.004),
  'queen-failure': band(0.02, 0.12),
  'bald-brood': band(0.01, 0.12),
  'half-moon': band(0.001, 0.02),
};

const advancedShare = band(0.2, 0.6);

const odds = (low: number, high: number, about: Partial<SourcedValue> = {}): SourcedValue => ({
  value: Math.sqrt(low * high),
  low,
  high,
  unit: 'odds factor',
  standing: 'expert band',
  sources: [],
  ...about,
});

/** What each circumstance does to the odds of American foulbrood. */
export const circumstanceFactors = {
  'earlier-case-at-apiary': odds(5, 40),
  'contact-of-case': odds(3, 30),
  'honey-positive': {
    value: 2.64,
    unit: 'odds factor',
    standing: 'published',
    sources: ['BEL01'],
    sampleSize: 1328,
    population: 'honey samples; American foulbrood in the following year',
    doubts: 'No interval in the text seen; by apiary, not by colony.',
  },
  'earlier-suspicion': odds(5, 40, {
    sources: ['NZ-INF'],
    doubts: 'The source says that colonies lose their signs for a time and relapse; the factor is ours.',
  }),
  'earlier-confirmation': odds(20, 200, { sources: ['NZ-INF'] }),
} as const satisfies Record<string, SourcedValue>;

const toOdds = (p: number): number => p / (1 - p);
const toProbability = (o: number): number => o / (1 + o);

/** No prior comes nearer to an end than this: nothing is certain before the look. */
const edge = 1e-6;
const inside = (p: number): number => Math.min(1 - edge, Math.max(edge, p));

function firstStep(disease: DiseaseId, known: Circumstances): { step: PriorStep; counts?: DiseasePrior['counts'] } {
  const counted = known.district.filter((count) => count.disease === disease);
  if (counted.length === 0) {
    return { step: { id: 'assumed', value: assumed[disease], concernsOthers: false } };
  }
  const confirmed = counted.reduce((sum, count) => sum + count.confirmed, 0);
  const examined = counted.reduce((sum, count) => sum + count.examined, 0);
  // Jeffreys: half a case and half a colony without are added, so that no case so far is not "never". The ends are the
  // mean plus and minus 1.645 standard deviations on the log-odds scale (for the page; draws use the beta law itself).
  const point = (confirmed + 0.5) / (examined + 1);
  const spread = 1.645 * Math.sqrt(1 / (confirmed + 0.5) + 1 / (examined - confirmed + 0.5));
  return {
    step: {
      id: 'district-count',
      value: {
        value: point,
        low: toProbability(toOdds(point) * Math.exp(-spread)),
        high: toProbability(toOdds(point) * Math.exp(spread)),
        unit: 'probability',
        standing: 'arithmetic',
        sources: [],
        sampleSize: examined,
        population: counted.map((count) => count.about).join('; '),
      },
      about: counted.map((count) => count.about).join('; '),
      concernsOthers: true,
    },
    counts: { confirmed, examined },
  };
}

/**
 * The prior from what is known before the look: counts of the district where there are any, else our expert bands; for
 * American foulbrood then the circumstances as factors on the odds; last, what the inspector changed by hand.
 */
export function priorFrom(evidence: Pick<Evidence, 'circumstances' | 'earlier'>): Prior {
  const known = evidence.circumstances;
  return {
    advancedShare,
    diseases: diseases.map((disease): DiseasePrior => {
      const { step, counts } = firstStep(disease, known);
      const steps: PriorStep[] = [step];
      if (disease === 'american-foulbrood') {
        if (known.earlierCaseAtApiary) {
          steps.push({
            id: 'earlier-case-at-apiary',
            value: circumstanceFactors['earlier-case-at-apiary'],
            concernsOthers: false,
          });
        }
        if (known.contactOfCase) {
          steps.push({ id: 'contact-of-case', value: circumstanceFactors['contact-of-case'], concernsOthers: true });
        }
        if (known.honeyPositive) {
          steps.push({ id: 'honey-positive', value: circumstanceFactors['honey-positive'], concernsOthers: false });
        }
        const suspicions = evidence.earlier.filter((look) => look.suspect && look.answered !== 'negative');
        if (suspicions.length > 0) {
          const confirmed = suspicions.some((look) => look.answered === 'positive');
          steps.push({
            id: 'earlier-suspicion',
            value: circumstanceFactors[confirmed ? 'earlier-confirmation' : 'earlier-suspicion'],
            concernsOthers: false,
          });
        }
      }
      const change = known.priorChanges.findLast((one) => one.disease === disease);
      if (change) {
        const value: SourcedValue = {
          value: change.value,
          ...(change.low === undefined ? {} : { low: change.low }),
          ...(change.high === undefined ? {} : { high: change.high }),
          unit: 'probability',
          standing: 'setting',
          sources: [],
          doubts: change.reason,
        };
        return {
          disease,
          value,
          steps: [...steps, { id: 'changed-by-hand', value, about: change.reason, concernsOthers: false }],
        };
      }
      if (steps.length === 1) return { disease, value: step.value, steps, ...(counts ? { counts } : {}) };
      const combine = (pick: (value: SourcedValue) => number): number =>
        inside(
          toProbability(steps.slice(1).reduce((sofar, next) => sofar * pick(next.value), toOdds(pick(step.value)))),
        );
      return {
        disease,
        steps,
        ...(counts ? { counts } : {}),
        value: {
          value: combine((value) => value.value),
          low: combine((value) => value.low ?? value.value),
          high: combine((value) => value.high ?? value.value),
          unit: 'probability',
          standing: 'expert band',
          sources: steps.flatMap((one) => one.value.sources),
        },
      };
    }),
  };
}

/** Per variable, the probability of each level: absent first, American foulbrood early, then advanced. */
export type LevelWeights = readonly (readonly number[])[];

function weights(prior: Prior, probability: (one: DiseasePrior) => number, advanced: number): LevelWeights {
  return prior.diseases.map((one) => {
    const p = probability(one);
    if (one.disease !== 'american-foulbrood') return [1 - p, p];
    return [1 - p, p * (1 - advanced), p * advanced];
  });
}

/** The prior at its point values. */
export function pointWeights(prior: Prior): LevelWeights {
  return weights(prior, (one) => one.value.value, prior.advancedShare.value);
}

/** The prior drawn from its bands, and from the beta law where it was counted. */
export function drawnWeights(prior: Prior, chance: Chance): LevelWeights {
  const draw = (one: DiseasePrior): number => {
    const [first, ...factors] = one.steps;
    if (factors.at(-1)?.id === 'changed-by-hand') return drawProbability(one.value, chance);
    const start = one.counts
      ? chance.beta(one.counts.confirmed + 0.5, one.counts.examined - one.counts.confirmed + 0.5)
      : drawProbability((first as PriorStep).value, chance);
    return inside(
      toProbability(factors.reduce((sofar, step) => sofar * drawFactor(step.value, chance), toOdds(inside(start)))),
    );
  };
  // The share of advanced cases is drawn last, so that each disease keeps its draws whatever stands before it.
  const drawn = new Map(prior.diseases.map((one) => [one, draw(one)]));
  return weights(prior, (one) => drawn.get(one) as number, drawProbability(prior.advancedShare, chance));
}
