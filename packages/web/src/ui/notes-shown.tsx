import type { StateBase } from '@combside/record/states';
import { useId } from 'react';
import { useWords } from './words-context.tsx';

interface NotesShownProps {
  readonly notes: StateBase['notes'];
  readonly nameOf: (person: string) => string;
  readonly timeZone: string;
}

/** Notes in the order in which they were written; nothing when there is none. */
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
        {notes.map(({ written, body }) => (
          <li key={written.entry}>
            <p>{body.text}</p>
            <p className="quiet">
              {words.say('casework.note.by', {
                name: nameOf(written.by),
                when: words.dayAndTime(written.at, timeZone),
              })}
            </p>
          </li>
        ))}
      </ul>
    </div>
  );
}
