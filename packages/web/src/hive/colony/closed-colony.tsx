import { assessmentAt, examinationAt } from '@combside/casework/examine/walk';
import type { ColonyState } from '@combside/record/states';
import { lazy, Suspense, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { Saving } from '../../device/drafts/open-draft.ts';
import { Button } from '../../ui/button.tsx';
import { CorrectionsShown } from '../../ui/corrections-shown.tsx';
import { NotesShown } from '../../ui/notes-shown.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { SignDrawing } from '../../ui/sign-drawing.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useHiveDevice } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { AddNote } from '../visit/add-note.tsx';
import { useNames } from '../visit/use-names.ts';

// Only where photographs were taken, and no part of what the first tap waits for.
const CombPhotographs = lazy(() => import('../comb/comb-photographs.tsx'));

/** A colony that is closed at this visit: what stands written, and after a suspicion what comes first now. */
export function ClosedColony({
  colony,
  visit,
  where,
  outdated,
}: {
  readonly colony: ColonyState;
  readonly visit: string;
  /** Name of the apiary. */
  readonly where: string;
  /** When the result was handed over that a correction here has made old; null where there is none. */
  readonly outdated: string | null;
}) {
  const words = useWords();
  const device = useHiveDevice();
  const [saving, setSaving] = useState<Saving>('saved');
  const [, go] = useLocation();
  const nameOf = useNames();
  const label = colony.colony.current?.body.label ?? '';
  const examined = examinationAt(colony, visit);
  const assessed = assessmentAt(colony, visit);
  const suspect = assessed?.body.result === 'suspect';
  const seen = examined?.body.signs.filter((one) => one.outcome === 'seen') ?? [];
  return (
    <Screen
      saving={saving}
      where={where}
      title={words.say('hive.colony.title', { label })}
      foot={
        <>
          {suspect && (
            <Button look="main act" onClick={() => go(`/visit/${visit}/clean-down/${colony.about.id}`)}>
              {words.say('hive.clean.title')}
            </Button>
          )}
          <Button look={suspect ? 'plain' : 'main'} onClick={() => go(`/visit/${visit}`)}>
            {words.say('hive.colony.back-to-apiary')}
          </Button>
          {examined?.written.by === device.session.person && (
            <Link className="button plain" href={`/visit/${visit}/correct/${colony.about.id}`}>
              {words.say('hive.correct.start')}
            </Link>
          )}
        </>
      }
    >
      {outdated !== null && (
        <div className="caution stack close">
          <p>{words.say('hive.result.outdated-here', { time: words.dayAndTime(outdated, device.timeZone) })}</p>
          <Link className="button" href={`/visit/${visit}/result`}>
            {words.say('hive.result.to-result')}
          </Link>
        </div>
      )}
      <p className="large-words begins">{sayWord(words, 'casework.result.*', assessed?.body.result ?? 'not judged')}</p>
      {assessed && assessed.body.suspected.length > 0 && (
        <p>{words.list(assessed.body.suspected.map((one) => sayWord(words, 'signs.condition.*.name', one)))}</p>
      )}
      {suspect && <p className="caution">{words.say('hive.suspect.first')}</p>}
      <ul className="rows">
        {seen.map((one) => (
          <li key={one.sign} className="reason">
            <SignDrawing sign={one.sign} width={48} name="" />
            <p>
              {sayWord(words, 'signs.sign.*.name', one.sign)}
              {one.count && ` · ${words.say(`casework.count.${one.count}`)}`}
              {one.amount && ` · ${words.say(`casework.amount.${one.amount}`)}`}
            </p>
          </li>
        ))}
      </ul>
      {examined?.body.ropeTests.map((test, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rope tests have no identity of their own and never move
        <p key={index}>
          {words.say('hive.rope.title')}: {words.unit(test.threadMillimetres, 'mm')}
        </p>
      ))}
      {examined && examined.body.photographs.length > 0 && (
        <Suspense fallback={null}>
          <CombPhotographs visit={visit} colony={colony.about.id} photographs={examined.body.photographs} />
        </Suspense>
      )}
      <p className="quiet">{words.say('hive.colony.closed', { label })}</p>
      {examined && <p className="quiet">{words.dayAndTime(examined.body.observedAt, device.timeZone)}</p>}
      {examined && (
        <CorrectionsShown
          examined={examined}
          assessments={colony.assessments}
          nameOf={nameOf}
          timeZone={device.timeZone}
        />
      )}
      <NotesShown notes={colony.notes} nameOf={nameOf} timeZone={device.timeZone} />
      <AddNote about={colony.about} onSaving={setSaving} />
    </Screen>
  );
}
