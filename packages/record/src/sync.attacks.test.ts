import { dayMilliseconds } from '@combside/calendar/day';
import { describe, expect, test, vi } from 'vitest';
import { nodeHasher, nodeKeys, nodeSigner, nodeVerifier } from './acceptance/node-ports.ts';
import { sampleApiary } from './acceptance/samples.ts';
import { type SmallPhone, smallWorld } from './acceptance/small-world.ts';
import { toBase64Url } from './bytes.ts';
import { bodyHashOf, linkOf, signedBytes } from './chain.ts';
import type { About, Entry, Proposal } from './entry.ts';
import { apiary } from './kinds/apiary.ts';
import type { Kind } from './kinds/kind.ts';
import { note } from './kinds/note.ts';
import { kinds, kindTable } from './kinds/registry.ts';
import { copyOfDeviceStore } from './memory-store.ts';
import { writesIn } from './office/author.ts';
import { exchange } from './sync.ts';
import { districtScope, everyoneScope, type Transport } from './transport.ts';

function newApiary(phone: SmallPhone, district = 'north'): Proposal & { about: { type: 'apiary'; id: string } } {
  const about = { type: 'apiary', id: phone.book.newId() } as const;
  return { kind: 'apiary', version: apiary.version, about, replaces: [], body: sampleApiary(district) };
}

function newNote(about: About, text: string): Proposal {
  return { kind: 'note', version: 1, about, replaces: [], body: { text } };
}

async function writtenApiary(phone: SmallPhone, district = 'north'): Promise<{ type: 'apiary'; id: string }> {
  const proposal = newApiary(phone, district);
  await phone.book.write([proposal]);
  return proposal.about;
}

/** The phone's chain as the wire would carry it. */
async function chainOf(phone: SmallPhone): Promise<Entry[]> {
  const { device } = await phone.book.identity();
  return structuredClone((await phone.store.chain(device, 1, 1000)).map(({ entry }) => entry));
}

/** Signs a changed envelope again with the phone's own key: what a phone with a faulty program would send. */
async function signedAgain(phone: SmallPhone, entry: Entry): Promise<Entry> {
  const signer = await phone.keys.signerFor(entry.envelope.device);
  const signature = toBase64Url(await signer.sign(signedBytes(entry.envelope)));
  return { ...entry, envelope: { ...entry.envelope, signature } };
}

/** An entry with another body, its hash and signature right: what a faulty program would write. */
async function sealedWrongly(phone: SmallPhone, entry: Entry, body: unknown): Promise<Entry> {
  const bodyHash = await bodyHashOf(nodeHasher, entry.salt ?? '', body);
  return signedAgain(phone, { ...entry, body, envelope: { ...entry.envelope, bodyHash } });
}

/** Damages the first entry of a push, so many times. */
function damagingWire(phone: SmallPhone, damage: (entry: Entry) => Entry, times: number): Transport {
  let left = times;
  return {
    ...phone.transport,
    push: ([first, ...rest]) => {
      if (first === undefined || left === 0) return phone.transport.push(first === undefined ? [] : [first, ...rest]);
      left--;
      return phone.transport.push([damage(first), ...rest]);
    },
  };
}

const author = (person: string) => ({ person, mayWrite: writesIn([everyoneScope, districtScope('north')]) });

