/**
 * Sync tried by dice: a few devices write, move apiaries between districts, correct, are cloned and restored, have wrong
 * clocks and bad connections; two office processes share one store. At the end everybody exchanges in peace, and then
 * all books must be equal, and every entry a device acknowledged must count at the office or be refused with a reason.
 *
 * Everything follows from the seed but for the keys and signatures, which never decide anything.
 */
import { dayMilliseconds } from '@combside/calendar/day';
import type { Book } from '../book/book.ts';
import { openBook } from '../book/open-book.ts';
import type { About, Entry, Proposal } from '../entry.ts';
import type { ApiaryBody } from '../kinds/apiary.ts';
import type { ColonyBody } from '../kinds/colony.ts';
import { copyOfDeviceStore, memoryDeviceStore } from '../memory-store.ts';
import type { Office } from '../office/office.ts';
import { openOffice } from '../office/open-office.ts';
import type { Keys, Signer } from '../ports.ts';
import type { ApiaryState, Register } from '../states.ts';
import type { DeviceStore, OfficeStore } from '../store.ts';
import type { FoldedType } from '../summary.ts';
import { exchange } from '../sync.ts';
import { districtScope, everyoneScope, type PushResult, type Transport, TransportError } from '../transport.ts';
import { equal, truly } from './case.ts';
import { loopback } from './loopback.ts';
import {
  type HandClock,
  handClock,
  nodeHasher,
  nodeKeys,
  nodeSigner,
  nodeVerifier,
  seededChance,
} from './node-ports.ts';

const start = 1_777_883_465_120;
const hour = 3_600_000;
const day = dayMilliseconds;
const districts = ['north', 'south', "east's “edge”"] as const;
const types: readonly FoldedType[] = ['device', 'keeper', 'apiary', 'colony', 'visit', 'movement', 'laboratory'];

export interface DiceWorld {
  /** One handle on the office's storage for each office process. */
  readonly officeStores: readonly OfficeStore[];
  readonly seed: number;
  /** How many turns are taken before peace. */
  readonly turns: number;
}

/** What happened, so that a run cannot pass by doing nothing. */
export interface DiceTally {
  written: number;
  moved: number;
  corrected: number;
  contested: number;
  cuts: number;
  repliesLost: number;
  damaged: number;
  duplicated: number;
  reordered: number;
  clones: number;
  newIdentities: number;
  refused: number;
  clockFlags: number;
  backfills: number;
  exchanges: number;
  entriesAtOffice: number;
}

interface Phone {
  readonly name: string;
  readonly person: string;
  readonly store: DeviceStore;
  readonly keys: Keys;
  readonly clock: HandClock;
  readonly book: Book;
  granted: string[];
}

/** Dice that repeat with the seed (mulberry32). */
function diceOf(seed: number) {
  let state = seed >>> 0;
  const roll = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
  return {
    roll,
    upTo: (count: number) => Math.floor(roll() * count),
    chance: (probability: number) => roll() < probability,
    oneOf<T>(list: readonly T[]): T {
      const item = list[Math.floor(roll() * list.length)];
      if (item === undefined) throw new RangeError('nothing to choose from');
      return item;
    },
    shuffled<T>(list: readonly T[]): T[] {
      const copy = [...list];
      for (let i = copy.length - 1; i > 0; i--) {
        const j = Math.floor(roll() * (i + 1));
        [copy[i], copy[j]] = [copy[j] as T, copy[i] as T];
      }
      return copy;
    },
  };
}
type Dice = ReturnType<typeof diceOf>;

