import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { markOfResult } from '@combside/casework/result/result-mark';
import { drawApiaryPlan } from '../../drawings/apiary-plan.ts';
import type { Block } from '../../layout/paper-definition.ts';
import { type PaperWords, resultWord } from '../phrases.ts';

/** The apiary as it stands, each hive with its result. */
export function planSection(record: InspectionRecord, words: PaperWords): Block[] {
  if (!record.plan) return [];
  const byId = new Map(record.colonies.map((one) => [one.id, one]));
  const hives = record.plan.hives.flatMap(({ colony, at }) => {
    const one = byId.get(colony);
    return one ? [{ id: colony, label: one.label, at, state: markOfResult(one.result) }] : [];
  });
  if (hives.length === 0) return [];
  const drawing = drawApiaryPlan({
    hives,
    gate: record.plan.gate,
    track: record.plan.track,
    walk: record.colonies.map((one) => one.id),
    scaleText: (metres) => words.unit(metres, 'm'),
  });
  const inWords = record.colonies.map((one) =>
    words.say('papers.plan.colony', { label: one.label, result: resultWord(one, words) }),
  );
  return [
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', level: 2, text: words.say('papers.plan.title') },
        {
          kind: 'figure',
          drawing,
          width: 330,
          alternative: words.say('papers.plan.in-words', { colonies: inWords.join('; ') }),
          caption: words.say('papers.plan.caption'),
        },
      ],
    },
  ];
}
