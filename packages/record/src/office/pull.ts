import { instantAt } from '../clock.ts';
import type { OfficeStore } from '../store.ts';
import { batchLimit, countThatFits, type Page } from '../transport.ts';

/** See `Office.pull`. @param limit entries at most; fewer come when their text grows too long for one message */
export async function pull(store: OfficeStore, scope: string, after: number, limit: number): Promise<Page> {
  const most = Math.max(1, Math.min(limit, batchLimit));
  const found = await store.placed(scope, after, most + 1);
  const given = found.slice(0, most);
  const items = given.slice(0, countThatFits(given.map(({ kept }) => kept.entry))).map(({ placement, kept }) => ({
    position: placement.position,
    entry: kept.entry,
    receivedAt: kept.receivedAt ?? instantAt(0),
  }));
  return { scope, items, more: found.length > items.length };
}