export async function rollDice(world: DiceWorld): Promise<DiceTally> {
  const dice = diceOf(world.seed);
  const tally: DiceTally = {
    written: 0,
    moved: 0,
    corrected: 0,
    contested: 0,
    cuts: 0,
    repliesLost: 0,
    damaged: 0,
    duplicated: 0,
    reordered: 0,
    clones: 0,
    newIdentities: 0,
    refused: 0,
    clockFlags: 0,
    backfills: 0,
    exchanges: 0,
    entriesAtOffice: 0,
  };
  const officeClock = handClock(start);
  const officeSigner = nodeSigner();
  const officeChance = seededChance(world.seed + 1000);
  const offices: Office[] = [];
  for (const store of world.officeStores)
    offices.push(await openDiceOffice(store, officeSigner, officeClock, officeChance));

  const phones: Phone[] = [];
  const acknowledged = new Map<string, Phone>();
  const count = 2 + dice.upTo(4);
  for (let i = 0; i < count; i++) phones.push(await newPhone(dice, world.seed, i));

  for (let turn = 0; turn < world.turns; turn++) {
    officeClock.milliseconds += dice.upTo(2 * hour);
    for (const phone of phones) phone.clock.milliseconds += dice.upTo(2 * hour);
    const phone = dice.oneOf(phones);
    const act = dice.roll();
    if (act < 0.6) {
      for (const entry of await writeSomething(phone, dice, tally)) acknowledged.set(entry.envelope.id, phone);
    } else if (act < 0.85) {
      const some = dice.shuffled(phones).slice(0, 1 + dice.upTo(3));
      await Promise.all(some.map((one) => exchangeBadly(one, offices, dice, tally)));
    } else if (act < 0.9) {
      const further = dice.oneOf(districts);
      if (!phone.granted.includes(further)) {
        phone.granted.push(further);
        tally.backfills++;
      }
    } else if (act < 0.94) {
      // The clock is set: usually a little wrong, sometimes by years, sometimes right.
      phone.clock.milliseconds = officeClock.milliseconds + dice.oneOf([0, -3 * day, 2 * day, -400 * day, 900 * day]);
    } else if (phones.length < 6) {
      phones.push(await cloneOf(phone, world.seed, phones.length));
      tally.clones++;
    }
  }

  // Peace: right clocks, good connections; until nobody has anything new. Every other phone may now read everything,
  // the rest keep their districts and must hold whole what belongs there.
  for (const [i, phone] of phones.entries()) {
    if (i % 2 === 0) phone.granted = [...districts];
    phone.clock.milliseconds = officeClock.milliseconds;
  }
  for (let round = 0; ; round++) {
    truly(round < 20, 'peace takes more than 20 rounds');
    let restless = false;
    for (const phone of phones) {
      const report = await exchange(portsOf(phone, goodWire(phone, offices)));
      equal(report.faults, [], `faults of ${phone.name} in peace`);
      tally.newIdentities += Number(report.newIdentity);
      restless ||= report.sent + report.fetched + report.refused.length + report.waiting > 0 || report.newIdentity;
    }
    if (!restless) break;
  }

  await equalBooks(phones, offices, world.officeStores, acknowledged, tally);
  return tally;
}

function openDiceOffice(store: OfficeStore, signer: Signer, clock: HandClock, chance: ReturnType<typeof seededChance>) {
  return openOffice(
    { store, hasher: nodeHasher, signer, verifier: nodeVerifier, clock, chance },
    {
      device: '01900000-0ff1-7000-8000-000000000001',
      person: '01900000-0ff1-7000-8000-000000000002',
      name: 'office of the dice',
    },
  );
}

async function newPhone(dice: Dice, seed: number, number: number): Promise<Phone> {
  const store = memoryDeviceStore();
  const keys = nodeKeys();
  const skew = dice.oneOf([0, 0, -5 * 60_000, 3 * day, -3 * day, 800 * day, -2000 * day]);
  const clock = handClock(start + skew);
  const person = `01900000-0e0e-7000-8000-${String(number).padStart(12, '0')}`;
  const ports = {
    store,
    keys,
    clock,
    hasher: nodeHasher,
    verifier: nodeVerifier,
    chance: seededChance(seed * 100 + number),
  };
  const book = await openBook(ports, { person, deviceName: `phone ${number}` });
  return { name: `phone ${number}`, person, store, keys, clock, book, granted: [districts[number % 3] ?? 'north'] };
}

