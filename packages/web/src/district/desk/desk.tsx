import { useRoute } from 'wouter';
import type { Session } from '../../app/session.ts';
import { ApiaryPage } from '../apiary/apiary-page.tsx';
import { ColonyPage } from '../apiary/colony-page.tsx';
import { VisitPage } from '../apiary/visit-page.tsx';
import { OwedList } from './owed-list.tsx';
import { Places } from './places.tsx';

/**
 * The desk itself: left what is owed, middle the apiaries as list or map, right the one thing chosen as a page. Left and
 * middle stay as they are while pages come and go.
 */
export function Desk({ session }: { readonly session: Session }) {
  const [isOpen, params] = useRoute(/^[/](?<kind>visit|apiary|colony)[/](?<id>[^/]+)[/]?$/);
  const id = isOpen ? (params.id ?? null) : null;
  return (
    <div className={id === null ? 'desk-parts' : 'desk-parts open'}>
      <OwedList chosen={id} />
      <Places chosen={id} />
      {isOpen && id !== null && params.kind === 'visit' && <VisitPage key={id} visit={id} />}
      {isOpen && id !== null && params.kind === 'apiary' && <ApiaryPage key={id} session={session} apiary={id} />}
      {isOpen && id !== null && params.kind === 'colony' && <ColonyPage key={id} colony={id} />}
    </div>
  );
}
