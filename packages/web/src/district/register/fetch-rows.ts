import type { ApiaryStanding, KeeperStanding, RegisterRowsHeld } from '@combside/casework/register/rows';
import type { RegisterRows } from '@combside/contract/register';

/**
 * Fetches the register as it stands, page by page.
 *
 * @param district null for all that are granted
 * @param told how many records have come so far
 * @throws Error when the office does not answer, or refuses
 */
export async function fetchRegister(
  district: string | null,
  told: (count: number) => void,
  signal?: AbortSignal,
): Promise<RegisterRowsHeld> {
  const keepers: KeeperStanding[] = [];
  const apiaries: ApiaryStanding[] = [];
  for (const type of ['keeper', 'apiary'] as const) {
    let after: string | null = null;
    do {
      const asked = new URLSearchParams({ type, limit: '5000' });
      if (district !== null) asked.set('district', district);
      if (after !== null) asked.set('after', after);
      const answer = await fetch(`/api/register/rows?${asked}`, signal ? { signal } : {});
      if (!answer.ok) throw new Error(`the register: ${answer.status}`);
      const page = (await answer.json()) as RegisterRows;
      for (const row of page.rows) {
        if (row.type === 'keeper') keepers.push(row);
        else apiaries.push(row);
      }
      told(keepers.length + apiaries.length);
      after = page.next;
    } while (after !== null);
  }
  return { keepers, apiaries };
}
