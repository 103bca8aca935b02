import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pushAnswer } from '@combside/contract/push';
import { protocolHeader, protocolVersion } from '@combside/contract/version';
import { seal } from '@combside/record/chain';
import type { Entry, Proposal } from '@combside/record/entry';
import { newIdentifier } from '@combside/record/identifier';
import type { Signer } from '@combside/record/ports';
import type { Head } from '@combside/record/store';
import type { PushResult } from '@combside/record/transport';
import { type AssembledServer, assemble } from '../assemble.ts';
import { type TestDatabase, testDatabase } from '../store/acceptance/test-database.ts';
import type { Database } from '../store/database.ts';
import { newSigner } from '../store/keys.ts';
import { chance, hasher, wallClock } from '../store/node-ports.ts';

/** A person of the tests, with an account. */
export interface TestPerson {
  readonly person: string;
  readonly name: string;
  readonly email: string;
  readonly role: 'inspector' | 'office';
  readonly districts: 'all' | readonly string[];
}

const password = 'a long enough password';
const one = (
  number: number,
  name: string,
  role: TestPerson['role'],
  districts: TestPerson['districts'],
): TestPerson => ({
  person: `01900000-0000-7000-8000-00000000000${number}`,
  name,
  email: `${name.toLowerCase()}@office.example`,
  role,
  districts,
});

/** Invented: inspectors of two districts, two of them in one, and the office, which sees all. */
export const testPeople = {
  north: one(1, 'Nell', 'inspector', ['north']),
  south: one(2, 'Sander', 'inspector', ['south']),
  office: one(3, 'Otto', 'office', 'all'),
  colleague: one(4, 'Nora', 'inspector', ['north']),
} as const;

/** Someone signed in, asking the server without a socket. */
export interface Visitor {
  readonly person: TestPerson;
  readonly headers: Readonly<Record<string, string>>;
  get(path: string): Promise<Response>;
  post(path: string, message: unknown): Promise<Response>;
  /** Pushes entries and returns the results; throws when the answer is a refusal of the whole. */
  push(entries: readonly unknown[]): Promise<PushResult[]>;
}

/** A device that seals what it is told, so that attacks can forge on its behalf. */
export interface Phone {
  readonly device: string;
  readonly person: string;
  readonly signer: Signer;
  /** Seals proposals as the next of the chain, beginning it when it is new. */
  write(...proposals: readonly Proposal[]): Promise<Entry[]>;
  /** Where the chain stands. */
  head(): Head | null;
}

export interface TestHouse extends AssembledServer {
  readonly database: TestDatabase;
  readonly data: string;
  signIn(person: TestPerson): Promise<Visitor>;
  /** A second server process on the same database and data folder. */
  another(): Promise<AssembledServer & { signIn(person: TestPerson): Promise<Visitor> }>;
  tearDown(): Promise<void>;
}

/** Assembles a server on a database of its own, with the people above. */
export async function testHouse(attemptsPerMinute = 1000): Promise<TestHouse> {
  const database = await testDatabase();
  const data = await mkdtemp(join(tmpdir(), 'combside-house-'));
  // No pages: what is tried here is what stands behind them.
  const web = join(data, 'web');
  await mkdir(web);
  const complaints: unknown[] = [];
  const open = (over: Database): Promise<AssembledServer> =>
    assemble({
      database: over,
      data,
      address: 'http://127.0.0.1',
      pack: 'quillmoor',
      web,
      attemptsPerMinute,
      complain: (error) => complaints.push(error),
    });
  const house = await open(database);
  const houses = [house];
  for (const person of Object.values(testPeople)) {
    await house.accounts.addPerson({ ...person, password }, new Date());
  }
  return {
    ...house,
    database,
    data,
    signIn: (person) => signIn(house, person),
    another: async () => {
      const second = await open(await database.again());
      houses.push(second);
      return { ...second, signIn: (person) => signIn(second, person) };
    },
    tearDown: async () => {
      for (const each of houses) {
        each.endStreams();
        await each.close();
      }
      await database.drop();
      await rm(data, { recursive: true, force: true });
      if (complaints.length > 0) throw new Error(`the server complained: ${complaints.map(String).join('\n')}`);
    },
  };
}

async function signIn(house: AssembledServer, person: TestPerson): Promise<Visitor> {
  const answer = await house.app.request('/api/auth/sign-in/email', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ email: person.email, password }),
  });
  if (answer.status !== 200) throw new Error(`sign-in of ${person.email}: ${answer.status} ${await answer.text()}`);
  const cookie = answer.headers
    .getSetCookie()
    .map((line) => line.split(';')[0])
    .join('; ');
  const headers = { cookie, [protocolHeader]: String(protocolVersion) };
  const post = (path: string, message: unknown): Promise<Response> =>
    Promise.resolve(
      house.app.request(path, {
        method: 'POST',
        headers: { ...headers, 'content-type': 'application/json' },
        body: JSON.stringify(message),
      }),
    );
  return {
    person,
    headers,
    get: (path) => Promise.resolve(house.app.request(path, { headers })),
    post,
    push: async (entries) => {
      const pushed = await post('/api/push', { entries });
      if (pushed.status !== 200) throw new Error(`push: ${pushed.status} ${await pushed.text()}`);
      return pushAnswer.parse(await pushed.json()).results;
    },
  };
}

/** Anything but a duplicate: a fresh identifier. */
export function newId(): string {
  return newIdentifier(wallClock, chance);
}

/** A fresh device of a person; its clock may run ahead by so many milliseconds. */
export function phoneOf(person: string, ahead = 0): Phone {
  const device = newId();
  const signer = newSigner();
  let head: Head | null = null;
  let clock: string | null = null;
  return {
    device,
    person,
    signer,
    head: () => head,
    write: async (...proposals) => {
      const beginning: Proposal = {
        kind: 'device',
        version: 1,
        about: { type: 'device', id: device },
        body: { publicKey: signer.publicKey, person, predecessor: null, name: 'phone of a test' },
        replaces: [],
      };
      const sealed = await seal(
        { hasher, signer, chance, clock: { now: () => wallClock.now() + ahead } },
        { device, by: person, head, clock },
        head === null ? [beginning, ...proposals] : proposals,
      );
      const last = sealed.kept.at(-1);
      if (last) head = { device, seq: last.entry.envelope.seq, hash: last.hash };
      clock = sealed.clock;
      return sealed.kept.map((kept) => kept.entry);
    },
  };
}
