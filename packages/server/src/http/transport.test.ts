import { transportCases } from '@combside/record/acceptance/transport';
import type { Keys, Signer } from '@combside/record/ports';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { appTransport } from '../acceptance/app-transport.ts';
import { type TestHouse, testHouse, testPeople, type Visitor } from '../acceptance/test-house.ts';
import { newSigner } from '../store/keys.ts';
import { chance, hasher, verifier, wallClock } from '../store/node-ports.ts';

let house: TestHouse;
let north: Visitor;
beforeAll(async () => {
  house = await testHouse();
  north = await house.signIn(testPeople.north);
});
afterAll(() => house.tearDown());

function keysInMemory(): Keys {
  const signers = new Map<string, Signer>();
  return {
    signerFor: async (device) => {
      const signer = signers.get(device) ?? newSigner();
      signers.set(device, signer);
      return signer;
    },
  };
}

describe('the way to the office over HTTP', () => {
  test.for(transportCases)('$name', async ({ check }) => {
    await expect(
      check({
        transport: appTransport(north),
        person: testPeople.north.person,
        district: 'north',
        ports: { hasher, keys: keysInMemory(), verifier, clock: wallClock, chance },
      }),
    ).resolves.toBeUndefined();
  });

  test('an unreadable entry spoils none of the others', async () => {
    const results = await north.push([{ envelope: { id: 'x' } }, null, 7]);
    expect(results.map((result) => result.outcome)).toEqual(['broken', 'broken', 'broken']);
  });
});
