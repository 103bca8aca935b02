import { effectOf } from '../effect.ts';
import type { BookContext, Receipt } from './book.ts';
import type { Changed } from './changed.ts';

/** See `Book.acknowledge`. */
export function acknowledgeReceipts(
  { store, kinds }: BookContext,
  receipts: readonly Receipt[],
): Promise<Changed<null>> {
  return store.exclusive(async (inside) => {
    const found = await inside.byHash(receipts.filter(({ refused }) => refused !== null).map(({ hash }) => hash));
    const gone = [...found.values()].filter((kept) => kept.refused === null);
    const effect = await effectOf(inside, { added: [], gone }, kinds);
    await inside.commit({ receipts, states: effect.states, dropStates: effect.dropStates });
    return { answer: null, touched: effect.touched };
  });
}
