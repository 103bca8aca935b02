import './visit.css';
import { beforeOpening } from '@combside/casework/examine/clean-down';
import { type WalkedColony, walk } from '@combside/casework/examine/walk';
import { lazy, Suspense, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { Saving } from '../../device/drafts/open-draft.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { NotesShown } from '../../ui/notes-shown.tsx';
import { ResultMark } from '../../ui/result-mark.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useHiveDevice } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { AddNote } from './add-note.tsx';
import { PlanOfApiary } from './plan-of-apiary.tsx';
import { useNames } from './use-names.ts';
import { useVisit } from './use-visit.ts';

// The reckoning behind it is no part of what the first tap waits for.
const ChanceSoFar = lazy(() => import('./chance-so-far.tsx'));

interface VisitScreenProps {
  readonly visit: string;
  readonly as: 'plan' | 'walk';
}

/** The apiary as it stands: each colony with its mark and word, by the plan or in walking order. */
export function VisitScreen({ visit, as }: VisitScreenProps) {
  const words = useWords();
  const [, go] = useLocation();
  const known = useVisit(visit);
  const device = useHiveDevice();
  const [saving, setSaving] = useState<Saving>('saved');
  const nameOf = useNames();
  if (known === undefined) {
    return (
      <Screen title={words.say('front.opening')}>
        <p>{words.say('front.opening')}</p>
      </Screen>
    );
  }
  if (known === null) {
    return (
      <Screen title={words.say('front.nowhere')}>
        <Link className="button" href="/">
          {words.say('hive.result.to-today')}
        </Link>
      </Screen>
    );
  }

  const walked = walk(known.apiary, known.colonies, visit, known.drafts);
  const opened = walked.filter((one) => one.word !== 'not opened' && one.word !== 'being looked at');
  // A colony left half looked at comes before the next unopened one; suspects of earlier visits come last.
  const next =
    walked.find((one) => one.word === 'being looked at') ??
    walked.find((one) => one.word === 'not opened' && !one.suspectBefore) ??
    walked.find((one) => one.word === 'not opened');
  const plan = known.apiary.apiary.current?.body.plan ?? null;
  const open = (colony: string) => {
    const owed = beforeOpening(known.visit, known.colonies, colony).find((one) => one.weight === 'owed');
    go(owed?.about ? `/visit/${visit}/clean-down/${owed.about.id}?next=${colony}` : `/visit/${visit}/colony/${colony}`);
  };
  const shown = plan !== null && as === 'plan' ? 'plan' : 'walk';

  return (
    <Screen
      saving={saving}
      title={known.apiary.apiary.current?.body.name ?? ''}
      beside={words.say('hive.visit.opened', { done: opened.length, all: walked.length })}
      foot={
        <>
          {next ? (
            <Button look="main act" onClick={() => open(next.colony)}>
              {words.say('hive.visit.open-next', { label: next.label })}
            </Button>
          ) : (
            <p>{words.say('hive.visit.all-opened')}</p>
          )}
          <Link className={next ? 'button plain' : 'button main act'} href={`/visit/${visit}/end`}>
            {words.say('hive.visit.end')}
          </Link>
        </>
      }
    >
      {walked.length === 0 && <p className="caution">{words.say('hive.visit.no-colonies')}</p>}
      {plan !== null && (
        <Choice
          label={words.say('hive.visit.shown-as')}
          options={[
            { value: 'plan', label: words.say('hive.visit.plan') },
            { value: 'walk', label: words.say('hive.visit.walk') },
          ]}
          chosen={shown}
          onChoose={(value) => go(`/visit/${visit}/${value}`, { replace: true })}
        />
      )}
      {shown === 'plan' && plan ? (
        <PlanOfApiary plan={plan} walked={walked} onOpen={open} />
      ) : (
        <ul className="rows">
          {walked.map((one) => (
            <li key={one.colony}>
              <ColonyRow colony={one} onOpen={() => open(one.colony)} />
            </li>
          ))}
        </ul>
      )}
      {/* Beside a suspicion the number would read as reassurance. */}
      {!walked.some((one) => one.word === 'suspect' || one.suspectBefore) && (
        <Suspense fallback={null}>
          <ChanceSoFar colonies={known.colonies} visit={visit} />
        </Suspense>
      )}
      <NotesShown notes={known.visit.notes} nameOf={nameOf} timeZone={device.timeZone} />
      <AddNote about={known.visit.about} onSaving={setSaving} />
      <Link className="button" href={`/safety/${known.apiary.about.id}`}>
        {words.say('hive.safety.open')}
      </Link>
    </Screen>
  );
}

function ColonyRow({ colony, onOpen }: { readonly colony: WalkedColony; readonly onOpen: () => void }) {
  const words = useWords();
  return (
    <button type="button" className="colony-row" onClick={onOpen}>
      <ResultMark result={colony.word} size={36} />
      <span>
        <span className="label">{words.say('hive.colony.title', { label: colony.label })}</span>{' '}
        <span className="quiet">{words.say(`casework.walk.${colony.word}`)}</span>
      </span>
      <span className="quiet">
        {colony.hiveState === 'living' ? '' : words.say(`casework.hive-state.${colony.hiveState}`)}
      </span>
    </button>
  );
}
