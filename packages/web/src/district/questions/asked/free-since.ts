import { monthsLater } from '@combside/calendar/months-later';
import {
  negativeRoundsNeeded,
  plateauOfFreedom,
  probabilityOfFreedomOverTime,
} from '@combside/science/sampling/freedom';
import { answered, type QuestionWord, question, say, unstated } from '../question.ts';
import { askedShare, confidence } from './shared-fields.ts';

/** Is the district free, and since when? Free means: below the level the rounds were designed to find. */
export const freeSince = question({
  id: 'free-since',
  fields: {
    prior: { ...askedShare, from: 0.001, to: 0.999, start: 0.5 },
    introduction: askedShare,
    round: { ...askedShare, from: 0.001 },
    rounds: { kind: 'number', shown: 'count', from: 1, to: 60, step: 1, slideTo: 20, start: 3 },
    first: { kind: 'day', start: '' },
    apart: { kind: 'number', shown: 'month', from: 1, to: 60, step: 1, slideTo: 24, start: 12 },
    aim: { ...confidence, to: 0.999 },
  },
  answer({ prior, introduction, round, rounds, first, apart, aim }) {
    const takes: QuestionWord[] = [
      'free-since.takes.level',
      'free-since.takes.negative',
      'free-since.takes.independent',
      'takes.random',
    ];
    const sources = ['MARTIN07'] as const;
    if (introduction === null || round === null) {
      return answered({ asks: unstated({ introduction, round }), takes, sources });
    }
    const shownRounds = Math.max(rounds, 10);
    const { freedom } = probabilityOfFreedomOverTime({
      priorFreedom: prior,
      introductionProbabilities: Array(shownRounds).fill(introduction),
      systemSensitivities: Array(shownRounds).fill(round),
    });
    const now = freedom[rounds - 1] as number;
    const values = { rounds, freedom: { share: now }, aim: { share: aim } };
    const figure = {
      kind: 'curve',
      x: { label: 'free-since.x', shown: 'count' },
      y: { label: 'free-since.y', shown: 'share' },
      points: [[0, prior] as const, ...freedom.map((value, i) => [i + 1, value] as const)],
      marked: [rounds, now],
      level: aim,
    } as const;
    if (now >= aim) {
      // Since the first of the rounds, counted back from now, that all kept the aim.
      let since = rounds;
      while (since > 1 && (freedom[since - 2] as number) >= aim) since -= 1;
      const said = [
        first === ''
          ? say('free-since.says.reached', { ...values, since })
          : say('free-since.says.reached-on', {
              ...values,
              since,
              day: { day: monthsLater(first, (since - 1) * apart) },
            }),
      ];
      return answered({ said, figure, takes, sources });
    }
    const needed = negativeRoundsNeeded({
      priorFreedom: prior,
      introductionProbability: introduction,
      systemSensitivity: round,
      targetFreedom: aim,
    }).rounds;
    const plateau = plateauOfFreedom({ introductionProbability: introduction, systemSensitivity: round }).freedom;
    return answered({
      said: [
        say('free-since.says.not-yet', values),
        needed === null
          ? say('free-since.says.never', { plateau: { share: plateau } })
          : say('free-since.says.needed', { needed, more: Math.max(0, needed - rounds) }),
      ],
      figure,
      takes,
      sources,
    });
  },
});
