import { assessmentAt, examinationAt } from '@combside/casework/examine/walk';
import { useState } from 'react';
import { useWords } from '../../ui/words-context.tsx';
import { useEntity } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { useVisit } from '../visit/use-visit.ts';
import { OpenColony } from './open-colony.tsx';
import type { Corrected } from './use-closing.ts';

interface CorrectColonyProps {
  readonly visit: string;
  readonly colony: string;
  readonly view: string;
}

/** A closed colony on the screens it was made on, prefilled with what was sealed. */
export function CorrectColony({ visit, colony, view }: CorrectColonyProps) {
  const words = useWords();
  const known = useVisit(visit);
  const state = useEntity('colony', colony);
  // What is corrected stays the same while it is corrected, also when writing it has already changed the record.
  const [corrected, setCorrected] = useState<Corrected | null>(null);
  const examined = state ? examinationAt(state, visit) : null;
  if (state && examined && corrected === null) {
    setCorrected({ examined, assessed: assessmentAt(state, visit) });
  }
  if (known === undefined || state === undefined) {
    return (
      <Screen title={words.say('front.opening')}>
        <p>{words.say('front.opening')}</p>
      </Screen>
    );
  }
  if (known === null || state === null || !corrected) {
    return (
      <Screen title={words.say('front.nowhere')}>
        <p>{words.say('casework.refused.no-such-line')}</p>
      </Screen>
    );
  }
  return <OpenColony known={known} colony={state} view={view} corrects={corrected} />;
}
