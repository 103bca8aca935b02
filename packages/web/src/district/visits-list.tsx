import type { VisitLine, Visits } from '@combside/contract/visits';
import { useState } from 'react';
import { Link } from 'wouter';
import { Button } from '../ui/button.tsx';
import { sayId } from '../ui/say-sentence.ts';
import { useWords } from '../ui/words-context.tsx';
import { deskTimeZone } from './time-zone.ts';
import { useAsked } from './use-office.ts';

/** Visits, newest first; each says where it stands and what it came to so far. */
export function VisitsList({ chosen }: { readonly chosen: string | null }) {
  const words = useWords();
  const { answer, state, again } = useAsked<Visits>('/api/visits?limit=50', () => true);
  const [earlier, setEarlier] = useState<{ visits: readonly VisitLine[]; next: string | null } | null>(null);
  const next = earlier ? earlier.next : (answer?.next ?? null);
  const fetchEarlier = async () => {
    const response = await fetch(`/api/visits?limit=50&after=${encodeURIComponent(next ?? '')}`);
    if (!response.ok) return;
    const more = (await response.json()) as Visits;
    setEarlier((before) => ({ visits: [...(before?.visits ?? []), ...more.visits], next: more.next }));
  };
  const newest = new Set(answer?.visits.map((visit) => visit.visit));
  const shown = [...(answer?.visits ?? []), ...(earlier?.visits.filter((visit) => !newest.has(visit.visit)) ?? [])];

  return (
    <nav className="office-list" aria-label={words.say('district.visits')}>
      <h2>{words.say('district.visits')}</h2>
      {state === 'failed' && (
        <div className="caution stack close" role="alert">
          <p>{words.say(answer ? 'district.failed' : 'district.failed.nothing')}</p>
          <Button onClick={again}>{words.say('district.again')}</Button>
        </div>
      )}
      {state === 'asking' && !answer && <p className="quiet">{words.say('district.visits.loading')}</p>}
      {answer && shown.length === 0 && <p className="quiet">{words.say('district.visits.none')}</p>}
      <ul className="rows">
        {shown.map((visit) => (
          <li key={visit.visit}>
            <Link
              className="office-line"
              href={`/visit/${visit.visit}`}
              aria-current={visit.visit === chosen ? 'page' : undefined}
            >
              <strong>{visit.apiaryName ?? words.say('district.apiary-unknown')}</strong>
              <span>
                {words.say(
                  visit.endedAt
                    ? 'district.visits.ended'
                    : visit.startedAt
                      ? 'district.visits.under-way'
                      : 'district.visits.planned',
                )}{' '}
                {when(visit) && words.dayAndTime(when(visit) ?? '', deskTimeZone)}
              </span>
              <span className="quiet">{visit.inspectorName ?? ''}</span>
              {visit.results.length > 0 && (
                <span>
                  {visit.results
                    .map((result) => `${result.colonies} ${sayId(words, `casework.result.${result.result}`)}`)
                    .join(' · ')}
                </span>
              )}
            </Link>
          </li>
        ))}
      </ul>
      {next !== null && shown.length > 0 && (
        <Button look="wide" onClick={() => void fetchEarlier()}>
          {words.say('district.visits.more')}
        </Button>
      )}
    </nav>
  );
}

function when(visit: VisitLine): string | null {
  return visit.endedAt ?? visit.startedAt ?? visit.plannedFor;
}
