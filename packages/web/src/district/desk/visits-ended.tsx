import type { VisitLine, Visits } from '@combside/contract/visits';
import { useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useAsked } from '../office/use-office.ts';
import { VisitLineLink } from './visit-line-link.tsx';

/** Visits that ended, newest first, a page at a time. */
export function VisitsEnded({ chosen }: { readonly chosen: string | null }) {
  const words = useWords();
  const { answer } = useAsked<Visits>('/api/visits?limit=30', (event) => event.visit !== null);
  const [earlier, setEarlier] = useState<{ visits: readonly VisitLine[]; next: string | null } | null>(null);
  const next = earlier ? earlier.next : (answer?.next ?? null);
  const fetchEarlier = async () => {
    const response = await fetch(`/api/visits?limit=30&after=${encodeURIComponent(next ?? '')}`);
    if (!response.ok) return;
    const more = (await response.json()) as Visits;
    setEarlier((before) => ({ visits: [...(before?.visits ?? []), ...more.visits], next: more.next }));
  };
  const newest = new Set(answer?.visits.map((visit) => visit.visit));
  const all = [...(answer?.visits ?? []), ...(earlier?.visits.filter((visit) => !newest.has(visit.visit)) ?? [])];
  const ended = all.filter((visit) => visit.endedAt !== null);
  // Not asked yet, or no answer: then there is nothing to say about what ended.
  if (!answer) return null;
  return (
    <section className="owed-time" aria-labelledby="ended-title">
      <h3 id="ended-title">{words.say('district.owed.lately')}</h3>
      {ended.length === 0 && <p className="quiet">{words.say('district.visits.none')}</p>}
      <ul className="rows">
        {ended.map((visit) => (
          <li key={visit.visit}>
            <VisitLineLink visit={visit} chosen={visit.visit === chosen} />
          </li>
        ))}
      </ul>
      {next !== null && ended.length > 0 && (
        <Button look="wide" onClick={() => void fetchEarlier()}>
          {words.say('district.visits.more')}
        </Button>
      )}
    </section>
  );
}
