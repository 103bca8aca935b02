import { lazy, Suspense, useEffect, useState } from 'react';
import { Redirect, Route, Switch, useLocation } from 'wouter';
import { SpeaksWords, useWords } from '../ui/words-context.tsx';
import { CatchesFailure } from './catches-failure.tsx';
import { FrontDoor } from './front-door.tsx';
import { NewVersion } from './new-version.tsx';
import { usePreferences } from './preferences.ts';
import { keptSession, type Session } from './session.ts';
import { SignIn } from './sign-in.tsx';

// Each half is fetched when it is entered: the phone never loads the desk.
const Hive = lazy(() => import('../hive/hive.tsx'));
const District = lazy(() => import('../district/district.tsx'));

/** The whole program: who is signed in, and which half is open. */
export function Program() {
  const { language } = usePreferences();
  const [session, setSession] = useState<Session | null | undefined>();
  useEffect(() => void keptSession().then(setSession), []);
  const [, go] = useLocation();
  // Whoever works on without a network and is asked for the password later comes back to where the work is.
  const enter = (entered: Session) => {
    setSession(entered);
    go(entered.role === 'office' ? '/district' : '/hive', { replace: true });
  };
  return (
    <SpeaksWords language={language} rooms={['always', 'front']}>
      <CatchesFailure>
        <NewVersion />
        {session === undefined ? (
          <Opening />
        ) : session ? (
          <Suspense fallback={<Opening />}>
            <Switch>
              <Route path="/">
                {session.role === 'office' ? (
                  <Redirect to="/district" />
                ) : (
                  <FrontDoor session={session} onLeave={() => setSession(null)} />
                )}
              </Route>
              <Route path="/front">
                <FrontDoor session={session} onLeave={() => setSession(null)} />
              </Route>
              <Route path="/sign-in">
                <SignIn onSignedIn={enter} />
              </Route>
              <Route path="/hive" nest>
                <Hive session={session} language={language} />
              </Route>
              <Route path="/district" nest>
                <District session={session} language={language} />
              </Route>
              <Route>
                <Nowhere />
              </Route>
            </Switch>
          </Suspense>
        ) : (
          <SignIn onSignedIn={setSession} />
        )}
      </CatchesFailure>
    </SpeaksWords>
  );
}

function Opening() {
  const words = useWords();
  return <p className="front field">{words.say('front.opening')}</p>;
}

function Nowhere() {
  const words = useWords();
  return (
    <main className="front field stack">
      <h1>{words.say('front.nowhere')}</h1>
      <a className="button" href="/">
        {words.say('front.nowhere.back')}
      </a>
    </main>
  );
}
