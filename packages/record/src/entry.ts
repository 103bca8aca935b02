import { z } from 'zod';

/** What an entry can be about. A fold sees only the entries of its own `about`. */
export const entityTypes = [
  'device',
  'keeper',
  'apiary',
  'colony',
  'visit',
  'movement',
  'laboratory',
  'server',
] as const;
export type EntityType = (typeof entityTypes)[number];

/** Version of the envelope and its algorithms: 1 = SHA-256, RFC 8785 canonical JSON, ECDSA P-256 with raw 64-byte signatures. */
export const envelopeFormat = 1;

/** SHA-256 in lower-case hexadecimal. */
export const sha256Hex = z
  .string()
  .regex(/^[0-9a-f]{64}$/, 'expected a SHA-256 hash: 64 lower-case hexadecimal digits');

/** RFC 9562 identifier, lower case. Entries and entities are named by version 7, which sorts by time of making. */
export const identifier = z
  .string()
  .regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/, 'expected a UUID in lower case');

/** RFC 3339 instant in UTC with milliseconds: 2026-05-04T08:31:05.120Z. */
export const instant = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/, 'expected an instant such as 2026-05-04T08:31:05.120Z');

/** Calendar date without time: 2026-05-04. */
export const calendarDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'expected a date such as 2026-05-04');

export const about = z.strictObject({ type: z.string().min(1).max(40), id: identifier });
export type About = z.infer<typeof about>;

/**
 * The signed part of an entry.
 *
 * `at` is the device's own clock; when a thing was observed stands in the body. `clock` is the hybrid logical clock.
 * `replaces` names the entries whose values the author saw and means to supersede. `bodyHash` is SHA-256 of the 16-byte
 * salt followed by the canonical body. `prev` is SHA-256 of the previous envelope of the same device without its
 * signature; it is null only on the first entry of a chain.
 */
export const envelope = z.strictObject({
  format: z.literal(envelopeFormat),
  id: identifier,
  kind: z.string().min(1).max(60),
  version: z.int().min(1),
  about,
  by: identifier,
  device: identifier,
  seq: z.int().min(1),
  at: instant,
  clock: z.string().min(1).max(80),
  replaces: z.array(identifier).max(1000),
  bodyHash: sha256Hex,
  prev: sha256Hex.nullable(),
  signature: z.string().regex(/^[A-Za-z0-9_-]{86}$/, 'expected a raw P-256 signature in base64url'),
});
export type Envelope = z.infer<typeof envelope>;

/** An entry as stored and sent: body and salt are null only where an erasure entry says why. */
export const entry = z.strictObject({
  envelope,
  salt: z
    .string()
    .regex(/^[A-Za-z0-9_-]{22}$/, 'expected 16 random bytes in base64url')
    .nullable(),
  body: z.unknown(),
});
export type Entry = z.infer<typeof entry>;

/** What casework proposes: everything an entry needs except what sealing adds. */
export interface Proposal<Body = unknown> {
  /** Identifier the entry shall have, where another proposal of the same write must name it; made when absent. */
  readonly id?: string;
  readonly kind: string;
  readonly version: number;
  readonly about: About;
  readonly body: Body;
  readonly replaces: readonly string[];
}
