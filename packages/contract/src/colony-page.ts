import { z } from 'zod';
import { apiaryLine } from './apiaries.ts';
import { colonyState } from './folded.ts';
import { person } from './people.ts';
import { photographShown } from './photograph.ts';

/** `GET /api/colonies/<id>`: one colony with everything ever seen in it. */
export const colonyPage = z.object({
  colony: colonyState,
  apiary: apiaryLine.nullable(),
  photographs: z.array(photographShown),
  people: z.array(person),
  position: z.int(),
});
export type ColonyPage = z.infer<typeof colonyPage>;
