import { addNote } from '@combside/casework/examine/add-note';
import type { About } from '@combside/record/entry';
import { useEffect, useRef, useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { Refusal, type Refused } from '../../ui/refusal.tsx';
import { useWords } from '../../ui/words-context.tsx';
import type { Saving } from '../colony/use-draft.ts';
import { useHiveDevice } from '../hive-device.tsx';

interface AddNoteProps {
  readonly about: About;
  /** Told how the keeping goes, so that the screen never says "saved here" of letters that are not. */
  readonly onSaving: (saving: Saving) => void;
}

/** Free words about a colony or a visit. What is typed is kept like any other draft until it is written. */
export function AddNote({ about, onSaving }: AddNoteProps) {
  const words = useWords();
  const device = useHiveDevice();
  const key = `note/${about.type}/${about.id}`;
  const [text, setText] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<Refused | null>(null);
  const [failed, setFailed] = useState(false);
  const stored = useRef<Promise<void>>(Promise.resolve());
  const latest = useRef('');

  useEffect(() => {
    let left = false;
    void device.loadDraft(key).then(([kept]) => {
      // Whoever began to type before this was read keeps what they typed.
      if (!left && kept?.tap === 'remark') setText((typed) => typed ?? kept.text);
    });
    return () => {
      left = true;
    };
  }, [device, key]);

  const type = (next: string) => {
    setText(next);
    setRefusal(null);
    latest.current = next;
    onSaving('saving');
    stored.current = stored.current
      // A letter overtaken by the next need not be stored by itself: what stands there is.
      .then(() =>
        latest.current === next ? device.saveDraft(key, next === '' ? [] : [{ tap: 'remark', text: next }]) : undefined,
      )
      .then(() => {
        if (latest.current === next) onSaving('saved');
      })
      .catch(() => {
        setFailed(true);
        onSaving('failed');
      });
  };
  const keep = async () => {
    const act = addNote(about, text ?? '');
    if (!act.ok) {
      setRefusal(act);
      return;
    }
    try {
      await stored.current;
      await device.book.write(act.proposals, { closes: [key] });
      setText(null);
      void device.sync.run();
    } catch {
      setFailed(true);
    }
  };

  if (text === null) {
    return <Button onClick={() => setText('')}>{words.say('hive.note.add')}</Button>;
  }
  return (
    <div className="stack close">
      <label className="stack close">
        {words.say('hive.note.text')}
        <textarea
          className="text-input"
          rows={3}
          maxLength={5000}
          value={text}
          onChange={(event) => type(event.currentTarget.value)}
        />
      </label>
      {refusal && <Refusal refusal={refusal} />}
      {failed && <p className="caution">{words.say('always.went-wrong')}</p>}
      <Button look="wide" onClick={() => void keep()}>
        {words.say('hive.note.keep')}
      </Button>
    </div>
  );
}
