import { clopperPearson, wilson } from '@combside/science/sampling/interval';
import { posteriorPrevalence } from '@combside/science/sampling/posterior-prevalence';
import { blaker } from '@combside/science/sampling/true-prevalence';
import { answered, type Figure, type QuestionWord, question, say, unstated } from '../question.ts';
import { askedShare, confidence, counted } from './shared-fields.ts';

const readings = ['counted', 'known', 'estimated'] as const;

/** How common is it really, when so many of so many were positive? */
export const howFrequent = question({
  id: 'how-frequent',
  fields: {
    positives: counted(),
    tested: { ...counted(500), from: 1 },
    reading: { kind: 'choice', options: readings, start: 'counted' },
    sensitivity: askedShare,
    specificity: askedShare,
    diseasedFound: counted(),
    diseasedTested: counted(),
    freeNegative: counted(),
    freeTested: counted(),
    confidence,
  },
  inSight: ({ reading }) => [
    'positives',
    'tested',
    'reading',
    ...(reading === 'known' ? (['sensitivity', 'specificity'] as const) : []),
    ...(reading === 'estimated' ? (['diseasedFound', 'diseasedTested', 'freeNegative', 'freeTested'] as const) : []),
    'confidence',
  ],
  slow: ({ reading }) => reading === 'estimated',
  answer(stated) {
    const { positives, tested, reading, confidence } = stated;
    const takes: QuestionWord[] = ['takes.random', `how-frequent.takes.${reading}`];
    if (positives === null || tested === null) return answered({ asks: unstated({ positives, tested }), takes });
    if (positives > tested)
      return answered({ refuses: say('how-frequent.refuses.more', { positives, tested }), takes });
    const given = { positives, tested, confidence };
    const apparent = wilson(given);
    const share = (value: number) => ({ share: value });
    const row = (label: QuestionWord, low: number, value: number, high: number) => ({
      label: say(label),
      low,
      value,
      high,
    });
    const figure = (rows: Extract<Figure, { kind: 'bands' }>['rows']): Figure => ({
      kind: 'bands',
      x: { label: 'how-frequent.x', shown: 'share' },
      from: 0,
      to: null,
      rows,
    });
    const seen = row('how-frequent.row.counted', apparent.lower, apparent.estimate, apparent.upper);
    const values = { positives, tested, confidence: share(confidence) };
    if (reading === 'counted') {
      const exact = clopperPearson(given);
      return answered({
        said: [
          say('how-frequent.says.counted', {
            ...values,
            estimate: share(apparent.estimate),
            lower: share(apparent.lower),
            upper: share(apparent.upper),
          }),
        ],
        figure: figure([seen, row('how-frequent.row.exact', exact.lower, exact.estimate, exact.upper)]),
        takes,
        sources: ['NEWCOMBE98', 'BROWN01'],
      });
    }
    if (reading === 'known') {
      const { sensitivity, specificity } = stated;
      const sources = ['ROGAN78', 'REICZIGEL10', 'NEWCOMBE98'] as const;
      if (sensitivity === null || specificity === null) {
        return answered({ asks: unstated({ sensitivity, specificity }), takes, sources });
      }
      if (sensitivity + specificity <= 1) return answered({ refuses: say('refuses.coin'), takes, sources });
      const real = blaker({ ...given, sensitivity, specificity });
      return answered({
        said: [
          say('how-frequent.says.known', {
            ...values,
            estimate: share(real.estimate),
            lower: share(real.lower),
            upper: share(real.upper),
          }),
          ...(real.raw < 0 ? [say('how-frequent.says.below-zero')] : []),
        ],
        figure: figure([seen, row('how-frequent.row.known', real.lower, real.estimate, real.upper)]),
        takes,
        sources,
      });
    }
    const { diseasedFound, diseasedTested, freeNegative, freeTested } = stated;
    const sources = ['JOSEPH95'] as const;
    if (diseasedFound === null || diseasedTested === null || freeNegative === null || freeTested === null) {
      return answered({ asks: unstated({ diseasedFound, diseasedTested, freeNegative, freeTested }), takes, sources });
    }
    if (diseasedFound > diseasedTested || freeNegative > freeTested) {
      return answered({ refuses: say('how-frequent.refuses.trial'), takes, sources });
    }
    const shapes = (right: number, all: number) => ({ alpha: right + 1, beta: all - right + 1 });
    const belief = posteriorPrevalence({
      positives,
      tested,
      prior: [1, 1],
      sensitivity: shapes(diseasedFound, diseasedTested),
      specificity: shapes(freeNegative, freeTested),
      interval: confidence,
    });
    return answered({
      said: [
        say('how-frequent.says.estimated', {
          ...values,
          estimate: share(belief.median),
          lower: share(belief.lower),
          upper: share(belief.upper),
        }),
      ],
      figure: figure([seen, row('how-frequent.row.estimated', belief.lower, belief.median, belief.upper)]),
      takes,
      sources,
    });
  },
});
