import { identifier } from '@combside/record/entry';
import { z } from 'zod';
import { apiaryLine } from './apiaries.ts';
import { colonyState, movementState } from './folded.ts';
import { person } from './people.ts';
import { photographShown } from './photograph.ts';

/** `GET /api/colonies/<id>`: one colony with everything ever seen in it. */
export const colonyPage = z.object({
  colony: colonyState,
  apiary: apiaryLine.nullable(),
  /** Movements that name this colony, the newest 200. */
  movements: z.array(movementState),
  /** Names of the apiaries where it ever stood, and of those at either end of the movements, as far as they may be read. */
  otherEnds: z.array(z.object({ apiary: identifier, name: z.string() })),
  photographs: z.array(photographShown),
  people: z.array(person),
  position: z.int(),
});
export type ColonyPage = z.infer<typeof colonyPage>;
