import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nodeHasher, nodeSigner, nodeVerifier, seededChance } from './acceptance/node-ports.ts';
import { chainBeginning, linkOf, reseal, seal, verifyChain, verifyEntry } from './chain.ts';
import type { Entry, Proposal } from './entry.ts';
import type { StoredEntry } from './store.ts';

const device = '01900000-0001-7000-8000-000000000001';
const person = '01900000-0002-7000-8000-000000000001';
const colony = { type: 'colony', id: '01900000-0003-7000-8000-000000000001' };
const verifying = { hasher: nodeHasher, verifier: nodeVerifier };
const calm = { erased: new Set<string>(), office: null };

async function sealedChain(notes: number, seed = 1) {
  const signer = nodeSigner();
  let milliseconds = 1_777_883_465_120;
  const ports = { hasher: nodeHasher, signer, clock: { now: () => milliseconds++ }, chance: seededChance(seed) };
  const body = { publicKey: signer.publicKey, person, predecessor: null, name: 'phone' };
  const proposals: Proposal[] = [
    { kind: 'device', version: 1, about: { type: 'device', id: device }, replaces: [], body },
  ];
  for (let i = 0; i < notes; i++) {
    proposals.push({ kind: 'note', version: 1, about: colony, replaces: [], body: { text: `note ${i} ß"'` } });
  }
  const { kept } = await seal(ports, { device, by: person, head: null, clock: null }, proposals);
  return { kept, signer, ports };
}

describe('a sealed chain', () => {
  test('verifies at depth chain, from the first entry on', async () => {
    const { kept, signer } = await sealedChain(5);
    expect(await verifyChain(verifying, kept, calm)).toEqual([]);
    expect(await verifyChain(verifying, [...kept].reverse(), calm)).toEqual([]);
    expect(kept.map(({ entry }) => entry.envelope.seq)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(chainBeginning(kept[0]?.entry as Entry)).toMatchObject({ publicKey: signer.publicKey, person });
    const clocks = kept.map(({ entry }) => entry.envelope.clock);
    expect([...clocks].sort()).toEqual(clocks);
    expect(new Set(kept.map(({ entry }) => entry.salt)).size).toBe(6);
  });

  test('survives JSON', async () => {
    const { kept } = await sealedChain(3);
    expect(await verifyChain(verifying, JSON.parse(JSON.stringify(kept)) as StoredEntry[], calm)).toEqual([]);
  });

  test('sealed in two goes is the same chain', async () => {
    const { kept, ports } = await sealedChain(1);
    const last = kept.at(-1) as StoredEntry;
    const head = { device, seq: 2, hash: last.hash };
    const more = await seal(ports, { device, by: person, head, clock: last.entry.envelope.clock }, [
      { kind: 'note', version: 1, about: colony, replaces: [], body: { text: 'later' } },
    ]);
    expect(await verifyChain(verifying, [...kept, ...more.kept], calm)).toEqual([]);
  });

  test('tells what is wrong and where', async () => {
    const { kept } = await sealedChain(4);
    const at = (seq: number) => kept[seq - 1] as StoredEntry;
    const faults = async (chain: readonly StoredEntry[]) =>
      (await verifyChain(verifying, chain, calm)).map(({ seq, fault }) => `${seq} ${fault}`);
    const without = (seq: number) => kept.filter(({ entry }) => entry.envelope.seq !== seq);
    expect(await faults(without(3))).toEqual(['4 gap']);
    expect(await faults(without(1))).toEqual(['2 no device entry']);
    expect(await faults(without(5))).toEqual([]); // an end cut off: only a checkpoint shows it
    const other = (await sealedChain(4, 2)).kept[2] as StoredEntry;
    expect(await faults([...without(3), other])).toEqual(['3 wrong link', '3 wrong signature', '4 wrong link']);
    expect(await faults([...kept, other])).toContain('3 fork');
    const changed = { ...at(2), entry: { ...at(2).entry, body: { text: 'something else' } } };
    expect(await faults([at(1), changed, ...kept.slice(2)])).toEqual(['2 wrong body hash']);
    const bare = { ...at(2), entry: { ...at(2).entry, body: null, salt: null } };
    expect(await faults([at(1), bare, ...kept.slice(2)])).toEqual(['2 body missing']);
    const erased = { ...calm, erased: new Set([bare.entry.envelope.id]) };
    expect(await verifyChain(verifying, [at(1), bare, ...kept.slice(2)], erased)).toEqual([]);
    const refused = { ...bare, refused: 'not your district' };
    expect(await verifyChain(verifying, [at(1), refused, ...kept.slice(2)], calm)).toEqual([]);
  });

  test('any single change to an envelope is noticed', async () => {
    const { kept, signer } = await sealedChain(1);
    const { entry } = kept[1] as StoredEntry;
    const fields = Object.keys(entry.envelope) as (keyof Entry['envelope'])[];
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...fields), fc.nat(), async (field, dice) => {
        const changed = structuredClone(entry) as unknown as { envelope: Record<string, unknown> };
        changed.envelope[field] = turned(entry.envelope[field], dice);
        const faults = await verifyEntry(verifying, changed as unknown as Entry, signer.publicKey);
        expect(faults, `${field} became ${JSON.stringify(changed.envelope[field])}`).not.toEqual([]);
      }),
      { seed: 256, numRuns: 150 },
    );
  });

  test('sealed again it keeps identifier, salt, body, author and time', async () => {
    const { kept } = await sealedChain(2);
    const signer = nodeSigner();
    const successor = '01900000-0001-7000-8000-000000000002';
    const head = { device: successor, seq: 2, hash: 'ab'.repeat(32) };
    const originals = kept.slice(1).map(({ entry }) => entry);
    const again = await reseal({ hasher: nodeHasher, signer }, { device: successor, head }, originals);
    for (const [i, { entry, hash }] of again.entries()) {
      const original = originals[i] as Entry;
      expect(entry.body).toEqual(original.body);
      expect(entry.salt).toBe(original.salt);
      for (const field of ['id', 'by', 'at', 'clock', 'bodyHash', 'about', 'replaces'] as const) {
        expect(entry.envelope[field]).toEqual(original.envelope[field]);
      }
      expect(entry.envelope).toMatchObject({ device: successor, seq: 3 + i });
      expect(await verifyEntry(verifying, entry, signer.publicKey)).toEqual([]);
      expect(await linkOf(nodeHasher, entry.envelope)).toBe(hash);
    }
    expect(again[1]?.entry.envelope.prev).toBe(again[0]?.hash);
  });
});

/** A value of the same sort that is another one. */
function turned(value: unknown, dice: number): unknown {
  if (typeof value === 'number') return value + 1 + (dice % 5);
  if (value === null) return 'cd'.repeat(32);
  if (Array.isArray(value)) return [...value, '01900000-0009-7000-8000-000000000009'];
  if (typeof value === 'object') return { ...value, id: '01900000-0009-7000-8000-000000000009' };
  const text = String(value);
  // A letter within the text; its last letter may hold bits that base64url leaves unused.
  const place = dice % (text.length - 1);
  const letter = text.charAt(place) === '0' ? '1' : '0';
  return text.slice(0, place) + letter + text.slice(place + 1);
}
