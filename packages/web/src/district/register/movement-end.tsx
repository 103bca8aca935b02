import { keeperPage } from '@combside/contract/keeper-page';
import { registerHits } from '@combside/contract/register-search';
import { useEffect, useId, useRef, useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useAsked } from '../office/use-asked.ts';

/** The other end of a movement: an apiary of the register, or somewhere outside it. */
export type Place = { readonly apiary: string; readonly name: string } | 'outside';

interface MovementEndProps {
  readonly label: string;
  readonly chosen: Place | null;
  /** The apiary at the near end, which cannot be the far one too. */
  readonly except: string;
  readonly onChoose: (place: Place | null) => void;
}

/** A question is asked once the keys have rested so long, in milliseconds. */
const restMilliseconds = 150;

/** Finds an apiary by its own words or by its keeper; a buyer is a keeper who has one. */
export function MovementEnd({ label, chosen, except, onChoose }: MovementEndProps) {
  const words = useWords();
  const id = useId();
  const [typed, setTyped] = useState('');
  const [asked, setAsked] = useState('');
  const again = useRef<HTMLButtonElement>(null);
  const search = useRef<HTMLInputElement>(null);
  const moved = useRef(false);
  useEffect(() => {
    const timer = setTimeout(() => setAsked(typed.trim()), restMilliseconds);
    return () => clearTimeout(timer);
  }, [typed]);
  // Whoever works by keyboard goes on where the choice was made, not at the top of the page.
  useEffect(() => {
    if (!moved.current) return;
    moved.current = false;
    (chosen === null ? search : again).current?.focus();
  }, [chosen]);
  const choose = (place: Place | null) => {
    moved.current = true;
    setTyped('');
    setAsked('');
    onChoose(place);
  };

  if (chosen !== null) {
    const name = chosen === 'outside' ? words.say('register.movement.outside') : chosen.name;
    return (
      <fieldset className="stack close">
        <legend>{label}</legend>
        <p>
          <strong>{words.say('register.movement.chosen', { name })}</strong>
        </p>
        <div>
          <button ref={again} type="button" className="button" onClick={() => choose(null)}>
            {words.say('register.movement.choose-again')}
          </button>
        </div>
      </fieldset>
    );
  }
  return (
    <fieldset className="stack close">
      <legend>{label}</legend>
      <div className="labelled">
        <label htmlFor={id}>{words.say('register.movement.find')}</label>
        <input
          id={id}
          ref={search}
          className="text-input"
          type="search"
          autoComplete="off"
          value={typed}
          onChange={(event) => setTyped(event.currentTarget.value)}
          // Enter here looks for a place; it does not write the movement.
          onKeyDown={(event) => event.key === 'Enter' && event.preventDefault()}
        />
      </div>
      {asked !== '' && <Hits text={asked} except={except} onChoose={choose} />}
      <div>
        <Button onClick={() => choose('outside')}>{words.say('register.movement.outside.choose')}</Button>
      </div>
    </fieldset>
  );
}

function Hits({
  text,
  except,
  onChoose,
}: {
  readonly text: string;
  readonly except: string;
  readonly onChoose: (place: Place) => void;
}) {
  const words = useWords();
  const [keeper, setKeeper] = useState<string | null>(null);
  const { answer, state } = useAsked(
    registerHits,
    `/api/register/search?limit=12&text=${encodeURIComponent(text)}`,
    () => false,
  );
  const hits = answer?.hits.filter((hit) => hit.id !== except) ?? [];
  return (
    <>
      <div aria-live="polite">
        {state === 'asking' && <p className="quiet">{words.say('register.loading')}</p>}
        {state === 'failed' && <p className="caution">{words.say('register.failed')}</p>}
        {answer && hits.length === 0 && <p className="quiet">{words.say('register.search.none')}</p>}
      </div>
      <ul className="rows" aria-label={words.say('register.movement.find')}>
        {hits.map((hit) => (
          <li key={hit.id}>
            <button
              type="button"
              className="office-line"
              {...(hit.type === 'keeper' ? { 'aria-expanded': keeper === hit.id } : {})}
              onClick={() =>
                hit.type === 'apiary'
                  ? onChoose({ apiary: hit.id, name: hit.name })
                  : setKeeper(keeper === hit.id ? null : hit.id)
              }
            >
              <strong>{hit.name}</strong>
              <span className="quiet">
                {[words.say(`register.type.${hit.type}`), hit.number, hit.at].filter(Boolean).join(' · ')}
              </span>
            </button>
            {hit.id === keeper && <OfKeeper keeper={hit.id} name={hit.name} except={except} onChoose={onChoose} />}
          </li>
        ))}
      </ul>
      {answer?.more && <p className="quiet">{words.say('register.search.more')}</p>}
    </>
  );
}

function OfKeeper({
  keeper,
  name,
  except,
  onChoose,
}: {
  readonly keeper: string;
  readonly name: string;
  readonly except: string;
  readonly onChoose: (place: Place) => void;
}) {
  const words = useWords();
  const { answer, state } = useAsked(keeperPage, `/api/keepers/${keeper}`, () => false);
  if (!answer) return <p className="quiet">{words.say(state === 'asking' ? 'register.loading' : 'register.failed')}</p>;
  const apiaries = answer.apiaries.filter((one) => one.apiary !== except);
  if (apiaries.length === 0) return <p>{words.say('register.movement.keeper-without', { name })}</p>;
  return (
    <ul className="rows indented" aria-label={words.say('register.movement.of-keeper', { name })}>
      {apiaries.map((one) => (
        <li key={one.apiary}>
          <button
            type="button"
            className="office-line"
            onClick={() => onChoose({ apiary: one.apiary, name: one.name })}
          >
            <strong>{one.name}</strong>
          </button>
        </li>
      ))}
    </ul>
  );
}
