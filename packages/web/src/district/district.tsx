import './district.css';
import type { Language } from '@combside/words/language';
import { lazy } from 'react';
import { Link, Route, Switch } from 'wouter';
import type { Session } from '../app/session.ts';
import { SpeaksWords, useWords } from '../ui/words-context.tsx';
import { useIsLive } from './use-office.ts';
import { VisitPage } from './visit-page.tsx';
import { VisitsList } from './visits-list.tsx';

const Questions = lazy(() => import('./questions/questions.tsx'));

interface DistrictProps {
  readonly session: Session;
  readonly language: Language;
}

/** The desk: visits as they arrive, and the one chosen as a page that reads from top to bottom. */
export default function District({ session, language }: DistrictProps) {
  return (
    <SpeaksWords language={language} rooms={['always', 'front', 'district', 'signs', 'casework', 'papers']}>
      <Desk session={session} />
    </SpeaksWords>
  );
}

function Desk({ session }: { readonly session: Session }) {
  const words = useWords();
  const live = useIsLive();
  return (
    <div className="office desk">
      <header className="office-head">
        <h1>{words.say('district.title')}</h1>
        <span role="status" className={live ? 'quiet' : 'finding owed'}>
          {words.say(live ? 'district.live.open' : 'district.live.waiting')}
        </span>
        <span>{session.districts.join(', ')}</span>
        <Link href="/questions">{words.say('district.questions')}</Link>
        <a href="/front">{words.say('always.signed-in', { name: session.name })}</a>
      </header>
      <Switch>
        <Route path="/questions/:asked?">
          {({ asked }) => <Questions session={session} language={words.language} asked={asked ?? null} />}
        </Route>
        <Route path="/visit/:visit">
          {({ visit }) => (
            <>
              <VisitsList chosen={visit} />
              <VisitPage key={visit} visit={visit} />
            </>
          )}
        </Route>
        <Route>
          <VisitsList chosen={null} />
          <main className="office-page">
            <p className="quiet">{words.say('district.choose')}</p>
          </main>
        </Route>
      </Switch>
    </div>
  );
}
