/**
 * Seals the golden entries that are missing: `npx tsx packages/record/src/acceptance/make-golden.ts`. Never touches
 * one that is there. The key of each is thrown away, so that nobody can ever sign it again.
 */
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { seal } from '../chain.ts';
import { sampleBodies } from './golden-bodies.ts';
import { nodeHasher, nodeSigner, seededChance } from './node-ports.ts';

const device = '01900000-90a1-7000-8000-000000000001';
const person = '01900000-90a1-7000-8000-000000000002';
const clock = { now: () => 1_777_883_465_120 };

for (const [number, name] of ['device.1', ...Object.keys(sampleBodies)].entries()) {
  const path = join(import.meta.dirname, '../kinds/golden', `${name}.json`);
  if (existsSync(path)) continue;
  const signer = nodeSigner();
  const [kind = '', version = ''] = name.split('.');
  const own = { publicKey: signer.publicKey, person, predecessor: null, name: 'golden' };
  const sample = sampleBodies[name] ?? { about: 'device', body: own };
  const about = {
    type: sample.about,
    id: sample.about === 'device' ? device : `01900000-90a1-7000-8000-00000000${String(1000 + number)}`,
  };
  const ports = { hasher: nodeHasher, signer, clock, chance: seededChance(number + 1) };
  const end = { device, by: person, head: null, clock: null };
  const { kept } = await seal(ports, end, [{ kind, version: Number(version), about, replaces: [], body: sample.body }]);
  const [{ entry, hash } = { entry: null, hash: null }] = kept;
  writeFileSync(path, `${JSON.stringify({ publicKey: signer.publicKey, hash, entry }, null, 2)}\n`);
  console.log(`sealed ${name}`);
}
