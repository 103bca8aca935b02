import { z } from 'zod';
import { identifier, instant } from '../entry.ts';
import type { Kind } from './kind.ts';

/** What was cleaned after a suspicion, before the next colony, and again at the exit. It protects the inspector too. */
export const cleanDownBody = z.strictObject({
  /** The colony after which it was done; null at the exit. */
  after: identifier.nullable(),
  doneAt: instant,
  gloves: z.enum(['changed', 'not changed', 'none worn']),
  tool: z.enum(['flamed', 'replaced', 'not done']),
  phone: z.enum(['wiped', 'not wiped']),
  /** Going on from a suspect to an unsuspected colony or site was warned about, and the inspector went on. */
  wentOnAfterWarning: z.boolean(),
  remarks: z.string().max(500),
});
export type CleanDownBody = z.infer<typeof cleanDownBody>;

export const cleanDown: Kind<CleanDownBody> = {
  kind: 'clean-down',
  version: 1,
  about: ['visit'],
  erasable: false,
  body: cleanDownBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'cleanDowns' },
  steps: [],
};
