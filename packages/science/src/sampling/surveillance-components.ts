import { calculation, shown, shownList } from '../distributions/calculation.ts';
import { acceptCount, acceptFraction, acceptList, acceptPositiveFraction } from '../distributions/domain.ts';
import * as described from './inputs-described.ts';

/**
 * How sensitive are several surveillance components together, and what did the last one add?
 *
 *   1 - prod(1 - CSe_i)
 *
 * Only when the components are independent given infection. Components that visit the same hives are not, and this
 * number is then too high. Worked: 0.3 and 0.5: 0.65, the second adding 0.35.
 *
 * @param inputs.componentSensitivities CSe_i, fractions 0 to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]
 */
export function combineComponents(inputs: { componentSensitivities: readonly number[] }): {
  systemSensitivity: number;
  gainOfLast: number;
} {
  const components = acceptList('componentSensitivities', inputs.componentSensitivities, acceptFraction);
  const missBefore = components.slice(0, -1).reduce((miss, se) => miss * (1 - se), 1);
  const last = components[components.length - 1] ?? 0;
  return { systemSensitivity: 1 - missBefore * (1 - last), gainOfLast: missBefore * last };
}

export const combineComponentsCalculation = calculation({
  name: 'combineComponents',
  room: 'sampling',
  line: 'several independent surveillance components together',
  inputs: { componentSensitivities: 'list: sensitivity per component' },
  formula: '1 - prod(1 - CSe_i)',
  sources: ['MARTIN07'],
  call: combineComponents,
  steps: (i, r) => [
    `chances to miss ${shownList(i.componentSensitivities.map((se) => 1 - se))}, together ${shown(1 - r.systemSensitivity)}`,
    `together ${shown(r.systemSensitivity)}, the last adding ${shown(r.gainOfLast)}`,
  ],
});

/**
 * How sensitive is beekeepers' own reporting?
 *
 *   per apiary: product of the step probabilities times 1 - (1 - I Se)^n
 *   district:   1 - (1 - SeC)^(Pc N)
 *
 * The steps are what must happen in turn: the keeper notices, reports, a sample is taken, it arrives fit for test.
 * Worked: steps 0.1, 0.2, 0.9, 0.99, 5 units, I 0.98, Se 0.9, 1,000 apiaries, Pc 1 %: 0.0178 and 0.165.
 *
 * @param inputs.clusters N, number of apiaries, whole, 1 or more
 * @param inputs.unitsTested n, units tested per reporting apiary, whole, 1 or more
 * @param inputs.stepProbabilities fractions 0 to 1, in order
 * @param inputs.designPrevalenceClusters Pc, fraction above 0, up to 1
 * @param inputs.infectedIfSubmitted I, chance that a submitted unit is truly infected, fraction 0 to 1
 * @param inputs.sensitivity Se of the test, fraction 0 to 1
 * @throws DomainError on inputs outside these ranges
 * Source: Martin, Cameron and Greiner 2007 [MARTIN07]; epiR 2.0.57 manual [EPIR]
 */
export function reportingSensitivity(inputs: {
  clusters: number;
  unitsTested: number;
  stepProbabilities: readonly number[];
  designPrevalenceClusters: number;
  infectedIfSubmitted: number;
  sensitivity: number;
}): { clusterSensitivity: number; systemSensitivity: number } {
  const clusters = acceptCount('clusters', inputs.clusters, 1);
  const tested = acceptCount('unitsTested', inputs.unitsTested, 1);
  const steps = acceptList('stepProbabilities', inputs.stepProbabilities, acceptFraction);
  const prevalence = acceptPositiveFraction('designPrevalenceClusters', inputs.designPrevalenceClusters);
  const infected = acceptFraction('infectedIfSubmitted', inputs.infectedIfSubmitted);
  const sensitivity = acceptFraction('sensitivity', inputs.sensitivity);
  const reaches = steps.reduce((a, b) => a * b, 1);
  const clusterSensitivity = reaches * -Math.expm1(tested * Math.log1p(-infected * sensitivity));
  return {
    clusterSensitivity,
    systemSensitivity: -Math.expm1(prevalence * clusters * Math.log1p(-clusterSensitivity)),
  };
}

export const reportingSensitivityCalculation = calculation({
  name: 'reportingSensitivity',
  room: 'sampling',
  line: "sensitivity of beekeepers' own reporting",
  inputs: {
    clusters: 'apiaries N, whole',
    unitsTested: 'units tested per reporting apiary, whole, 1 or more',
    stepProbabilities: 'list: chance of each step from sign to test',
    designPrevalenceClusters: 'infected share of apiaries, above 0, up to 1',
    infectedIfSubmitted: 'chance that a submitted unit is infected',
    sensitivity: described.sensitivity,
  },
  formula: 'SeC = prod(steps)(1 - (1 - I Se)^n); 1 - (1 - SeC)^(Pc N)',
  sources: ['MARTIN07', 'EPIR'],
  call: reportingSensitivity,
  steps: (i, r) => [
    `all steps ${shown(i.stepProbabilities.reduce((a, b) => a * b, 1))}`,
    `per apiary ${shown(r.clusterSensitivity)}, district ${shown(r.systemSensitivity)}`,
  ],
});
