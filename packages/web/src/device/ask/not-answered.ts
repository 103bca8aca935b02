import { TransportError, type TransportFailure } from '@combside/record/transport';

/** Why the office gave no answer that can be used, as far as it makes a difference to anybody. */
export type Outcome =
  | 'no connection'
  | 'not signed in'
  | 'not granted'
  | 'not there'
  | 'wrong address'
  | 'too many tries'
  | 'newer program needed'
  /** It answered that it failed, or with something nobody foresaw. */
  | 'office fault'
  /** It answered, in a shape that this program does not know. */
  | 'not understood';

const failures: Readonly<Record<Outcome, TransportFailure>> = {
  'no connection': 'no connection',
  'not signed in': 'not signed in',
  'not granted': 'scope not granted',
  'not there': 'office fault',
  'wrong address': 'office fault',
  'too many tries': 'office fault',
  'newer program needed': 'program too old',
  'office fault': 'office fault',
  'not understood': 'office fault',
};

const outcomes: Readonly<Record<number, Outcome>> = {
  400: 'wrong address',
  401: 'not signed in',
  403: 'not granted',
  404: 'not there',
  426: 'newer program needed',
  429: 'too many tries',
};

/** What the status of an answer means that is none. */
export function outcomeOf(status: number): Outcome {
  return outcomes[status] ?? 'office fault';
}

/** A question to the office that brought no answer. The record's exchange reads its `failure`, a screen its `outcome`. */
export class NotAnswered extends TransportError {
  readonly outcome: Outcome;

  constructor(outcome: Outcome, where: string, cause?: unknown) {
    super(failures[outcome], where, cause);
    this.name = 'NotAnswered';
    this.outcome = outcome;
  }
}
