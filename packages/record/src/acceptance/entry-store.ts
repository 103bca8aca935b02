import type { About } from '../entry.ts';
import { aboutKey, type Change, type EntryStore, type StoredEntry } from '../store.ts';
import { type AcceptanceCase, equal, failsWith, truly } from './case.ts';
import {
  sampleApiary,
  sampleChain,
  sampleColony,
  sampleHash,
  sampleId,
  sampleState,
  sampleStoredEntry,
} from './samples.ts';

/** What any store of entries must do; `again` opens a second handle on the same storage. */
export interface StoreSubject<S> {
  readonly store: S;
  again(): Promise<S>;
}

const device = sampleId(1, 1);
const other = sampleId(1, 2);
const colony: About = { type: 'colony', id: sampleId(2, 1) };

function last<T>(list: readonly T[]): T {
  const item = list.at(-1);
  if (item === undefined) throw new Error('an empty list has no last item');
  return item;
}

function headAfter(kept: StoredEntry) {
  return { device: kept.entry.envelope.device, seq: kept.entry.envelope.seq, hash: kept.hash };
}

export const entryStoreCases: readonly AcceptanceCase<StoreSubject<EntryStore<Change>>>[] = [
  {
    name: 'an empty store has no heads, entries, states or clock',
    async check({ store }) {
      equal(await store.heads(), [], 'heads');
      equal(await store.head(device), null, 'head');
      equal(await store.clock(), null, 'clock');
      equal((await store.byHash([sampleHash('x')])).size, 0, 'by hash');
      equal((await store.byId([sampleId(3, 3)])).size, 0, 'by id');
      equal((await store.entriesAbout([colony])).size, 0, 'about');
      equal(await store.chain(device, 1, 10), [], 'chain');
      equal(await store.summaries('apiary'), [], 'summaries');
    },
  },
  {
    name: 'what was committed comes back byte for byte, also to another handle',
    async check({ store, again }) {
      const chain = sampleChain(device, 1, 5, colony);
      await store.commit({ expected: { device, head: null }, entries: chain, clock: last(chain).entry.envelope.clock });
      for (const handle of [store, await again()]) {
        equal(await handle.chain(device, 1, 100), chain, 'chain');
        equal(await handle.head(device), headAfter(last(chain)), 'head');
        equal(await handle.clock(), last(chain).entry.envelope.clock, 'clock');
        const found = await handle.byHash([last(chain).hash, sampleHash('nobody')]);
        equal([...found.keys()], [last(chain).hash], 'by hash');
        equal(
          (await handle.byId([last(chain).entry.envelope.id])).get(last(chain).entry.envelope.id),
          last(chain),
          'id',
        );
      }
    },
  },
  {
    name: 'quote marks, other alphabets and emoji in bodies and labels survive',
    async check({ store }) {
      const about: About = { type: 'apiary', id: sampleId(4, 1) };
      const body = sampleApiary(`north "east" '; -- \\ ąßΩж`);
      const kept = sampleStoredEntry({ device, seq: 1, id: sampleId(5, 1), about, kind: 'apiary', body });
      await store.commit({ entries: [kept], states: [sampleState([kept])] });
      equal((await store.entriesAbout([about])).get(aboutKey(about)), [kept], 'entry');
      equal((await store.summaries('apiary', { district: body.district })).length, 1, 'summaries by such a district');
    },
  },
  {
    name: 'a moved head refuses the whole change',
    async check({ store }) {
      const [one, two, three] = sampleChain(device, 1, 3, colony) as [StoredEntry, StoredEntry, StoredEntry];
      await store.commit({ expected: { device, head: null }, entries: [one] });
      await failsWith(
        'head moved',
        () => store.commit({ expected: { device, head: null }, entries: [two], clock: three.entry.envelope.clock }),
        'a stale empty head',
      );
      await failsWith(
        'head moved',
        () => store.commit({ expected: { device, head: headAfter(two) }, entries: [three] }),
        'a head that was never there',
      );
      equal((await store.chain(device, 1, 10)).length, 1, 'entries after two refused changes');
      equal(await store.clock(), null, 'clock after two refused changes');
      await store.commit({ expected: { device, head: headAfter(one) }, entries: [two, three] });
      equal((await store.head(device))?.seq, 3, 'head');
    },
  },
  {
    name: 'one place of a chain holds one entry: a clash refuses the whole change',
    async check({ store }) {
      const chain = sampleChain(device, 1, 3, colony);
      await store.commit({ entries: chain });
      const fresh = sampleStoredEntry({
        device: other,
        seq: 1,
        id: sampleId(6, 1),
        about: colony,
        kind: 'note',
        body: {},
      });
      const clash = sampleStoredEntry({ device, seq: 3, id: sampleId(6, 2), about: colony, kind: 'note', body: {} });
      await failsWith('entry clash', () => store.commit({ entries: [fresh, clash] }), 'same device and seq');
      equal(await store.head(other), null, 'the good entry beside it was not stored by halves');
      equal((await store.entriesAbout([colony])).get(aboutKey(colony))?.length, 3, 'entries about');
    },
  },
  {
    name: 'a fact sealed twice counts once; as refused it may stand again',
    async check({ store }) {
      const id = sampleId(6, 3);
      const first = sampleStoredEntry({ device, seq: 1, id, about: colony, kind: 'note', body: { text: 'a' } });
      const second = {
        ...sampleStoredEntry({ device: other, seq: 1, id, about: colony, kind: 'note', body: { text: 'a' } }),
      };
      await store.commit({ entries: [first] });
      await failsWith('entry clash', () => store.commit({ entries: [second] }), 'same identifier, both counting');
      await store.commit({ entries: [{ ...second, refused: 'written already' }] });
      equal((await store.byId([id])).get(id)?.hash, first.hash, 'the one that counts');
      equal((await store.head(other))?.seq, 1, 'the refused one holds its place');
      equal((await store.byHash([second.hash])).get(second.hash)?.refused, 'written already', 'refused by hash');
    },
  },
  {
    name: 'a refused entry holds its place in the chain and stays out of the fold',
    async check({ store }) {
      const [one, two, three] = sampleChain(device, 1, 3, colony) as [StoredEntry, StoredEntry, StoredEntry];
      await store.commit({ entries: [one, { ...two, refused: 'not your district' }, three] });
      equal(
        (await store.chain(device, 1, 10)).map((kept) => kept.entry.envelope.seq),
        [1, 2, 3],
        'chain',
      );
      equal((await store.entriesAbout([colony])).get(aboutKey(colony))?.length, 2, 'entries about');
    },
  },
  {
    name: 'receipts stamp and refuse entries that were stored before',
    async check({ store }) {
      const [one, two] = sampleChain(device, 1, 2, colony) as [StoredEntry, StoredEntry];
      await store.commit({ entries: [one, two] });
      const receivedAt = '2026-05-05T10:00:00.000Z';
      await store.commit({
        receipts: [
          { hash: one.hash, receivedAt, refused: null },
          { hash: two.hash, receivedAt, refused: 'wrong body' },
          { hash: sampleHash('nobody'), receivedAt, refused: null },
        ],
      });
      equal((await store.byHash([one.hash])).get(one.hash), { ...one, receivedAt }, 'received');
      equal((await store.byHash([two.hash])).get(two.hash), { ...two, receivedAt, refused: 'wrong body' }, 'refused');
      equal((await store.entriesAbout([colony])).get(aboutKey(colony))?.length, 1, 'entries about');
    },
  },
  {
    name: 'erasing forgets body and salt for good and keeps the envelope',
    async check({ store, again }) {
      const [one, two] = sampleChain(device, 1, 2, colony) as [StoredEntry, StoredEntry];
      await store.commit({ entries: [one, two] });
      await store.commit({ erase: [one.hash] });
      for (const handle of [store, await again()]) {
        const gone = (await handle.byHash([one.hash])).get(one.hash);
        equal(gone, { ...one, entry: { ...one.entry, salt: null, body: null } }, 'erased entry');
        equal((await handle.byHash([two.hash])).get(two.hash), two, 'its neighbour');
        const about = (await handle.entriesAbout([colony])).get(aboutKey(colony)) ?? [];
        equal(about.length, 2, 'both still stand about the colony');
      }
    },
  },
  {
    name: 'entries about several entities are found in one question',
    async check({ store }) {
      const abouts = Array.from({ length: 30 }, (_, i): About => ({ type: 'colony', id: sampleId(7, i) }));
      const entries = abouts.flatMap((about, i) => [
        sampleStoredEntry({ device, seq: 2 * i + 1, id: sampleId(8, 2 * i), about, kind: 'note', body: { text: 'x' } }),
        sampleStoredEntry({
          device,
          seq: 2 * i + 2,
          id: sampleId(8, 2 * i + 1),
          about,
          kind: 'note',
          body: { text: 'y' },
        }),
      ]);
      await store.commit({ entries });
      const found = await store.entriesAbout([...abouts, { type: 'colony', id: sampleId(7, 99) }]);
      equal(found.size, 30, 'entities found');
      truly(
        [...found.values()].every((list) => list.length === 2),
        'each has its two entries',
      );
    },
  },
  {
    name: 'bulk: two thousand entries with their states, then found one by one',
    async check({ store, again }) {
      const apiary = sampleId(10, 1);
      const entries: StoredEntry[] = [];
      for (let i = 0; i < 2000; i++) {
        const about: About = { type: 'colony', id: sampleId(11, i) };
        const body = sampleColony(i % 2 === 0 ? apiary : sampleId(10, 2), `hive ${i}`);
        entries.push(sampleStoredEntry({ device, seq: i + 1, id: sampleId(12, i), about, kind: 'colony', body }));
      }
      const states = entries.map((kept) => sampleState([kept]));
      for (let from = 0; from < 2000; from += 500) {
        await store.commit({ entries: entries.slice(from, from + 500), states: states.slice(from, from + 500) });
      }
      const handle = await again();
      equal((await handle.head(device))?.seq, 2000, 'head');
      equal((await handle.chain(device, 1, 5000)).length, 2000, 'chain');
      equal((await handle.summaries('colony')).length, 2000, 'all colonies');
      equal((await handle.summaries('colony', { apiary })).length, 1000, 'colonies of the apiary');
      const about: About = { type: 'colony', id: sampleId(11, 777) };
      equal((await handle.entriesAbout([about])).get(aboutKey(about)), [entries[777]], 'one colony');
      const late = sampleStoredEntry({
        device,
        seq: 2001,
        id: sampleId(12, 2000),
        about,
        kind: 'note',
        body: { text: 'late' },
      });
      await handle.commit({ entries: [late] });
      equal((await handle.entriesAbout([about])).get(aboutKey(about))?.length, 2, 'bulk and single together');
      const [erased] = entries as [StoredEntry];
      await handle.commit({
        erase: [erased.hash],
        receipts: [{ hash: late.hash, receivedAt: '2026-05-04T08:31:05.120Z', refused: null }],
      });
      equal((await handle.byHash([erased.hash])).get(erased.hash)?.entry.body, null, 'erased in bulk');
      equal(
        (await handle.byId([late.entry.envelope.id])).get(late.entry.envelope.id)?.receivedAt,
        '2026-05-04T08:31:05.120Z',
        'receipt',
      );
    },
  },
  {
    name: 'many asked for at once are found as each is by itself, packed, single and refused ones',
    async check({ store, again }) {
      const aboutOf = (i: number): About => ({ type: 'colony', id: sampleId(17, i % 40) });
      const noteOf = (i: number): StoredEntry =>
        sampleStoredEntry({ device, seq: i + 1, id: sampleId(16, i), about: aboutOf(i), kind: 'note', body: { i } });
      const refused = (kept: StoredEntry): StoredEntry => ({ ...kept, refused: 'not your district' });
      const all = Array.from({ length: 400 }, (_, i) => (i % 50 === 7 ? refused(noteOf(i)) : noteOf(i)));
      await store.commit({ entries: all.slice(0, 200) });
      for (const kept of all.slice(200, 230)) await store.commit({ entries: [kept] });
      await store.commit({ entries: all.slice(230) });
      const handle = await again();
      const hashes = [...all.map(({ hash }) => hash), sampleHash('nowhere')];
      const ids = [...all.map(({ entry }) => entry.envelope.id), sampleId(16, 999)];
      const abouts = Array.from({ length: 60 }, (_, i): About => ({ type: 'colony', id: sampleId(17, i) }));
      const sorted = (found: ReadonlyMap<string, StoredEntry | readonly StoredEntry[]>) =>
        [...found]
          .map(([key, kept]) => [
            key,
            [kept]
              .flat()
              .map(({ hash }) => hash)
              .sort(),
          ])
          .sort();
      const oneByOne = async <T>(keys: readonly T[], find: (key: T) => Promise<Map<string, never>>) =>
        sorted(new Map((await Promise.all(keys.map(find))).flatMap((found) => [...found])));
      // More keys than are stored, as many as a page brings, and fewer: a store may go another way for each.
      for (const share of [1, 0.5, 0.15]) {
        const some = <T>(keys: readonly T[]): readonly T[] => keys.slice(Math.floor(keys.length * (1 - share)));
        equal(
          sorted(await handle.byHash(some(hashes))),
          await oneByOne(some(hashes), (hash) => handle.byHash([hash]) as Promise<Map<string, never>>),
          `by hash, ${share}`,
        );
        equal(
          sorted(await handle.byId(some(ids))),
          await oneByOne(some(ids), (id) => handle.byId([id]) as Promise<Map<string, never>>),
          `by identifier, ${share}`,
        );
        equal(
          sorted(await handle.entriesAbout(some(abouts))),
          await oneByOne(some(abouts), (about) => handle.entriesAbout([about]) as Promise<Map<string, never>>),
          `about, ${share}`,
        );
      }
      equal((await handle.byHash(hashes)).size, 400, 'all by hash, refused ones too');
      equal((await handle.byId(ids)).size, 392, 'by identifier the refused ones do not count');
      equal((await handle.entriesAbout(abouts)).size, 40, 'about');
    },
  },
  {
    name: 'summaries follow their entity from group to group, and go stale by version',
    async check({ store, again }) {
      const about: About = { type: 'apiary', id: sampleId(13, 1) };
      const keeper = sampleId(14, 1);
      const [north, south] = ['north', 'south'].map((district, i) =>
        sampleStoredEntry({
          device,
          seq: i + 1,
          id: sampleId(15, i),
          about,
          kind: 'apiary',
          body: sampleApiary(district, keeper),
        }),
      ) as [StoredEntry, StoredEntry];
      const before = sampleState([north]);
      await store.commit({ entries: [north], states: [before] });
      equal(await store.summaries('apiary', { district: 'north' }), [before.summary], 'north');
      const after = sampleState([south]);
      await store.commit({ entries: [south], states: [after] });
      const handle = await again();
      equal(await handle.summaries('apiary', { district: 'north' }), [], 'it left the north');
      equal(await handle.summaries('apiary', { district: 'south' }), [after.summary], 'it is in the south');
      equal(await handle.summaries('apiary', { keeper }), [after.summary], 'by keeper');
      equal(await handle.summaries('apiary'), [after.summary], 'it is there once');
      const kept = (await handle.states([about])).get(aboutKey(about));
      if (kept !== undefined) equal(kept, after.state, 'a kept state is the newest');
      equal(await handle.stale(after.summary.foldVersion, 10), [], 'nothing is stale');
      equal(await handle.stale(after.summary.foldVersion + 1, 10), [about], 'after a new version it is');
    },
  },
  {
    name: 'exclusive admits one writer at a time, over two handles, and goes on after a failure',
    async check({ store, again }) {
      const handles = [store, await again()];
      let inside = 0;
      let most = 0;
      const append = (handle: EntryStore<Change>, fails: boolean) =>
        handle.exclusive(async (within) => {
          inside++;
          most = Math.max(most, inside);
          try {
            const head = await within.head(device);
            const [next] = sampleChain(device, (head?.seq ?? 0) + 1, (head?.seq ?? 0) + 1, colony) as [StoredEntry];
            if (fails) throw new Error('on purpose');
            await within.commit({ expected: { device, head }, entries: [next] });
          } finally {
            inside--;
          }
        });
      const results = await Promise.allSettled(
        Array.from({ length: 40 }, (_, i) => append(handles[i % 2] ?? store, i % 8 === 7)),
      );
      equal(results.filter((result) => result.status === 'rejected').length, 5, 'failures made on purpose');
      equal(most, 1, 'writers inside at once');
      const chain = await store.chain(device, 1, 100);
      equal(
        chain.map((kept) => kept.entry.envelope.seq),
        Array.from({ length: 35 }, (_, i) => i + 1),
        'one chain without a gap',
      );
    },
  },
];
