import type { WholeAssessment } from '@combside/science/diagnosis/assess';
import { sayWord } from '../say-sentence.ts';
import { useWords } from '../words-context.tsx';
import { intervalSaid, shareSaid } from './shares.ts';

/** Every condition with its interval as a bar and in figures, one tap below the words. */
export function ConditionBars({ whole }: { readonly whole: WholeAssessment }) {
  const words = useWords();
  const foulbrood = whole.diseases.find((one) => one.stages)?.stages;
  const rows = [
    ...whole.diseases.flatMap((one) => [
      { id: one.disease, name: sayWord(words, 'signs.condition.*.name', one.disease), part: false, ...one },
      ...(one.stages && foulbrood
        ? [
            { id: 'early', name: words.say('reasoning.early'), part: true, ...foulbrood.early },
            { id: 'advanced', name: words.say('reasoning.advanced'), part: true, ...foulbrood.advanced },
          ]
        : []),
    ]),
    { id: 'none', name: words.say('reasoning.none'), part: false, ...whole.none },
    { id: 'notifiable', name: words.say('reasoning.notifiable'), part: false, ...whole.notifiable },
  ];
  return (
    <>
      <p className="band-mark">{words.say('signs.expert-band')}</p>
      <ul className="condition-bars">
        {rows.map((row) => (
          <li key={row.id} className={row.part ? 'part' : undefined}>
            <span>{row.name}</span>
            <span className="quiet">{intervalSaid(words, row.point, row.interval.low, row.interval.high)}</span>
            <Bar point={row.point} low={row.interval.low} high={row.interval.high} />
          </li>
        ))}
      </ul>
      <p className="quiet">{words.say('reasoning.expert-bands')}</p>
      <p className="quiet">
        {words.say('reasoning.numbers-standing', {
          bands: whole.standing.expertBands,
          published: whole.standing.published,
          draws: whole.convergence.draws,
          width: shareSaid(words, whole.convergence.widestEnd),
        })}
      </p>
    </>
  );
}

/** The interval as a band, the point as a stroke across it; the figures beside it say the same. */
function Bar({ point, low, high }: { readonly point: number; readonly low: number; readonly high: number }) {
  return (
    <svg className="condition-bar" viewBox="0 0 200 16" preserveAspectRatio="none" aria-hidden="true" focusable="false">
      <path d="M0 8H200" className="axis" />
      <rect x={low * 200} y="4" width={Math.max(1, (high - low) * 200)} height="8" className="band" />
      <path d={`M${point * 200} 1V15`} className="point" />
    </svg>
  );
}
