import { type DuplicatePair, proposeDuplicates } from '@combside/casework/register/duplicates';
import type { ApiaryStanding, KeeperStanding } from '@combside/casework/register/rows';
import { fetchRegister } from './fetch-rows.ts';

export type ComparisonTold =
  | { readonly told: 'reading'; readonly count: number }
  | { readonly told: 'comparing' }
  | { readonly told: 'failed' }
  | {
      readonly told: 'found';
      readonly pairs: readonly DuplicatePair[];
      readonly keepers: readonly KeeperStanding[];
      readonly apiaries: readonly ApiaryStanding[];
    };

/** So many pairs are shown at a time; the rest comes when these are decided. */
const mostPairs = 200;

/** Reads the register and compares everything with everything near it, beside the page. */
const scope = self as unknown as DedicatedWorkerGlobalScope;
const tell = (message: ComparisonTold) => scope.postMessage(message);
scope.addEventListener('message', () => {
  void compare().catch(() => tell({ told: 'failed' }));
});

async function compare(): Promise<void> {
  const held = await fetchRegister(null, (count) => tell({ told: 'reading', count }));
  tell({ told: 'comparing' });
  const pairs = proposeDuplicates(held).slice(0, mostPairs);
  const wanted = new Set(pairs.flatMap(({ kept, other }) => [kept, other]));
  const apiaries = held.apiaries.filter(({ id }) => wanted.has(id));
  for (const { body } of apiaries) if (body.keeper) wanted.add(body.keeper);
  tell({ told: 'found', pairs, apiaries, keepers: held.keepers.filter(({ id }) => wanted.has(id)) });
}
