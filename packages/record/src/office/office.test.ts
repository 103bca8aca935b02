import { describe, expect, test } from 'vitest';
import { nodeHasher, nodeSigner, nodeVerifier, seededChance } from '../acceptance/node-ports.ts';
import { sampleApiary, sampleColony } from '../acceptance/samples.ts';
import { smallWorld } from '../acceptance/small-world.ts';
import { verifyChain } from '../chain.ts';
import { checkpointIsSigned, headsMissing, matchesScope } from '../checkpoint.ts';
import type { Entry, Proposal } from '../entry.ts';
import { fold } from '../fold.ts';
import { apiary as apiaryKind } from '../kinds/apiary.ts';
import { memoryDeviceStore } from '../memory-store.ts';
import { districtScope, everyoneScope } from '../transport.ts';
import { openOffice } from './open-office.ts';

const desk = '01900000-0de5-7000-8000-000000000001';

function keeperBody(name: string) {
  return { name, number: null, addressWords: '', telephone: '', email: '', language: 'en', trade: 'hobby' };
}

describe('the office', () => {
  test('writes at its desks in its own chain, which verifies', async () => {
    const { office, officeStore } = await smallWorld();
    const about = { type: 'apiary', id: office.newId() } as const;
    const body = sampleApiary('north');
    await office.write([{ kind: 'apiary', version: apiaryKind.version, about, replaces: [], body }], desk);
    expect((await office.state(about))?.apiary.current?.written.by).toBe(desk);
    const chain = await officeStore.chain(office.key.device, 1, 100);
    const context = { erased: new Set<string>(), office: office.key.device };
    const ports = { hasher: nodeHasher, verifier: nodeVerifier };
    expect(await verifyChain(ports, chain, context)).toEqual([]);
    expect((await verifyChain(ports, chain, { ...context, office: null })).map(({ fault }) => fault)).toEqual([
      'wrong author',
    ]);
    await expect(office.write([{ kind: 'apiary', version: 99, about, replaces: [], body }], desk)).rejects.toThrow(
      'unknown kind',
    );
  });

  test('is the same at the next start, and refuses another key for the same store', async () => {
    const { office, officeStore, officeClock } = await smallWorld();
    const ports = {
      store: officeStore,
      hasher: nodeHasher,
      verifier: nodeVerifier,
      clock: officeClock,
      chance: seededChance(5),
    };
    const options = { device: office.key.device, person: desk, name: 'office' };
    await expect(openOffice({ ...ports, signer: nodeSigner() }, options)).rejects.toThrow('wrong server');
    expect((await officeStore.head(office.key.device))?.seq).toBe(1);
  });

  test('gives a moved apiary whole to its new district: colonies, visits and keeper with it', async () => {
    const world = await smallWorld();
    const north = await world.phone({ districts: ['north', 'south'] });
    const south = await world.phone({ districts: ['south'] });
    const { book } = north;
    const keeper = { type: 'keeper', id: book.newId() } as const;
    const apiary = { type: 'apiary', id: book.newId() } as const;
    const colony = { type: 'colony', id: book.newId() } as const;
    const site = (district: string, replaces: readonly string[]): Proposal => ({
      kind: 'apiary',
      version: apiaryKind.version,
      about: apiary,
      replaces,
      body: sampleApiary(district, keeper.id),
    });
    const [first] = (await book.write([
      site('north', []),
      { kind: 'keeper', version: 1, about: keeper, replaces: [], body: keeperBody('Invented') },
      { kind: 'colony', version: 1, about: colony, replaces: [], body: sampleColony(apiary.id, '1') },
      { kind: 'note', version: 1, about: colony, replaces: [], body: { text: 'seen in the north' } },
    ])) as [Entry];
    await north.sync();
    await south.sync();
    expect(await south.book.summaries('colony')).toEqual([]);
    await book.write([site('south', [first.envelope.id])]);
    await north.sync();
    const report = await south.sync();
    expect(report.confirmed).toContain(districtScope('south'));
    for (const about of [keeper, apiary, colony]) {
      expect(await south.book.state(about)).toEqual(await north.book.state(about));
      expect(await south.book.state(about)).not.toBeNull();
    }
    expect((await south.book.states('colony', { apiary: apiary.id }))[0]?.notes).toHaveLength(1);
    // And what is added later goes there too.
    await book.write([{ kind: 'note', version: 1, about: colony, replaces: [], body: { text: 'later' } }]);
    await north.sync();
    await south.sync();
    expect((await south.book.state(colony))?.notes).toHaveLength(2);
  });

  test('refuses what the author may not write, with the reason; the phone keeps it and no longer counts it', async () => {
    const world = await smallWorld();
    const phone = await world.phone({ districts: ['north'] });
    const about = { type: 'apiary', id: phone.book.newId() } as const;
    const body = sampleApiary('south');
    const [entry] = (await phone.book.write([
      { kind: 'apiary', version: apiaryKind.version, about, replaces: [], body },
    ])) as [Entry];
    expect(await phone.book.state(about)).not.toBeNull();
    const report = await phone.sync();
    expect(report.refused).toEqual([{ id: entry.envelope.id, reason: 'not your district' }]);
    expect(await phone.book.state(about)).toBeNull();
    expect(await phone.book.summaries('apiary')).toEqual([]);
    const [kept] = await phone.store.refused();
    expect(kept?.entry).toEqual(entry);
    expect((await phone.sync()).refused).toEqual([]);
    expect(await world.office.state(about)).toBeNull();
  });

  test('erases personal data with its corrections; envelopes stay, chains verify, late copies are stripped', async () => {
    const world = await smallWorld();
    const [writer, reader] = [await world.phone(), await world.phone()];
    const { book } = writer;
    const keeper = { type: 'keeper', id: book.newId() } as const;
    const apiary = { type: 'apiary', id: book.newId() } as const;
    const [, written] = (await book.write([
      {
        kind: 'apiary',
        version: apiaryKind.version,
        about: apiary,
        replaces: [],
        body: sampleApiary('north', keeper.id),
      },
      { kind: 'keeper', version: 1, about: keeper, replaces: [], body: keeperBody('Secret Name') },
    ])) as [Entry, Entry];
    const corrected = {
      corrects: written.envelope.id,
      reason: 'spelling',
      version: 1,
      body: keeperBody('Secret Nàme'),
    };
    await book.write([{ kind: 'correction', version: 1, about: keeper, replaces: [], body: corrected }]);
    await writer.sync();
    await reader.sync();
    const before = await world.office.pull(districtScope('north'), 0, 100);

    await world.office.erase([written.envelope.id], 'retention over', desk);
    await writer.sync();
    await reader.sync();
    for (const { store } of [writer, reader]) {
      const chain = await store.chain(written.envelope.device, 1, 100);
      const text = JSON.stringify([chain, await store.states([keeper]), await store.summaries('keeper')]);
      expect(text).not.toMatch(/Secret/);
      const erased = new Set(chain.filter(({ entry }) => entry.salt === null).map(({ entry }) => entry.envelope.id));
      expect(erased.size).toBe(2);
      const context = { erased, office: world.office.key.device };
      expect(await verifyChain({ hasher: nodeHasher, verifier: nodeVerifier }, chain, context)).toEqual([]);
    }
    expect((await reader.book.state(keeper))?.keeper.current).toBeNull();
    expect(await reader.book.state(keeper)).toEqual(await world.office.state(keeper));
    expect(JSON.stringify(await world.office.pull(districtScope('north'), 0, 100))).not.toMatch(/Secret/);

    // A phone that meets the erasure first, and then an old copy of the page, keeps nothing either.
    const late = await world.phone();
    await late.sync();
    await late.book.receive(before.items);
    expect(JSON.stringify(await late.store.entriesAbout([keeper]))).not.toMatch(/Secret/);
    const fresh = await world.phone();
    const everyone = await world.office.pull(everyoneScope, 0, 100);
    await fresh.book.meetOffice(world.office.key);
    await fresh.book.receive(everyone.items);
    const after = await world.office.pull(districtScope('north'), 0, 100);
    await fresh.book.receive(after.items.filter(({ entry }) => entry.envelope.kind === 'erasure'));
    await fresh.book.receive(before.items);
    expect(JSON.stringify(await fresh.store.entriesAbout([keeper]))).not.toMatch(/Secret/);
  });

  test('erases nothing that holds a finding', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = { type: 'apiary', id: phone.book.newId() } as const;
    const body = sampleApiary('north');
    const [entry] = (await phone.book.write([
      { kind: 'apiary', version: apiaryKind.version, about, replaces: [], body },
    ])) as [Entry];
    await phone.sync();
    await expect(world.office.erase([entry.envelope.id], 'because', desk)).rejects.toThrow('not erasable');
    await expect(world.office.erase([phone.book.newId()], 'because', desk)).rejects.toThrow('unknown entry');
  });

  test('signs what it holds: of a scope, and of the whole record', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = { type: 'apiary', id: phone.book.newId() } as const;
    await phone.book.write([
      { kind: 'apiary', version: apiaryKind.version, about, replaces: [], body: sampleApiary('north') },
      { kind: 'note', version: 1, about, replaces: [], body: { text: 'x' } },
    ]);
    await phone.sync();
    const scope = districtScope('north');
    const word = await world.office.checkpoint(scope, 2);
    expect(await checkpointIsSigned(nodeVerifier, word, world.office.key.publicKey)).toBe(true);
    expect(await checkpointIsSigned(nodeVerifier, { ...word, position: 3 }, world.office.key.publicKey)).toBe(false);
    const links = await phone.store.sequence(scope);
    expect(links).toHaveLength(2);
    expect(await matchesScope(nodeHasher, word, links)).toBe(true);
    expect(await matchesScope(nodeHasher, word, links.slice(1))).toBe(false);
    const whole = await world.office.checkpoint(null, 0);
    expect(await checkpointIsSigned(nodeVerifier, whole, world.office.key.publicKey)).toBe(true);
    const linkAt = async (device: string, seq: number) =>
      (await world.officeStore.chain(device, seq, 1))[0]?.hash ?? null;
    expect(await headsMissing(whole, linkAt)).toEqual([]);
    const cut = async (device: string, seq: number) => (seq === 3 ? null : linkAt(device, seq));
    expect((await headsMissing(whole, cut)).map(({ seq }) => seq)).toEqual([3]);
  });

  test('an empty scope has a checkpoint too', async () => {
    const { office } = await smallWorld();
    expect(await office.checkpoint('district/nowhere', 0)).toMatchObject({ position: 0, digest: '0'.repeat(64) });
    expect(await office.pull('district/nowhere', 0, 10)).toEqual({ scope: 'district/nowhere', items: [], more: false });
  });

  test('a push of more than a batch is an error of the caller', async () => {
    const { office } = await smallWorld();
    const many = Array.from({ length: 501 }, () => null);
    await expect(office.push(many, { person: desk, mayWrite: () => null })).rejects.toThrow('at most 500');
  });
});

