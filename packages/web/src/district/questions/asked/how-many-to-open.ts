import { detectionProbabilityFinitePopulation } from '@combside/science/sampling/detection-probability';
import { infectedUnitsFromPrevalence } from '@combside/science/sampling/infected-units';
import { sampleSizeToDetectFinitePopulation } from '@combside/science/sampling/sample-size-to-detect';
import { answered, type QuestionWord, question, say, unstated } from '../question.ts';
import { confidence, sensitivity } from './shared-fields.ts';
import { spreadOver } from './spread-over.ts';

/** How many colonies must I open, to find at least one when that many are affected? */
export const howManyToOpen = question({
  id: 'how-many-to-open',
  fields: {
    colonies: { kind: 'number', shown: 'count', from: 1, to: 100_000, step: 1, slideTo: 200, start: 20 },
    affected: { kind: 'number', shown: 'share', from: 0.001, to: 1, step: 0.001, slideTo: 0.5, start: 0.1 },
    sensitivity,
    confidence,
  },
  answer({ colonies, affected, sensitivity, confidence }) {
    const asks = unstated({ sensitivity });
    const takes: QuestionWord[] = [
      'takes.random',
      'takes.same-eye',
      'takes.no-false-alarm',
      'how-many-to-open.takes.level',
    ];
    const sources = ['CAMERON98', 'CANNON82', 'BB-STAT-2.2'] as const;
    if (sensitivity === null) return answered({ asks, takes, sources });
    const size = (infectedUnits: number) =>
      sampleSizeToDetectFinitePopulation({ populationSize: colonies, infectedUnits, confidence, sensitivity })
        .sampleSize;
    const infected = infectedUnitsFromPrevalence(colonies, affected);
    const open = size(infected);
    const all = detectionProbabilityFinitePopulation({
      populationSize: colonies,
      infectedUnits: infected,
      tested: colonies,
      sensitivity,
    }).probability;
    const values = { colonies, affected: infected, confidence: { share: confidence } };
    return answered({
      said:
        open === null
          ? [say('how-many-to-open.says.not-enough', { ...values, chance: { share: all } })]
          : [
              say('how-many-to-open.says.open', { ...values, open }),
              say('how-many-to-open.says.all', { chance: { share: all } }),
            ],
      figure: {
        kind: 'curve',
        x: { label: 'how-many-to-open.x', shown: 'share' },
        y: { label: 'how-many-to-open.y', shown: 'count' },
        points: spreadOver(1, Math.max(infected, Math.ceil(colonies / 2)), 50).map((units) => [
          units / colonies,
          size(units),
        ]),
        marked: open === null ? null : [infected / colonies, open],
      },
      takes,
      sources,
    });
  },
});
