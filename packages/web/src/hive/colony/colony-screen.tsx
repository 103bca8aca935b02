import { examinationAt } from '@combside/casework/examine/walk';
import { outdatedSince } from '@combside/casework/report/issue';
import { lazy, Suspense } from 'react';
import { useWords } from '../../ui/words-context.tsx';
import { useEntity } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { useVisit } from '../visit/use-visit.ts';
import { fetchClosedColony } from './fetch-closed-colony.ts';
import { OpenColony } from './open-colony.tsx';

// No part of what the first tap waits for.
const ClosedColony = lazy(async () => ({ default: (await fetchClosedColony()).ClosedColony }));

interface ColonyScreenProps {
  readonly visit: string;
  readonly colony: string;
  readonly view: string;
}

/** One colony at a visit: being looked at, or closed already. */
export function ColonyScreen({ visit, colony, view }: ColonyScreenProps) {
  const words = useWords();
  const known = useVisit(visit);
  const state = useEntity('colony', colony);
  if (known === undefined || state === undefined) {
    return (
      <Screen title={words.say('front.opening')}>
        <p>{words.say('front.opening')}</p>
      </Screen>
    );
  }
  if (known === null || state === null || !state.colony.current) {
    return (
      <Screen title={words.say('front.nowhere')}>
        <p>{words.say('casework.refused.not-in-register')}</p>
      </Screen>
    );
  }
  if (examinationAt(state, visit) && known.drafts[colony] === undefined) {
    return (
      <Suspense
        fallback={
          <Screen title={words.say('front.opening')}>
            <p>{words.say('front.opening')}</p>
          </Screen>
        }
      >
        <ClosedColony
          colony={state}
          visit={visit}
          where={known.apiary.apiary.current?.body.name ?? ''}
          outdated={outdatedSince(known.visit, [state])}
        />
      </Suspense>
    );
  }
  return <OpenColony known={known} colony={state} view={view} />;
}