describe('attacks on the exchange', () => {
  test('many large entries go in several messages, none larger than the office takes', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    // Each note is as large as notes may be; six hundred of them are some three million characters.
    for (let i = 0; i < 600; i++) await phone.book.write([newNote(about, `${i} ${'x'.repeat(4990)}`.slice(0, 5000))]);
    const messages: number[] = [];
    const pages: number[] = [];
    const watched: Transport = {
      ...phone.transport,
      push: (entries) => {
        messages.push(JSON.stringify(entries).length);
        return phone.transport.push(entries);
      },
    };
    const report = await exchange({ ...phone, transport: watched, hasher: nodeHasher, verifier: nodeVerifier });
    expect(report).toMatchObject({ waiting: 0, faults: [] });
    expect(messages.length).toBeGreaterThan(1);
    for (const size of messages) expect(size).toBeLessThan(2_100_000);

    const other = await world.phone();
    const reading: Transport = {
      ...other.transport,
      pull: async (...asked) => {
        const page = await other.transport.pull(...asked);
        pages.push(JSON.stringify(page).length);
        return page;
      },
    };
    const read = await exchange({ ...other, transport: reading, hasher: nodeHasher, verifier: nodeVerifier });
    expect(read.faults).toEqual([]);
    expect(read.fetched).toBeGreaterThan(600);
    for (const size of pages) expect(size).toBeLessThan(2_200_000);
  });

  test('an entry of a newer version is kept and forwarded, and read after the update', async () => {
    const newerNote: Kind = {
      ...(note as Kind),
      version: 2,
      steps: [{ name: 'nothing changed', lift: (body) => body }],
    };
    const newer = kindTable([...[...kinds.values()].filter(({ kind }) => kind !== 'note'), newerNote]);
    const world = await smallWorld();
    const modern = await world.phone({ kinds: newer });
    const old = await world.phone();
    const about = await writtenApiary(modern);
    await modern.book.write([{ ...newNote(about, 'from the future'), version: 2 }]);
    expect((await modern.sync()).faults).toEqual([]);
    expect((await old.sync()).faults).toEqual([]);
    const before = await old.book.state(about);
    expect(before?.notes).toEqual([]);
    expect(before?.unknown).toMatchObject([{ kind: 'note', version: 2 }]);
    expect((await old.book.summaries('apiary'))[0]?.writtenByNewer).toBe(true);
    // The same phone with the newer program.
    const updated = await world.phone({ kinds: newer, store: old.store, keys: old.keys, person: old.person });
    expect((await updated.book.state(about))?.notes.map(({ body }) => body.text)).toEqual(['from the future']);
    expect(await updated.book.refold(100)).toBeGreaterThan(0);
    expect(await updated.book.refold(100)).toBe(0);
    expect((await updated.book.summaries('apiary'))[0]?.writtenByNewer).toBe(false);
    expect(await updated.book.state(about)).toEqual(await modern.book.state(about));
  });

  test('an unknown word entered here is refused loudly', async () => {
    const world = await smallWorld();
    const { book, store } = await world.phone();
    const about: About = { type: 'colony', id: book.newId() };
    const proposal = newNote(about, 'x');
    await expect(book.write([{ ...proposal, kind: 'weather' }])).rejects.toThrow('unknown kind: weather');
    await expect(book.write([{ ...proposal, version: 2 }])).rejects.toThrow('unknown kind: note 2');
    await expect(book.write([{ ...proposal, body: { txt: 'x' } }])).rejects.toThrow('wrong body: note 1');
    await expect(book.write([{ ...proposal, kind: 'keeper' }])).rejects.toThrow('wrong about');
    await expect(book.write([{ ...proposal, replaces: [book.newId()] }])).rejects.toThrow('unknown entry');
    await expect(book.write([newNote(about, 'half \ud83d')])).rejects.toThrow('half a character');
    expect(await store.outboxSize()).toBe(1); // only the device's own first entry
  });

  test('a poisoned entry among good ones is refused alone; its envelope keeps the chain whole', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    for (const text of ['one', 'two', 'three']) await phone.book.write([newNote(about, text)]);
    const chain = await chainOf(phone);
    // Signed as it stands, by a faulty program: the following entries name it, so nobody else changed it.
    const poisoned = await sealedWrongly(phone, chain[3] as Entry, { txt: 'no such field' });
    const last = chain[4] as Entry;
    const prev = await linkOf(nodeHasher, poisoned.envelope);
    chain[3] = poisoned;
    chain[4] = await signedAgain(phone, { ...last, envelope: { ...last.envelope, prev } });
    const results = await world.office.push(chain, author(phone.person));
    expect(results.map(({ outcome }) => outcome)).toEqual(['received', 'received', 'received', 'refused', 'received']);
    expect(results[3]).toMatchObject({ reason: 'wrong body' });
    expect((await world.office.state(about))?.notes.map(({ body }) => body.text)).toEqual(['one', 'three']);
    const kept = await world.officeStore.chain((await phone.book.identity()).device, 4, 1);
    expect(kept[0]).toMatchObject({ refused: 'wrong body', entry: { body: null, salt: null } });
    const device = { type: 'device', id: (await phone.book.identity()).device } as const;
    expect((await world.office.state(device))?.refusals.map(({ body }) => body.seq)).toEqual([4]);
  });

  test('a body damaged on the way is not refused for good: nothing is stored, and the true one goes through', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    for (const text of ['one', 'two', 'three']) await phone.book.write([newNote(about, text)]);
    const chain = await chainOf(phone);
    const damaged = chain.map((entry, i) => (i === 3 ? { ...entry, body: { text: 'slipped in' } } : entry));
    const results = await world.office.push(damaged, author(phone.person));
    expect(results.map(({ outcome }) => outcome)).toEqual(['received', 'received', 'received', 'broken', 'gap']);
    expect(results[3]).toMatchObject({ reason: 'wrong body hash' });
    expect((await world.officeStore.head((await phone.book.identity()).device))?.seq).toBe(3);
    expect(await phone.sync()).toMatchObject({ faults: [], refused: [], waiting: 0, newIdentity: false });
    expect((await world.office.state(about))?.notes.map(({ body }) => body.text)).toEqual(['one', 'two', 'three']);
  });

  test('what a wire damages a few times arrives in the same run, under the same name, and says no fault', async () => {
    for (const damage of [
      (entry: Entry) => ({ ...entry, body: { text: 'on the way' } }),
      (entry: Entry) => ({ ...entry, envelope: { ...entry.envelope, signature: 'A'.repeat(86) } }),
      (entry: Entry) => ({ ...entry, envelope: { ...entry.envelope, seq: 1 } }),
      (entry: Entry) => ({ ...entry, envelope: { ...entry.envelope, id: 'gone' } }),
    ]) {
      const world = await smallWorld();
      const phone = await world.phone();
      const about = await writtenApiary(phone);
      await phone.sync();
      await phone.book.write([newNote(about, 'as written')]);
      const wire = damagingWire(phone, damage, 3);
      const report = await exchange({ ...portsOf(phone), transport: wire });
      expect(report).toMatchObject({ faults: [], refused: [], waiting: 0, newIdentity: false, sent: 1 });
      expect((await world.office.state(about))?.notes.map(({ body }) => body.text)).toEqual(['as written']);
    }
  });

  test('what a wire damages every time waits, is said, and arrives over a better one', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    await phone.sync();
    await phone.book.write([newNote(about, 'as written')]);
    await phone.book.write([newNote(about, 'good')]);
    const wire = damagingWire(phone, (entry) => ({ ...entry, body: { text: 'on the way' } }), Number.POSITIVE_INFINITY);
    const report = await exchange({ ...portsOf(phone), transport: wire });
    expect(report).toMatchObject({ refused: [], waiting: 2, newIdentity: false });
    expect(report.faults).toMatchObject([{ fault: 'damaged on the way' }]);
    expect(await phone.sync()).toMatchObject({ faults: [], refused: [], waiting: 0, newIdentity: false });
    expect((await world.office.state(about))?.notes.map(({ body }) => body.text)).toEqual(['as written', 'good']);
  });

  test('a page damaged on the way is read again before it is believed', async () => {
    const world = await smallWorld();
    const [writer, reader] = [await world.phone(), await world.phone()];
    const about = await writtenApiary(writer);
    await writer.book.write([newNote(about, 'as written')]);
    await writer.sync();
    let left = 2;
    const wire: Transport = {
      ...reader.transport,
      async pull(scope, after, limit) {
        const page = await reader.transport.pull(scope, after, limit);
        if (scope === everyoneScope || left === 0) return page;
        left--;
        const items = page.items.map((item) =>
          item.entry.envelope.kind === 'note' ? { ...item, entry: { ...item.entry, body: { text: 'x' } } } : item,
        );
        return { ...page, items };
      },
    };
    const report = await exchange({ ...portsOf(reader), transport: wire });
    expect(left).toBe(0);
    expect(report.faults).toEqual([]);
    expect((await reader.book.state(about))?.notes.map(({ body }) => body.text)).toEqual(['as written']);
  });

  test('entries nobody can read do not stand in the way of those that can be read', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    await writtenApiary(phone);
    const chain = await chainOf(phone);
    const nonsense = [
      null,
      'text',
      { envelope: { id: 'x' } },
      { ...chain[1], envelope: { ...chain[1]?.envelope, seq: -1 } },
    ];
    const results = await world.office.push(
      [nonsense[0], chain[0], ...nonsense.slice(1), chain[1]],
      author(phone.person),
    );
    expect(results.map(({ outcome }) => outcome)).toEqual([
      'broken',
      'received',
      'broken',
      'broken',
      'broken',
      'received',
    ]);
  });

  test('an own bad entry is said loudly, kept with its reason, and the good ones go through', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    await phone.sync();
    // The phone's store is damaged: the body no longer matches its hash.
    const [wrong] = (await phone.book.write([newNote(about, 'as written')])) as [Entry];
    await phone.book.write([newNote(about, 'good')]);
    const outbox = phone.store.outbox.bind(phone.store);
    vi.spyOn(phone.store, 'outbox').mockImplementation(async (limit) =>
      (await outbox(limit)).map((kept) =>
        kept.entry.envelope.id === wrong.envelope.id
          ? { ...kept, entry: { ...kept.entry, body: { text: 'as damaged' } } }
          : kept,
      ),
    );
    const report = await exchange(portsOf(phone));
    expect(report.refused).toEqual([{ id: wrong.envelope.id, reason: 'body missing' }]);
    expect(report.faults).toMatchObject([{ fault: 'own entry broken' }]);
    expect(report).toMatchObject({ waiting: 0, newIdentity: false });
    expect((await phone.store.refused()).map(({ refused }) => refused)).toEqual(['body missing']);
    expect((await phone.book.state(about))?.notes.map(({ body }) => body.text)).toEqual(['good']);
    // The office knows that something was written and cannot be read; it shows the good one.
    const there = await world.office.state(about);
    expect(there?.notes.map(({ body }) => body.text)).toEqual(['good']);
    expect(there?.erased.map(({ written }) => written.entry)).toEqual([wrong.envelope.id]);
  });

  test('the same message twice, and at once, is taken once', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    await phone.book.write([newNote(about, 'once')]);
    const chain = await chainOf(phone);
    const [first, second] = await Promise.all([
      world.office.push(chain, author(phone.person)),
      world.office.push([...chain, ...chain], author(phone.person)),
    ]);
    expect(second).toEqual([...(first ?? []), ...(first ?? [])]);
    expect((await world.office.state(about))?.notes).toHaveLength(1);
    const reader = await world.phone();
    await reader.sync();
    const page = await world.office.pull(districtScope('north'), 0, 100);
    const again = await reader.book.receive([...page.items, ...page.items]);
    expect(again.taken).toEqual([]);
    expect(again.rejected).toEqual([]);
  });

  test('the older after the newer: a gap is said, nothing is taken out of turn, nothing is lost', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    await phone.book.write([newNote(about, 'third')]);
    const [first, second, third] = (await chainOf(phone)) as [Entry, Entry, Entry];
    await world.office.push([first], author(phone.person));
    expect(await world.office.push([third], author(phone.person))).toMatchObject([{ outcome: 'gap', from: 2 }]);
    const turned = await world.office.push([third, second], author(phone.person));
    expect(turned.map(({ outcome }) => outcome)).toEqual(['received', 'received']);
    expect((await world.office.state(about))?.notes).toHaveLength(1);
  });

  test('a broken chain and a wrong signature are not taken, and store nothing', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    await phone.book.write([newNote(about, 'x')]);
    const [first, second, third] = (await chainOf(phone)) as [Entry, Entry, Entry];
    await world.office.push([first], author(phone.person));
    const unlinked = await signedAgain(phone, { ...second, envelope: { ...second.envelope, prev: 'ab'.repeat(32) } });
    const forged = { ...second, envelope: { ...second.envelope, signature: third.envelope.signature } };
    const beginning = await signedAgain(phone, { ...second, envelope: { ...second.envelope, prev: null } });
    for (const [bad, reason] of [
      [unlinked, 'does not follow'],
      [forged, 'wrong signature'],
      [beginning, 'does not follow'],
    ] as const) {
      expect(await world.office.push([bad], author(phone.person))).toEqual([
        { id: bad.envelope.id, outcome: 'broken', reason },
      ]);
    }
    expect((await world.officeStore.head(first.envelope.device))?.seq).toBe(1);
    expect((await phone.sync()).faults).toEqual([]);
    expect((await world.office.state(about))?.notes).toHaveLength(1);
  });

  test('a phone takes no entry with a wrong hash, a wrong signature or another author', async () => {
    const world = await smallWorld();
    const [writer, reader] = [await world.phone(), await world.phone()];
    const about = await writtenApiary(writer);
    await writer.book.write([newNote(about, 'true')]);
    await writer.sync();
    await reader.sync();
    await writer.book.write([newNote(about, 'next')]);
    const last = (await chainOf(writer)).at(-1) as Entry;
    const bad: Entry[] = [
      { ...last, body: { text: 'slipped in' } },
      { ...last, envelope: { ...last.envelope, at: '2026-01-01T00:00:00.000Z' } },
      await signedAgain(writer, { ...last, envelope: { ...last.envelope, by: reader.person } }),
    ];
    for (const [i, entry] of bad.entries()) {
      const reception = await reader.book.receive([{ entry, receivedAt: null }]);
      expect(reception.taken).toEqual([]);
      expect(reception.rejected.map(({ reason }) => reason)).toEqual([
        ['wrong body hash', 'wrong signature', 'wrong author'][i],
      ]);
    }
    // The bad ones do not block the good one beside them.
    const mixed = [...bad.slice(0, 1), last, ...bad.slice(1)].map((entry) => ({ entry, receivedAt: null }));
    expect((await reader.book.receive(mixed)).taken).toEqual([last.envelope.id]);
    expect((await reader.book.state(about))?.notes.map(({ body }) => body.text)).toEqual(['true', 'next']);
  });

  test('an entry replayed under another author or by another person is not taken, and spoils nobody’s chain', async () => {
    const world = await smallWorld();
    const [victim, thief] = [await world.phone(), await world.phone()];
    const about = await writtenApiary(victim);
    await victim.book.write([newNote(about, 'mine')]);
    const chain = await chainOf(victim);
    // The thief sends the victim's true entries in the thief's own session.
    const stolen = await world.office.push(chain, author(thief.person));
    expect(stolen.map((result) => result.outcome)).toEqual(['broken', 'gap', 'gap']);
    expect(await world.officeStore.head((await victim.book.identity()).device)).toBeNull();
    // The thief re-seals the victim's note in the thief's own chain, first as the victim, then as the thief.
    await thief.sync();
    await thief.book.write([newNote(about, 'decoy')]);
    const decoy = (await chainOf(thief)).at(-1) as Entry;
    const asVictim = await signedAgain(thief, { ...decoy, envelope: { ...decoy.envelope, by: victim.person } });
    expect(await world.office.push([asVictim], author(thief.person))).toMatchObject([
      { outcome: 'refused', reason: 'wrong author' },
    ]);
    expect((await victim.sync()).faults).toEqual([]);
    const state = await world.office.state(about);
    expect(state?.notes.map(({ body, written }) => [body.text, written.by])).toEqual([['mine', victim.person]]);
  });

  test('nobody takes another’s identifier for another fact', async () => {
    const world = await smallWorld();
    const [victim, thief] = [await world.phone(), await world.phone()];
    const about = await writtenApiary(victim);
    const [mine] = (await victim.book.write([newNote(about, 'mine')])) as [Entry];
    await victim.sync();
    await thief.book.write([{ ...newNote(about, 'not mine'), id: mine.envelope.id }]);
    const report = await thief.sync();
    expect(report.refused).toEqual([{ id: mine.envelope.id, reason: 'identifier taken' }]);
    expect(await thief.book.state(about)).toEqual(await victim.book.state(about));
  });

  test('a clock years ahead is kept, flagged, loses ties, and moves nobody else’s clock', async () => {
    const world = await smallWorld();
    const [early, ahead] = [await world.phone(), await world.phone({ skew: 900 * dayMilliseconds })];
    const proposal = newApiary(early);
    const [first] = (await early.book.write([proposal])) as [Entry];
    await early.sync();
    await ahead.sync();
    const change = (coloniesRegistered: number): Proposal => ({
      ...proposal,
      replaces: [first.envelope.id],
      body: { ...sampleApiary('north'), coloniesRegistered },
    });
    await ahead.book.write([change(99)]);
    await early.book.write([change(11)]);
    await ahead.sync();
    await early.sync();
    await ahead.sync();
    for (const reader of [world.office, early.book, ahead.book]) {
      const register = (await reader.state(proposal.about))?.apiary;
      expect(register?.current?.body.coloniesRegistered).toBe(11);
      expect(register?.contested.map(({ body }) => body.coloniesRegistered)).toEqual([99]);
      expect((await reader.state(proposal.about))?.clockFlagged).toHaveLength(1);
    }
    expect((await early.store.clock()) ?? '').toMatch(/^0000017778/);
    expect((await world.officeStore.clock()) ?? '').toMatch(/^0000017778/);
  });

  test('a clock that is no clock is refused', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    await phone.book.write([newNote(about, 'x')]);
    const chain = await chainOf(phone);
    const last = chain.at(-1) as Entry;
    const wrong = await signedAgain(phone, { ...last, envelope: { ...last.envelope, clock: '~~~~' } });
    const results = await world.office.push([...chain.slice(0, -1), wrong], author(phone.person));
    expect(results.at(-1)).toMatchObject({ outcome: 'refused', reason: 'bad clock' });
  });

  test('what only the office may say is refused from a phone', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    const [mine] = (await phone.book.write([newNote(about, 'mine')])) as [Entry];
    const { device } = await phone.book.identity();
    const erasure = { entries: [mine.envelope.id], reason: 'because' };
    await phone.book.write([{ kind: 'erasure', version: 1, about, replaces: [], body: erasure }]);
    const vouch = { entry: mine.envelope.id, envelopeHash: 'ab'.repeat(32) };
    const own: About = { type: 'device', id: device };
    await phone.book.write([{ kind: 'countersignature', version: 1, about: own, replaces: [], body: vouch }]);
    const report = await phone.sync();
    expect(report.refused.map(({ reason }) => reason)).toEqual(['not yours to write', 'not yours to write']);
    expect((await world.office.state(about))?.notes).toHaveLength(1);
  });

  test('a device that nobody countersigned is held back until the office vouches for it', async () => {
    const world = await smallWorld();
    const [writer, reader] = [await world.phone(), await world.phone()];
    await reader.sync();
    const about = await writtenApiary(writer);
    const chain = (await chainOf(writer)).map((entry) => ({ entry, receivedAt: null }));
    const early = await reader.book.receive(chain);
    expect(early.held).toHaveLength(1); // the apiary; the device's own first entry proves itself
    expect(await reader.book.state(about)).toBeNull();
    await writer.sync();
    const report = await reader.sync();
    expect(report.held).toBe(0);
    expect(await reader.book.state(about)).toEqual(await writer.book.state(about));
  });

  test('an entry from a device that pretends to be another’s is not taken', async () => {
    const world = await smallWorld();
    const victim = await world.phone();
    await writtenApiary(victim);
    await victim.sync();
    const begin = (await chainOf(victim))[0] as Entry;
    // The same first entry with the pretender's key: a well-formed chain of the pretender's own making.
    const signer = nodeSigner();
    const body = { ...(begin.body as object), publicKey: signer.publicKey };
    const bodyHash = await bodyHashOf(nodeHasher, begin.salt ?? '', body);
    const envelope = { ...begin.envelope, bodyHash };
    const signature = toBase64Url(await signer.sign(signedBytes(envelope)));
    const pretender: Entry = { ...begin, body, envelope: { ...envelope, signature } };
    const reader = await world.phone();
    await reader.sync();
    const reception = await reader.book.receive([{ entry: pretender, receivedAt: null }]);
    expect(reception.taken).toEqual([]);
    expect(await linkOf(nodeHasher, pretender.envelope)).not.toBe(await linkOf(nodeHasher, begin.envelope));
    expect(await world.office.push([pretender], author(victim.person))).not.toMatchObject([{ outcome: 'received' }]);
  });

  test('another office that answers under the same address is noticed', async () => {
    const [world, elsewhere] = [await smallWorld(), await smallWorld({ seed: 2 })];
    const phone = await world.phone();
    await phone.sync();
    const stranger = await elsewhere.phone();
    await expect(exchange({ ...portsOf(phone), transport: stranger.transport })).rejects.toThrow('wrong server');
  });

  test('an office that leaves something out is noticed by the digest, and the scope is read again', async () => {
    const world = await smallWorld();
    const [writer, reader] = [await world.phone(), await world.phone()];
    const about = await writtenApiary(writer);
    for (const text of ['one', 'two', 'three']) await writer.book.write([newNote(about, text)]);
    await writer.sync();
    // A faulty office (or somebody between) leaves the second note out and numbers the rest anew.
    const leavesOut: Transport = {
      ...reader.transport,
      async pull(scope, after, limit) {
        const page = await reader.transport.pull(scope, after, limit);
        if (scope === everyoneScope) return page;
        const items = page.items
          .filter(({ entry }) => (entry.body as { text?: string } | null)?.text !== 'two')
          .map((item, i) => ({ ...item, position: after + 1 + i }));
        return { ...page, items };
      },
    };
    const report = await exchange({ ...portsOf(reader), transport: leavesOut });
    expect(report.faults).toMatchObject([{ fault: 'copy differs' }]);
    expect(report.confirmed).not.toContain(districtScope('north'));
    const healed = await reader.sync();
    expect(healed.faults).toEqual([]);
    expect(healed.confirmed).toContain(districtScope('north'));
    expect(await reader.book.state(about)).toEqual(await writer.book.state(about));
  });

  test('a page with a hole is not taken', async () => {
    const world = await smallWorld();
    const [writer, reader] = [await world.phone(), await world.phone()];
    await writtenApiary(writer);
    await writtenApiary(writer);
    await writer.sync();
    const holes: Transport = {
      ...reader.transport,
      async pull(scope, after, limit) {
        const page = await reader.transport.pull(scope, after, limit);
        return scope === everyoneScope ? page : { ...page, items: page.items.slice(1) };
      },
    };
    const report = await exchange({ ...portsOf(reader), transport: holes });
    expect(report.faults).toMatchObject([{ fault: 'page out of order' }]);
    expect((await reader.sync()).faults).toEqual([]);
    expect(await reader.book.summaries('apiary')).toHaveLength(2);
  });
});

