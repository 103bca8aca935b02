import type { ApiaryPage } from '@combside/contract/apiary-page';
import type { Person } from '@combside/contract/people';
import type { MovementBody } from '@combside/record/kinds/movement';
import type { MovementState } from '@combside/record/states';
import { useEffect, useRef, useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteStatus } from '../../ui/write-status.tsx';
import { Contested } from './contested.tsx';
import { History } from './history.tsx';
import { MovementForm, type OwnApiary } from './movement-form.tsx';
import type { Names } from './names-on-record.ts';
import { TakeBack } from './take-back.tsx';
import { useRecordWriting } from './use-record-writing.ts';

interface MovementsProps {
  readonly movements: ApiaryPage['movements'];
  /** Names of apiaries at either end, as far as they may be read. */
  readonly names: Names;
  /** The apiaries whose record this is part of: one, or all of a keeper. */
  readonly own: readonly OwnApiary[];
  /** The colony whose record this is part of, if it is one's. */
  readonly colony?: string;
  /** Whether a movement can be told from here: not from a colony that is gone. */
  readonly mayRecord?: boolean;
  readonly people: readonly Person[];
}

/** What came and went, each with its history, and the form by which the office writes down what it is told. */
export function Movements(props: MovementsProps) {
  const { movements, names, own, colony = null, mayRecord = true, people } = props;
  const words = useWords();
  const writing = useRecordWriting();
  const [open, setOpen] = useState<'new' | string | null>(null);
  const nameOf = (apiary: string) => names.get(apiary) ?? words.say('always.not-known');
  const record = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(false);
  // The form goes away with the focus in it; whoever works by keyboard is set back to where it was opened.
  useEffect(() => {
    if (open === null && wasOpen.current) record.current?.focus();
    wasOpen.current = open !== null;
  }, [open]);
  const form = (written: MovementState | null) => (
    <MovementForm
      writing={writing}
      own={own}
      colony={colony}
      written={written}
      nameOf={nameOf}
      onDone={() => setOpen(null)}
    />
  );
  return (
    <section className="stack close" aria-labelledby="movements-title">
      <h3 id="movements-title">{words.say('register.movements')}</h3>
      {open === null && <WriteStatus writing={writing} />}
      {open === 'new'
        ? form(null)
        : mayRecord &&
          own.length > 0 && (
            <div>
              <button ref={record} type="button" className="button" onClick={() => setOpen('new')}>
                {words.say('register.movement.record')}
              </button>
            </div>
          )}
      {movements.length === 0 && <p className="quiet">{words.say('register.movements.none')}</p>}
      <ul className="rows" aria-labelledby="movements-title">
        {movements.map((one) => {
          const state = one as MovementState;
          const moved = state.movement.current?.body;
          if (!moved) return null;
          return (
            <li key={state.about.id} className="stack close">
              <MovementLine moved={moved} own={own} names={names} />
              {!moved.happened && (
                <p>
                  <strong>{words.say('register.movement.taken-back')}</strong>
                </p>
              )}
              <Contested state={state} people={people} names={names} writing={writing} />
              {open === state.about.id ? (
                form(state)
              ) : (
                <details>
                  <summary>{words.say('register.movement.history')}</summary>
                  <div className="stack close">
                    <History state={state} people={people} names={names} untitled />
                    {moved.happened && (
                      <div>
                        <Button onClick={() => setOpen(state.about.id)}>{words.say('register.movement.change')}</Button>
                      </div>
                    )}
                    <TakeBack key={String(moved.happened)} state={state} happened={moved.happened} writing={writing} />
                  </div>
                </details>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function MovementLine({
  moved,
  own,
  names,
}: {
  readonly moved: MovementBody;
  readonly own: readonly OwnApiary[];
  readonly names: Names;
}) {
  const words = useWords();
  const placeOf = (end: string | null) =>
    end === null ? words.say('register.movement.outside') : (names.get(end) ?? words.say('always.not-known'));
  const days =
    moved.earliest === moved.latest
      ? words.day(moved.latest)
      : words.say('register.movement.between', {
          earliest: words.day(moved.earliest),
          latest: words.day(moved.latest),
        });
  const said = {
    what:
      moved.quantity === null
        ? words.say('register.movement.some', { what: words.say(`register.what.${moved.what}`) })
        : words.say(`register.counted.${moved.what}`, { count: moved.quantity }),
    how: words.say(`register.moved.${moved.how}`),
    days,
  };
  // Seen from one apiary its own name would only be noise.
  const [only] = own;
  const line =
    own.length !== 1 || only === undefined
      ? words.say('register.movement.from-to', { ...said, from: placeOf(moved.from), to: placeOf(moved.to) })
      : moved.from === only.apiary
        ? words.say('register.movement.out', { ...said, place: placeOf(moved.to) })
        : moved.to === only.apiary
          ? words.say('register.movement.in', { ...said, place: placeOf(moved.from) })
          : words.say('register.movement.from-to', { ...said, from: placeOf(moved.from), to: placeOf(moved.to) });
  return (
    <>
      <p>{line}</p>
      <p className="quiet">
        {words.say('register.movement.known-by', { how: sayWord(words, 'register.known-by.*', moved.knownBy) })}
      </p>
    </>
  );
}
