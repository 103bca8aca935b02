import type { StoreSubject } from '@combside/record/acceptance/entry-store';
import { entryStoreCases } from '@combside/record/acceptance/entry-store';
import { officeStoreCases } from '@combside/record/acceptance/office-store';
import type { OfficeStore } from '@combside/record/store';
import { afterEach, describe, test } from 'vitest';
import { type TestDatabase, testClusters, testDatabase } from '../acceptance/test-database.ts';
import { openOfficeStore } from './open-office-store.ts';

const cases = [
  ...entryStoreCases.map((one) => ({ ...one, suite: 'entries' })),
  ...officeStoreCases.map((one) => ({ ...one, suite: 'office' })),
] as readonly { name: string; suite: string; check: (subject: StoreSubject<OfficeStore>) => Promise<void> }[];

for (const cluster of testClusters()) {
  describe.skipIf(cluster.skipped !== null)(`the office's store on ${cluster.name}`, () => {
    let database: TestDatabase | undefined;
    afterEach(async () => {
      await database?.drop();
      database = undefined;
    });
    test.for(cases)('$suite: $name', async ({ check }) => {
      const own = await testDatabase(cluster);
      database = own;
      await check({ store: openOfficeStore(own), again: async () => openOfficeStore(await own.again()) });
    });
  });
}
