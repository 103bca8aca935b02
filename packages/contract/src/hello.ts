import { identifier, instant } from '@combside/record/entry';
import { z } from 'zod';

/** `GET /api/hello`, open to everybody: whom one is talking to, and whether one still may. */
export const hello = z.object({
  protocol: z.int().min(1),
  oldestServed: z.int().min(1),
  /** Version of the program, for the fault report. */
  program: z.string(),
  /** The server's own device, and its public key: every checkpoint and countersignature is checked against it. */
  server: z.object({ device: identifier, publicKey: z.string() }),
  /** The server's clock, so that a phone can warn about its own. */
  now: instant,
  /** True when what is shown is the invented demo district. */
  invented: z.boolean(),
});
export type Hello = z.infer<typeof hello>;

/** `GET /api/health`: for whoever watches the machine. */
export const health = z.object({
  well: z.boolean(),
  database: z.enum(['answers', 'silent']),
  position: z.int().nullable(),
  /** States still folded by an older version of the fold. */
  staleStates: z.int().nullable(),
});
export type Health = z.infer<typeof health>;

/** What the server answers instead of what was asked. `code` is one of `problems.ts`. */
export const problem = z.object({
  code: z.string(),
  message: z.string(),
  where: z.string().nullable(),
});
export type Problem = z.infer<typeof problem>;
