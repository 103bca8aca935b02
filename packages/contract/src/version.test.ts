import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { entry } from '@combside/record/entry';
import { kinds } from '@combside/record/kinds/registry';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { oldestServed, protocolHistory, protocolVersion } from './version.ts';

/** The wire as it stood when a protocol version was given out. Never edit a line: add one. */
const pinned: Readonly<Record<number, string>> = {
  1: 'bb98ee497686b95b7ce0c9efe37b28472f8b76f470c3ce996dd216f9b7e2bf45',
  2: '9cd2c9b93ea868f4e0307dc709ce6bdef5195e0e96a8a4d325edf39b4a9ebdc4',
  3: '0f5805e312e26319a02f106420a091983689d54ea1065eeadb16a8d66354dc2a',
  4: '2b80f0374df3aee7c691ebf4b8f433477054e029fdc217dfe8168cda0329b942',
  5: '2615dd3d8049bc64180825ac62959077c4a8ed5c576538c3feb8418a67e83623',
};

const instruction = `The shape of a message or of an entry kind has changed.
- Was it not meant to? Take the change back.
- Was it meant, and has version ${protocolVersion} been given out? In version.ts raise protocolVersion by one and add its
  line to the history; when phones that do not know the change cannot go on, raise oldestServed too. Then add the hash
  shown here to "pinned" in version.test.ts, under the new number.
- Is version ${protocolVersion} still unreleased? Then replace its hash by the one shown here.`;

describe('the wire', () => {
  test('every message and entry kind has the shape pinned with the protocol version', async () => {
    const shapes = await shapesOfTheWire();
    // Guards the guard: a folder read wrongly would give an empty, and therefore stable, list.
    expect(Object.keys(shapes).length).toBeGreaterThan(35);
    expect(Object.keys(shapes)).toEqual(expect.arrayContaining(['kind examination 2', 'push', 'entry']));
    const hash = createHash('sha256')
      .update(JSON.stringify(sorted(shapes)))
      .digest('hex');
    expect(hash, `${instruction}\n${hash}\n`).toBe(pinned[protocolVersion]);
  });

  test('a change of one field is noticed', async () => {
    const shapes = await shapesOfTheWire();
    const changed = { ...shapes, push: z.toJSONSchema(z.strictObject({ entries: z.array(entry).max(1) })) };
    expect(JSON.stringify(sorted(changed))).not.toBe(JSON.stringify(sorted(shapes)));
  });

  test('the history has one line for each version, and the oldest phone served is one of them', () => {
    expect(protocolHistory.map((line) => line.version)).toEqual(
      Array.from({ length: protocolVersion }, (_, index) => index + 1),
    );
    for (const line of protocolHistory) expect(line.brought).not.toBe('');
    // Pinned on purpose: raising it cuts phones off that still hold what they recorded.
    expect(oldestServed).toBe(1);
  });
});

/**
 * JSON Schema of everything that travels, by name: all exported schemas of this folder, all kinds, the entry itself. In which
 * file a message stands does not travel.
 */
async function shapesOfTheWire(): Promise<Record<string, unknown>> {
  const shapes: Record<string, unknown> = { entry: z.toJSONSchema(entry) };
  for (const kind of kinds.values()) shapes[`kind ${kind.kind} ${kind.version}`] = z.toJSONSchema(kind.body);
  const files = readdirSync(import.meta.dirname).filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'));
  for (const file of files) {
    const door = (await import(/* @vite-ignore */ join(import.meta.dirname, file))) as Record<string, unknown>;
    for (const [name, value] of Object.entries(door)) {
      if (!(value instanceof z.ZodType)) continue;
      if (name in shapes) throw new Error(`two messages are called ${name}`);
      shapes[name] = z.toJSONSchema(value, { io: 'input' });
    }
  }
  return shapes;
}

/** The same value with its keys in order, so that moving a line changes nothing. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, sorted(inner)]),
  );
}
