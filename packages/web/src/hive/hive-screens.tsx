import './hive.css';
import type { Room } from '@combside/words/rooms';
import { lazy, Suspense, useEffect } from 'react';
import { Route, Switch } from 'wouter';
import { flagOpenVisit } from '../app/visit-flag.ts';
import { useWords } from '../ui/words-context.tsx';
import { ColonyScreen } from './colony/colony-screen.tsx';
import { useHiveDevice, useSummaries } from './hive-device.tsx';
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

/** The words that the hive screens speak. */
export const hiveRooms: readonly Room[] = ['always', 'front', 'hive', 'signs', 'casework', 'reasoning', 'roadside'];

/** Every screen of the hive half by its address, for whoever stands inside GivesHiveDevice. */
export function HiveScreens() {
  const words = useWords();
  return (
    <>
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
    </>
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
