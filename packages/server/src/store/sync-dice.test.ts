import { rollDice } from '@combside/record/acceptance/dice';
import { afterEach, describe, expect, test } from 'vitest';
import { type TestDatabase, testClusters, testDatabase } from './acceptance/test-database.ts';
import { openOfficeStore } from './office-store/open-office-store.ts';

/** The record's dice, with the office's two processes on one real database. More seeds: record/src/sync.dice.test.ts. */
const seeds = [1, 2, 3, 101];

for (const cluster of testClusters()) {
  describe.skipIf(cluster.skipped !== null)(`sync dice on ${cluster.name}`, () => {
    let database: TestDatabase | undefined;
    afterEach(async () => {
      await database?.drop();
      database = undefined;
    });
    test.for(seeds)('seed %i', { timeout: 120_000 }, async (seed) => {
      database = await testDatabase(cluster);
      const officeStores = [openOfficeStore(database), openOfficeStore(await database.again())];
      const tally = await rollDice({ officeStores, seed, turns: 60 });
      expect(tally.written).toBeGreaterThan(5);
      expect(tally.exchanges).toBeGreaterThan(5);
      expect(tally.entriesAtOffice).toBeGreaterThan(tally.written / 2);
    });
  });
}
