import { identifier, instant } from '@combside/record/entry';
import { z } from 'zod';
import { apiaryState, keeperState, movementState } from './folded.ts';
import { person } from './people.ts';
import { visitLine } from './visits.ts';

export const colonyLine = z.object({
  colony: identifier,
  label: z.string(),
  hiveType: z.string().nullable(),
  hiveState: z.string().nullable(),
  /** When it was last opened, and the result then stated. */
  lastExaminedAt: instant.nullable(),
  lastResult: z.string().nullable(),
});
export type ColonyLine = z.infer<typeof colonyLine>;

/** `GET /api/apiaries/<id>`: a site with its keeper, its colonies and its newest visits. */
export const apiaryPage = z.object({
  apiary: apiaryState,
  keeper: keeperState.nullable(),
  colonies: z.array(colonyLine),
  /** Newest first, at most 50; all of them at `/api/visits?apiary=<id>`. */
  visits: z.array(visitLine),
  /** What came here and what left, the newest 200. */
  movements: z.array(movementState),
  /** Names of the apiaries at the other ends of the movements, as far as they may be read. */
  otherEnds: z.array(z.object({ apiary: identifier, name: z.string() })),
  /** Records that are read as part of this one. */
  mergedHere: z.array(z.object({ id: identifier, name: z.string() })),
  people: z.array(person),
  position: z.int(),
});
export type ApiaryPage = z.infer<typeof apiaryPage>;
