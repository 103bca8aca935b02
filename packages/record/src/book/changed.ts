import type { About } from '../entry.ts';
import type { Change } from '../store.ts';

/** What an act on the record answers, with the entities it touched. */
export interface Changed<Answer> {
  readonly answer: Answer;
  readonly touched: readonly About[];
}

/** The part of a change that says the clock's reading; nothing where it did not move. */
export function clockChange(clock: string | null): Pick<Change, 'clock'> {
  return clock === null ? {} : { clock };
}
