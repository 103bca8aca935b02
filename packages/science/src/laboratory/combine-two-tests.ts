import { calculation, shown } from '../distributions/calculation.ts';
import { acceptFinite, acceptFraction, acceptList, acceptWord, DomainError } from '../distributions/domain.ts';

/**
 * How sensitive and specific are two tests together?
 *
 *   series (positive only when both are):   Se1 Se2 + cSe,  1 - (1-Sp1)(1-Sp2) - cSp
 *   parallel (positive when either is):     1 - (1-Se1)(1-Se2) - cSe,  Sp1 Sp2 + cSp
 *
 * The covariances say how far the tests err together; 0 is independence. A ropy larva and a dark sunken capping are not
 * independent signs: reading them so makes the answer far too sure.
 * Worked: Se 0.784 and 0.926, Sp 0.951 and 0.979, cSe 0.035, cSp -0.001, parallel: 0.949 and 0.930.
 *
 * @param inputs.sensitivities [Se1, Se2], fractions 0 to 1
 * @param inputs.specificities [Sp1, Sp2], fractions 0 to 1
 * @param inputs.covarianceInfected cSe; from -min((1-Se1)(1-Se2), Se1 Se2) to min(Se1(1-Se2), Se2(1-Se1))
 * @param inputs.covarianceUninfected cSp; the same range with Sp
 * @param inputs.reading "series" or "parallel"
 * @throws DomainError on inputs outside these ranges
 * Source: Gardner et al. 2000 [GARDNER00]; Dohoo, Martin and Stryhn 2003 [DOHOO03]
 */
export function combineTwoTests(inputs: {
  sensitivities: readonly number[];
  specificities: readonly number[];
  covarianceInfected: number;
  covarianceUninfected: number;
  reading: 'series' | 'parallel';
}): { sensitivity: number; specificity: number } {
  const [se1, se2] = acceptList('sensitivities', inputs.sensitivities, acceptFraction, 2) as [number, number];
  const [sp1, sp2] = acceptList('specificities', inputs.specificities, acceptFraction, 2) as [number, number];
  const cSe = acceptCovariance('covarianceInfected', inputs.covarianceInfected, se1, se2);
  const cSp = acceptCovariance('covarianceUninfected', inputs.covarianceUninfected, sp1, sp2);
  if (acceptWord('reading', inputs.reading, ['series', 'parallel']) === 'series') {
    return { sensitivity: se1 * se2 + cSe, specificity: 1 - (1 - sp1) * (1 - sp2) - cSp };
  }
  return { sensitivity: 1 - (1 - se1) * (1 - se2) - cSe, specificity: sp1 * sp2 + cSp };
}

export const combineTwoTestsCalculation = calculation({
  name: 'combineTwoTests',
  room: 'laboratory',
  line: 'two tests in series or in parallel, with dependence',
  inputs: {
    sensitivities: '[Se1, Se2]',
    specificities: '[Sp1, Sp2]',
    covarianceInfected: 'between the tests in infected units, 0 for independence',
    covarianceUninfected: 'between the tests in uninfected units',
    reading: '"series" (positive when both are) or "parallel" (when either is)',
  },
  formula: 'series Se1 Se2 + cSe, 1 - (1-Sp1)(1-Sp2) - cSp; parallel 1 - (1-Se1)(1-Se2) - cSe, Sp1 Sp2 + cSp',
  sources: ['GARDNER00', 'DOHOO03'],
  call: combineTwoTests,
  steps: (i, r) => [
    `${i.reading}, covariances ${shown(i.covarianceInfected)} and ${shown(i.covarianceUninfected)}`,
    `sensitivity ${shown(r.sensitivity)}, specificity ${shown(r.specificity)}`,
  ],
});

function acceptCovariance(field: string, given: unknown, first: number, second: number): number {
  const covariance = acceptFinite(field, given);
  const lowest = -Math.min((1 - first) * (1 - second), first * second);
  const highest = Math.min(first * (1 - second), second * (1 - first));
  if (covariance < lowest - 1e-12 || covariance > highest + 1e-12) {
    throw new DomainError(field, `from ${lowest.toPrecision(4)} to ${highest.toPrecision(4)} for these tests`, given);
  }
  return covariance;
}
