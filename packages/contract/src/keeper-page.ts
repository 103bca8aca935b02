import { identifier } from '@combside/record/entry';
import { z } from 'zod';
import { apiaryLine } from './apiaries.ts';
import { keeperState, movementState } from './folded.ts';
import { person } from './people.ts';

/** `GET /api/keepers/<id>`: a keeper with the apiaries, and the records that are read as part of this one. */
export const keeperPage = z.object({
  keeper: keeperState,
  apiaries: z.array(apiaryLine),
  /** What came to these apiaries and what left them, the newest 200. */
  movements: z.array(movementState),
  /** Names of the apiaries at either end of the movements, as far as they may be read. */
  otherEnds: z.array(z.object({ apiary: identifier, name: z.string() })),
  mergedHere: z.array(z.object({ id: identifier, name: z.string() })),
  people: z.array(person),
  position: z.int(),
});
export type KeeperPage = z.infer<typeof keeperPage>;
