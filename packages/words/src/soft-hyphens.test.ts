import { expect, test } from 'vitest';
import { loadCatalogue, type Room } from './rooms.ts';
import { withSoftHyphens } from './soft-hyphens.ts';

const rooms: readonly Room[] = ['always', 'front', 'hive', 'signs', 'reasoning', 'roadside', 'casework', 'comb'];

test('every German word of more than fourteen letters that is read at the hive knows where it may part', async () => {
  const long = new Set<string>();
  for (const room of rooms) {
    for (const text of Object.values(await loadCatalogue('de', room))) {
      for (const [word] of text.matchAll(/\p{L}{15,}/gu)) long.add(word);
    }
  }
  expect(long.size).toBeGreaterThan(10);
  expect([...long].filter((word) => !withSoftHyphens(word).includes('\u00ad'))).toEqual([]);
});

test('nothing but soft hyphens is added, and short words stay as they are', () => {
  expect(withSoftHyphens('Streichholzprobe, Funde')).toBe('Streichholz\u00adprobe, Funde');
  expect(withSoftHyphens('Bienensachverständiger')).toBe('Bienen\u00adsach\u00adverständiger');
  for (const text of ['Rope test, finds, photographs', 'Volk 7 öffnen', '']) expect(withSoftHyphens(text)).toBe(text);
});
