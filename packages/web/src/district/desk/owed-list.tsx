import { owed } from '@combside/contract/owed';
import { useState } from 'react';
import { Link } from 'wouter';
import { dayEdges } from '../../app/day-in-zone.ts';
import { Button } from '../../ui/button.tsx';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskAddress } from '../desk-address.ts';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { type OwedGroup, owedByTime } from './owed-by-time.ts';
import { OwedDutiesLine } from './owed-duties-line.tsx';
import { VisitLineLink } from './visit-line-link.tsx';
import { VisitsEnded } from './visits-ended.tsx';

/** The left side of the desk: what is owed, by time, and what ended lately. */
export function OwedList({ chosen }: { readonly chosen: string | null }) {
  const words = useWords();
  const asked = useAsked(owed, '/api/owed', () => true);
  const { answer, state } = asked;
  const groups = answer ? owedByTime(answer, dayEdges(answer.now, timeZoneHere)) : [];
  const empty = groups.every(({ visits, duties }) => visits.length + duties.length === 0);
  return (
    <nav className="office-list" aria-label={words.say('district.owed')}>
      <h2>{words.say('district.owed')}</h2>
      <Unanswered asked={asked} />
      {state === 'asking' && !answer && <p className="quiet">{words.say('district.owed.loading')}</p>}
      {answer && empty && <p className="quiet">{words.say('district.owed.none')}</p>}
      {groups.map((group) => (
        <OwedSection key={group.time} group={group} chosen={chosen} />
      ))}
      <VisitsEnded chosen={chosen} />
    </nav>
  );
}

/** So many lines stand there before somebody asks for all. */
const shortly = 6;

function OwedSection({ group, chosen }: { readonly group: OwedGroup; readonly chosen: string | null }) {
  const words = useWords();
  const desk = useDeskAddress();
  const [all, setAll] = useState(false);
  const count = group.visits.length + group.duties.length;
  if (count === 0) return null;
  const duties = all ? group.duties : group.duties.slice(0, Math.max(0, shortly - group.visits.length));
  const hidden = group.duties.length - duties.length;
  return (
    <section className="owed-time" aria-labelledby={`owed-${group.time}`}>
      <h3 id={`owed-${group.time}`}>
        {words.say(`district.owed.${group.time}`)} <span className="quiet">{words.number(count)}</span>
      </h3>
      <ul className="rows">
        {group.visits.map((visit) => (
          <li key={visit.visit}>
            <VisitLineLink visit={visit} chosen={visit.visit === chosen} />
          </li>
        ))}
        {duties.map((one) => (
          <li key={one.apiary}>
            <Link
              className="office-line"
              href={desk.to(`/apiary/${one.apiary}`)}
              aria-current={one.apiary === chosen ? 'page' : undefined}
            >
              <strong>{one.apiaryName ?? words.say('district.apiary-unknown')}</strong>
              <OwedDutiesLine duties={one.duties} />
              {one.due && (
                <span className="quiet">
                  {words.say('district.owed.by', { day: words.dayOf(one.due, timeZoneHere) })}
                </span>
              )}
            </Link>
          </li>
        ))}
      </ul>
      {hidden > 0 && (
        <Button look="plain" onClick={() => setAll(true)}>
          {words.say('district.owed.all', { count: hidden })}
        </Button>
      )}
    </section>
  );
}
