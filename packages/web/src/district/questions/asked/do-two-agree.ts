import { kappa } from '@combside/science/sampling/agreement';
import { twoTestsTwoPopulationsBayes } from '@combside/science/sampling/two-tests';
import type { SourceId } from '@combside/sources/bibliography';
import { type Answer, answered, type QuestionWord, question, say, unstated } from '../question.ts';
import { counted } from './shared-fields.ts';

const groups = ['one', 'two'] as const;

/** Do two inspectors, or two tests, agree? And, from two groups of colonies, how good is each? */
export const doTwoAgree = question({
  id: 'do-two-agree',
  fields: {
    groups: { kind: 'choice', options: groups, start: 'one' },
    both: counted(),
    firstOnly: counted(),
    secondOnly: counted(),
    neither: counted(500),
    both2: counted(),
    firstOnly2: counted(),
    secondOnly2: counted(),
    neither2: counted(500),
  },
  inSight: ({ groups }) => [
    'groups',
    'both',
    'firstOnly',
    'secondOnly',
    'neither',
    ...(groups === 'two' ? (['both2', 'firstOnly2', 'secondOnly2', 'neither2'] as const) : []),
  ],
  slow: ({ groups }) => groups === 'two',
  answer({ groups, ...stated }) {
    const { both, firstOnly, secondOnly, neither, both2, firstOnly2, secondOnly2, neither2 } = stated;
    const one = groups === 'one';
    const takes: QuestionWord[] = one
      ? ['do-two-agree.takes.same', 'do-two-agree.takes.rare']
      : ['do-two-agree.takes.same-eye', 'do-two-agree.takes.independent', 'do-two-agree.takes.differ'];
    const sources: readonly SourceId[] = one ? ['FLEISS69', 'BYRT93', 'NEWCOMBE98'] : ['HUI80', 'JOSEPH95'];
    const asks = unstated({
      both,
      firstOnly,
      secondOnly,
      neither,
      ...(one ? {} : { both2, firstOnly2, secondOnly2, neither2 }),
    });
    if (asks.length > 0) return answered({ asks, takes, sources });
    // Nothing is asked for any more, so every count in sight was stated.
    const first = [both, firstOnly, secondOnly, neither] as readonly number[];
    const second = [both2, firstOnly2, secondOnly2, neither2] as readonly number[];
    const empty = (counts: readonly number[]) => counts.every((count) => count === 0);
    if (empty(first) || (!one && empty(second))) {
      return answered({ refuses: say('do-two-agree.refuses.empty'), takes, sources });
    }
    return answered({ ...(one ? agreement(first) : accuracy(first, second)), takes, sources });
  },
});

function agreement([both, firstOnly, secondOnly, neither]: readonly number[]): Partial<Answer> {
  const [a, b, c, d] = [both, firstOnly, secondOnly, neither] as [number, number, number, number];
  const found = kappa({
    table: [
      [a, b],
      [c, d],
    ],
  });
  const agreed = { agreed: a + d, all: a + b + c + d, observed: { share: found.observedAgreement } };
  const two = (value: number) => ({ number: value, decimals: 2 });
  const { kappa: beyond, lower, upper, pabak, pabakLower, pabakUpper } = found;
  if (beyond === null || pabak === null || pabakLower === null || pabakUpper === null) {
    return { said: [say('do-two-agree.says.one-answer', agreed)] };
  }
  const hasInterval = lower !== null && upper !== null;
  return {
    said: [
      hasInterval
        ? say('do-two-agree.says.kappa', { ...agreed, kappa: two(beyond), lower: two(lower), upper: two(upper) })
        : say('do-two-agree.says.kappa-alone', { ...agreed, kappa: two(beyond) }),
      say('do-two-agree.says.chance', {
        expected: { share: found.expectedAgreement },
        pabak: two(pabak),
        lower: two(pabakLower),
        upper: two(pabakUpper),
      }),
    ],
    figure: {
      kind: 'bands',
      x: { label: 'do-two-agree.x', shown: 'number' },
      from: Math.min(0, lower ?? beyond, pabakLower),
      to: 1,
      rows: [
        ...(hasInterval ? [{ label: say('do-two-agree.row.kappa'), low: lower, value: beyond, high: upper }] : []),
        { label: say('do-two-agree.row.pabak'), low: pabakLower, value: pabak, high: pabakUpper },
      ],
    },
  };
}

function accuracy(first: readonly number[], second: readonly number[]): Partial<Answer> {
  const found = twoTestsTwoPopulationsBayes({ tables: [first, second], prior: { alpha: 1, beta: 1 } });
  const share = (values: readonly number[], i: number) => ({ share: values[i] as number });
  const row = (label: QuestionWord, means: readonly number[], sds: readonly number[], i: number) => {
    const [mean, sd] = [means[i] as number, sds[i] as number];
    return { label: say(label), low: Math.max(0, mean - 2 * sd), value: mean, high: Math.min(1, mean + 2 * sd) };
  };
  return {
    said: [
      say('do-two-agree.says.two', {
        first: share(found.sensitivity, 0),
        second: share(found.sensitivity, 1),
        firstRight: share(found.specificity, 0),
        secondRight: share(found.specificity, 1),
      }),
    ],
    figure: {
      kind: 'bands',
      x: { label: 'do-two-agree.x.share', shown: 'share' },
      from: 0,
      to: 1,
      rows: [
        row('do-two-agree.row.first-finds', found.sensitivity, found.sensitivitySd, 0),
        row('do-two-agree.row.second-finds', found.sensitivity, found.sensitivitySd, 1),
        row('do-two-agree.row.first-right', found.specificity, found.specificitySd, 0),
        row('do-two-agree.row.second-right', found.specificity, found.specificitySd, 1),
        row('do-two-agree.row.group-one', found.prevalence, found.prevalenceSd, 0),
        row('do-two-agree.row.group-two', found.prevalence, found.prevalenceSd, 1),
      ],
    },
  };
}
