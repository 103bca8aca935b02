import type { SourcedValue } from '@combside/sources/sourced-value';
import { calculation, shown } from '../distributions/calculation.ts';
import { acceptCount, acceptFields, acceptList, acceptWord, DomainError } from '../distributions/domain.ts';
import type { CautionId } from './cautions.ts';

/** An agent a jurisdiction's pack permits for killing a colony, with the article that does. */
export interface PermittedAgent {
  agent: string;
  article: string;
}

/** Agents with a published dose. Whether one may be used is for the pack to say, and never for this list. */
export const agentsWithDose = ['petrol'] as const;

/** Petrol for killing a closed hive, by the guidance of New Zealand's plan agency. */
export const petrolForKilling = {
  millilitresOneOrTwoStoreys: { value: 500, unit: 'ml per hive', standing: 'published', sources: ['NZ-KILL'] },
  millilitresThreeOrFourStoreys: {
    value: 1000,
    unit: 'ml per hive, about',
    standing: 'published',
    sources: ['NZ-KILL'],
  },
  minutesClosed: { value: 12.5, low: 10, high: 15, unit: 'minutes', standing: 'published', sources: ['NZ-KILL'] },
} as const satisfies Record<string, SourcedValue>;

/** What kills the colonies before anything is burned or treated, after the cautions. */
export interface KillingDose {
  readonly cautions: readonly CautionId[];
  readonly agent: string;
  /** The article by which the pack permits it. */
  readonly permittedBy: string;
  readonly millilitresPerHive: number;
  readonly litres: number;
  readonly leastMinutesClosed: number;
  readonly mostMinutesClosed: number;
}

/**
 * How much of a killing agent do these hives need, where the pack permits it?
 *
 *   litres = hives * ml per hive / 1000; 500 ml for 1 or 2 storeys, about 1,000 ml for 3 or 4; closed 10 to 15 minutes
 *
 * Only an agent the jurisdiction's pack permits is answered for. Petrol kills by vapour in a closed hive: it is poured,
 * the hive closed, and nothing lit; it is never a fuel (`fuelForBurning` refuses it). Bees petrolled in rain have revived:
 * check that they are dead.
 *
 * @param inputs.agent one of `agentsWithDose`
 * @param inputs.permittedByPack what the pack permits, each with its article; an empty list permits nothing
 * @param inputs.hives whole, 1 or more; `storeys` whole, 1 to 4
 * @throws DomainError when the pack does not permit the agent, no dose is published, or inputs are outside these ranges
 * Source: NZ-KILL
 */
export function killingDose(inputs: {
  agent: (typeof agentsWithDose)[number];
  permittedByPack: readonly PermittedAgent[];
  hives: number;
  storeys: number;
}): KillingDose {
  const permitted: readonly PermittedAgent[] =
    Array.isArray(inputs.permittedByPack) && inputs.permittedByPack.length === 0
      ? []
      : acceptList('permittedByPack', inputs.permittedByPack, (name, value) => {
          const one = acceptFields(name, value);
          if (typeof one.agent !== 'string' || typeof one.article !== 'string' || one.article.trim() === '') {
            throw new DomainError(name, 'an agent with the article that permits it', value);
          }
          return { agent: one.agent, article: one.article };
        });
  const permit = permitted.find((one) => one.agent === inputs.agent);
  if (!permit)
    throw new DomainError('agent', "permitted by the jurisdiction's pack, and this one is not", inputs.agent);
  const agent = acceptWord('agent', inputs.agent, agentsWithDose);
  const hives = acceptCount('hives', inputs.hives, 1);
  const storeys = acceptCount('storeys', inputs.storeys, 1, 4, 'no published dose beyond');
  const { millilitresOneOrTwoStoreys, millilitresThreeOrFourStoreys, minutesClosed } = petrolForKilling;
  const millilitresPerHive = (storeys <= 2 ? millilitresOneOrTwoStoreys : millilitresThreeOrFourStoreys).value;
  return {
    cautions: [
      'permit and local law decide',
      'only what the label allows',
      'wait, do not light',
      'no petrol on a fire',
      'check that they are dead',
      'two people, water at hand',
    ],
    agent,
    permittedBy: permit.article,
    millilitresPerHive,
    litres: (hives * millilitresPerHive) / 1000,
    leastMinutesClosed: minutesClosed.low,
    mostMinutesClosed: minutesClosed.high,
  };
}

export const killingDoseCalculation = calculation({
  name: 'killingDose',
  room: 'disposal',
  line: "killing agent, only where the jurisdiction's pack permits it",
  inputs: {
    agent: '"petrol"',
    permittedByPack: 'list of {agent, article} the pack permits; empty permits nothing',
    hives: 'whole',
    storeys: 'whole, 1 to 4',
  },
  formula: '500 ml for 1 or 2 storeys, about 1,000 ml for 3 or 4; closed 10 to 15 minutes',
  sources: ['NZ-KILL'],
  call: killingDose,
  steps: (i, r) => [
    `permitted by ${r.permittedBy}`,
    `${i.hives} hives * ${r.millilitresPerHive} ml = ${shown(r.litres)} l, closed ${r.leastMinutesClosed} to ${r.mostMinutesClosed} minutes`,
  ],
});
