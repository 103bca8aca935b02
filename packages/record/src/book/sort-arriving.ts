import { bodyMatches, chainBeginning, linkOf, signatureMatches } from '../chain.ts';
import { contentFault } from '../content-check.ts';
import { type Entry, entry as entryShape } from '../entry.ts';
import type { StoredEntry } from '../store.ts';
import { beginsItsChain, trustedDevices } from '../trust.ts';
import type { Arriving, BookContext } from './book.ts';

/** What arrived, by what can be told of it without its neighbours here. */
export interface SortedArrivals {
  /** Verified; those known here only when they bring the office's receipt of an own entry. */
  readonly good: readonly StoredEntry[];
  /** Here already, by identifier. */
  readonly known: readonly string[];
  /** Cannot be verified yet: their device is not known here. */
  readonly held: readonly Entry[];
  readonly rejected: readonly Rejected[];
}

/** An entry that is not kept, and why. */
export interface Rejected {
  readonly id: string;
  readonly reason: string;
}

/**
 * Verifies what arrived, outside any lock. Devices come first, then the office's countersignatures, then the rest, so
 * that one batch may bring a device together with what it wrote.
 */
export async function sortArriving(book: BookContext, arriving: readonly Arriving[]): Promise<SortedArrivals> {
  const { store } = book;
  const { candidates, rejected } = await readArriving(book, arriving);
  const stored = await store.byHash([...candidates.keys()]);
  const known = [...stored.values()].map(({ entry }) => entry.envelope.id);
  // A known own entry that comes back from the office carries its receipt: settle it with the rest.
  const good = [...candidates.values()].filter((kept) => bringsReceipt(kept, stored.get(kept.hash)));
  const keepSound = async (
    entries: readonly StoredEntry[],
    faultOf: (kept: StoredEntry) => Promise<string | null>,
  ): Promise<Entry[]> => {
    const faults = await Promise.all(entries.map(faultOf));
    const sound = entries.filter((_, at) => faults[at] === null);
    good.push(...sound);
    for (const [at, { entry }] of entries.entries()) {
      const reason = faults[at] ?? null;
      if (reason !== null) rejected.push({ id: entry.envelope.id, reason });
    }
    return sound.map(({ entry }) => entry);
  };

  const office = await store.office();
  const unknown = [...candidates.values()].filter(({ hash }) => !stored.has(hash));
  const beginnings = unknown.filter(({ entry }) => chainBeginning(entry) !== null);
  const rest = unknown.filter(({ entry }) => chainBeginning(entry) === null);
  const fromOffice = rest.filter(({ entry }) => entry.envelope.device === office?.device);
  const others = rest.filter(({ entry }) => entry.envelope.device !== office?.device);

  const begun = await keepSound(beginnings, (kept) => beginningFault(book, kept));
  const officeSigns = { publicKey: office?.publicKey ?? '', person: null, isOffice: true };
  const vouching = await keepSound(fromOffice, (kept) => arrivalFault(book, kept, officeSigns));
  const devices = others.map(({ entry }) => entry.envelope.device);
  const trusted = await trustedDevices(book, office, devices, [...begun, ...vouching]);
  const held = others.filter(({ entry }) => !trusted.has(entry.envelope.device)).map(({ entry }) => entry);
  await keepSound(
    others.filter(({ entry }) => trusted.has(entry.envelope.device)),
    async (kept) => {
      const device = trusted.get(kept.entry.envelope.device);
      return device === undefined ? 'no device entry' : arrivalFault(book, kept, { ...device, isOffice: false });
    },
  );
  return { good, known, held, rejected };
}

/** Entries by envelope hash, each once: of two copies the one that bears the office's receipt. */
async function readArriving(
  { hasher }: BookContext,
  arriving: readonly Arriving[],
): Promise<{ readonly candidates: ReadonlyMap<string, StoredEntry>; readonly rejected: Rejected[] }> {
  const rejected: Rejected[] = [];
  const candidates = new Map<string, StoredEntry>();
  for (const { entry, receivedAt } of arriving) {
    if (!entryShape.safeParse(entry).success) {
      rejected.push({ id: String((entry as Partial<Entry> | null)?.envelope?.id ?? 'none'), reason: 'wrong shape' });
      continue;
    }
    const kept: StoredEntry = { entry, hash: await linkOf(hasher, entry.envelope), receivedAt, refused: null };
    const twin = candidates.get(kept.hash);
    if (twin === undefined || twin.receivedAt === null) candidates.set(kept.hash, kept);
  }
  return { candidates, rejected };
}

/** Whether what came from the office stands here as an own entry that was still without its receipt. */
export function bringsReceipt(came: StoredEntry, here: StoredEntry | undefined): boolean {
  return here !== undefined && here.receivedAt === null && came.receivedAt !== null;
}

async function beginningFault(
  { hasher, verifier, kinds }: BookContext,
  { entry }: StoredEntry,
): Promise<string | null> {
  if (!(await beginsItsChain(hasher, verifier, entry))) return 'wrong signature';
  return contentFault(entry, false, kinds) === null ? null : 'bad clock';
}

/** By whose key an entry must be signed, and whom it must name as author; null where several people write. */
interface ExpectedSigner {
  readonly publicKey: string;
  readonly person: string | null;
  readonly isOffice: boolean;
}

async function arrivalFault(
  { hasher, verifier, kinds }: BookContext,
  { entry }: StoredEntry,
  { publicKey, person, isOffice }: ExpectedSigner,
): Promise<string | null> {
  if (entry.salt !== null && !(await bodyMatches(hasher, entry))) return 'wrong body hash';
  if (!(await signatureMatches(verifier, entry.envelope, publicKey))) return 'wrong signature';
  if (person !== null && entry.envelope.by !== person) return 'wrong author';
  return contentFault(entry, isOffice, kinds);
}
