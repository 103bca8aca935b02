import { describe, expect, test } from 'vitest';
import { type DiceTally, rollDice } from './acceptance/dice.ts';
import { memoryOfficeStore } from './memory-store.ts';

/** Seeds that failed once. They stay for good; each says what was wrong. */
const failedOnce: readonly { readonly seed: number; readonly was: string }[] = [];

const seeds = Array.from({ length: 25 }, (_, i) => i + 1);
const sum: Partial<Record<keyof DiceTally, number>> = {};

/** Office storage that makes every question wait a little, differently each time, so that two processes interleave. */
function slowOfficeStore(seed: number) {
  let state = seed;
  return memoryOfficeStore(async () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    for (let i = (state >>> 16) % 5; i > 0; i--) await Promise.resolve();
  });
}

async function roll(seed: number): Promise<DiceTally> {
  const store = slowOfficeStore(seed);
  const tally = await rollDice({ officeStores: [store, store], seed, turns: 60 });
  for (const key of Object.keys(tally) as (keyof DiceTally)[]) sum[key] = (sum[key] ?? 0) + tally[key];
  return tally;
}

describe('sync dice: equal books at the end, no entry skipped', () => {
  for (const { seed, was } of failedOnce) {
    test(`seed ${seed}, which failed once: ${was}`, async () => {
      expect((await roll(seed)).written).toBeGreaterThan(5);
    });
  }

  for (const seed of seeds) {
    test(`seed ${seed}`, async () => {
      const tally = await roll(seed);
      expect(tally.written).toBeGreaterThan(5);
      expect(tally.entriesAtOffice).toBeGreaterThan(tally.written / 2);
    });
  }

  test('over all seeds each kind of trouble really happened', () => {
    for (const [trouble, times] of Object.entries(sum)) expect([trouble, times > 10]).toEqual([trouble, true]);
    expect(Object.keys(sum)).toHaveLength(16);
  });
});
