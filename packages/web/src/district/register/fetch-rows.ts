import type { ApiaryStanding, KeeperStanding, RegisterRowsHeld } from '@combside/casework/register/rows';
import { type RegisterRows, registerRows } from '@combside/contract/register-rows';
import { ask } from '../../device/ask/ask.ts';

/**
 * Fetches the register as it stands, page by page.
 *
 * @param district null for all that are granted
 * @param told how many records have come so far
 * @throws NotAnswered when the office does not answer, or refuses
 */
export async function fetchRegister(district: string | null, told: (count: number) => void): Promise<RegisterRowsHeld> {
  const keepers: KeeperStanding[] = [];
  const apiaries: ApiaryStanding[] = [];
  for (const type of ['keeper', 'apiary'] as const) {
    let after: string | null = null;
    do {
      const asked = new URLSearchParams({ type, limit: '5000' });
      if (district !== null) asked.set('district', district);
      if (after !== null) asked.set('after', after);
      const page: RegisterRows = await ask(registerRows, `/api/register/rows?${asked}`);
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
