import type { Tap } from '@combside/casework/draft/tap';
import { memoryDeviceStore } from '@combside/record/memory-store';
import type { DeviceStore } from '@combside/record/store';
import { beforeEach, describe, expect, test } from 'vitest';
import { type DraftKind, OpenDraft } from './open-draft.ts';
import { type Drafts, storedDrafts } from './stored-drafts.ts';

const key = 'examination/v/c';
const kind: DraftKind<readonly number[]> = {
  key,
  begin: [],
  read: (stored) => stored as readonly number[],
  isNothing: (taps) => taps.length === 0,
};
const add = (tap: number) => (taps: readonly number[]) => [...taps, tap];

let store: DeviceStore;

/** Tabs of one store, each of which hears what the others store. */
function tabs(count: number): Drafts[] {
  const listeners: Set<(keys: readonly string[]) => void>[] = Array.from({ length: count }, () => new Set());
  return listeners.map((mine) => {
    const drafts = storedDrafts(store, (listener) => {
      mine.add(listener);
      return () => mine.delete(listener);
    });
    return {
      ...drafts,
      async change(...given) {
        await drafts.change(...given);
        for (const others of listeners) if (others !== mine) for (const listener of others) listener([given[0]]);
      },
    };
  });
}

beforeEach(() => {
  store = memoryDeviceStore();
});

describe('a draft in hand', () => {
  test('shows a step at once and says saved only when it is stored', async () => {
    const drafts = storedDrafts(store);
    let goOn: () => void = () => undefined;
    const asked = new Promise<void>((resolve) => {
      goOn = resolve;
    });
    const slow: Drafts = { ...drafts, change: (...given) => asked.then(() => drafts.change(...given)) };
    const draft = await OpenDraft.open(slow, kind);
    draft.change(add(1));
    expect(draft.now()).toEqual({ value: [1], saving: 'saving', cameBack: false });
    expect(await store.draft(key)).toBeNull();
    expect(draft.now().saving).toBe('saving');
    goOn();
    await draft.settled();
    expect(draft.now().saving).toBe('saved');
    expect((await store.draft(key))?.value).toEqual([1]);
  });

  test('comes back, and says so; undone to nothing it is not kept', async () => {
    const first = await OpenDraft.open(storedDrafts(store), kind);
    first.change(add(1));
    await first.settled();
    const again = await OpenDraft.open(storedDrafts(store), kind);
    expect(again.now()).toEqual({ value: [1], saving: 'saved', cameBack: true });
    again.change((taps) => taps.slice(0, -1));
    await again.settled();
    expect(await store.draft(key)).toBeNull();
  });

  test('comes back as phones hold it today: the taps as one list', async () => {
    const taps: readonly Tap[] = [
      { tap: 'everything looked at' },
      { tap: 'sign', sign: 'sunken-cappings', outcome: 'seen' },
    ];
    await store.commit({ saveDrafts: [{ key, value: taps, savedAt: '2026-05-04T08:31:05.120Z' }] });
    const draft = await OpenDraft.open<readonly Tap[]>(storedDrafts(store), {
      key,
      begin: [],
      read: (stored) => stored as readonly Tap[],
      isNothing: (all) => all.length === 0,
    });
    expect(draft.now()).toEqual({ value: taps, saving: 'saved', cameBack: true });
  });

  test('what could not be stored stays in hand, is said, and goes with the next step', async () => {
    const drafts = storedDrafts(store);
    let isFull = true;
    const filling: Drafts = {
      ...drafts,
      change: (...given) => (isFull ? Promise.reject(new Error('no room')) : drafts.change(...given)),
    };
    const draft = await OpenDraft.open(filling, kind);
    draft.change(add(1));
    await draft.settled();
    expect(draft.now()).toEqual({ value: [1], saving: 'failed', cameBack: false });
    isFull = false;
    draft.change(add(2));
    await draft.settled();
    expect(draft.now()).toEqual({ value: [1, 2], saving: 'saved', cameBack: false });
    expect((await store.draft(key))?.value).toEqual([1, 2]);
  });

  test('without storage lives as long as it is held, and never says saved', async () => {
    const draft = await OpenDraft.open(null, kind);
    draft.change(add(1));
    await draft.settled();
    expect(draft.now()).toEqual({ value: [1], saving: 'nowhere', cameBack: false });
  });

  test('stores what belongs to it in the same stroke, and closes it with it', async () => {
    const draft = await OpenDraft.open(storedDrafts(store), kind, ['examination/v/c/part']);
    draft.change(add(1), { 'examination/v/c/part': 'beside' });
    const { keys } = await draft.settled();
    expect((await store.draft('examination/v/c/part'))?.value).toBe('beside');
    expect(keys).toEqual([key, 'examination/v/c/part']);
  });

  test('stays the same object when the store gives the same back, so that nobody takes it for a new tap', async () => {
    const [here, there] = tabs(2) as [Drafts, Drafts];
    const one = await OpenDraft.open(here, kind);
    const two = await OpenDraft.open(there, kind);
    one.change(add(1));
    const shown = one.now().value;
    await one.settled();
    await two.settled();
    expect(one.now().value).toBe(shown);
  });
});

describe('two tabs of one draft', () => {
  test('lose no tap of each other, and show them', async () => {
    const [here, there] = tabs(2) as [Drafts, Drafts];
    const one = await OpenDraft.open(here, kind);
    const two = await OpenDraft.open(there, kind);
    for (let tap = 0; tap < 20; tap += 1) (tap % 2 === 0 ? one : two).change(add(tap));
    await Promise.all([one.settled(), two.settled()]);
    await Promise.all([one.settled(), two.settled()]);
    const stored = (await store.draft(key))?.value as number[];
    expect([...stored].sort((a, b) => a - b)).toEqual(Array.from({ length: 20 }, (_, tap) => tap));
    expect(one.now().value).toEqual(stored);
    expect(two.now().value).toEqual(stored);
  });

  test('a tap is taken on what stands by then, also where this tab has not heard of it', async () => {
    const deaf = storedDrafts(store);
    const one = await OpenDraft.open(deaf, kind);
    const two = await OpenDraft.open(deaf, kind);
    one.change(add(1));
    await one.settled();
    two.change(add(2));
    await two.settled();
    expect((await store.draft(key))?.value).toEqual([1, 2]);
    expect(two.now().value).toEqual([1, 2]);
  });

  test('an undo takes back the last of what stands, in one stroke', async () => {
    const [here, there] = tabs(2) as [Drafts, Drafts];
    const one = await OpenDraft.open(here, kind);
    const two = await OpenDraft.open(there, kind);
    one.change(add(1));
    await one.settled();
    two.change(add(2));
    await two.settled();
    two.change((taps) => taps.slice(0, -1));
    await two.settled();
    await one.settled();
    expect((await store.draft(key))?.value).toEqual([1]);
    expect(one.now().value).toEqual([1]);
  });

  test('what is settled holds what another tab stored, heard or not', async () => {
    const deaf = storedDrafts(store);
    const one = await OpenDraft.open(deaf, kind);
    const two = await OpenDraft.open(deaf, kind);
    one.change(add(1));
    await one.settled();
    await two.settled();
    expect(two.now().value).toEqual([1]);
  });
});
