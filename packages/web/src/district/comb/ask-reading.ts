import type { CombReadingsTold } from '@combside/contract/comb-readings';

/** At most so many photographs are asked for at once. */
export const mostAsked = 500;

/**
 * Has stored photographs of combs read by the office's machine, or takes those back that still wait.
 *
 * @param photographs hashes, 1 to 500
 * @throws Error when the office does not answer, or refuses
 */
export async function askReading(what: 'ask' | 'cancel', photographs: readonly string[]): Promise<CombReadingsTold> {
  const answer = await fetch(what === 'ask' ? '/api/comb-readings' : '/api/comb-readings/cancel', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ photographs }),
  });
  if (!answer.ok) throw new Error(`comb readings, ${what}: ${answer.status}`);
  return (await answer.json()) as CombReadingsTold;
}
