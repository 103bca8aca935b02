import { calculation, shown, shownList } from '../distributions/calculation.ts';
import { acceptFraction, acceptList, acceptShares, DomainError, isUnknown } from '../distributions/domain.ts';

/**
 * Which of several mutually exclusive diseases, given yes/no signs independent given the disease?
 *
 *   posterior_h is proportional to prior_h prod(L) over signs seen, times prod(1 - L) over signs looked for and absent
 *
 * A sign not looked at (null) is left out: "not looked for" is not "absent". This is the textbook form; the diagnosis
 * room's network, in which shared signs explain one another away, is what judges a comb.
 *
 * @param inputs.priors fractions adding up to 1, one per hypothesis
 * @param inputs.signProbabilities per hypothesis, the chance of each sign, fractions 0 to 1
 * @param inputs.findings per sign: true, false, or null when not looked at
 * @returns the posteriors, and the chance of the findings as a whole
 * @throws DomainError on inputs outside these ranges, and when the findings are impossible under every hypothesis
 * Source: Bayes' theorem, direct enumeration; Dohoo, Martin and Stryhn 2003 [DOHOO03]
 */
export function multipleHypotheses(inputs: {
  priors: readonly number[];
  signProbabilities: readonly (readonly number[])[];
  findings: readonly (boolean | null)[];
}): { posteriors: readonly number[]; evidence: number } {
  const priors = acceptShares('priors', inputs.priors);
  const findings = acceptList('findings', inputs.findings, (name, value) => {
    if (isUnknown(value)) return null;
    if (typeof value !== 'boolean') throw new DomainError(name, 'true, false or null', value);
    return value;
  });
  const chances = acceptList(
    'signProbabilities',
    inputs.signProbabilities,
    (name, value) => acceptList(name, value, acceptFraction, findings.length, 'findings'),
    priors.length,
    'priors',
  );
  const logJoint = priors.map((prior, h) =>
    findings.reduce((sum, found, i) => {
      if (found === null) return sum;
      const chance = chances[h]?.[i] as number;
      return sum + (found ? Math.log(chance) : Math.log1p(-chance));
    }, Math.log(prior)),
  );
  const best = Math.max(...logJoint);
  if (best === Number.NEGATIVE_INFINITY) {
    throw new DomainError('findings', 'possible under at least one hypothesis', inputs.findings);
  }
  const relative = logJoint.map((log) => Math.exp(log - best));
  const sum = relative.reduce((a, b) => a + b, 0);
  return { posteriors: relative.map((r) => r / sum), evidence: Math.exp(best) * sum };
}

export const multipleHypothesesCalculation = calculation({
  name: 'multipleHypotheses',
  room: 'laboratory',
  line: "Bayes' theorem over several diseases with yes/no signs",
  inputs: {
    priors: 'list of fractions adding up to 1',
    signProbabilities: 'per hypothesis a list: chance of each sign',
    findings: 'list of true, false or null (not looked at)',
  },
  formula: 'prior * prod(L, seen) * prod(1 - L, absent), scaled to 1',
  sources: ['DOHOO03'],
  call: multipleHypotheses,
  steps: (i, r) => [
    `${i.findings.filter((f) => f !== null).length} of ${i.findings.length} signs looked at, their joint chance ${shown(r.evidence)}`,
    `posteriors ${shownList(r.posteriors)}`,
  ],
});
