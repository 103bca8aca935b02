import { burnAndBury } from './asked/burn-and-bury.ts';
import { colonyStrength } from './asked/colony-strength.ts';
import { doTwoAgree } from './asked/do-two-agree.ts';
import { earliestSign } from './asked/earliest-sign.ts';
import { findingNone } from './asked/finding-none.ts';
import { freeSince } from './asked/free-since.ts';
import { howFrequent } from './asked/how-frequent.ts';
import { howManyToOpen } from './asked/how-many-to-open.ts';
import { laboratoryNumber } from './asked/laboratory-number.ts';
import { thisSeason } from './asked/this-season.ts';
import { whenLaid } from './asked/when-laid.ts';
import type { Question } from './question.ts';

/** The questions of the office, in the order in which they come up. */
export const allQuestions: readonly Question[] = [
  howManyToOpen,
  findingNone,
  howFrequent,
  freeSince,
  doTwoAgree,
  laboratoryNumber,
  burnAndBury,
  whenLaid,
  earliestSign,
  thisSeason,
  colonyStrength,
];
