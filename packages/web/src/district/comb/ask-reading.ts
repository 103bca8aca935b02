import { type CombReadingsTold, combReadingsTold } from '@combside/contract/comb-readings';
import { ask } from '../../device/ask/ask.ts';

/** At most so many photographs are asked for at once. */
export const mostAsked = 500;

/**
 * Has stored photographs of combs read by the office's machine, or takes those back that still wait.
 *
 * @param photographs hashes, 1 to 500
 * @throws NotAnswered when the office does not answer, or refuses
 */
export function askReading(what: 'ask' | 'cancel', photographs: readonly string[]): Promise<CombReadingsTold> {
  return ask(combReadingsTold, what === 'ask' ? '/api/comb-readings' : '/api/comb-readings/cancel', {
    message: { photographs },
  });
}
