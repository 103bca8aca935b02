import './district.css';
import './desk/desk.css';
import type { Language } from '@combside/words/language';
import { lazy, Suspense } from 'react';
import { Link, Route, Switch } from 'wouter';
import type { Session } from '../app/session.ts';
import { GivesDevice } from '../device/device-in-hand.tsx';
import { SpeaksWords, useWords } from '../ui/words-context.tsx';
import { Desk } from './desk/desk.tsx';
import { deskDevice } from './desk-device.ts';
import { NamesDistricts, useDistrictName } from './district-name.tsx';
import { useIsLive } from './office/arrivals.ts';
import { keepAnswersFor } from './office/kept-answers.ts';

const Register = lazy(() => import('./register/register.tsx'));
const Questions = lazy(() => import('./questions/questions.tsx'));
const Planning = lazy(() => import('./planning/planning.tsx'));
const ReasoningOfExamination = lazy(() => import('./reasoning/reasoning-of-examination.tsx'));
const CombOfPhotograph = lazy(() => import('./comb/comb-page.tsx'));
const CombPhotographs = lazy(() => import('./comb/photographs-page.tsx'));
const Figures = lazy(() => import('./figures/figures.tsx'));

interface DistrictProps {
  readonly session: Session;
  readonly language: Language;
}

/** The district office: the desk, planning, the programme's figures, and what else the office works with. */
export default function District({ session, language }: DistrictProps) {
  keepAnswersFor(session.person);
  return (
    <SpeaksWords
      language={language}
      rooms={['always', 'front', 'district', 'planning', 'programme', 'signs', 'casework', 'papers']}
    >
      <NamesDistricts pack={session.pack}>
        <GivesDevice given={deskDevice(session.person)}>
          <Office session={session} />
        </GivesDevice>
      </NamesDistricts>
    </SpeaksWords>
  );
}

function Office({ session }: { readonly session: Session }) {
  const words = useWords();
  const live = useIsLive();
  const districtName = useDistrictName();
  return (
    <div className="office desk">
      <header className="office-head">
        <h1>{words.say('district.title')}</h1>
        <span role="status" className={live ? 'quiet' : 'finding owed'}>
          {words.say(live ? 'district.live.open' : 'district.live.waiting')}
        </span>
        <span>
          {session.districts.length > 3
            ? words.say('district.districts', { count: session.districts.length })
            : session.districts.map(districtName).join(', ')}
        </span>
        <nav className="office-rooms" aria-label={words.say('district.nav')}>
          <Link href="/">{words.say('district.desk')}</Link>
          <Link href="/register">{words.say('district.register')}</Link>
          <Link href="/combs">{words.say('district.combs')}</Link>
          <Link href="/planning">{words.say('district.planning')}</Link>
          <Link href="/figures">{words.say('district.figures')}</Link>
          <Link href="/questions">{words.say('district.questions')}</Link>
        </nav>
        <a href="/front">{words.say('always.signed-in', { name: session.name })}</a>
      </header>
      <Suspense fallback={<p className="office-page quiet">{words.say('front.opening')}</p>}>
        <Switch>
          <Route path="/questions/:asked?">
            {({ asked }) => <Questions language={words.language} asked={asked ?? null} />}
          </Route>
          <Route path="/reasoning/colony/:colony/examination/:entry">
            {({ colony, entry }) => (
              <ReasoningOfExamination session={session} language={words.language} colony={colony} entry={entry} />
            )}
          </Route>
          <Route path="/combs">
            <CombPhotographs language={words.language} />
          </Route>
          <Route path="/comb/colony/:colony/photograph/:hash">
            {({ colony, hash }) => <CombOfPhotograph language={words.language} colony={colony} hash={hash} />}
          </Route>
          <Route path="/register/*?">
            <Register session={session} language={words.language} />
          </Route>
          <Route path="/planning">
            <Planning />
          </Route>
          <Route path="/figures">
            <Figures />
          </Route>
          <Route>
            <Desk session={session} />
          </Route>
        </Switch>
      </Suspense>
    </div>
  );
}
