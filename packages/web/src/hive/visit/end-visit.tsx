import { endVisit, whatIsOpen } from '@combside/casework/examine/end-visit';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useWrite } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { FindingLine } from '../../ui/finding-line.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';
import { useHiveDevice } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { useVisit, type VisitInHand } from './use-visit.ts';

const reasons = [
  'hive.end.why.time',
  'hive.end.why.weather',
  'hive.end.why.aggressive',
  'hive.end.why.keeper',
  'hive.end.why.not-needed',
] as const;

/** What is still open, each with the way to settle it; then the end. Leaving is never silent. */
export function EndVisit({ visit }: { readonly visit: string }) {
  const words = useWords();
  const device = useHiveDevice();
  const [, go] = useLocation();
  const known = useVisit(visit);
  const [leftOpen, setLeftOpen] = useState<Readonly<Record<string, string>>>({});
  const ending = useWrite(async (given: VisitInHand, fresh) =>
    endVisit({
      ...given,
      visit: (await fresh.state({ type: 'visit', id: visit })) ?? given.visit,
      endedAt: device.now(),
      leftOpen,
    }),
  );
  if (!known) return null;

  const open = whatIsOpen(known).filter((one) => one.id !== 'casework.open.not-handed-over');
  const end = async () => {
    if (await ending.write(known)) go(`/visit/${visit}/result`, { replace: true });
  };

  return (
    <Screen
      title={words.say('hive.end.title')}
      where={known.apiary.apiary.current?.body.name ?? ''}
      foot={
        <>
          <WriteTrouble writing={ending} />
          <Button look="main act" disabled={ending.state === 'busy'} onClick={() => void end()}>
            {words.say('hive.end.do')}
          </Button>
          <Link className="button plain" href={`/visit/${visit}`}>
            {words.say('hive.colony.back-to-apiary')}
          </Link>
        </>
      }
    >
      <h2>{words.say(open.length === 0 ? 'hive.end.nothing-open' : 'hive.end.open')}</h2>
      <ul className="rows">
        {open.map((one) => {
          const colony = one.about?.type === 'colony' ? one.about.id : null;
          return (
            <li key={`${one.id} ${one.about?.id}`} className="open-line stack close">
              <FindingLine finding={one} />
              {one.id === 'casework.open.colony-not-opened' && colony !== null && (
                <>
                  <Choice
                    label={words.say('hive.end.why-left')}
                    options={reasons.map((id) => ({ value: id, label: words.say(id) }))}
                    chosen={reasons.find((id) => words.say(id) === leftOpen[colony]) ?? null}
                    onChoose={(id) => setLeftOpen({ ...leftOpen, [colony]: words.say(id) })}
                  />
                  <Link className="button" href={`/visit/${visit}/colony/${colony}`}>
                    {words.say('hive.end.open-it')}
                  </Link>
                </>
              )}
              {(one.id === 'casework.open.draft' || one.id === 'casework.open.not-assessed') && colony !== null && (
                <Link className="button" href={`/visit/${visit}/colony/${colony}`}>
                  {words.say('hive.end.open-it')}
                </Link>
              )}
              {one.id === 'casework.clean-down.owed-before-next' && colony !== null && (
                <Link className="button act" href={`/visit/${visit}/clean-down/${colony}`}>
                  {words.say('hive.clean.title')}
                </Link>
              )}
              {one.id === 'casework.clean-down.owed-at-exit' && (
                <Link className="button act" href={`/visit/${visit}/clean-down/exit`}>
                  {words.say('hive.clean.title-exit')}
                </Link>
              )}
            </li>
          );
        })}
      </ul>
    </Screen>
  );
}
