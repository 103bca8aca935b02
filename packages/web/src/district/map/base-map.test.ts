import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { feature } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';
import { expect, test } from 'vitest';
import { graticule, onAFlatMap } from './base-map.ts';

test('a ring across the 180th meridian is told on beyond it, and one around a pole is led along it', () => {
  const island = [
    [178, 70],
    [-178, 70],
    [-178, 72],
    [178, 72],
    [178, 70],
  ];
  expect(onAFlatMap(island)).toEqual([
    [178, 70],
    [182, 70],
    [182, 72],
    [178, 72],
    [178, 70],
  ]);
  const plain = [
    [1, 1],
    [2, 1],
    [2, 2],
    [1, 1],
  ];
  expect(onAFlatMap(plain)).toEqual(plain);
  const south = [
    [-120, -70],
    [0, -75],
    [120, -70],
    [-120, -70],
  ];
  expect(onAFlatMap(south)).toEqual([
    [-120, -70],
    [0, -75],
    [120, -70],
    [240, -70],
    [240, -90],
    [-120, -90],
    [-120, -70],
  ]);
});

test('no shore of Natural Earth as shipped jumps across a flat map', async () => {
  const path = createRequire(import.meta.url).resolve('world-atlas/countries-50m.json');
  const world = JSON.parse(await readFile(path, 'utf8')) as Topology<{ land: GeometryCollection }>;
  let rings = 0;
  let jumps = 0;
  for (const { geometry } of feature(world, world.objects.land).features) {
    if (geometry.type !== 'MultiPolygon') continue;
    for (const ring of geometry.coordinates.flat()) {
      rings += 1;
      const flat = onAFlatMap(ring);
      // Along a pole the way is as long as the map; anywhere else no step is.
      for (const [place, [longitude = 0, latitude = 0]] of flat.entries()) {
        const before = flat[place - 1];
        if (before && Math.abs(latitude) < 90 && Math.abs(longitude - (before[0] ?? 0)) > 180) jumps += 1;
      }
    }
  }
  expect(rings).toBeGreaterThan(1000);
  expect(jumps).toBe(0);
});

test('the lines of degrees are those of whole ones, and tenths around a window', () => {
  expect(graticule(null).features).toHaveLength(361 + 171);
  const near = graticule({ west: 2.8, south: 55.8, east: 3.2, north: 56.2 }).features.filter(
    (one) => one.properties?.step === 0.1,
  );
  expect(near.length).toBeGreaterThan(40);
  expect(near.length).toBeLessThan(200);
});
