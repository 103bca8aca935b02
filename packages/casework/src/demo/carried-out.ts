import type { Act, Done } from '../act.ts';

/**
 * The demonstration plays only acts that can be done; a refusal is a fault of the story and says so.
 *
 * @throws RangeError with the reason and its values
 */
export function carriedOut<Extra>(act: Act<Extra>): Done & Extra {
  if (act.ok) return act;
  throw new RangeError(`the demonstration plays an act that was refused: ${act.reason} ${JSON.stringify(act.values)}`);
}
