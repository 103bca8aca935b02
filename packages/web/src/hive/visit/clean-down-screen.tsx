import { beforeOpening, type CleanDownAnswer, recordCleanDown } from '@combside/casework/examine/clean-down';
import { cautionsFor } from '@combside/casework/examine/safety';
import type { CleanDownBody } from '@combside/record/kinds/clean-down';
import { useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { useWrite } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { FindingLine } from '../../ui/finding-line.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';
import { useHiveDevice } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { useVisit } from './use-visit.ts';

const gloves = [
  ['changed', 'hive.clean.gloves.changed'],
  ['not changed', 'hive.clean.gloves.not-changed'],
  ['none worn', 'hive.clean.gloves.none'],
] as const;
const tools = [
  ['flamed', 'hive.clean.tool.flamed'],
  ['replaced', 'hive.clean.tool.replaced'],
  ['not done', 'hive.clean.tool.not-done'],
] as const;
const phones = [
  ['wiped', 'hive.clean.phone.wiped'],
  ['not wiped', 'hive.clean.phone.not-wiped'],
] as const;

interface CleanDownScreenProps {
  readonly visit: string;
  /** The suspect colony it follows; null at the exit. */
  readonly after: string | null;
}

/** Three questions after a suspicion, each answered, before the next colony and again at the exit. */
export function CleanDownScreen({ visit, after }: CleanDownScreenProps) {
  const words = useWords();
  const device = useHiveDevice();
  const [, go] = useLocation();
  const next = new URLSearchParams(useSearch()).get('next');
  const known = useVisit(visit);
  const [glove, setGlove] = useState<CleanDownBody['gloves'] | null>(null);
  const [tool, setTool] = useState<CleanDownBody['tool'] | null>(null);
  const [phone, setPhone] = useState<CleanDownBody['phone'] | null>(null);
  const keeping = useWrite((given: Omit<CleanDownAnswer, 'doneAt'>) =>
    recordCleanDown({ ...given, doneAt: device.now() }),
  );
  if (!known) return null;

  const suspect = known.colonies.find((one) => one.about.id === after)?.colony.current?.body.label;
  const warning =
    next === null
      ? undefined
      : beforeOpening(known.visit, known.colonies, next).find(
          (one) => one.id === 'casework.clean-down.suspect-to-unsuspected',
        );
  const keep = async () => {
    const done = await keeping.write({
      visit: known.visit,
      colonies: known.colonies,
      after,
      gloves: glove,
      tool,
      phone,
      wentOnAfterWarning: warning !== undefined,
      remarks: '',
    });
    if (!done) return;
    const on = next === null ? `/visit/${visit}${after === null ? '/end' : ''}` : `/visit/${visit}/colony/${next}`;
    go(on, { replace: true });
  };

  return (
    <Screen
      title={words.say(after === null ? 'hive.clean.title-exit' : 'hive.clean.title')}
      where={[
        known.apiary.apiary.current?.body.name ?? '',
        ...(suspect ? [words.say('hive.colony.title', { label: suspect })] : []),
      ].join(' · ')}
      foot={
        <>
          <WriteTrouble writing={keeping} />
          <Button
            look="main act"
            disabled={glove === null || tool === null || phone === null || keeping.state === 'busy'}
            onClick={() => void keep()}
          >
            {words.say('hive.clean.keep')}
          </Button>
          <Button look="plain" onClick={() => go(`/visit/${visit}`)}>
            {words.say('hive.colony.back-to-apiary')}
          </Button>
        </>
      }
    >
      <Choice
        label={words.say('hive.clean.gloves')}
        options={gloves.map(([value, id]) => ({ value, label: words.say(id) }))}
        chosen={glove}
        onChoose={setGlove}
      />
      <Choice
        label={words.say('hive.clean.tool')}
        options={tools.map(([value, id]) => ({ value, label: words.say(id) }))}
        chosen={tool}
        onChoose={setTool}
      />
      <Choice
        label={words.say('hive.clean.phone')}
        options={phones.map(([value, id]) => ({ value, label: words.say(id) }))}
        chosen={phone}
        onChoose={setPhone}
      />
      <p>{words.say('hive.clean.soda')}</p>
      {warning && (
        <div className="caution">
          <FindingLine finding={warning} />
        </div>
      )}
      <ul className="quiet stack close">
        {[...cautionsFor('flaming'), ...cautionsFor('caustics')].map((line) => (
          <li key={line.id}>{words.say(line.id)}</li>
        ))}
      </ul>
    </Screen>
  );
}
