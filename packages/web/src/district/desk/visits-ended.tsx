import { visits } from '@combside/contract/visits';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { onceEach } from '../office/once-each.ts';
import { usePages } from '../office/use-pages.ts';
import { VisitLineLink } from './visit-line-link.tsx';

/** Visits that ended, newest first, a page at a time. */
export function VisitsEnded({ chosen }: { readonly chosen: string | null }) {
  const words = useWords();
  const { answer, more } = usePages(visits, '/api/visits?limit=30', (event) => event.visit !== null);
  const all = onceEach(
    answer,
    (page) => page.visits,
    (one) => one.visit,
  );
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
      {more && ended.length > 0 && (
        <Button look="wide" onClick={more}>
          {words.say('district.visits.more')}
        </Button>
      )}
    </section>
  );
}