describe('a cloned phone', () => {
  test('takes a new identity, seals its unsent entries again under the same identifiers, and drops nothing', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    await phone.sync();
    const own = nodeKeys();
    const { device } = await phone.book.identity();
    const keys = { signerFor: (asked: string) => (asked === device ? phone.keys : own).signerFor(asked) };
    const clone = await world.phone({ store: copyOfDeviceStore(phone.store), keys, person: phone.person });
    await phone.book.write([newNote(about, 'on the phone')]);
    const [first] = (await clone.book.write([newNote(about, 'on the clone')])) as [Entry];
    const correction = {
      corrects: first.envelope.id,
      reason: 'typed wrong',
      version: 1,
      body: { text: 'on the CLONE' },
    };
    await clone.book.write([{ kind: 'correction', version: 1, about, replaces: [], body: correction }]);
    await phone.sync();
    const report = await clone.sync();
    expect(report).toMatchObject({ newIdentity: true, waiting: 0, refused: [], faults: [] });
    const renewed = await clone.book.identity();
    expect(renewed.device).not.toBe(device);
    const state = await clone.book.state({ type: 'device', id: renewed.device });
    expect(state?.device.current?.body.predecessor).toBe(device);
    expect(state?.resealings[0]?.body.originals.map(({ entry }) => entry)).toContain(first.envelope.id);
    expect((await clone.store.setAside()).map(({ kept }) => kept.entry.envelope.id)).toContain(first.envelope.id);
    await phone.sync();
    for (const reader of [world.office, phone.book, clone.book]) {
      expect((await reader.state(about))?.notes.map(({ body }) => body.text).sort()).toEqual([
        'on the CLONE',
        'on the phone',
      ]);
    }
  });

  test('is noticed as well when the other’s entry arrives before its own was sent', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    await phone.sync();
    const clone = await world.phone({
      store: copyOfDeviceStore(phone.store),
      keys: phone.keys,
      person: phone.person,
    });
    await phone.book.write([newNote(about, 'on the phone')]);
    await clone.book.write([newNote(about, 'on the clone')]);
    await phone.sync();
    const page = await world.office.pull(districtScope('north'), 0, 100);
    const reception = await clone.book.receive(page.items);
    expect(reception.newIdentity).toBe(true);
    expect((await clone.book.state(about))?.notes).toHaveLength(2);
    expect((await clone.sync()).faults).toEqual([]);
    expect(await clone.book.state(about)).toEqual(await world.office.state(about));
  });

  test('cloned twice: a fact that two clones seal again counts once, everywhere', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    await phone.sync();
    const { device } = await phone.book.identity();
    const cloneOf = (original: SmallPhone) => {
      const own = nodeKeys();
      const keys = { signerFor: (asked: string) => (asked === device ? phone.keys : own).signerFor(asked) };
      return world.phone({ store: copyOfDeviceStore(original.store), keys, person: phone.person });
    };
    const early = await cloneOf(phone);
    await phone.book.write([newNote(about, 'written once')]);
    const late = await cloneOf(phone);
    await early.book.write([newNote(about, 'on the early clone')]);
    await early.sync();
    expect(await phone.sync()).toMatchObject({ newIdentity: true, faults: [], waiting: 0 });
    const report = await late.sync();
    expect(report).toMatchObject({ newIdentity: true, faults: [], waiting: 0, held: 0 });
    expect(report.refused.map(({ reason }) => reason)).toEqual(['written already']);
    await early.sync();
    for (const reader of [world.office, phone.book, early.book, late.book]) {
      expect((await reader.state(about))?.notes.map(({ body }) => body.text).sort()).toEqual([
        'on the early clone',
        'written once',
      ]);
      expect(await reader.state(about)).toEqual(await world.office.state(about));
    }
  });

  test('a phone restored from a backup goes on in its chain when nothing was written meanwhile', async () => {
    const world = await smallWorld();
    const phone = await world.phone();
    const about = await writtenApiary(phone);
    const backup = copyOfDeviceStore(phone.store);
    await phone.book.write([newNote(about, 'after the backup')]);
    await phone.sync();
    const restored = await world.phone({ store: backup, keys: phone.keys, person: phone.person });
    const report = await restored.sync();
    expect(report).toMatchObject({ newIdentity: false, faults: [] });
    await restored.book.write([newNote(about, 'goes on')]);
    expect(await restored.sync()).toMatchObject({ newIdentity: false, faults: [], waiting: 0 });
    expect((await world.office.state(about))?.notes.map(({ body }) => body.text)).toEqual([
      'after the backup',
      'goes on',
    ]);
  });
});

function portsOf(phone: SmallPhone) {
  const { book, store, transport } = phone;
  return { book, store, transport, hasher: nodeHasher, verifier: nodeVerifier };
}
