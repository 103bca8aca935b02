import './register.css';
import type { Language } from '@combside/words/language';
import type { ReactNode } from 'react';
import { Route, Switch } from 'wouter';
import type { Session } from '../../app/session.ts';
import { SpeaksWords, useWords } from '../../ui/words-context.tsx';
import { ApiaryRecord } from './apiary-record.tsx';
import { ColonyRecord } from './colony-record.tsx';
import { DuplicatesPage } from './duplicates-page.tsx';
import { ExportPage } from './export-page.tsx';
import { ImportPage } from './import/import-page.tsx';
import { KeeperRecord } from './keeper-record.tsx';
import { RegisterList } from './register-list.tsx';
import { RegisterTabs, type Tab } from './register-tabs.tsx';
import { UnsettledList } from './unsettled-list.tsx';

interface RegisterProps {
  readonly session: Session;
  readonly language: Language;
}

/** The register at the desk: search and lists on the left, the one record chosen or the work at hand beside them. */
export default function Register({ session, language }: RegisterProps) {
  return (
    <SpeaksWords language={language} rooms={['always', 'district', 'register', 'casework']}>
      <Switch>
        <Route path="/register/apiaries/:id">
          {({ id }) => (
            <>
              <RegisterList of="apiaries" chosen={id} />
              <ApiaryRecord key={id} apiary={id} />
            </>
          )}
        </Route>
        <Route path="/register/keepers/:id?">
          {({ id }) => (
            <>
              <RegisterList of="keepers" chosen={id ?? null} />
              {id ? <KeeperRecord key={id} keeper={id} /> : <ChooseOne />}
            </>
          )}
        </Route>
        <Route path="/register/colonies/:id">
          {({ id }) => (
            <>
              <RegisterList of="apiaries" chosen={null} />
              <ColonyRecord key={id} colony={id} />
            </>
          )}
        </Route>
        <Route path="/register/settle">
          <Tabbed at="settle">
            <UnsettledList />
          </Tabbed>
        </Route>
        <Route path="/register/duplicates">
          <Tabbed at="duplicates">
            <DuplicatesPage />
          </Tabbed>
        </Route>
        <Route path="/register/import">
          <Tabbed at="import">
            <ImportPage session={session} />
          </Tabbed>
        </Route>
        <Route path="/register/export">
          <Tabbed at="export">
            <ExportPage session={session} />
          </Tabbed>
        </Route>
        <Route>
          <RegisterList of="apiaries" chosen={null} />
          <ChooseOne />
        </Route>
      </Switch>
    </SpeaksWords>
  );
}

function ChooseOne() {
  const words = useWords();
  return (
    <main className="office-page">
      <p className="quiet">{words.say('register.choose')}</p>
    </main>
  );
}

function Tabbed({ at, children }: { readonly at: Tab; readonly children: ReactNode }) {
  const words = useWords();
  return (
    <>
      <nav className="office-list" aria-label={words.say('register.title')}>
        <RegisterTabs at={at} />
      </nav>
      <main className="office-page register-work stack">{children}</main>
    </>
  );
}