describe('a phone’s book', () => {
  test('belongs to one person', async () => {
    const world = await smallWorld();
    const store = memoryDeviceStore();
    await world.phone({ store, person: desk });
    await expect(world.phone({ store, person: '01900000-0de5-7000-8000-000000000002' })).rejects.toThrow(
      'wrong person',
    );
  });

  test('a write that completes a draft takes the draft away; one that fails leaves it', async () => {
    const world = await smallWorld();
    const { book, store } = await world.phone();
    const about = { type: 'colony', id: book.newId() };
    await store.commit({ saveDrafts: [{ key: 'examination/a', value: 1, savedAt: 'now' }] });
    const proposal = { kind: 'note', version: 1, about, replaces: [], body: { text: 'x' } };
    await expect(book.write([{ ...proposal, body: {} }], { closes: ['examination/a'] })).rejects.toThrow('wrong body');
    expect(await store.drafts('')).toHaveLength(1);
    await book.write([proposal], { closes: ['examination/a'] });
    expect(await store.drafts('')).toEqual([]);
  });

  test('tells its listeners what was touched, until they stop', async () => {
    const world = await smallWorld();
    const { book } = await world.phone();
    const about = { type: 'colony', id: book.newId() };
    const heard: string[] = [];
    const stop = book.subscribe((changed) => heard.push(...changed.map(({ id }) => id)));
    const proposal = { kind: 'note', version: 1, about, replaces: [], body: { text: 'x' } };
    await book.write([proposal]);
    stop();
    await book.write([proposal]);
    expect(heard).toEqual([about.id]);
  });

  test('states kept are the states folded from nothing', async () => {
    const world = await smallWorld();
    const { book, store } = await world.phone();
    const about = { type: 'colony', id: book.newId() } as const;
    for (let i = 0; i < 5; i++) {
      await book.write([{ kind: 'note', version: 1, about, replaces: [], body: { text: `note ${i}` } }]);
    }
    const kept = (await store.states([about])).get(`colony/${about.id}`);
    const entries = (await store.entriesAbout([about])).get(`colony/${about.id}`) ?? [];
    expect(kept).toEqual(
      fold(
        about,
        entries.map(({ entry }) => entry),
      ),
    );
    expect((await book.history(about)).map(({ entry }) => (entry.body as { text: string }).text)).toEqual([
      'note 0',
      'note 1',
      'note 2',
      'note 3',
      'note 4',
    ]);
  });
});
