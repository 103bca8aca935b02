import type { About } from '../entry.ts';
import { aboutKey, type OfficeStore, type StoredEntry } from '../store.ts';
import { type AcceptanceCase, equal, failsWith } from './case.ts';
import type { StoreSubject } from './entry-store.ts';
import { sampleChain, sampleHash, sampleId } from './samples.ts';

const device = sampleId(1, 1);
const apiary: About = { type: 'apiary', id: sampleId(2, 1) };
const colony: About = { type: 'colony', id: sampleId(2, 2) };

/** What the office's store must do besides keeping entries: run it after `entryStoreCases`. */
export const officeStoreCases: readonly AcceptanceCase<StoreSubject<OfficeStore>>[] = [
  {
    name: 'an empty scope has no tail',
    async check({ store }) {
      equal(await store.tail('district/north'), null, 'tail');
      equal(await store.placed('district/north', 0, 10), [], 'placed');
    },
  },
  {
    name: 'positions come back in order, page by page, per scope',
    async check({ store, again }) {
      const chain = sampleChain(device, 1, 7, colony);
      const placements = chain.map(({ hash }, i) => ({ scope: 'a', position: i + 1, hash, digest: sampleHash(i) }));
      const second = { scope: 'b', position: 1, hash: placements[3]?.hash ?? '', digest: sampleHash('b') };
      await store.commit({ entries: chain, placements: [...placements, second] });
      const handle = await again();
      equal(await handle.tail('a'), placements[6], 'tail');
      equal(await handle.placement('a', 3), placements[2], 'one placement');
      equal(await handle.placement('a', 8), null, 'no placement');
      const page = await handle.placed('a', 2, 3);
      equal(
        page.map(({ placement }) => placement.position),
        [3, 4, 5],
        'page',
      );
      equal(page[0]?.kept, chain[2], 'entry on the page');
      equal((await handle.placed('b', 0, 10)).length, 1, 'the other scope');
      const found = await handle.placedAlready('b', [second.hash, placements[0]?.hash ?? '']);
      equal([...found], [second.hash], 'placed already');
    },
  },
  {
    name: 'a position taken, skipped, or given twice to one entry refuses the whole change',
    async check({ store }) {
      const chain = sampleChain(device, 1, 4, colony) as [StoredEntry, StoredEntry, StoredEntry, StoredEntry];
      const place = (position: number, kept: StoredEntry) => ({
        scope: 'a',
        position,
        hash: kept.hash,
        digest: kept.hash,
      });
      await store.commit({ entries: [chain[0]], placements: [place(1, chain[0])] });
      await failsWith(
        'entry clash',
        () => store.commit({ entries: [chain[1]], placements: [place(1, chain[1])] }),
        'position taken',
      );
      await failsWith('entry clash', () => store.commit({ placements: [place(2, chain[0])] }), 'the same entry again');
      await failsWith(
        'entry clash',
        () => store.commit({ entries: [chain[1]], placements: [place(3, chain[1])] }),
        'position skipped',
      );
      equal((await store.head(device))?.seq, 1, 'nothing stored by halves');
    },
  },
  {
    name: 'erased and received entries are given out as they stand now',
    async check({ store }) {
      const [one] = sampleChain(device, 1, 1, colony) as [StoredEntry];
      await store.commit({
        entries: [one],
        placements: [{ scope: 'a', position: 1, hash: one.hash, digest: one.hash }],
      });
      await store.commit({ erase: [one.hash] });
      equal((await store.placed('a', 0, 10))[0]?.kept.entry.body, null, 'body on the page');
    },
  },
  {
    name: 'memberships, followers and parents are kept, each once',
    async check({ store, again }) {
      const member = { about: apiary, scope: 'district/north' };
      const follow = { child: colony, parent: apiary };
      await store.commit({ memberships: [member], follows: [follow] });
      await store.commit({ memberships: [member, { about: apiary, scope: 'district/south' }], follows: [follow] });
      const handle = await again();
      const found = (await handle.memberships([apiary, colony])).get(aboutKey(apiary)) ?? [];
      equal([...found].sort(), ['district/north', 'district/south'], 'memberships');
      equal(await handle.followers([apiary]), [colony], 'followers');
      equal(await handle.followers([colony]), [], 'nobody follows the colony');
      equal([...(await handle.parents([colony, apiary]))], [[aboutKey(colony), [apiary]]], 'parents');
    },
  },
  {
    name: 'two writers at once: positions run without a gap, and whoever reads on misses none',
    async check({ store, again }) {
      const other = await again();
      const seen: number[] = [];
      let reading = true;
      const reader = (async () => {
        while (reading) {
          const page = await other.placed('a', seen.at(-1) ?? 0, 7);
          for (const { placement } of page) seen.push(placement.position);
          await new Promise<void>((resolve) => queueMicrotask(resolve));
          if (page.length === 0) await store.tail('a');
        }
      })();
      const write = (handle: OfficeStore, name: string, seq: number) =>
        handle.exclusive(async (within) => {
          const chain = sampleChain(name, seq, seq, colony) as [StoredEntry];
          const position = ((await within.tail('a'))?.position ?? 0) + 1;
          await within.heads(); // a slow transaction: it thinks between reading the tail and writing
          const [kept] = chain;
          await within.commit({
            entries: chain,
            placements: [{ scope: 'a', position, hash: kept.hash, digest: kept.hash }],
          });
        });
      const writes: Promise<void>[] = [];
      for (let seq = 1; seq <= 20; seq++) {
        writes.push(write(store, device, seq), write(other, sampleId(1, 2), seq));
      }
      await Promise.all(writes);
      for (;;) {
        if (seen.length === 40) break;
        const before = seen.length;
        for (let i = 0; i < 50 && seen.length === before; i++) await store.tail('a');
        if (seen.length === before) break;
      }
      reading = false;
      await reader;
      equal(
        seen,
        Array.from({ length: 40 }, (_, i) => i + 1),
        'positions as the reader met them',
      );
    },
  },
];
