import type { Tap } from '@combside/casework/draft/tap';
import { addNote } from '@combside/casework/examine/add-note';
import type { About } from '@combside/record/entry';
import { useEffect, useState } from 'react';
import type { Saving } from '../../device/drafts/open-draft.ts';
import { useDraft } from '../../device/drafts/use-draft.ts';
import { useWrite } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';

interface AddNoteProps {
  readonly about: About;
  /** Told how the keeping goes, so that the screen never says "saved here" of letters that are not. */
  readonly onSaving: (saving: Saving) => void;
}

/** Free words about a colony or a visit. What is typed is kept like any other draft until it is written. */
export function AddNote({ about, onSaving }: AddNoteProps) {
  const words = useWords();
  const [isOpen, setOpen] = useState(false);
  // Stored as the one remark it is.
  const draft = useDraft<readonly Tap[]>({
    key: `note/${about.type}/${about.id}`,
    begin: [],
    read: (stored) => stored as readonly Tap[],
    isNothing: (taps) => taps.length === 0,
  });
  const textOf = (taps: readonly Tap[]) => taps.flatMap((one) => (one.tap === 'remark' ? [one.text] : [])).join('');
  const keeping = useWrite(
    () => addNote(about, draft ? textOf(draft.now()) : ''),
    () => ({ closes: draft ? [draft] : [] }),
  );
  const saving = draft?.saving ?? 'saved';
  useEffect(() => onSaving(saving), [saving, onSaving]);
  const keep = async () => {
    if (await keeping.write()) setOpen(false);
  };

  if (!draft || (!isOpen && draft.value.length === 0)) {
    return (
      <Button disabled={!draft} onClick={() => setOpen(true)}>
        {words.say('hive.note.add')}
      </Button>
    );
  }
  return (
    <div className="stack close">
      <label className="stack close">
        {words.say('hive.note.text')}
        <textarea
          className="text-input"
          rows={3}
          maxLength={5000}
          value={textOf(draft.value)}
          onChange={(event) => {
            const text = event.currentTarget.value;
            setOpen(true);
            draft.change(() => (text === '' ? [] : [{ tap: 'remark', text }]));
          }}
        />
      </label>
      <WriteTrouble writing={keeping} />
      <Button look="wide" disabled={keeping.state === 'busy'} onClick={() => void keep()}>
        {words.say('hive.note.keep')}
      </Button>
    </div>
  );
}
