import { seal } from '../chain.ts';
import { checkedProposals, namedBy } from '../content-check.ts';
import { effectOf } from '../effect.ts';
import type { Entry, Proposal } from '../entry.ts';
import { RecordError } from '../errors.ts';
import type { BookContext, WriteOptions } from './book.ts';
import { type Changed, clockChange } from './changed.ts';
import { identityOf } from './device-identity.ts';

/** See `Book.write`. */
export async function writeProposals(
  { store, hasher, keys, clock, chance, kinds }: BookContext,
  proposals: readonly Proposal[],
  options: WriteOptions,
): Promise<Changed<Entry[]>> {
  const checked = checkedProposals(proposals, kinds);
  return store.exclusive(async (inside) => {
    const identity = await identityOf(inside);
    const named = namedBy(checked, kinds);
    const found = await inside.byId(named);
    for (const id of named) if (!found.has(id)) throw new RecordError('unknown entry', id);
    const head = await inside.head(identity.device);
    const signer = await keys.signerFor(identity.device);
    const end = { device: identity.device, by: identity.person, head, clock: await inside.clock() };
    const sealed = await seal({ hasher, signer, clock, chance }, end, checked, options.sealed);
    const effect = await effectOf(inside, { added: sealed.kept }, kinds);
    const change = {
      expected: { device: identity.device, head },
      entries: effect.added,
      states: effect.states,
      outbox: sealed.kept.map(({ hash }) => hash),
      removeDrafts: options.closes ?? [],
      ...clockChange(sealed.clock),
    };
    await inside.commit(change, options.stored);
    return { answer: sealed.kept.map(({ entry }) => entry), touched: effect.touched };
  });
}