async function cloneOf(phone: Phone, seed: number, number: number): Promise<Phone> {
  const store = copyOfDeviceStore(phone.store);
  const clock = handClock(phone.clock.milliseconds);
  // The clone has the keys the phone had, and makes its own from then on.
  const own = nodeKeys();
  const { device } = await phone.book.identity();
  const keys: Keys = { signerFor: (asked) => (asked === device ? phone.keys : own).signerFor(asked) };
  const ports = {
    store,
    keys,
    clock,
    hasher: nodeHasher,
    verifier: nodeVerifier,
    chance: seededChance(seed * 100 + number + 50),
  };
  const book = await openBook(ports, { person: phone.person });
  return {
    name: `clone ${number} of ${phone.name}`,
    person: phone.person,
    store,
    keys,
    clock,
    book,
    granted: [...phone.granted],
  };
}

function portsOf(phone: Phone, transport: Transport) {
  return { book: phone.book, store: phone.store, transport, hasher: nodeHasher, verifier: nodeVerifier };
}

async function writeSomething(phone: Phone, dice: Dice, tally: DiceTally): Promise<Entry[]> {
  const { book } = phone;
  const apiaries = await book.summaries('apiary');
  const colonies = await book.summaries('colony');
  const act = apiaries.length === 0 ? 0 : dice.roll();
  let proposals: Proposal[];
  if (act < 0.15) {
    const apiary: About = { type: 'apiary', id: book.newId() };
    const keeper: About = { type: 'keeper', id: book.newId() };
    // Now and then somebody writes where they may not.
    const district = dice.chance(0.85) ? dice.oneOf(phone.granted) : dice.oneOf(districts);
    const body: ApiaryBody = {
      name: `Stand ${dice.upTo(1000)}`,
      number: null,
      keeper: keeper.id,
      district,
      position: null,
      addressWords: "behind O'Neil's “barn”",
      lastConfirmedOn: null,
      coloniesRegistered: dice.upTo(20),
      plan: null,
    };
    const person = {
      name: 'Invented "Keeper"',
      number: null,
      addressWords: '',
      telephone: '',
      email: '',
      language: 'de',
    };
    proposals = [
      { kind: 'apiary', version: 2, about: apiary, replaces: [], body },
      { kind: 'keeper', version: 1, about: keeper, replaces: [], body: { ...person, trade: 'hobby' } },
    ];
  } else if (act < 0.4) {
    const apiary = dice.oneOf(apiaries);
    const id = book.newId();
    const body: ColonyBody = {
      apiary: apiary.about.id,
      label: `hive ${dice.upTo(100)}`,
      hiveType: 'langstroth-deep',
      broodBoxes: [{ box: 'lower', frames: dice.upTo(11) }],
      hiveState: 'living',
    };
    proposals = [{ kind: 'colony', version: 1, about: { type: 'colony', id }, replaces: [], body }];
  } else if (act < 0.7) {
    // Mostly the same few, so that changes meet.
    const hot = [...apiaries].sort((a, b) => (a.about.id < b.about.id ? -1 : 1)).slice(0, 2);
    const { about } = dice.oneOf(dice.chance(0.7) ? hot : apiaries);
    const state = await book.state({ type: 'apiary', id: about.id });
    const register = state?.apiary as Register<ApiaryBody>;
    if (register.current === null) return [];
    const seen = [register.current, ...(dice.chance(0.5) ? register.contested : [])].map(
      ({ written }) => written.entry,
    );
    const moves = dice.chance(0.5);
    if (moves) tally.moved++;
    const district = moves ? dice.oneOf(districts) : register.current.body.district;
    const body = { ...register.current.body, district, coloniesRegistered: dice.upTo(50) };
    proposals = [{ kind: 'apiary', version: 2, about, replaces: seen, body }];
  } else if (act < 0.85 && colonies.length > 0) {
    const { about } = dice.oneOf(colonies);
    proposals = [{ kind: 'note', version: 1, about, replaces: [], body: { text: `note ${dice.upTo(1e6)} '; --` } }];
    if (dice.chance(0.4)) {
      // Two entries of one write, of which the second names the first.
      const id = book.newId();
      const text = `what was meant ${dice.upTo(1e6)}`;
      const body = { corrects: id, reason: 'typed wrong', version: 1, body: { text } };
      proposals = [
        { id, kind: 'note', version: 1, about, replaces: [], body: { text: 'wrong' } },
        { kind: 'correction', version: 1, about, replaces: [], body },
      ];
      tally.corrected++;
    }
  } else {
    const { about } = dice.oneOf(apiaries);
    const body = { visit: null, field: 'coloniesRegistered', from: 1, to: dice.upTo(20), reason: 'counted' };
    proposals = [{ kind: 'proposed-change', version: 1, about, replaces: [], body }];
  }
  const entries = await book.write(proposals);
  tally.written += entries.length;
  return entries;
}

