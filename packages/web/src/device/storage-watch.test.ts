import { describe, expect, test } from 'vitest';
import { watchStorage } from './storage-watch.ts';

function storageOf(answers: { persisted?: boolean; persist?: boolean; usage?: number; quota?: number }) {
  const asked: string[] = [];
  const storage = {
    persisted: async () => {
      asked.push('persisted');
      return answers.persisted ?? false;
    },
    persist: async () => {
      asked.push('persist');
      return answers.persist ?? false;
    },
    estimate: async () => ({ usage: answers.usage, quota: answers.quota }) as StorageEstimate,
  } as StorageManager;
  return { storage, asked };
}

describe('the watch over the storage', () => {
  test('asks to keep the store, and says what was answered', async () => {
    const { storage, asked } = storageOf({ persist: true, usage: 71, quota: 100 });
    const watch = watchStorage(storage);
    expect(watch.status()).toEqual({ kept: false, used: null });
    await watch.look();
    expect(watch.status()).toEqual({ kept: true, used: 0.71 });
    expect(asked).toEqual(['persisted', 'persist']);
  });

  test('does not ask again for what was granted, but does after a refusal', async () => {
    const granted = storageOf({ persisted: true });
    await watchStorage(granted.storage).look();
    expect(granted.asked).toEqual(['persisted']);
    const refused = storageOf({});
    const watch = watchStorage(refused.storage);
    await watch.look();
    await watch.look();
    expect(refused.asked).toEqual(['persisted', 'persist', 'persisted', 'persist']);
    expect(watch.status().kept).toBe(false);
  });

  test('tells listeners of a change, and not of less than a percent', async () => {
    const answers = { persist: true, usage: 500, quota: 1000 };
    const watch = watchStorage(storageOf(answers).storage);
    let told = 0;
    const stop = watch.subscribe(() => told++);
    await watch.look();
    answers.usage = 502;
    await watch.look();
    expect(told).toBe(1);
    answers.usage = 720;
    await watch.look();
    expect(told).toBe(2);
    stop();
    answers.usage = 900;
    await watch.look();
    expect(told).toBe(2);
  });

  test('a browser that says nothing leaves the share unknown', async () => {
    const watch = watchStorage({} as StorageManager);
    await watch.look();
    expect(watch.status()).toEqual({ kept: false, used: null });
    const silent = watchStorage(storageOf({ usage: 5 }).storage);
    await silent.look();
    expect(silent.status().used).toBeNull();
  });
});
