import { z } from 'zod';
import { laboratoryState } from './folded.ts';
import { person } from './people.ts';

/**
 * `GET /api/laboratories`: every laboratory with the limits it stated, by name. Whoever is signed in may read them: a
 * laboratory serves many districts.
 */
export const laboratories = z.object({ laboratories: z.array(laboratoryState), people: z.array(person) });
export type Laboratories = z.infer<typeof laboratories>;
