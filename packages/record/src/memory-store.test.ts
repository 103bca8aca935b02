import { describe, expect, test } from 'vitest';
import { deviceStoreCases } from './acceptance/device-store.ts';
import { entryStoreCases } from './acceptance/entry-store.ts';
import { officeStoreCases } from './acceptance/office-store.ts';
import { memoryDeviceStore, memoryOfficeStore } from './memory-store.ts';

describe('the memory store', () => {
  for (const { name, check } of entryStoreCases) {
    test(`entries: ${name}`, async () => {
      const store = memoryDeviceStore();
      await expect(check({ store, again: async () => store })).resolves.toBeUndefined();
    });
  }
  for (const { name, check } of deviceStoreCases) {
    test(`device: ${name}`, async () => {
      const store = memoryDeviceStore();
      await expect(check({ store, again: async () => store })).resolves.toBeUndefined();
    });
  }
  for (const { name, check } of officeStoreCases) {
    test(`office: ${name}`, async () => {
      const store = memoryOfficeStore(() => Promise.resolve());
      await expect(check({ store, again: async () => store })).resolves.toBeUndefined();
    });
  }
});