/** An exchange over a bad connection, which may be cut at any question. */
async function exchangeBadly(phone: Phone, offices: readonly Office[], dice: Dice, tally: DiceTally): Promise<void> {
  tally.exchanges++;
  try {
    const report = await exchange(portsOf(phone, badWire(phone, offices, dice, tally)), {
      pageLimit: 1 + dice.upTo(9),
    });
    tally.newIdentities += Number(report.newIdentity);
    equal(report.faults, [], `faults of ${phone.name} on a bad wire`);
  } catch (error) {
    if (!(error instanceof TransportError)) throw error;
  }
}

function goodWire(phone: Phone, offices: readonly Office[]): Transport {
  let turn = 0;
  const next = () => {
    const found = offices[turn++ % offices.length];
    if (found === undefined) throw new RangeError('no office');
    return found;
  };
  return loopback(next, phone.person, () => phone.granted.map(districtScope));
}

function badWire(phone: Phone, offices: readonly Office[], dice: Dice, tally: DiceTally): Transport {
  const good = goodWire(phone, dice.shuffled(offices));
  const other = goodWire(phone, dice.shuffled(offices));
  // Dice of their own, so that the others fall as they did before there was damage. Never more in a row than the phone
  // repeats: what is damaged every time is tried by itself.
  const damage = diceOf(Math.floor(dice.roll() * 2 ** 31));
  let inARow = 0;
  const damagedOnTheWay = (entries: Entry[]): Entry[] => {
    if (entries.length === 0 || inARow === 2 || !damage.chance(0.25)) {
      inARow = 0;
      return entries;
    }
    inARow++;
    tally.damaged++;
    const hit = damage.upTo(entries.length);
    return entries.map((entry, i) => (i === hit ? damagedEntry(entry, damage) : entry));
  };
  const passes = async <T>(ask: () => Promise<T>): Promise<T> => {
    if (dice.chance(0.08)) {
      tally.cuts++;
      throw new TransportError('no connection', 'cut before the question arrived');
    }
    const answer = await ask();
    if (dice.chance(0.08)) {
      tally.repliesLost++;
      throw new TransportError('no connection', 'cut before the answer arrived');
    }
    return answer;
  };
  return {
    greet: () => passes(() => good.greet()),
    pull: (scope, after, limit) => passes(() => good.pull(scope, after, limit)),
    checkpoint: (scope, position) => passes(() => good.checkpoint(scope, position)),
    push: (entries) =>
      passes(async () => {
        const order = dice.chance(0.3) ? dice.shuffled([...entries.keys()]) : [...entries.keys()];
        if (order.some((from, to) => from !== to)) tally.reordered++;
        const shuffled = order.map((from) => entries[from] as Entry);
        const asked = [good.push(damagedOnTheWay(shuffled))];
        if (dice.chance(0.2)) {
          // The same message arrives at both office processes at once.
          tally.duplicated++;
          asked.push(other.push(shuffled));
        }
        const [answers = []] = await Promise.all(asked);
        const results: PushResult[] = [];
        for (const [to, from] of order.entries()) results[from] = answers[to] as PushResult;
        return results;
      }),
  };
}

