import { identifier } from '@combside/record/entry';
import { z } from 'zod';

/** What a person may do: an inspector writes as himself in the districts granted, the office also settles and plans. */
export const role = z.enum(['inspector', 'office', 'server']);
export type Role = z.infer<typeof role>;

export const person = z.object({ person: identifier, name: z.string(), role, active: z.boolean() });
export type Person = z.infer<typeof person>;

/** `GET /api/people`: names behind the `by` of entries, as far as they concern the districts of whoever asks. */
export const people = z.object({ people: z.array(person) });
export type People = z.infer<typeof people>;

/** `GET /api/me`: who is signed in here, and what was granted. */
export const me = z.object({
  person: identifier,
  name: z.string(),
  role,
  email: z.string(),
  /** Districts granted, all of them by name. */
  districts: z.array(z.string()),
  /** Id of the rule pack in force, so that a phone fetches the law of its place. */
  pack: z.string(),
});
export type Me = z.infer<typeof me>;
