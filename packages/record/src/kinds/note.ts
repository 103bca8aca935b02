import { z } from 'zod';
import type { Kind } from './kind.ts';

/** Free words about anything. May name people, so it can be erased. */
export const noteBody = z.strictObject({ text: z.string().min(1).max(5000) });
export type NoteBody = z.infer<typeof noteBody>;

export const note: Kind<NoteBody> = {
  kind: 'note',
  version: 1,
  about: 'any',
  erasable: true,
  body: noteBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'notes' },
  steps: [],
};
