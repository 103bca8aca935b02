import { apiaries } from '@combside/contract/apiaries';
import { keepers } from '@combside/contract/keepers';
import type { LiveEvent } from '@combside/contract/live';
import { registerHits } from '@combside/contract/register-search';
import { useEffect, useId, useState } from 'react';
import { Link } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useDistrictName } from '../district-name.tsx';
import { onceEach } from '../office/once-each.ts';
import type { Query } from '../office/query.ts';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { usePages } from '../office/use-pages.ts';
import { RegisterTabs } from './register-tabs.tsx';

interface RegisterListProps {
  readonly of: 'apiaries' | 'keepers';
  readonly chosen: string | null;
}

/** Whether an arrival may change what the lists show. */
function isOfRegister({ about, kind }: LiveEvent): boolean {
  return (
    (about.type === 'keeper' || about.type === 'apiary') && ['keeper', 'apiary', 'merge', 'erasure'].includes(kind)
  );
}

/** A question is asked once the keys have rested so long, in milliseconds. */
const restMilliseconds = 150;

/** Search over everything, and below it one of the two lists. */
export function RegisterList({ of, chosen }: RegisterListProps) {
  const words = useWords();
  const id = useId();
  const [typed, setTyped] = useState('');
  const [asked, setAsked] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setAsked(typed.trim()), restMilliseconds);
    return () => clearTimeout(timer);
  }, [typed]);
  return (
    <nav
      className={`office-list register-list${chosen && asked === '' ? ' behind' : ''}`}
      aria-label={words.say('register.title')}
    >
      <RegisterTabs at={of} />
      <label className="stack close" htmlFor={id}>
        {words.say('register.search')}
      </label>
      <input
        id={id}
        className="text-input"
        type="search"
        value={typed}
        onChange={(event) => setTyped(event.currentTarget.value)}
      />
      {asked !== '' ? (
        <Found text={asked} chosen={chosen} />
      ) : of === 'apiaries' ? (
        <ApiaryList chosen={chosen} />
      ) : (
        <KeeperList chosen={chosen} />
      )}
    </nav>
  );
}

function Found({ text, chosen }: { readonly text: string; readonly chosen: string | null }) {
  const words = useWords();
  const districtName = useDistrictName();
  const found = useAsked(registerHits, `/api/register/search?text=${encodeURIComponent(text)}`, isOfRegister);
  const { answer } = found;
  return (
    <>
      <Trouble asked={found} />
      {answer?.hits.length === 0 && <p className="quiet">{words.say('register.search.none')}</p>}
      <ul className="rows" aria-label={words.say('register.search')}>
        {answer?.hits.map((hit) => (
          <li key={hit.id}>
            <Link
              className="office-line"
              href={`/register/${hit.type === 'apiary' ? 'apiaries' : 'keepers'}/${hit.id}`}
              aria-current={hit.id === chosen ? 'page' : undefined}
            >
              <strong>{hit.name}</strong>
              <span className="quiet">
                {[
                  words.say(`register.type.${hit.type}`),
                  hit.number,
                  hit.at,
                  hit.district && words.say('register.district-of', { district: districtName(hit.district) }),
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </span>
            </Link>
          </li>
        ))}
      </ul>
      {answer?.more && <p className="quiet">{words.say('register.search.more')}</p>}
    </>
  );
}

function ApiaryList({ chosen }: { readonly chosen: string | null }) {
  const words = useWords();
  const asked = usePages(apiaries, '/api/apiaries?limit=60', isOfRegister);
  const lines = onceEach(
    asked.answer,
    (page) => page.apiaries,
    (one) => one.apiary,
  );
  return (
    <>
      <Trouble asked={asked} />
      {asked.answer !== null && lines.length === 0 && <p className="quiet">{words.say('register.empty.apiaries')}</p>}
      <ul className="rows" aria-label={words.say('register.apiaries')}>
        {lines.map((one) => (
          <li key={one.apiary}>
            <Link
              className="office-line"
              href={`/register/apiaries/${one.apiary}`}
              aria-current={one.apiary === chosen ? 'page' : undefined}
            >
              <strong>{one.name}</strong>
              <span className="quiet">
                {[one.number, one.keeperName ?? words.say('register.keeper-not-known')].filter(Boolean).join(' · ')}
              </span>
            </Link>
          </li>
        ))}
      </ul>
      {asked.more && (
        <Button look="wide" onClick={asked.more}>
          {words.say('register.more')}
        </Button>
      )}
    </>
  );
}

function KeeperList({ chosen }: { readonly chosen: string | null }) {
  const words = useWords();
  const asked = usePages(keepers, '/api/keepers?limit=60', isOfRegister);
  const lines = onceEach(
    asked.answer,
    (page) => page.keepers,
    (one) => one.keeper,
  );
  return (
    <>
      <Trouble asked={asked} />
      {asked.answer !== null && lines.length === 0 && <p className="quiet">{words.say('register.empty.keepers')}</p>}
      <ul className="rows" aria-label={words.say('register.keepers')}>
        {lines.map((one) => (
          <li key={one.keeper}>
            <Link
              className="office-line"
              href={`/register/keepers/${one.keeper}`}
              aria-current={one.keeper === chosen ? 'page' : undefined}
            >
              <strong>{one.name}</strong>
              <span className="quiet">
                {[one.number, words.say('register.apiaries-of', { count: one.apiaries })].filter(Boolean).join(' · ')}
              </span>
            </Link>
          </li>
        ))}
      </ul>
      {asked.more && (
        <Button look="wide" onClick={asked.more}>
          {words.say('register.more')}
        </Button>
      )}
    </>
  );
}

function Trouble({ asked }: { readonly asked: Query<unknown> }) {
  const words = useWords();
  if (asked.state === 'asking' && asked.answer === null)
    return <p className="quiet">{words.say('register.loading')}</p>;
  return <Unanswered asked={asked} />;
}
