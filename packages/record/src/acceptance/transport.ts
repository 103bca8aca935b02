import { openBook } from '../book/open-book.ts';
import { checkpointIsSigned, matchesScope } from '../checkpoint.ts';
import type { About, Entry } from '../entry.ts';
import { apiary } from '../kinds/apiary.ts';
import { memoryDeviceStore } from '../memory-store.ts';
import type { Chance, Hasher, Keys, Verifier, WallClock } from '../ports.ts';
import { exchange } from '../sync.ts';
import { checkpoint, districtScope, everyoneScope, greeting, page, pushResult, type Transport } from '../transport.ts';
import { type AcceptanceCase, equal, truly } from './case.ts';
import { sampleApiary } from './samples.ts';

/** A transport to an office that holds what it likes; the person may write in `district` and read it. */
export interface TransportSubject {
  readonly transport: Transport;
  readonly person: string;
  readonly district: string;
  readonly ports: {
    readonly hasher: Hasher;
    readonly keys: Keys;
    readonly verifier: Verifier;
    readonly clock: WallClock;
    readonly chance: Chance;
  };
}

async function deviceOf({ person, ports }: TransportSubject) {
  const store = memoryDeviceStore();
  const book = await openBook({ store, ...ports }, { person, deviceName: 'acceptance' });
  return { store, book };
}

function writeApiary(book: Awaited<ReturnType<typeof deviceOf>>['book'], district: string): Promise<Entry[]> {
  const about: About = { type: 'apiary', id: book.newId() };
  return book.write([{ kind: 'apiary', version: apiary.version, about, replaces: [], body: sampleApiary(district) }]);
}

/** What any way to the office must do, over whatever wire. Everything answered has the shape the port promises. */
export const transportCases: readonly AcceptanceCase<TransportSubject>[] = [
  {
    name: 'the greeting names the office, its key, and everyone’s scope',
    async check({ transport, district }) {
      const said = greeting.parse(await transport.greet());
      truly(said.scopes.includes(everyoneScope), 'everyone');
      truly(said.scopes.includes(districtScope(district)), 'the district granted');
      equal(await transport.greet().then(({ office }) => office), said.office, 'the same office each time');
    },
  },
  {
    name: 'each pushed entry has its answer, in order; again, it is known',
    async check(subject) {
      const { store, book } = await deviceOf(subject);
      await writeApiary(book, subject.district);
      const sent = (await store.outbox(500)).map(({ entry }) => entry);
      const first = (await subject.transport.push(sent)).map((result) => pushResult.parse(result));
      equal(
        first.map(({ id }) => id),
        sent.map(({ envelope }) => envelope.id),
        'identifiers',
      );
      equal(
        first.map(({ outcome }) => outcome),
        sent.map(() => 'received'),
        'outcomes',
      );
      equal(await subject.transport.push(sent), first, 'the same answer to the same message, times included');
    },
  },
  {
    name: 'a missing beginning is a gap, another author’s entry is broken, an unreadable one spoils nothing',
    async check(subject) {
      const { store, book } = await deviceOf(subject);
      await writeApiary(book, subject.district);
      const [begin, site] = (await store.outbox(500)).map(({ entry }) => entry) as [Entry, Entry];
      equal(await subject.transport.push([site]), [{ id: site.envelope.id, outcome: 'gap', from: 1 }], 'no beginning');
      await subject.transport.push([begin]);
      await writeApiary(book, subject.district);
      const [, later] = (await store.outbox(500)).slice(1).map(({ entry }) => entry) as [Entry, Entry];
      equal(await subject.transport.push([later]), [{ id: later.envelope.id, outcome: 'gap', from: 2 }], 'a gap');
      const stranger = { ...site, envelope: { ...site.envelope, by: '01900000-0bad-7000-8000-000000000001' } };
      const [answer] = await subject.transport.push([stranger]);
      equal(answer?.outcome, 'broken', 'an entry under another author');
      const results = await subject.transport.push([site, later]);
      equal(
        results.map(({ outcome }) => outcome),
        ['received', 'received'],
        'the good ones go through',
      );
    },
  },
  {
    name: 'a scope is read page by page without a gap, and its checkpoint fits what was read',
    async check(subject) {
      const { transport, ports } = subject;
      const author = await deviceOf(subject);
      for (let i = 0; i < 5; i++) await writeApiary(author.book, subject.district);
      const sync = {
        book: author.book,
        store: author.store,
        transport,
        hasher: ports.hasher,
        verifier: ports.verifier,
      };
      equal((await exchange(sync)).faults, [], 'faults');
      const scope = districtScope(subject.district);
      let position = 0;
      for (let more = true; more; ) {
        const read = page.parse(await transport.pull(scope, position, 2));
        truly(read.items.length <= 2, 'no more than asked for');
        for (const item of read.items) equal(item.position, ++position, 'position');
        more = read.more;
      }
      truly(position >= 5, 'what was pushed is on the pages');
      const links = await author.store.sequence(scope);
      const word = checkpoint.parse(await transport.checkpoint(scope, links.length));
      const said = await transport.greet();
      truly(await checkpointIsSigned(ports.verifier, word, said.publicKey), 'signed by the office');
      truly(await matchesScope(ports.hasher, word, links), 'fits the sequence read');
      truly(!(await matchesScope(ports.hasher, word, [...links].reverse())), 'and not another order');
    },
  },
  {
    name: 'two devices come to the same book',
    async check(subject) {
      const [one, two] = [await deviceOf(subject), await deviceOf(subject)];
      const { transport, ports } = subject;
      const sync = (device: typeof one) =>
        exchange({ ...device, transport, hasher: ports.hasher, verifier: ports.verifier });
      const [entry] = (await writeApiary(one.book, subject.district)) as [Entry];
      await sync(one);
      const report = await sync(two);
      equal(report.faults, [], 'faults');
      truly(report.confirmed.includes(districtScope(subject.district)), 'confirmed by checkpoint');
      const about = { type: 'apiary', id: entry.envelope.about.id } as const;
      equal(await two.book.state(about), await one.book.state(about), 'state');
    },
  },
];
