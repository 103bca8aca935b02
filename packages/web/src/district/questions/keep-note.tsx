import type { Apiaries } from '@combside/contract/apiaries';
import { useId, useState } from 'react';
import type { Session } from '../../app/session.ts';
import { Button } from '../../ui/button.tsx';
import { sayId } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskDevice } from '../use-desk-device.ts';
import { useAsked } from '../use-office.ts';

interface KeepNoteProps {
  readonly session: Session;
  /** The whole note; at most 5000 characters are kept. */
  readonly text: string;
}

/** Keeps an answer as a note on an apiary: chosen by name, then written into the desk's own book. */
export function KeepNote({ session, text }: KeepNoteProps) {
  const words = useWords();
  const [open, setOpen] = useState(false);
  if (!open) return <Button onClick={() => setOpen(true)}>{sayId(words, 'questions.keep')}</Button>;
  return <ChooseApiary session={session} text={text} onLeave={() => setOpen(false)} />;
}

function ChooseApiary({ session, text, onLeave }: KeepNoteProps & { readonly onLeave: () => void }) {
  const words = useWords();
  const id = useId();
  const { state, device } = useDeskDevice(session);
  const [search, setSearch] = useState('');
  const [kept, setKept] = useState<{ apiary: string; text: string } | 'writing' | 'failed' | null>(null);
  const { answer, state: asked } = useAsked<Apiaries>(
    `/api/apiaries?limit=8&search=${encodeURIComponent(search.trim())}`,
    () => false,
  );
  const write = async (apiary: string, name: string) => {
    if (!device) return;
    setKept('writing');
    try {
      await device.book.write([
        {
          kind: 'note',
          version: 1,
          about: { type: 'apiary', id: apiary },
          body: { text: text.slice(0, 5000) },
          replaces: [],
        },
      ]);
      setKept({ apiary: name, text });
    } catch (failure) {
      setKept('failed');
      // Handed on, so that the fault report has it.
      void Promise.reject(failure);
    }
  };
  const done = kept !== null && typeof kept === 'object' && kept.text === text;
  return (
    <section className="stack close keep-note" aria-label={sayId(words, 'questions.keep')}>
      <label htmlFor={id}>{sayId(words, 'questions.keep.which')}</label>
      <input id={id} className="text-input" value={search} onChange={(event) => setSearch(event.target.value)} />
      {state !== 'there' && state !== 'opening' && <p className="caution">{sayId(words, 'questions.keep.no-store')}</p>}
      {asked === 'failed' && <p className="caution">{sayId(words, 'district.failed.nothing')}</p>}
      {answer?.apiaries.length === 0 && <p className="quiet">{sayId(words, 'questions.keep.none')}</p>}
      <ul className="rows">
        {answer?.apiaries.map((one) => (
          <li key={one.apiary}>
            <Button
              look="wide"
              disabled={!device || kept === 'writing' || done}
              onClick={() => void write(one.apiary, one.name)}
            >
              {sayId(words, 'questions.keep.on', { name: one.name, keeper: one.keeperName ?? '–' })}
            </Button>
          </li>
        ))}
      </ul>
      <p role="status">
        {done ? sayId(words, 'questions.keep.kept', { name: kept.apiary }) : ''}
        {kept === 'failed' ? sayId(words, 'questions.keep.failed') : ''}
      </p>
      <Button look="plain" onClick={onLeave}>
        {sayId(words, 'questions.keep.leave')}
      </Button>
    </section>
  );
}
