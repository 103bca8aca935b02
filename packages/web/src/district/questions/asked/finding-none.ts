import { detectionProbabilityFinitePopulation } from '@combside/science/sampling/detection-probability';
import { answered, type QuestionWord, question, say, unstated } from '../question.ts';
import { confidence, sensitivity } from './shared-fields.ts';
import { spreadOver } from './spread-over.ts';

/** What did finding none tell me? */
export const findingNone = question({
  id: 'finding-none',
  fields: {
    colonies: { kind: 'number', shown: 'count', from: 1, to: 100_000, step: 1, slideTo: 200, start: null },
    opened: { kind: 'number', shown: 'count', from: 1, to: 100_000, step: 1, slideTo: 200, start: null },
    sensitivity,
    confidence,
  },
  answer({ colonies, opened, sensitivity, confidence }) {
    const takes: QuestionWord[] = ['takes.random', 'takes.same-eye', 'finding-none.takes.none-seen'];
    const sources = ['CAMERON98', 'CANNON82'] as const;
    if (colonies === null || opened === null || sensitivity === null) {
      return answered({ asks: unstated({ colonies, opened, sensitivity }), takes, sources });
    }
    if (opened > colonies) return answered({ refuses: say('finding-none.refuses.more', { opened, colonies }), takes });
    const found = (infectedUnits: number) =>
      detectionProbabilityFinitePopulation({ populationSize: colonies, infectedUnits, tested: opened, sensitivity })
        .probability;
    // The chance rises with the number affected: the smallest that would have been found, by halving.
    let unlikely: number | null = null;
    if (found(colonies) >= confidence) {
      let low = 1;
      let high = colonies;
      while (low < high) {
        const middle = Math.floor((low + high) / 2);
        if (found(middle) >= confidence) high = middle;
        else low = middle + 1;
      }
      unlikely = low;
    }
    const values = { opened, colonies, confidence: { share: confidence } };
    const left = unlikely === null ? colonies : unlikely - 1;
    return answered({
      said: [
        unlikely === null
          ? say('finding-none.says.nothing', values)
          : say('finding-none.says.up-to', { ...values, left, share: { share: left / colonies } }),
        say('finding-none.says.one', { chance: { share: found(1) } }),
      ],
      figure: {
        kind: 'curve',
        x: { label: 'finding-none.x', shown: 'count' },
        y: { label: 'finding-none.y', shown: 'share' },
        points: spreadOver(1, Math.min(colonies, Math.max(10, 2 * (left + 1))), 50).map((units) => [
          units,
          found(units),
        ]),
        marked: unlikely === null ? null : [unlikely, found(unlikely)],
        level: confidence,
      },
      takes,
      sources,
    });
  },
});
