import { suspectWords } from '@combside/casework/result/results-by-gravity';
import { coloniesFound } from '@combside/contract/colonies';
import { registerHits } from '@combside/contract/register-search';
import { type VisitLine, visits } from '@combside/contract/visits';
import type { Words } from '@combside/words/words';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskAddress } from '../desk-address.ts';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { type QuestionWords, readVisitQuestion } from './read-visit-question.ts';

interface SearchHitsProps {
  readonly text: string;
  readonly chosen: string | null;
}

/** One line of what was found. */
interface Hit {
  readonly type: 'apiary' | 'keeper' | 'colony' | 'visit';
  readonly id: string;
  readonly name: string;
  /** What it is, in words. */
  readonly is: string;
  readonly beside: string | null;
  readonly href: string;
}

/** Whatever matches what was typed: apiaries, keepers, colonies by their label, visits by day, place, inspector, result. */
export function SearchHits({ text, chosen }: SearchHitsProps) {
  const words = useWords();
  const desk = useDeskAddress();
  const query = encodeURIComponent(text);
  const register = useAsked(registerHits, `/api/register/search?limit=60&text=${query}`, () => false);
  const colonies = useAsked(coloniesFound, `/api/colonies?limit=40&text=${query}`, () => false);
  const asked = useMemo(() => visitsAddress(text, words), [text, words]);
  const visitHits = useAsked(visits, asked, () => false);
  const hits: Hit[] = [
    ...(register.answer?.hits ?? []).map((hit) => ({
      type: hit.type,
      id: hit.id,
      name: hit.name,
      is: words.say(`district.places.hit.${hit.type}`),
      beside: [hit.number, hit.at && words.say('district.places.keeper-of', { name: hit.at })]
        .filter(Boolean)
        .join(' · '),
      href: hit.type === 'apiary' ? desk.to(`/apiary/${hit.id}`) : `/register/keepers/${hit.id}`,
    })),
    ...(colonies.answer?.colonies ?? []).map((hit) => ({
      type: 'colony' as const,
      id: hit.colony,
      name: words.say('district.colony', { label: hit.label }),
      is: words.say('district.places.hit.colony'),
      beside: words.say('district.places.at', { name: hit.apiaryName }),
      href: desk.to(`/colony/${hit.colony}`),
    })),
    ...(visitHits.answer?.visits ?? []).map((hit) => ({
      type: 'visit' as const,
      id: hit.visit,
      name: hit.apiaryName ?? words.say('district.apiary-unknown'),
      is: visitIs(hit, words),
      beside: [hit.inspectorName, ...resultsOf(hit, words)].filter(Boolean).join(' · '),
      href: desk.to(`/visit/${hit.visit}`),
    })),
  ];
  const all = [register, colonies, visitHits];
  const waiting = all.some(({ state }) => state === 'asking');
  const silent = all.find(({ state }) => state === 'failed' || state === 'wrong address');
  const failed = silent && {
    ...silent,
    again: () => {
      for (const one of all) one.again();
    },
  };
  return (
    <div className="stack close">
      <div aria-live="polite">
        {waiting && hits.length === 0 && <p className="quiet">{words.say('district.places.loading')}</p>}
        {!waiting && !failed && hits.length === 0 && <p>{words.say('district.places.none-found', { text })}</p>}
      </div>
      {failed && <Unanswered asked={failed} />}
      <ul className="rows">
        {hits.map((hit) => (
          <li key={`${hit.type} ${hit.id}`}>
            <Link className="office-line" href={hit.href} aria-current={hit.id === chosen ? 'page' : undefined}>
              <span>
                <strong>{hit.name}</strong> <span className="quiet">{hit.is}</span>
              </span>
              <span className="quiet">{hit.beside}</span>
            </Link>
          </li>
        ))}
      </ul>
      {(register.answer?.more || colonies.answer?.more || visitHits.answer?.next) && (
        <p className="quiet">{words.say('district.places.hits-more')}</p>
      )}
    </div>
  );
}

/** Where to ask for the visits that what was typed may mean. */
function visitsAddress(text: string, words: Words): string {
  const {
    text: rest,
    from,
    to,
    results,
  } = readVisitQuestion(text, questionWords(words), new Date().toISOString(), timeZoneHere);
  const query = new URLSearchParams({ limit: '20' });
  if (rest !== '') query.set('text', rest);
  if (from !== null) query.set('from', from);
  if (to !== null) query.set('to', to);
  if (results.length > 0) query.set('results', results.join('|'));
  return `/api/visits?${query}`;
}

function questionWords(words: Words): QuestionWords {
  const month = new Intl.DateTimeFormat(words.language, { month: 'long', timeZone: 'UTC' });
  return {
    months: Array.from({ length: 12 }, (_, at) => month.format(Date.UTC(2026, at, 15)).toLowerCase()),
    today: words.say('district.find.today'),
    yesterday: words.say('district.find.yesterday'),
    results: [
      { word: words.say('district.find.suspect'), means: suspectWords },
      { word: words.say('district.find.signs'), means: ['signs seen'] },
      { word: words.say('district.find.nothing'), means: ['nothing seen with this look'] },
      { word: words.say('district.find.masked'), means: ['masked, no conclusion'] },
    ],
  };
}

function visitIs(visit: VisitLine, words: Words): string {
  const when = visit.endedAt ?? visit.startedAt ?? visit.plannedFor;
  return when === null
    ? words.say('district.places.hit.visit-asked')
    : words.say('district.places.hit.visit', { when: words.dayAndTime(when, timeZoneHere) });
}

function resultsOf(visit: VisitLine, words: Words): string[] {
  return visit.results.map(({ colonies, result }) => `${colonies} ${sayWord(words, 'casework.result.*', result)}`);
}
