import { type Act, done, refused } from '@combside/casework/act';
import { type SmallPhone, smallWorld } from '@combside/record/acceptance/small-world';
import type { Proposal } from '@combside/record/entry';
import type { DeviceStore } from '@combside/record/store';
import { TransportError } from '@combside/record/transport';
import { beforeEach, describe, expect, test } from 'vitest';
import { keptFaults } from '../../app/faults.ts';
import type { WritingDevice } from '../device-in-hand.tsx';
import { OpenDraft } from '../drafts/open-draft.ts';
import { storedDrafts } from '../drafts/stored-drafts.ts';
import type { SyncStatus } from '../sync/start-sync.ts';
import { CalledOff, OneWriteAtATime } from './one-write-at-a-time.ts';

const apiary = { type: 'apiary', id: '01900000-00aa-7000-8000-000000000001' } as const;
const noting = (text: string): Proposal => ({ kind: 'note', version: 1, about: apiary, replaces: [], body: { text } });

/** An exchange with the office that is moved by hand. */
class HandSync {
  waiting: number | null = 0;
  readonly #listeners = new Set<() => void>();
  readonly #store: DeviceStore;

  constructor(store: DeviceStore) {
    this.#store = store;
  }

  status = () => ({ waiting: this.waiting }) as SyncStatus;
  subscribe = (listener: () => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
  run = async () => undefined;
  async count() {
    this.waiting = await this.#store.outboxSize();
    this.#tell();
  }
  wake = () => undefined;
  stop = () => undefined;
  /** The office has everything. */
  arrive() {
    this.waiting = 0;
    this.#tell();
  }
  #tell() {
    for (const listener of this.#listeners) listener();
  }
}

let phone: SmallPhone;
let sync: HandSync;
let device: WritingDevice;
const opened = async () => device;
const noted = async () => (await phone.book.state(apiary))?.notes.map(({ body }) => body.text) ?? [];

beforeEach(async () => {
  phone = await (await smallWorld()).phone();
  sync = new HandSync(phone.store);
  device = { book: phone.book, drafts: storedDrafts(phone.store), sync };
});

/** A draft of what is typed, with the text given. */
async function typed(text: string) {
  const kind = {
    key: 'note/a',
    begin: '',
    read: (stored: unknown) => stored as string,
    isNothing: (value: string) => value === '',
  };
  const draft = await OpenDraft.open(device.drafts, kind);
  draft.change(() => text);
  await draft.settled();
  return draft;
}

/** Resolves once the writing says so. */
function reaches(writing: OneWriteAtATime, state: string): Promise<void> {
  return new Promise((resolve) => {
    const look = () => writing.status().state === state && resolve();
    writing.subscribe(look);
    look();
  });
}

describe('a write', () => {
  test('is done once, however often it is asked for while it is busy', async () => {
    const writing = new OneWriteAtATime();
    let asked = 0;
    const act = () => {
      asked += 1;
      return done([noting(`note ${asked}`)]);
    };
    const [first, second] = await Promise.all([writing.write(opened, act), writing.write(opened, act)]);
    expect(first?.ok).toBe(true);
    expect(second).toBeNull();
    expect(asked).toBe(1);
    expect(await noted()).toEqual(['note 1']);
    // Afterwards it writes again.
    expect(await writing.write(opened, act)).not.toBeNull();
    expect(await noted()).toEqual(['note 1', 'note 2']);
  });

  test('waits for a device that is still opening', async () => {
    const writing = new OneWriteAtATime();
    let open: (device: WritingDevice) => void = () => undefined;
    const opening = new Promise<WritingDevice>((resolve) => {
      open = resolve;
    });
    const written = writing.write(
      () => opening,
      () => done([noting('quick')]),
    );
    expect(writing.status().state).toBe('busy');
    open(device);
    expect(await written).not.toBeNull();
    expect(await noted()).toEqual(['quick']);
  });

  test('that casework refuses is refused at once, while the device is still opening', async () => {
    const writing = new OneWriteAtATime();
    const refusal = refused('casework.refused.day-to-come');
    const never = () => new Promise<WritingDevice>(() => undefined);
    expect(await writing.write(never, (): Act => refusal)).toBeNull();
    expect(writing.status()).toEqual({ state: 'refused', refusal, failure: null });
  });

  test('gives the act the record as it stands by then', async () => {
    const writing = new OneWriteAtATime();
    await phone.book.write([noting('before')]);
    let seen: readonly string[] = [];
    await writing.write(opened, async (fresh): Promise<Act> => {
      seen = (await fresh.state(apiary))?.notes.map(({ body }) => body.text) ?? [];
      return done([]);
    });
    expect(seen).toEqual(['before']);
  });

  test('that casework refuses writes nothing, keeps the draft and says why', async () => {
    const writing = new OneWriteAtATime();
    const draft = await typed('half said');
    const refusal = refused('casework.refused.visit-ended');
    expect(await writing.write(opened, (): Act => refusal, { closes: [draft] })).toBeNull();
    expect(writing.status()).toEqual({ state: 'refused', refusal, failure: null });
    expect(await noted()).toEqual([]);
    expect(await device.drafts.load('note/a')).toBe('half said');
    expect(draft.now().value).toBe('half said');
  });

  test('that fails writes nothing, keeps the draft, says what kind of failure it was, and can be tried again', async () => {
    const writing = new OneWriteAtATime();
    const draft = await typed('half said');
    const before = keptFaults().length;
    const full = new DOMException('no room', 'QuotaExceededError');
    const broken = { ...device, book: { ...phone.book, write: () => Promise.reject(full) } };
    const act = () => done([noting(draft.now().value)]);
    expect(await writing.write(async () => broken, act, { closes: [draft] })).toBeNull();
    expect(writing.status()).toEqual({ state: 'failed', refusal: null, failure: 'storage full' });
    expect(keptFaults()).toHaveLength(before + 1);
    expect(await noted()).toEqual([]);
    expect(await device.drafts.load('note/a')).toBe('half said');
    expect(draft.now().value).toBe('half said');

    expect(await writing.write(opened, act, { closes: [draft] })).not.toBeNull();
    expect(await noted()).toEqual(['half said']);
  });

  test.each([
    [new TransportError('no connection', 'keepers'), 'no answer'],
    [new DOMException('closed', 'InvalidStateError'), 'store closed'],
    [new RangeError('a fault of ours'), 'other'],
  ] as const)('whose act throws %s fails', async (thrown, failure) => {
    const writing = new OneWriteAtATime();
    await writing.write(opened, () => Promise.reject(thrown));
    expect(writing.status()).toEqual({ state: 'failed', refusal: null, failure });
  });

  test('to a device that does not open fails', async () => {
    const writing = new OneWriteAtATime();
    const shut = () => Promise.reject(new Error('no storage'));
    expect(await writing.write(shut, () => done([noting('lost')]))).toBeNull();
    expect(writing.status().state).toBe('failed');
  });

  test('that is called off stores nothing and is no failure', async () => {
    const writing = new OneWriteAtATime();
    const before = keptFaults().length;
    const stop = () => {
      throw new CalledOff('enough');
    };
    expect(await writing.write(opened, () => done([noting('never')]), { sealed: stop })).toBeNull();
    expect(writing.status().state).toBe('idle');
    expect(keptFaults()).toHaveLength(before);
    expect(await noted()).toEqual([]);
  });

  test('closes its draft in the same stroke; what is said meanwhile goes on as a draft', async () => {
    const writing = new OneWriteAtATime();
    const draft = await typed('as written');
    await writing.write(
      opened,
      () => {
        draft.change(() => 'said meanwhile');
        return done([noting('as written')]);
      },
      { closes: [draft] },
    );
    await draft.settled();
    expect(await noted()).toEqual(['as written']);
    expect(draft.now().value).toBe('said meanwhile');
    expect(await device.drafts.load('note/a')).toBe('said meanwhile');

    await writing.write(opened, () => done([noting('and that')]), { closes: [draft] });
    expect(await device.drafts.load('note/a')).toBeNull();
    expect(draft.now().value).toBe('');
  });

  test('is said to be sent only once the office has it, counted after the write', async () => {
    const writing = new OneWriteAtATime();
    sync.arrive();
    await writing.write(opened, () => done([noting('on its way')]));
    // What was counted before the write says that nothing waits.
    expect(writing.status().state).toBe('written');
    await sync.count();
    expect(sync.waiting).toBeGreaterThan(0);
    expect(writing.status().state).toBe('written');
    const sent = reaches(writing, 'sent');
    sync.arrive();
    await sent;
  });
});
