import type { ExaminationDraft } from '@combside/casework/draft/examination-draft';
import type { KeeperAnswer, Tap } from '@combside/casework/draft/tap';
import { finds } from '@combside/casework/vocabulary';
import { lazy, Suspense, useRef, useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useHiveDevice } from '../hive-device.tsx';
import { RopeScreen } from './rope-screen.tsx';
import { TestsAtTheHive } from './tests-at-the-hive.tsx';

// No part of what the first tap waits for.
const CombPhotographs = lazy(() => import('../comb/comb-photographs.tsx'));

interface MoreScreenProps {
  readonly visit: string;
  readonly draft: ExaminationDraft;
  readonly onTap: (tap: Tap) => void;
}

/** Rope test, tests read here, finds at the same opening, what the keeper says, photographs and remarks. */
export function MoreScreen({ visit, draft, onTap }: MoreScreenProps) {
  const words = useWords();
  return (
    <>
      <RopeScreen draft={draft} onTap={onTap} />
      <TestsAtTheHive draft={draft} onTap={onTap} />
      <section className="stack" aria-labelledby="finds-title">
        <h2 id="finds-title">{words.say('hive.finds.title')}</h2>
        {finds.map((find) => {
          const kept = draft.finds.find((one) => one.find === find);
          return (
            <Choice
              key={find}
              label={words.say(`casework.find.${find}`)}
              options={[
                { value: 'slight', label: words.say('hive.signs.slight') },
                { value: 'marked', label: words.say('hive.signs.marked') },
                { value: 'not seen', label: words.say('hive.signs.not-seen') },
              ]}
              chosen={kept === undefined ? null : kept.outcome === 'not seen' ? 'not seen' : (kept.amount ?? 'slight')}
              onChoose={(value) =>
                onTap(
                  value === 'not seen'
                    ? { tap: 'find', find, outcome: 'not seen', amount: null }
                    : { tap: 'find', find, outcome: 'seen', amount: value },
                )
              }
            />
          );
        })}
      </section>
      <AskedOf
        label={words.say('hive.colony.medicines')}
        answer={draft.medicines}
        onAnswer={(answer) => onTap({ tap: 'medicines', answer })}
      />
      <AskedOf
        label={words.say('hive.colony.comb-changes')}
        answer={draft.combChanges}
        onAnswer={(answer) => onTap({ tap: 'comb changes', answer })}
      />
      <Photographs visit={visit} draft={draft} onTap={onTap} />
      <Remarks text={draft.remarks} onText={(text) => onTap({ tap: 'remark', text })} />
    </>
  );
}

function AskedOf({
  label,
  answer,
  onAnswer,
}: {
  readonly label: string;
  readonly answer: KeeperAnswer;
  readonly onAnswer: (answer: KeeperAnswer) => void;
}) {
  const words = useWords();
  return (
    <section className="stack close">
      <Choice
        label={label}
        options={[
          { value: 'none', label: words.say('hive.colony.answer.none') },
          { value: 'yes', label: words.say('hive.colony.answer.yes') },
          { value: 'not known', label: words.say('hive.colony.answer.not-known') },
        ]}
        chosen={answer.answer}
        onChoose={(value) =>
          onAnswer({ ...answer, asked: true, answer: value, lastOn: value === 'yes' ? answer.lastOn : null })
        }
      />
      {answer.answer === 'yes' && (
        <label className="stack close">
          {words.say('hive.colony.last-on')}
          <input
            className="text-input"
            type="date"
            value={answer.lastOn ?? ''}
            onChange={(event) => onAnswer({ ...answer, lastOn: event.currentTarget.value || null })}
          />
        </label>
      )}
    </section>
  );
}

function Photographs({ visit, draft, onTap }: MoreScreenProps) {
  const words = useWords();
  const device = useHiveDevice();
  const chooser = useRef<HTMLInputElement>(null);
  const [failed, setFailed] = useState(false);
  const add = async (files: FileList | null) => {
    setFailed(false);
    try {
      for (const file of files ?? [])
        onTap({ tap: 'photograph', photograph: await device.photographs.keep(file, device.now()) });
    } catch {
      setFailed(true);
    }
  };
  return (
    <section className="stack close">
      <h2>{words.say('hive.colony.photographs', { count: draft.photographs.length })}</h2>
      <input
        ref={chooser}
        className="visually-hidden"
        type="file"
        accept="image/*"
        multiple
        tabIndex={-1}
        aria-label={words.say('hive.colony.photograph')}
        onChange={(event) => void add(event.currentTarget.files)}
      />
      <Button look="wide" onClick={() => chooser.current?.click()}>
        {words.say('hive.colony.photograph')}
      </Button>
      {failed && <p className="caution">{words.say('hive.colony.photograph-failed')}</p>}
      {draft.photographs.length > 0 && (
        <Suspense fallback={null}>
          <CombPhotographs visit={visit} colony={draft.colony} photographs={draft.photographs} />
        </Suspense>
      )}
    </section>
  );
}

function Remarks({ text, onText }: { readonly text: string; readonly onText: (text: string) => void }) {
  const words = useWords();
  return (
    <label className="stack close">
      {words.say('hive.colony.remarks')}
      <textarea
        className="text-input"
        rows={3}
        maxLength={5000}
        value={text}
        onChange={(event) => onText(event.currentTarget.value)}
      />
    </label>
  );
}
