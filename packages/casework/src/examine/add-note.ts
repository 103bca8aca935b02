import type { About } from '@combside/record/entry';
import { note } from '@combside/record/kinds/note';
import { type Act, done, refused } from '../act.ts';

/** Adds free words to a colony, a visit or anything else; at any time, also after a visit has ended. */
export function addNote(about: About, text: string): Act {
  const words = text.trim();
  if (words === '') return refused('casework.refused.note-empty');
  if (words.length > 5000) {
    return refused('casework.refused.number-out-of-range', { what: 'characters', low: 1, high: 5000 });
  }
  return done([{ kind: note.kind, version: note.version, about, body: { text: words }, replaces: [] }]);
}
