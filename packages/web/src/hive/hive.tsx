import './hive.css';
import type { Language } from '@combside/words/language';
import { lazy, Suspense, useEffect, useState } from 'react';
import { Route, Switch } from 'wouter';
import type { Session } from '../app/session.ts';
import { flagOpenVisit } from '../app/visit-flag.ts';
import { SpeaksWords, useWords } from '../ui/words-context.tsx';
import { ColonyScreen } from './colony/colony-screen.tsx';
import { GivesHiveDevice, type HiveDevice, useHiveDevice, useSummaries } from './hive-device.tsx';
import { openHiveDevice } from './open-hive-device.ts';
import { Today } from './today/today.tsx';
import { VisitScreen } from './visit/visit-screen.tsx';

// Fetched when they are entered (and kept on the device like everything else): Today does not wait for them.
const CleanDownScreen = lazy(async () => ({
  default: (await import('./visit/clean-down-screen.tsx')).CleanDownScreen,
}));
const CorrectColony = lazy(async () => ({ default: (await import('./colony/correct-colony.tsx')).CorrectColony }));
const EndVisit = lazy(async () => ({ default: (await import('./visit/end-visit.tsx')).EndVisit }));
const FindApiary = lazy(async () => ({ default: (await import('./today/find-apiary.tsx')).FindApiary }));
const NotTakenScreen = lazy(async () => ({ default: (await import('./today/not-taken.tsx')).NotTakenScreen }));
const ResultScreen = lazy(async () => ({ default: (await import('./result/result-screen.tsx')).ResultScreen }));
const CombScreen = lazy(() => import('./comb/comb-screen.tsx'));
const Roadside = lazy(async () => ({ default: (await import('./today/roadside.tsx')).Roadside }));
const SafetyCard = lazy(async () => ({ default: (await import('./today/safety-card.tsx')).SafetyCard }));
const StartVisit = lazy(async () => ({ default: (await import('./visit/start-visit.tsx')).StartVisit }));

interface HiveProps {
  readonly session: Session;
  readonly language: Language;
}

/** The hive half: everything an inspector does at an apiary, with or without a network. */
export default function Hive({ session, language }: HiveProps) {
  return (
    <SpeaksWords language={language} rooms={['always', 'front', 'hive', 'signs', 'casework', 'reasoning', 'roadside']}>
      <OpensField session={session} />
    </SpeaksWords>
  );
}

function OpensField({ session }: { readonly session: Session }) {
  const words = useWords();
  const [opened, setOpened] = useState<HiveDevice | 'failed' | 'blocked' | 'given up' | null>(null);
  useEffect(() => {
    let left = false;
    let close = () => {};
    openHiveDevice(session, {
      blocked: () => {
        if (!left) setOpened('blocked');
      },
      closed: () => {
        if (!left) setOpened('given up');
      },
    }).then(
      (device) => {
        close = device.close;
        if (left) close();
        else setOpened(device);
      },
      (failure: unknown) => {
        if (!left) setOpened('failed');
        // Handed on, so that the fault report has it.
        void Promise.reject(failure);
      },
    );
    return () => {
      left = true;
      close();
    };
  }, [session]);

  if (opened === null) return <p className="front field">{words.say('front.opening')}</p>;
  if (opened === 'blocked') return <p className="front field caution">{words.say('front.blocked')}</p>;
  if (opened === 'given up') return <p className="front field caution">{words.say('front.given-up')}</p>;
  if (opened === 'failed') return <p className="front field caution">{words.say('front.opening.failed')}</p>;
  return (
    <GivesHiveDevice device={opened}>
      <FlagsOpenVisit />
      <Suspense fallback={<p className="front field">{words.say('front.opening')}</p>}>
        <Switch>
          <Route path="/not-taken">
            <NotTakenScreen />
          </Route>
          <Route path="/find">
            <FindApiary />
          </Route>
          <Route path="/roadside">
            <Roadside />
          </Route>
          <Route path="/start/apiary/:apiary">{({ apiary }) => <StartVisit apiary={apiary} visit={null} />}</Route>
          <Route path="/start/visit/:visit/apiary/:apiary">
            {({ visit, apiary }) => <StartVisit apiary={apiary} visit={visit} />}
          </Route>
          <Route path="/safety/:apiary">{({ apiary }) => <SafetyCard apiary={apiary} />}</Route>
          <Route path="/visit/:visit/colony/:colony/:view?">
            {({ visit, colony, view }) => (
              <ColonyScreen key={colony} visit={visit} colony={colony} view={view ?? 'look'} />
            )}
          </Route>
          <Route path="/visit/:visit/correct/:colony/:view?">
            {({ visit, colony, view }) => (
              <CorrectColony key={colony} visit={visit} colony={colony} view={view ?? 'look'} />
            )}
          </Route>
          <Route path="/visit/:visit/comb/:colony/:photograph/:view?">
            {({ visit, colony, photograph, view }) => (
              <CombScreen key={photograph} visit={visit} colony={colony} photograph={photograph} view={view ?? null} />
            )}
          </Route>
          <Route path="/visit/:visit/clean-down/:after">
            {({ visit, after }) => <CleanDownScreen visit={visit} after={after === 'exit' ? null : after} />}
          </Route>
          <Route path="/visit/:visit/end">{({ visit }) => <EndVisit visit={visit} />}</Route>
          <Route path="/visit/:visit/result">{({ visit }) => <ResultScreen visit={visit} />}</Route>
          <Route path="/visit/:visit/:as?">
            {({ visit, as }) => <VisitScreen visit={visit} as={as === 'walk' ? 'walk' : 'plan'} />}
          </Route>
          <Route>
            <Today />
          </Route>
        </Switch>
      </Suspense>
    </GivesHiveDevice>
  );
}

/** Holds new versions of the program back while a visit of this person is under way. */
function FlagsOpenVisit() {
  const { session } = useHiveDevice();
  const visits = useSummaries('visit', { inspector: session.person });
  const open = visits?.some((visit) => visit.startedAt !== null && visit.endedAt === null);
  useEffect(() => {
    if (open !== undefined) void flagOpenVisit(open);
  }, [open]);
  return null;
}
