import type { Apiaries, ApiaryLine } from '@combside/contract/apiaries';
import type { LiveEvent } from '@combside/contract/live';
import type { KeeperLine, Keepers, RegisterHits } from '@combside/contract/register';
import { useEffect, useId, useState } from 'react';
import { Link } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useDistrictName } from '../district-name.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { type Asked, useAsked } from '../office/use-office.ts';
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
  const found = useAsked<RegisterHits>(`/api/register/search?text=${encodeURIComponent(text)}`, isOfRegister);
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
  const { asked, lines, next, more } = useLines<Apiaries, ApiaryLine>('/api/apiaries', 'apiaries', (one) => one.apiary);
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
      {next && (
        <Button look="wide" onClick={more}>
          {words.say('register.more')}
        </Button>
      )}
    </>
  );
}

function KeeperList({ chosen }: { readonly chosen: string | null }) {
  const words = useWords();
  const { asked, lines, next, more } = useLines<Keepers, KeeperLine>('/api/keepers', 'keepers', (one) => one.keeper);
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
      {next && (
        <Button look="wide" onClick={more}>
          {words.say('register.more')}
        </Button>
      )}
    </>
  );
}

function Trouble({ asked }: { readonly asked: Asked<unknown> }) {
  const words = useWords();
  if (asked.state === 'asking' && asked.answer === null)
    return <p className="quiet">{words.say('register.loading')}</p>;
  return <Unanswered asked={asked} />;
}

/** A list that grows by pages; the first page follows what arrives. */
function useLines<Page extends { readonly next: string | null }, Line>(
  address: string,
  field: keyof Page,
  key: (line: Line) => string,
) {
  const first = useAsked<Page>(`${address}?limit=60`, isOfRegister);
  const [later, setLater] = useState<{ lines: Line[]; next: string | null } | null>(null);
  const next = later ? later.next : (first.answer?.next ?? null);
  const top = (first.answer?.[field] ?? []) as readonly Line[];
  const known = new Set(top.map(key));
  return {
    asked: first,
    next,
    lines: [...top, ...(later?.lines.filter((line) => !known.has(key(line))) ?? [])],
    more: () => {
      void fetch(`${address}?limit=60&after=${encodeURIComponent(next ?? '')}`)
        .then(async (answer) => (answer.ok ? ((await answer.json()) as Page) : null))
        .then((page) => {
          if (!page) return;
          const lines = page[field] as readonly Line[];
          setLater((before) => ({ lines: [...(before?.lines ?? []), ...lines], next: page.next }));
        })
        // The button stays, to be pressed again.
        .catch(() => undefined);
    },
  };
}
