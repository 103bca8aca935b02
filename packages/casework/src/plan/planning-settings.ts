import type { SourcedValue } from '@combside/sources/sourced-value';

/** Why an apiary is worth a visit, in the order in which the reasons are shown. */
export const visitGrounds = [
  'suspicion reported',
  'case nearby',
  'owner link',
  'trade',
  'request',
  'time since last visit',
  'unconfirmed site',
] as const;
export type VisitGround = (typeof visitGrounds)[number];

/** How planning weighs and measures. An agency sets its own. */
export interface PlanningSettings {
  /** Points that each ground adds where it holds in full. Nobody published such weights. */
  readonly weights: Readonly<Record<VisitGround, SourcedValue>>;
  /** A case nearer than this counts; at this distance it counts nothing, at the site itself in full. */
  readonly caseWithinMetres: SourcedValue;
  /** A suspicion stated longer ago than this is no case nearby any more. */
  readonly caseWithinDays: SourcedValue;
  /** Movements so long before a suspicion, or since, link the two apiaries. */
  readonly tradeWithinDays: SourcedValue;
  /** After so long without a visit that ground holds in full. */
  readonly visitWithinDays: SourcedValue;
  /** A site whose place was not confirmed for so long is unconfirmed. */
  readonly confirmedWithinDays: SourcedValue;
  /** The chance that the look finds a diseased colony when it is opened and every brood frame is seen. */
  readonly lookSensitivity: SourcedValue;
  /** From one arrival to the next when a round is laid out. */
  readonly minutesBetweenVisits: SourcedValue;
}

const weight = (value: number): SourcedValue => ({ value, unit: 'points', standing: 'setting', sources: [] });

export const usualPlanning: PlanningSettings = {
  weights: {
    'suspicion reported': weight(40),
    'case nearby': weight(30),
    'owner link': weight(30),
    trade: weight(30),
    request: weight(15),
    'time since last visit': weight(20),
    'unconfirmed site': weight(5),
  },
  caseWithinMetres: {
    value: 6437,
    unit: 'm',
    standing: 'published',
    sources: ['OH-RULE'],
    doubts: 'printed as 4 miles, in a rule that was replaced later; clusters of cases spanned 10 to 30 km [MILL14]',
  },
  caseWithinDays: {
    value: 1826,
    low: 365,
    high: 1826,
    unit: 'days',
    standing: 'published',
    sources: ['MILL14'],
    doubts: 'clusters lasted 1 to 5 years; the longer end is taken',
  },
  tradeWithinDays: {
    value: 365,
    unit: 'days',
    standing: 'setting',
    sources: [],
    doubts: 'Common practice, no source: none for foulbrood was found',
  },
  visitWithinDays: {
    value: 730,
    unit: 'days',
    standing: 'published',
    sources: ['OH-RULE'],
    doubts: 'each site at least every two years, in a rule that was replaced later',
  },
  confirmedWithinDays: { value: 730, unit: 'days', standing: 'setting', sources: [] },
  lookSensitivity: {
    value: 0.8,
    unit: 'probability',
    standing: 'setting',
    sources: [],
    doubts: 'no field sensitivity of an inspector’s look for American foulbrood has been published',
  },
  minutesBetweenVisits: {
    value: 150,
    unit: 'minutes',
    standing: 'setting',
    sources: [],
    doubts: 'one inspector aims at three apiaries a day, up to 20 colonies each (an inspector’s blog, June 2024)',
  },
};

/**
 * The usual settings with other weights and another sensitivity.
 *
 * @param weights points in the order of `visitGrounds`; a missing one stays as it is
 * @param lookSensitivity 0 to 1
 */
export function planningWith(weights: readonly number[], lookSensitivity: number | undefined): PlanningSettings {
  const own = (ground: VisitGround, place: number): SourcedValue =>
    weight(weights[place] ?? usualPlanning.weights[ground].value);
  return {
    ...usualPlanning,
    weights: Object.fromEntries(
      visitGrounds.map((ground, place) => [ground, own(ground, place)]),
    ) as PlanningSettings['weights'],
    lookSensitivity: {
      ...usualPlanning.lookSensitivity,
      value: lookSensitivity ?? usualPlanning.lookSensitivity.value,
    },
  };
}
