import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { sampleBodies } from '../acceptance/golden-bodies.ts';
import { nodeHasher, nodeVerifier } from '../acceptance/node-ports.ts';
import { chainBeginning, linkOf, verifyEntry } from '../chain.ts';
import { contentFault } from '../content-check.ts';
import type { Entry } from '../entry.ts';
import { fold, summarise } from '../fold.ts';
import { lift } from './lift.ts';
import { kinds } from './registry.ts';

const folder = join(import.meta.dirname, 'golden');

interface Golden {
  readonly publicKey: string;
  readonly hash: string;
  readonly entry: Entry;
}

function golden(name: string): Golden {
  return JSON.parse(readFileSync(join(folder, `${name}.json`), 'utf8')) as Golden;
}

const present = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => file.slice(0, -'.json'.length))
  .sort();

describe('golden entries: sealed once, verified for ever', () => {
  test('every version of every kind ever shipped has one', () => {
    const shipped = [...kinds.values()].flatMap(({ kind, version }) =>
      Array.from({ length: version }, (_, i) => `${kind}.${i + 1}`),
    );
    expect(present).toEqual(shipped.sort());
  });

  test.each(present)('%s verifies, lifts to the newest version and folds', async (name) => {
    const { publicKey, hash, entry } = golden(name);
    expect(await verifyEntry({ hasher: nodeHasher, verifier: nodeVerifier }, entry, publicKey)).toEqual([]);
    expect(await linkOf(nodeHasher, entry.envelope)).toBe(hash);
    expect(contentFault(entry, true, kinds)).toBeNull();
    const { envelope } = entry;
    const sample = sampleBodies[name];
    if (sample === undefined) expect(chainBeginning(entry)?.publicKey).toBe(publicKey);
    else expect(entry.body).toEqual(sample.body);
    const read = lift(kinds, envelope.kind, envelope.version, entry.body);
    expect(read.fault).toBeNull();
    const state = fold(envelope.about, [entry]);
    expect(state.unknown).toEqual([]);
    expect(summarise(state).about).toEqual(envelope.about);
  });

  test.each(present)('%s does not verify when one letter of it is another', async (name) => {
    const { publicKey, entry } = golden(name);
    const ports = { hasher: nodeHasher, verifier: nodeVerifier };
    const other = { ...entry, envelope: { ...entry.envelope, at: '2026-05-04T08:31:05.121Z' } };
    expect(await verifyEntry(ports, other, publicKey)).toEqual(['wrong signature']);
    const body = { ...entry, body: { ...(entry.body as object), more: 1 } };
    expect(await verifyEntry(ports, body, publicKey)).toEqual(['wrong body hash']);
  });
});
