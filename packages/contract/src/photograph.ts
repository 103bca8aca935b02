import { identifier, instant } from '@combside/record/entry';
import { z } from 'zod';
import { combStanding } from './comb-standing.ts';

/** Largest photograph taken, in bytes (40 MiB: several times a 12-megapixel JPEG). */
export const largestPhotograph = 40 * 1024 * 1024;

export const photographType = z.enum(['image/jpeg', 'image/png', 'image/webp']);

/** SHA-256 of the original bytes: the name of a photograph. */
export const photographHash = z.string().regex(/^[0-9a-f]{64}$/, 'expected 64 lower-case hexadecimal digits');

/**
 * Announced when an upload begins (tus `Upload-Metadata`, at `/api/uploads`): the server refuses the upload when the
 * bytes that arrived hash to something else. A photograph already held answers as finished at once.
 */
export const photographAnnouncement = z.object({ hash: photographHash, mediaType: photographType });
export type PhotographAnnouncement = z.infer<typeof photographAnnouncement>;

/** `POST /api/photographs/held`: which of these need no upload. At most 1,000 at a time. */
export const photographsAsked = z.strictObject({ hashes: z.array(photographHash).max(1000) });
export const photographsHeld = z.object({ held: z.array(photographHash) });

/** A photograph as a page shows it; the bytes are at `/api/photographs/<hash>`, small ones at `.../small`. */
export const photographShown = z.object({
  hash: photographHash,
  mediaType: z.string(),
  bytes: z.int(),
  takenAt: instant,
  caption: z.string(),
  colony: identifier,
  /** False while the bytes have not arrived yet. */
  held: z.boolean(),
  /** How the comb on it stands. */
  comb: combStanding,
});
export type PhotographShown = z.infer<typeof photographShown>;
