import { drawCheck } from '@combside/papers/drawings/check-drawing';
import type { NextChecks, RankedCheck } from '@combside/science/diagnosis/next-check';
import { Drawn } from '../drawn.tsx';
import { saySentence, sayWord } from '../say-sentence.ts';
import { useWords } from '../words-context.tsx';
import { OneTapDeeper } from './one-tap-deeper.tsx';
import { SourcesOf } from './sources-of.tsx';

/** What to look at next: the most useful minute first, drawn; the others and the laboratory one tap away. */
export function NextChecksShown({ next }: { readonly next: NextChecks }) {
  const words = useWords();
  const [first, ...others] = next.atHive;
  return (
    <>
      {first && (
        <section className="stack close">
          <h2>{words.say('reasoning.next')}</h2>
          <Step check={first} large />
          {others.length > 0 && (
            <OneTapDeeper
              title={
                <>
                  {words.say('reasoning.next-others')} ({others.length})
                </>
              }
            >
              <ol className="rows">
                {others.map((check) => (
                  <li key={check.check} className="open-line">
                    <Step check={check} large={false} />
                  </li>
                ))}
              </ol>
            </OneTapDeeper>
          )}
        </section>
      )}
      {next.inLaboratory.length > 0 && (
        <OneTapDeeper
          title={
            <>
              {words.say('reasoning.laboratory')} ({next.inLaboratory.length})
            </>
          }
        >
          <ol className="rows">
            {next.inLaboratory.map((check) => (
              <li key={check.check} className="open-line">
                <Step check={check} large={false} />
              </li>
            ))}
          </ol>
        </OneTapDeeper>
      )}
    </>
  );
}

function Step({ check, large }: { readonly check: RankedCheck; readonly large: boolean }) {
  const words = useWords();
  const drawing = drawCheck(check.check);
  return (
    <div className={drawing ? `check-step${large ? ' large' : ''}` : undefined}>
      {drawing && <Drawn drawing={drawing} width={large ? 112 : 56} name="" />}
      <div className="stack close">
        <p>
          <strong>{sayWord(words, 'signs.check.*.name', check.check)}</strong>{' '}
          <span className="quiet">
            {check.place === 'hive'
              ? words.say('reasoning.next-minutes', { minutes: words.unit(check.cost, 'min') })
              : words.say('reasoning.laboratory-days', { days: words.unit(check.cost, 'day', 'long') })}
          </span>
        </p>
        <p>{saySentence(words, check.how)}</p>
        <SourcesOf ids={check.sources} />
      </div>
    </div>
  );
}
