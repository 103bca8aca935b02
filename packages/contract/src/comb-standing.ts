import { z } from 'zod';

/**
 * How the comb on a photograph stands: its bytes are not here yet; nobody read it; the server shall read it, reads it, has
 * read it (and nobody has looked), refused it, gave it up; a reading is kept without anybody agreeing; or accepted.
 */
export const combStanding = z.enum([
  'not-held',
  'not-read',
  'waiting',
  'reading',
  'read',
  'refused',
  'failed',
  'kept',
  'accepted',
]);
export type CombStanding = z.infer<typeof combStanding>;
