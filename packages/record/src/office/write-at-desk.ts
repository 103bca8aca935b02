import { checkedProposals, namedBy } from '../content-check.ts';
import type { Entry, Proposal } from '../entry.ts';
import { RecordError } from '../errors.ts';
import { commitEntries } from './commit-entries.ts';
import type { OfficeContext } from './office.ts';
import { scopeGrowth } from './scope-growth.ts';

/** See `Office.write`. */
export async function writeAtDesk(office: OfficeContext, proposals: readonly Proposal[], by: string): Promise<Entry[]> {
  const { store, kinds } = office;
  const checked = checkedProposals(proposals, kinds);
  const written = await store.exclusive(async (inside) => {
    const named = namedBy(checked, kinds);
    const found = await inside.byId(named);
    for (const id of named) if (!found.has(id)) throw new RecordError('unknown entry', id);
    const growth = scopeGrowth(inside, kinds);
    return commitEntries(office, inside, { received: [], proposals: checked, by, growth });
  });
  return written.map(({ entry }) => entry);
}