/** One entry as it comes out of a bad wire: its body, its signature, its place, its name or its author changed. */
function damagedEntry(entry: Entry, dice: Dice): Entry {
  const { envelope } = entry;
  return dice.oneOf<() => Entry>([
    () => ({ ...entry, body: { ...(entry.body as object), text: 'changed on the way' } }),
    () => ({ ...entry, salt: `${entry.salt?.startsWith('A') ? 'B' : 'A'}${entry.salt?.slice(1) ?? ''}` }),
    () => ({
      ...entry,
      envelope: {
        ...envelope,
        signature: `${envelope.signature.startsWith('A') ? 'B' : 'A'}${envelope.signature.slice(1)}`,
      },
    }),
    () => ({ ...entry, envelope: { ...envelope, seq: Math.max(1, envelope.seq - 1) } }),
    () => ({ ...entry, envelope: { ...envelope, seq: envelope.seq + 1 } }),
    () => ({ ...entry, envelope: { ...envelope, id: '01900000-0bad-7000-8000-000000000001' } }),
    () => ({ ...entry, envelope: { ...envelope, id: 'no identifier' } }),
    () => ({ ...entry, envelope: { ...envelope, by: '01900000-0bad-7000-8000-000000000001' } }),
  ])();
}

async function equalBooks(
  phones: readonly Phone[],
  offices: readonly Office[],
  officeStores: readonly OfficeStore[],
  acknowledged: ReadonlyMap<string, Phone>,
  tally: DiceTally,
): Promise<void> {
  const [office] = offices;
  const [reference] = phones;
  if (office === undefined || reference === undefined) throw new RangeError('a world needs an office and phones');
  const expected = await statesOf(office);
  for (const other of offices) equal(await statesOf(other), expected, 'the office processes hold the same');
  const abouts = Object.values(expected).map((state) => (state as ApiaryState).about);
  const belonging = (await officeStores[0]?.memberships(abouts)) ?? new Map<string, string[]>();
  for (const { about, apiary } of await office.summaries('colony')) {
    const own = belonging.get(`colony/${about.id}`) ?? [];
    const followed = belonging.get(`apiary/${apiary}`) ?? [];
    equal([...own].sort(), [...followed].sort(), `colony ${about.id} belongs where its apiary belongs`);
  }
  for (const phone of phones) {
    const found = await statesOf(phone.book);
    const readable = new Set([everyoneScope, ...phone.granted.map(districtScope)]);
    const due = [...belonging].filter(([, scopes]) => scopes.some((scope) => readable.has(scope))).map(([key]) => key);
    truly(due.length > 0, `${phone.name} has something to hold`);
    for (const key of new Set([...due, ...Object.keys(found)])) {
      equal(found[key] ?? null, expected[key] ?? null, `${phone.name}: ${key}`);
    }
    equal((await phone.store.held()).length, 0, `${phone.name}: entries held`);
  }
  for (const [key, state] of Object.entries(expected)) {
    truly(key.length > 0 && state !== null, 'states are there');
    const { unknown, clockFlagged, apiary } = state as ApiaryState;
    equal(unknown, [], `${key}: unknown entries`);
    tally.clockFlags += clockFlagged.length;
    tally.contested += apiary?.contested.length ?? 0;
  }

  // Nothing a device acknowledged is lost: it counts at the office, or stands refused on the device that wrote it.
  const checkpoint = await office.checkpoint(null, 0);
  tally.entriesAtOffice = (checkpoint.heads ?? []).reduce((sum, { seq }) => sum + seq, 0);
  for (const [id, phone] of acknowledged) {
    const counting = await phone.store.byId([id]);
    if (counting.get(id)?.receivedAt) continue;
    const refused = (await Promise.all(phones.map(({ store }) => everRefused(store)))).flat();
    const mark = refused.find(({ entry }) => entry.envelope.id === id);
    truly(mark !== undefined, `${phone.name} wrote ${id}; it neither counts nor stands refused`);
    tally.refused++;
  }
}

/** Refused entries of all identities a store ever had. */
async function everRefused(store: DeviceStore) {
  const found = [];
  for (const { device } of await store.heads()) {
    for (const kept of await store.chain(device, 1, 10_000)) if (kept.refused !== null) found.push(kept);
  }
  return found;
}

async function statesOf(reader: Book | Office): Promise<Record<string, unknown>> {
  const states: Record<string, unknown> = {};
  for (const type of types) {
    for (const { about } of await reader.summaries(type)) {
      states[`${type}/${about.id}`] = await reader.state({ type, id: about.id });
    }
  }
  return states;
}
