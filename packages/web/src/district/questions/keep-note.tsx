import { addNote } from '@combside/casework/examine/add-note';
import { saysSuspect } from '@combside/casework/result/results-by-gravity';
import { type ApiaryLine, apiaries } from '@combside/contract/apiaries';
import { visits } from '@combside/contract/visits';
import type { About } from '@combside/record/entry';
import { useId, useState } from 'react';
import { Link } from 'wouter';
import { useWrite, type Writing } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';
import { useAsked } from '../office/use-asked.ts';

interface KeepNoteProps {
  /** The whole note, as long as the record takes. */
  readonly text: string;
}

/** Keeps an answer as a note: chosen by name, then written into the record, on its way to the office. */
export function KeepNote({ text }: KeepNoteProps) {
  const words = useWords();
  const [open, setOpen] = useState(false);
  if (!open) return <Button onClick={() => setOpen(true)}>{words.say('questions.keep')}</Button>;
  return <ChoosePlace text={text} onLeave={() => setOpen(false)} />;
}

/** Where a note was kept: its name, the address of its page, and the note. */
interface NoteWritten {
  readonly name: string;
  readonly page: string;
  readonly text: string;
}

function ChoosePlace({ text, onLeave }: KeepNoteProps & { readonly onLeave: () => void }) {
  const words = useWords();
  const id = useId();
  const writing = useWrite((about: About) => addNote(about, text));
  const [search, setSearch] = useState('');
  const [kept, setKept] = useState<NoteWritten | null>(null);
  const { answer, state: asked } = useAsked(
    apiaries,
    `/api/apiaries?limit=8&search=${encodeURIComponent(search.trim())}`,
    () => false,
  );
  const done = kept !== null && kept.text === text;
  const blocked = done || !writing.canWrite || writing.state === 'busy';
  const keep = async (about: About, name: string, page: string) => {
    if (await writing.write(about)) setKept({ name, page, text });
  };
  return (
    <section className="stack close keep-note" aria-label={words.say('questions.keep')}>
      <label htmlFor={id}>{words.say('questions.keep.which')}</label>
      <input id={id} className="text-input" value={search} onChange={(event) => setSearch(event.target.value)} />
      {asked === 'failed' && <p className="caution">{words.say('district.failed')}</p>}
      {answer?.apiaries.length === 0 && <p className="quiet">{words.say('questions.keep.none')}</p>}
      <ul className="rows">
        {answer?.apiaries.map((one) => (
          <li key={one.apiary} className="stack close">
            <Button
              look="wide"
              disabled={blocked}
              onClick={() => void keep({ type: 'apiary', id: one.apiary }, one.name, `/apiary/${one.apiary}`)}
            >
              {words.say('questions.keep.on', { name: one.name, keeper: one.keeperName ?? '–' })}
            </Button>
            {saysSuspect(one.mark) && <Cases apiary={one} blocked={blocked} keep={keep} />}
          </li>
        ))}
      </ul>
      <KeptWord kept={done ? kept : null} writing={writing} />
      <Button look="plain" onClick={onLeave}>
        {words.say('questions.keep.leave')}
      </Button>
    </section>
  );
}

/** The cases of an apiary so far: visits that left a suspicion behind, while the suspicion stands. */
function Cases({
  apiary,
  blocked,
  keep,
}: {
  readonly apiary: ApiaryLine;
  readonly blocked: boolean;
  readonly keep: (about: About, name: string, page: string) => Promise<void>;
}) {
  const words = useWords();
  const { answer } = useAsked(visits, `/api/visits?apiary=${apiary.apiary}&limit=50`, () => false);
  const suspect = answer?.visits.filter((visit) => visit.results.some((one) => saysSuspect(one.result))) ?? [];
  return suspect.slice(0, 3).map((visit) => {
    const values = { name: apiary.name, day: visit.startedAt ? words.dayOf(visit.startedAt, timeZoneHere) : '–' };
    return (
      <Button
        key={visit.visit}
        look="wide"
        disabled={blocked}
        onClick={() =>
          void keep(
            { type: 'visit', id: visit.visit },
            words.say('questions.keep.case', values),
            `/visit/${visit.visit}`,
          )
        }
      >
        {words.say('questions.keep.on-case', values)}
      </Button>
    );
  });
}

function KeptWord({ kept, writing }: { readonly kept: NoteWritten | null; readonly writing: Omit<Writing, 'write'> }) {
  const words = useWords();
  return (
    <>
      <p role="status">
        {kept &&
          sayWord(words, 'questions.keep.*', writing.state === 'sent' ? 'at-office' : 'kept', { name: kept.name })}
      </p>
      {kept && <Link href={kept.page}>{words.say('questions.keep.open', { name: kept.name })}</Link>}
      <WriteTrouble writing={writing} />
    </>
  );
}
