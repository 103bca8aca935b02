import type { About } from '../entry.ts';
import { aboutKey, type DeviceStore, type StoredEntry } from '../store.ts';
import { type AcceptanceCase, equal, failsWith } from './case.ts';
import type { StoreSubject } from './entry-store.ts';
import { sampleChain, sampleHash, sampleId, sampleStoredEntry } from './samples.ts';

const device = sampleId(1, 1);
const successor = sampleId(1, 2);
const person = sampleId(9, 1);
const colony: About = { type: 'colony', id: sampleId(2, 1) };
const at = '2026-05-05T10:00:00.000Z';

/** What a phone's store must do besides keeping entries: run it after `entryStoreCases`. */
export const deviceStoreCases: readonly AcceptanceCase<StoreSubject<DeviceStore>>[] = [
  {
    name: 'identity and office are kept',
    async check({ store, again }) {
      equal(await store.identity(), null, 'no identity at first');
      equal(await store.office(), null, 'no office at first');
      await store.commit({ identity: { device, person }, office: { device: successor, publicKey: 'B'.repeat(87) } });
      const handle = await again();
      equal(await handle.identity(), { device, person }, 'identity');
      equal(await handle.office(), { device: successor, publicKey: 'B'.repeat(87) }, 'office');
    },
  },
  {
    name: 'the outbox holds own entries in chain order until their receipt',
    async check({ store, again }) {
      const chain = sampleChain(device, 1, 5, colony);
      const hashes = chain.map(({ hash }) => hash);
      await store.commit({ identity: { device, person }, entries: chain, outbox: [...hashes].reverse() });
      equal(
        (await store.outbox(3)).map(({ hash }) => hash),
        hashes.slice(0, 3),
        'first three',
      );
      equal(await store.outboxSize(), 5, 'size');
      await store.commit({
        receipts: [
          { hash: hashes[0] ?? '', receivedAt: at, refused: null },
          { hash: hashes[1] ?? '', receivedAt: at, refused: 'not your district' },
        ],
      });
      const handle = await again();
      equal(
        (await handle.outbox(10)).map(({ hash }) => hash),
        hashes.slice(2),
        'rest',
      );
      equal(
        (await handle.refused()).map(({ hash, refused }) => [hash, refused]),
        [[hashes[1], 'not your district']],
        'no',
      );
    },
  },
  {
    name: 'cursors and sequences grow page by page and begin again at 0',
    async check({ store, again }) {
      const cursor = { scope: 'district/north', position: 2, digest: sampleHash(2) };
      await store.commit({ cursor, sequence: [sampleHash('a'), sampleHash('b')] });
      await store.commit({ cursor: { ...cursor, position: 3 }, sequence: [sampleHash('c')] });
      await store.commit({
        cursor: { scope: 'everyone', position: 1, digest: sampleHash(1) },
        sequence: [sampleHash('d')],
      });
      const handle = await again();
      equal(await handle.cursor('district/north'), { ...cursor, position: 3 }, 'cursor');
      equal(await handle.cursor('district/south'), null, 'no cursor');
      equal((await handle.cursors()).length, 2, 'cursors');
      equal(
        await handle.sequence('district/north'),
        ['a', 'b', 'c'].map((x) => sampleHash(x)),
        'sequence',
      );
      await handle.commit({ cursor: { ...cursor, position: 0 } });
      equal(await store.sequence('district/north'), [], 'emptied');
      equal(await store.sequence('everyone'), [sampleHash('d')], 'the other scope is as it was');
    },
  },
  {
    name: 'held entries wait until released',
    async check({ store, again }) {
      const [one, two] = sampleChain(device, 1, 2, colony) as [StoredEntry, StoredEntry];
      await store.commit({ hold: [one.entry, two.entry] });
      await store.commit({ hold: [one.entry], release: [two.entry.envelope.id] });
      equal(await (await again()).held(), [one.entry], 'held');
      equal(await store.head(device), null, 'a held entry is in no chain');
    },
  },
  {
    name: 'drafts are durable, sorted and found by prefix; a change that fails leaves them alone',
    async check({ store, again }) {
      const draft = (key: string, taps: number) => ({ key, value: { taps, words: 'ä "q"' }, savedAt: at });
      await store.commit({ saveDrafts: [draft('examination/b', 1), draft('examination/a', 1), draft('visit/a', 1)] });
      await store.commit({ saveDrafts: [draft('examination/a', 2)] });
      const handle = await again();
      equal(await handle.draft('examination/a'), draft('examination/a', 2), 'the newest');
      equal(
        (await handle.drafts('examination/')).map(({ key }) => key),
        ['examination/a', 'examination/b'],
        'by prefix',
      );
      await failsWith(
        'head moved',
        () =>
          store.commit({
            expected: { device, head: { device, seq: 4, hash: sampleHash(4) } },
            removeDrafts: ['examination/a'],
          }),
        'a change that fails',
      );
      equal((await handle.drafts('examination/')).length, 2, 'both are still there');
      await store.commit({ removeDrafts: ['examination/a', 'nobody'] });
      equal(await handle.draft('examination/a'), null, 'removed');
    },
  },
  {
    name: 'two handles that change one draft lose nothing, and what stands alongside is stored with it',
    async check({ store, again }) {
      const key = 'examination/a';
      const other = await again();
      const adding = (tap: number) => ({
        key,
        savedAt: at,
        become: (taps: unknown) => [...((taps as number[] | null) ?? []), tap],
      });
      const taps = Array.from({ length: 40 }, (_, tap) => tap);
      await Promise.all(taps.map((tap) => (tap % 2 === 0 ? store : other).changeDraft(adding(tap))));
      const stored = (await (await again()).draft(key))?.value as number[];
      equal(
        [...stored].sort((a, b) => a - b),
        taps,
        'taps of both handles',
      );
      await other.changeDraft({ key, savedAt: at, become: (all) => (all as number[]).slice(0, -1) }, [
        { key: 'examination/b', value: 'beside', savedAt: at },
      ]);
      equal((await store.draft(key))?.value, stored.slice(0, -1), 'the last is taken back');
      equal((await store.draft('examination/b'))?.value, 'beside', 'alongside');
      await store.changeDraft({ key, savedAt: at, become: () => null });
      equal(await other.draft(key), null, 'nothing is left');
    },
  },
  {
    name: 'a change of a draft that throws leaves it as it stood',
    async check({ store, again }) {
      const key = 'examination/a';
      await store.commit({ saveDrafts: [{ key, value: [1], savedAt: at }] });
      const broken = store.changeDraft({
        key,
        savedAt: at,
        become: () => {
          throw new RangeError('no such tap');
        },
      });
      equal(await broken.then(String, (error: Error) => error.name), 'RangeError', 'what it threw');
      equal((await (await again()).draft(key))?.value, [1], 'as it stood');
    },
  },
  {
    name: 'a draft goes in the same transaction in which its entry comes',
    async check({ store }) {
      const [one] = sampleChain(device, 1, 1, colony) as [StoredEntry];
      await store.commit({ saveDrafts: [{ key: 'examination/a', value: 1, savedAt: at }] });
      await store.commit({ expected: { device, head: null }, entries: [one], removeDrafts: ['examination/a'] });
      equal(await store.drafts(''), [], 'drafts');
      equal((await store.head(device))?.seq, 1, 'head');
    },
  },
  {
    name: 'a large change tells how far it is, and given up on the way it leaves nothing',
    async check({ store, again }) {
      const chain = sampleChain(device, 1, 2500, colony);
      const change = {
        expected: { device, head: null },
        identity: { device, person },
        entries: chain,
        outbox: chain.map(({ hash }) => hash),
      };
      const given = new Error('given up');
      let met: unknown = null;
      await store
        .commit(change, () => {
          throw given;
        })
        .catch((error: unknown) => {
          met = error;
        });
      equal(met, given, 'what was thrown comes out');
      const handle = await again();
      equal(await handle.head(device), null, 'no head');
      equal(await handle.outboxSize(), 0, 'nothing to send');
      equal((await handle.chain(device, 1, 10)).length, 0, 'no entry');
      const told: number[] = [];
      await store.commit(change, (count) => told.push(count));
      equal(told.at(-1), chain.length, 'told of all in the end');
      equal(
        told.every((count, at) => count > (told[at - 1] ?? 0)),
        true,
        'and only forward',
      );
      equal(await (await again()).outboxSize(), chain.length, 'all to send');
    },
  },
  {
    name: 'own entries are set aside and come back under a new device, in one change',
    async check({ store, again }) {
      const chain = sampleChain(device, 1, 4, colony) as [StoredEntry, StoredEntry, StoredEntry, StoredEntry];
      await store.commit({
        identity: { device, person },
        entries: chain,
        outbox: chain.slice(1).map(({ hash }) => hash),
      });
      const unsent = chain.slice(2);
      const again1 = unsent.map(({ entry }, i) =>
        sampleStoredEntry({
          device: successor,
          seq: i + 1,
          id: entry.envelope.id,
          about: colony,
          kind: 'note',
          body: entry.body,
        }),
      );
      await store.commit({
        identity: { device: successor, person },
        setAside: unsent.map((kept) => ({ kept, reason: 'clash', setAsideAt: at })),
        entries: again1,
        outbox: again1.map(({ hash }) => hash),
      });
      const handle = await again();
      equal((await handle.head(device))?.seq, 2, 'the old chain ends before them');
      equal((await handle.head(successor))?.seq, 2, 'the new chain has them');
      equal(
        (await handle.setAside()).map(({ kept }) => kept.hash),
        unsent.map(({ hash }) => hash),
        'evidence',
      );
      equal((await handle.entriesAbout([colony])).get(aboutKey(colony))?.length, 4, 'each fact counts once');
      equal(await handle.outboxSize(), 3, 'outbox: one old and two new');
      const foreign = sampleStoredEntry({
        device,
        seq: 3,
        id: sampleId(20, 3),
        about: colony,
        kind: 'note',
        body: { text: 'f' },
      });
      await handle.commit({ entries: [foreign] });
      equal((await handle.head(device))?.seq, 3, 'the other phone’s entry fits where ours was');
    },
  },
];
