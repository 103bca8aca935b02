import { describe, expect, test } from 'vitest';
import { hasherCases } from './acceptance/hasher.ts';
import { nodeHasher, nodeKeys, nodeVerifier } from './acceptance/node-ports.ts';
import { signerCases } from './acceptance/signer.ts';

describe('the record’s ports on Node', () => {
  for (const { name, check } of hasherCases) {
    test(`hasher: ${name}`, async () => {
      await expect(check(nodeHasher)).resolves.toBeUndefined();
    });
  }
  for (const { name, check } of signerCases) {
    test(`signer: ${name}`, async () => {
      await expect(check({ keys: nodeKeys(), verifier: nodeVerifier })).resolves.toBeUndefined();
    });
  }
});
