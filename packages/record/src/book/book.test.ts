import { expect, test } from 'vitest';
import { sampleApiary } from '../acceptance/samples.ts';
import { smallWorld } from '../acceptance/small-world.ts';
import type { Proposal } from '../entry.ts';
import { apiary } from '../kinds/apiary.ts';

test('a write of many tells how far it is, and can be called off with nothing stored', async () => {
  const world = await smallWorld();
  const phone = await world.phone();
  const proposals = Array.from({ length: 20 }, (): Proposal => {
    const about = { type: 'apiary', id: phone.book.newId() };
    return { kind: 'apiary', version: apiary.version, about, replaces: [], body: sampleApiary('north') };
  });
  const { device } = await phone.book.identity();
  const before = await phone.store.head(device);

  const called = phone.book.write(proposals, {
    sealed: (count) => {
      if (count === 7) throw new Error('called off');
    },
  });
  await expect(called).rejects.toThrow('called off');
  expect(await phone.store.head(device)).toEqual(before);
  expect(await phone.book.summaries('apiary')).toEqual([]);

  const given = phone.book.write(proposals, {
    stored: () => {
      throw new Error('given up');
    },
  });
  await expect(given).rejects.toThrow('given up');
  expect(await phone.store.head(device)).toEqual(before);
  expect(await phone.book.summaries('apiary')).toEqual([]);

  const told: number[] = [];
  await phone.book.write(proposals, { sealed: (count) => told.push(count) });
  expect(told).toEqual(Array.from({ length: 20 }, (_, at) => at + 1));
  expect(await phone.book.summaries('apiary')).toHaveLength(20);
});
