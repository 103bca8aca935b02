import { describe, expect, test } from 'vitest';
import { nodeHasher, nodeKeys, nodeVerifier, seededChance } from './acceptance/node-ports.ts';
import { smallWorld } from './acceptance/small-world.ts';
import { transportCases } from './acceptance/transport.ts';

describe('the transport without a wire', () => {
  for (const [i, { name, check }] of transportCases.entries()) {
    test(name, async () => {
      const world = await smallWorld();
      const { transport, person, clock } = await world.phone();
      const ports = {
        hasher: nodeHasher,
        verifier: nodeVerifier,
        keys: nodeKeys(),
        clock,
        chance: seededChance(90 + i),
      };
      await expect(check({ transport, person, district: 'north', ports })).resolves.toBeUndefined();
    });
  }
});
