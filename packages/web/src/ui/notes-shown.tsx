import type { StateBase } from '@combside/record/states';
import { useId } from 'react';
import { Link } from 'wouter';
import { linkInNote } from './link-in-note.ts';
import { useWords } from './words-context.tsx';

interface NotesShownProps {
  readonly notes: StateBase['notes'];
  readonly nameOf: (person: string) => string;
  readonly timeZone: string;
}

/** Notes in the order in which they were written, an answer kept with the link to its question; nothing when none is there. */
export function NotesShown({ notes, nameOf, timeZone }: NotesShownProps) {
  const words = useWords();
  const id = useId();
  if (notes.length === 0) return null;
  return (
    <div className="stack close">
      <p id={id}>
        <strong>{words.say('casework.notes')}</strong>
      </p>
      <ul className="rows" aria-labelledby={id}>
        {notes.map(({ written, body }) => {
          const parts = linkInNote(body.text);
          return (
            <li key={written.entry}>
              <p className="note-words">{parts.words}</p>
              {parts.question && (
                <p>
                  <Link href={`~${parts.question}`}>{words.say('casework.note.question')}</Link>
                </p>
              )}
              <p className="quiet">
                {words.say('casework.note.by', {
                  name: nameOf(written.by),
                  when: words.dayAndTime(written.at, timeZone),
                })}
              </p>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
