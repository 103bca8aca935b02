import { instantAt, tick } from '../clock.ts';
import type { About, Entry } from '../entry.ts';
import { fold, summarise } from '../fold.ts';
import type { ApiaryBody } from '../kinds/apiary.ts';
import type { ColonyBody } from '../kinds/colony.ts';
import type { FoldedState, StoredEntry } from '../store.ts';

/** Invented entries for suites of stores, which never verify: hashes and signatures here are well formed, not true. */

/** A UUID of version 7 with a number in it. */
export function sampleId(group: number, number: number): string {
  const tail = number.toString(16).padStart(12, '0');
  return `01900000-${group.toString(16).padStart(4, '0')}-7000-8000-${tail}`;
}

export function sampleHash(...parts: readonly (string | number)[]): string {
  let state = 0x811c9dc5;
  let text = '';
  for (let i = 0; i < 8; i++) {
    for (const letter of `${i} ${parts.join(' ')}`) state = Math.imul(state ^ letter.charCodeAt(0), 0x01000193) >>> 0;
    text += state.toString(16).padStart(8, '0');
  }
  return text;
}

export interface SampleEntry {
  readonly device: string;
  readonly seq: number;
  readonly id: string;
  readonly about: About;
  readonly kind: string;
  /** 1 where it is not given. */
  readonly version?: number;
  readonly body: unknown;
  readonly refused?: string;
  readonly receivedAt?: string;
  /** Tells envelopes apart that would otherwise be the same. */
  readonly variant?: string;
}

export function sampleStoredEntry(sample: SampleEntry): StoredEntry {
  const entry: Entry = {
    envelope: {
      format: 1,
      id: sample.id,
      kind: sample.kind,
      version: sample.version ?? 1,
      about: sample.about,
      by: sampleId(9, 1),
      device: sample.device,
      seq: sample.seq,
      at: instantAt(1_777_883_465_120 + sample.seq),
      clock: tick(null, 1_777_883_465_120 + sample.seq),
      replaces: [],
      bodyHash: sampleHash('body', sample.id),
      prev: sample.seq === 1 ? null : sampleHash('prev', sample.device, sample.seq),
      signature: 'A'.repeat(86),
    },
    salt: 'A'.repeat(22),
    body: sample.body,
  };
  const hash = sampleHash(sample.device, sample.seq, sample.id, sample.variant ?? '');
  return { entry, hash, receivedAt: sample.receivedAt ?? null, refused: sample.refused ?? null };
}

export function sampleApiary(district: string, keeper: string | null = null): ApiaryBody {
  return {
    name: "Hives at O'Brien's “lower” field; DROP TABLE",
    number: null,
    keeper,
    district,
    position: null,
    addressWords: 'Straße 7, behind the chapel 🐝',
    lastConfirmedOn: null,
    coloniesRegistered: 3,
    plan: null,
  };
}

export function sampleColony(apiary: string, label: string): ColonyBody {
  return {
    apiary,
    label,
    hiveType: 'langstroth-deep',
    broodBoxes: [{ box: 'lower', frames: 9 }],
    hiveState: 'living',
  };
}

/** Notes about one colony, as one device's chain from `from` to `to`. */
export function sampleChain(device: string, from: number, to: number, about: About): StoredEntry[] {
  const chain: StoredEntry[] = [];
  for (let seq = from; seq <= to; seq++) {
    const id = sampleId(Number.parseInt(device.slice(-4), 16) + 16, seq);
    chain.push(sampleStoredEntry({ device, seq, id, about, kind: 'note', body: { text: `note ${seq}` } }));
  }
  return chain;
}

/** State and summary of the entity these entries are about. */
export function sampleState(entries: readonly StoredEntry[]): FoldedState {
  const [first] = entries;
  if (first === undefined) throw new TypeError('give at least one entry');
  const state = fold(
    first.entry.envelope.about,
    entries.map(({ entry }) => entry),
  );
  return { state, summary: summarise(state) };
}
