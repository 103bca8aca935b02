import { about, identifier, instant } from '@combside/record/entry';
import { z } from 'zod';

/**
 * One event of `GET /api/live` (server-sent events, `event: entry`): an entry was stored in a scope granted to whoever
 * listens. It tells what changed, not what was written: the reader asks for the page it shows. `id:` of the event is
 * `position`; a listener that comes back sends it as `Last-Event-ID` (or `?after=`) and misses nothing.
 */
export const liveEvent = z.object({
  scope: z.string(),
  position: z.int(),
  entry: identifier,
  kind: z.string(),
  about,
  by: identifier,
  at: instant,
  receivedAt: instant,
  /** The visit and apiary it belongs to, as far as the server knows. */
  visit: identifier.nullable(),
  apiary: identifier.nullable(),
});
export type LiveEvent = z.infer<typeof liveEvent>;
