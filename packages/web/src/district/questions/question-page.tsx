import { useEffect, useRef, useState } from 'react';
import { useSearch } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { AnswerSources } from './answer-sources.tsx';
import { FieldInput } from './field-input.tsx';
import { FigureView } from './figure-view.tsx';
import { readAddress, type Values, writeAddress } from './inputs-in-address.ts';
import { KeepNote } from './keep-note.tsx';
import { KeptLimits } from './kept-limits.tsx';
import { noteText } from './note-text.ts';
import { fieldWord, type Question } from './question.ts';
import { sayAnswer } from './spoken.ts';
import { useAnswer } from './use-answer.ts';

/** Browsers refuse an address that changes at every step of a slider. */
const restMilliseconds = 300;

/** One question: what is stated, the answer in a sentence, the plot, what is taken for granted, where it comes from. */
export function QuestionPage({ question }: { readonly question: Question }) {
  const words = useWords();
  const search = useSearch();
  const [{ values, leftOut }, setRead] = useState(() => readAddress(question.fields, new URLSearchParams(search)));
  const set = (change: Values) => setRead((before) => ({ values: { ...before.values, ...change }, leftOut: [] }));
  const inHand = useAnswer(question, values);
  const { answer } = inHand;
  const address = writeAddress(question.fields, values);
  const written = useRef(search);
  useEffect(() => {
    const timer = setTimeout(() => {
      written.current = address;
      history.replaceState(history.state, '', address ? `?${address}` : location.pathname);
    }, restMilliseconds);
    return () => clearTimeout(timer);
  }, [address]);
  // A link followed to the same question with other inputs.
  useEffect(() => {
    if (search === written.current) return;
    written.current = search;
    setRead(readAddress(question.fields, new URLSearchParams(search)));
  }, [search, question]);

  const title = words.say(`questions.${question.id}`);
  const label = (name: string) => words.say(fieldWord(question.id, name));
  const inSight = question.inSight(values as never);
  return (
    <main className="office-page question-page stack">
      <header className="stack close">
        <h2>{title}</h2>
        <p className="quiet">{sayWord(words, 'questions.*.about', question.id)}</p>
      </header>
      {answer && answer.cautions.length > 0 && (
        <section className="caution stack close" aria-label={words.say('questions.cautions')}>
          <ul className="plain-list">
            {answer.cautions.map((one) => (
              <li key={one}>{words.say(`disposal.caution.${one}`)}</li>
            ))}
          </ul>
        </section>
      )}
      {leftOut.length > 0 && (
        <p className="caution" role="alert">
          {words.say('questions.left-out', { what: leftOut.join(', ') })}
        </p>
      )}
      <div className="question-parts">
        <form className="stack" aria-label={words.say('questions.inputs')} onSubmit={(event) => event.preventDefault()}>
          {inSight.map((name) => {
            const field = question.fields[name];
            return field ? (
              <FieldInput
                key={name}
                question={question.id}
                name={name}
                field={field}
                value={values[name] ?? null}
                onChange={(value) => set({ [name]: value })}
              />
            ) : null;
          })}
          {question.id === 'laboratory-number' && (values.report === 'load' || values.report === 'plates') && (
            <KeptLimits values={values} onUse={set} />
          )}
        </form>
        <div className="answer-column stack">
          {inHand.state !== 'there' && (
            <div className="stack close">
              <p>{words.say(inHand.state === 'failed' ? 'questions.slow.failed' : 'questions.slow')}</p>
              <Button look="act" disabled={inHand.state === 'working'} onClick={inHand.workOut}>
                {words.say(inHand.state === 'working' ? 'questions.slow.working' : 'questions.slow.work-out')}
              </Button>
            </div>
          )}
          <div aria-live="polite" className="stack close">
            {answer?.said.map((one, i) => (
              <p key={one.id} className={i === 0 ? 'answer' : undefined}>
                {sayAnswer(words, one)}
              </p>
            ))}
            {answer?.refuses && <p className="caution">{sayAnswer(words, answer.refuses)}</p>}
            {answer && answer.asks.length > 0 && !answer.refuses && (
              <p className="asks">
                {words.say('questions.asks', {
                  fields: words.list(answer.asks.map((name) => words.say('questions.quoted', { text: label(name) }))),
                })}
              </p>
            )}
          </div>
          {answer?.figure && <FigureView figure={answer.figure} title={title} />}
          {answer && answer.takes.length > 0 && (
            <section className="stack close" aria-labelledby="takes">
              <h3 id="takes">{words.say('questions.takes')}</h3>
              <ul className="plain-list">
                {answer.takes.map((id) => (
                  <li key={id}>{words.say(`questions.${id}`)}</li>
                ))}
              </ul>
            </section>
          )}
          {answer && answer.sources.length > 0 && (
            <section className="stack close" aria-labelledby="sources">
              <h3 id="sources">{words.say('questions.sources')}</h3>
              <AnswerSources ids={answer.sources} />
            </section>
          )}
          {answer && answer.said.length > 0 && <KeepNote text={noteText(words, question, values, answer, address)} />}
        </div>
      </div>
    </main>
  );
}
