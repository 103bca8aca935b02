import type { ReactNode } from 'react';
import { Route, Switch } from 'wouter';
import type { Session } from '../app/session.ts';
import { ApiaryPage } from './apiary-page.tsx';
import { ColonyPage } from './colony-page.tsx';
import { OwedList } from './owed-list.tsx';
import { Places } from './places.tsx';
import { VisitPage } from './visit-page.tsx';

/** The desk itself: left what is owed, middle the apiaries as list or map, right the one thing chosen as a page. */
export function Desk({ session }: { readonly session: Session }) {
  return (
    <Switch>
      <Route path="/visit/:id">
        {({ id }) => (
          <Parts chosen={id}>
            <VisitPage key={id} visit={id} />
          </Parts>
        )}
      </Route>
      <Route path="/apiary/:id">
        {({ id }) => (
          <Parts chosen={id}>
            <ApiaryPage key={id} session={session} apiary={id} />
          </Parts>
        )}
      </Route>
      <Route path="/colony/:id">
        {({ id }) => (
          <Parts chosen={id}>
            <ColonyPage key={id} colony={id} />
          </Parts>
        )}
      </Route>
      <Route>
        <Parts chosen={null} />
      </Route>
    </Switch>
  );
}

function Parts({ chosen, children }: { readonly chosen: string | null; readonly children?: ReactNode }) {
  return (
    <div className={chosen === null ? 'desk-parts' : 'desk-parts open'}>
      <OwedList chosen={chosen} />
      <Places chosen={chosen} />
      {children}
    </div>
  );
}
