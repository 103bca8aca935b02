import type { VisitLine } from '@combside/contract/visits';
import { Link } from 'wouter';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskAddress } from '../desk-address.ts';

/** One visit as a line that opens its page: where, how it stands, who, and what it came to so far. */
export function VisitLineLink({ visit, chosen }: { readonly visit: VisitLine; readonly chosen: boolean }) {
  const words = useWords();
  const desk = useDeskAddress();
  const when = visit.endedAt ?? visit.startedAt ?? visit.plannedFor;
  const reason = sayWord(words, 'casework.visit-reason.*', visit.reason);
  const standing = visit.endedAt
    ? words.say('district.visits.ended')
    : visit.startedAt
      ? words.say('district.visits.under-way')
      : visit.plannedFor
        ? words.say('district.visits.planned')
        : words.say('district.owed.asked', { reason });
  return (
    <Link className="office-line" href={desk.to(`/visit/${visit.visit}`)} aria-current={chosen ? 'page' : undefined}>
      <strong>{visit.apiaryName ?? words.say('district.apiary-unknown')}</strong>
      <span>
        {standing} {when && words.dayAndTime(when, timeZoneHere)}
        {visit.plannedFor && !visit.startedAt && ` · ${reason}`}
      </span>
      <span className="quiet">{visit.inspectorName ?? ''}</span>
      {visit.results.length > 0 && (
        <span>
          {visit.results
            .map((result) => `${result.colonies} ${sayWord(words, 'casework.result.*', result.result)}`)
            .join(' · ')}
        </span>
      )}
    </Link>
  );
}
