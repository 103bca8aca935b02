import { identifier, instant } from '@combside/record/entry';
import { assessmentBody } from '@combside/record/kinds/assessment';
import { examinationBody } from '@combside/record/kinds/examination';
import { noteBody } from '@combside/record/kinds/note';
import { z } from 'zod';
import { apiaryLine } from './apiaries.ts';
import { foldedOf, keeperState, visitState } from './folded.ts';
import { person } from './people.ts';
import { photographShown } from './photograph.ts';

/** One colony as this visit saw it. */
export const colonySeen = z.object({
  colony: identifier,
  label: z.string(),
  hiveType: z.string().nullable(),
  examinations: z.array(foldedOf(examinationBody)),
  assessments: z.array(foldedOf(assessmentBody)),
  /** Notes on the colony, oldest first, of whatever visit. */
  notes: z.array(foldedOf(noteBody)),
});
export type ColonySeen = z.infer<typeof colonySeen>;

/** `GET /api/visits/<id>`: a visit as a case note reads, from top to bottom. */
export const visitPage = z.object({
  visit: visitState,
  apiary: apiaryLine.nullable(),
  keeper: keeperState.nullable(),
  /** In order of their label. */
  colonies: z.array(colonySeen),
  photographs: z.array(photographShown),
  /** Everybody named by the page. */
  people: z.array(person),
  /** When its newest entry reached the office, and its position: a live event beyond it means that more has come. */
  arrivedAt: instant,
  position: z.int(),
});
export type VisitPage = z.infer<typeof visitPage>;
