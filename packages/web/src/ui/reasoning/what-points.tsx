import type { Reason, Reasons } from '@combside/science/diagnosis/reasons';
import { saySentence, sayWord } from '../say-sentence.ts';
import { SignDrawing } from '../sign-drawing.tsx';
import { useWords } from '../words-context.tsx';
import { OneTapDeeper } from './one-tap-deeper.tsx';
import { SourcesOf } from './sources-of.tsx';

/** Why: what points to the leading condition, what against it, and what says nothing. */
export function WhatPoints({ reasons }: { readonly reasons: Reasons }) {
  const words = useWords();
  const condition = (id: string) => sayWord(words, 'signs.condition.*.name', id);
  const pointing = (direction: Reason['direction']) => reasons.reasons.filter((one) => one.direction === direction);
  return (
    <>
      {reasons.reasons.length > 0 && (
        <p className="quiet">
          {words.say('reasoning.about', { condition: condition(reasons.leading), rival: condition(reasons.rival) })}
        </p>
      )}
      <Pointing title={words.say('reasoning.for')} reasons={pointing('for')} />
      <Pointing title={words.say('reasoning.against')} reasons={pointing('against')} />
      {reasons.silent.length > 0 && (
        <OneTapDeeper
          title={
            <>
              {words.say('reasoning.silent')} ({reasons.silent.length})
            </>
          }
        >
          <ul className="stack close">
            {reasons.silent.map((one) => (
              <li key={`${one.node} ${one.why}`}>{saySentence(words, one.sentence)}</li>
            ))}
          </ul>
        </OneTapDeeper>
      )}
    </>
  );
}

function Pointing({ title, reasons }: { readonly title: string; readonly reasons: readonly Reason[] }) {
  const words = useWords();
  if (reasons.length === 0) return null;
  return (
    <section className="stack close">
      <h2>{title}</h2>
      <ul className="rows">
        {reasons.map((reason) => (
          <li key={reason.node} className="reason">
            <SignDrawing sign={reason.node} width={48} name="" />
            <div>
              <p>{saySentence(words, reason.sentence)}</p>
              <SourcesOf ids={reason.sources} expertBand={reason.expertBand} />
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
