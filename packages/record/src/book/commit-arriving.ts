import { observe } from '../clock.ts';
import { effectOf } from '../effect.ts';
import type { About } from '../entry.ts';
import { RecordError } from '../errors.ts';
import type { DeviceStore, StoredEntry } from '../store.ts';
import type { BookContext, Receipt } from './book.ts';
import { type Changed, clockChange } from './changed.ts';

/** What was stored, and what was not because it forks a chain. */
export interface CommittedArrivals {
  readonly taken: readonly StoredEntry[];
  readonly clashing: readonly StoredEntry[];
}

/** Stores what verified and is new here, with the receipts that came along. Inside `exclusive`. */
export async function commitArriving(
  book: BookContext,
  inside: DeviceStore,
  coming: readonly StoredEntry[],
  receipts: readonly Receipt[],
): Promise<Changed<CommittedArrivals>> {
  const whole = await commitUnlessClash(book, inside, coming, receipts);
  if (whole !== null) return { answer: { taken: coming, clashing: [] }, touched: whole };
  // Something in the batch forks a chain: take one at a time, so that it does not stand in the way of the others.
  const touched: About[] = [];
  const taken: StoredEntry[] = [];
  const clashing: StoredEntry[] = [];
  for (const kept of coming) {
    const alone = await commitUnlessClash(book, inside, [kept], receipts);
    if (alone === null) clashing.push(kept);
    else {
      taken.push(kept);
      touched.push(...alone);
    }
  }
  return { answer: { taken, clashing }, touched };
}

/** @returns the entities touched; null, and nothing stored, when an entry clashes with one that stands here */
async function commitUnlessClash(
  { clock, kinds }: BookContext,
  inside: DeviceStore,
  batch: readonly StoredEntry[],
  receipts: readonly Receipt[],
): Promise<readonly About[] | null> {
  const now = clock.now();
  const effect = await effectOf(inside, { added: batch }, kinds);
  const before = await inside.clock();
  let reading = before;
  for (const { entry } of batch) reading = observe(reading, entry.envelope.clock, now);
  try {
    await inside.commit({
      entries: effect.added,
      erase: effect.erase,
      states: effect.states,
      dropStates: effect.dropStates,
      receipts,
      ...(reading === before ? {} : clockChange(reading)),
    });
  } catch (error) {
    if (error instanceof RecordError && error.code === 'entry clash') return null;
    throw error;
  }
  return effect.touched;
}
