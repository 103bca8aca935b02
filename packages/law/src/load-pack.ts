import { type Pack, readPack } from './pack.ts';

// Each pack is fetched on its own: a phone needs the law of one jurisdiction.
const shelf = {
  quillmoor: () => import('./packs/quillmoor/pack.json'),
  germany: () => import('./packs/germany/pack.json'),
  switzerland: () => import('./packs/switzerland/pack.json'),
} as const;

export type PackId = keyof typeof shelf;

/** The packs that ship with this version. */
export const packIds = Object.keys(shelf) as PackId[];

/**
 * The rule pack of a jurisdiction, checked as it is read.
 *
 * @throws RangeError when this version has no such pack
 */
export async function loadPack(id: string): Promise<Pack> {
  if (!Object.hasOwn(shelf, id)) throw new RangeError(`no rule pack "${id}" here; packs: ${packIds.join(', ')}`);
  return readPack((await shelf[id as PackId]()).default);
}
