import { identifier, instant } from '@combside/record/entry';
import { apiaryBody } from '@combside/record/kinds/apiary';
import { assessmentBody } from '@combside/record/kinds/assessment';
import { attendanceBody } from '@combside/record/kinds/attendance';
import { cleanDownBody } from '@combside/record/kinds/clean-down';
import { colonyBody } from '@combside/record/kinds/colony';
import { combReadingBody } from '@combside/record/kinds/comb-reading';
import { examinationBody, photographReference } from '@combside/record/kinds/examination';
import { handoverBody } from '@combside/record/kinds/handover';
import { keeperBody } from '@combside/record/kinds/keeper';
import { laboratoryLimitsBody } from '@combside/record/kinds/laboratory-limits';
import { mergeBody } from '@combside/record/kinds/merge';
import { movementBody } from '@combside/record/kinds/movement';
import { noteBody } from '@combside/record/kinds/note';
import { proposedChangeBody } from '@combside/record/kinds/proposed-change';
import { reasonBody } from '@combside/record/kinds/reason';
import { visitBody } from '@combside/record/kinds/visit';
import type {
  ApiaryState,
  ColonyState,
  KeeperState,
  LaboratoryState,
  MovementState,
  VisitState,
} from '@combside/record/states';
import { z } from 'zod';

/** Folded states as they travel. A reader ignores fields it does not know, so a server may be newer than a page. */
export const written = z.object({
  entry: identifier,
  by: identifier,
  device: identifier,
  at: instant,
  clock: z.string(),
});

export function foldedOf<Body extends z.ZodType>(body: Body) {
  return z.object({
    written,
    body,
    original: body,
    corrections: z.array(z.object({ written, reason: z.string(), body })),
  });
}

export function registerOf<Body extends z.ZodType>(body: Body) {
  const folded = foldedOf(body);
  return z.object({ current: folded.nullable(), contested: z.array(folded), history: z.array(folded) });
}

const stateBase = z.object({
  about: z.object({ type: z.string(), id: identifier }),
  foldVersion: z.int(),
  notes: z.array(foldedOf(noteBody)),
  unknown: z.array(z.object({ written, kind: z.string(), version: z.int() })),
  erased: z.array(z.object({ written, kind: z.string() })),
  clockFlagged: z.array(z.object({ entry: identifier, aheadMilliseconds: z.number() })),
});

export const keeperState = z.object({
  ...stateBase.shape,
  keeper: registerOf(keeperBody),
  merges: z.array(foldedOf(mergeBody)),
  reasons: z.array(foldedOf(reasonBody)),
});

export const apiaryState = z.object({
  ...stateBase.shape,
  apiary: registerOf(apiaryBody),
  proposals: z.array(foldedOf(proposedChangeBody)),
  merges: z.array(foldedOf(mergeBody)),
  reasons: z.array(foldedOf(reasonBody)),
  photographs: z.array(foldedOf(photographReference)),
});

export const colonyState = z.object({
  ...stateBase.shape,
  colony: registerOf(colonyBody),
  examinations: z.array(foldedOf(examinationBody)),
  assessments: z.array(foldedOf(assessmentBody)),
  combReadings: z.array(foldedOf(combReadingBody)),
  proposals: z.array(foldedOf(proposedChangeBody)),
  reasons: z.array(foldedOf(reasonBody)),
});

export const visitState = z.object({
  ...stateBase.shape,
  visit: registerOf(visitBody),
  attendance: registerOf(attendanceBody),
  cleanDowns: z.array(foldedOf(cleanDownBody)),
  handovers: z.array(foldedOf(handoverBody)),
});

export const movementState = z.object({
  ...stateBase.shape,
  movement: registerOf(movementBody),
  reasons: z.array(foldedOf(reasonBody)),
});

export const laboratoryState = z.object({
  ...stateBase.shape,
  limits: z.array(foldedOf(laboratoryLimitsBody)),
});

// The compiler holds these schemas and the record's types together, both ways.
type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : never) : never;
type Loose<T> = T extends readonly (infer One)[]
  ? Loose<One>[]
  : T extends object
    ? { -readonly [K in keyof T]: Loose<T[K]> }
    : T;
const agreed: {
  readonly keeper: Same<z.infer<typeof keeperState>, Loose<KeeperState>>;
  readonly apiary: Same<z.infer<typeof apiaryState>, Loose<ApiaryState>>;
  readonly colony: Same<z.infer<typeof colonyState>, Loose<ColonyState>>;
  readonly visit: Same<z.infer<typeof visitState>, Loose<VisitState>>;
  readonly movement: Same<z.infer<typeof movementState>, Loose<MovementState>>;
  readonly laboratory: Same<z.infer<typeof laboratoryState>, Loose<LaboratoryState>>;
} = { keeper: true, apiary: true, colony: true, visit: true, movement: true, laboratory: true };
void agreed;
