import type { Feature, FeatureCollection, LineString } from 'geojson';
import { feature, mesh } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';
import landAndBorders from 'world-atlas/countries-50m.json?url';

/** Land and the borders upon it, from Natural Earth at 1 : 50 million; shipped with the program. */
export interface BaseMap {
  readonly land: FeatureCollection | Feature;
  readonly borders: Feature;
}

type World = Topology<{ countries: GeometryCollection; land: GeometryCollection }>;

/** Fetches the base map; the service worker holds it after the first visit, so it needs no network. */
export async function fetchBaseMap(): Promise<BaseMap> {
  const response = await fetch(landAndBorders);
  if (!response.ok) throw new Error(`the base map answered ${response.status}`);
  const world = (await response.json()) as World;
  return {
    land: feature(world, world.objects.land),
    borders: {
      type: 'Feature',
      properties: {},
      geometry: mesh(world, world.objects.countries, (a, b) => a !== b),
    },
  };
}

/**
 * The lines of whole degrees, and of tenths of a degree around a window: something to hold on to at sea and between
 * borders.
 *
 * @param around window in degrees, or null for none
 */
export function graticule(
  around: { west: number; south: number; east: number; north: number } | null,
): FeatureCollection {
  const lines: Feature<LineString>[] = [];
  const add = (step: number, from: [number, number], to: [number, number], vertical: boolean) =>
    lines.push({
      type: 'Feature',
      properties: { step, vertical },
      geometry: { type: 'LineString', coordinates: [from, to] },
    });
  for (let degree = -180; degree <= 180; degree += 1) {
    add(degree % 10 === 0 ? 10 : 1, [degree, -85], [degree, 85], true);
    if (Math.abs(degree) <= 85) add(degree % 10 === 0 ? 10 : 1, [-180, degree], [180, degree], false);
  }
  if (around) {
    const tenths = (low: number, high: number) => {
      const all: number[] = [];
      for (let at = Math.floor(low * 10) - 20; at <= Math.ceil(high * 10) + 20; at += 1)
        if (at % 10 !== 0) all.push(at / 10);
      return all;
    };
    for (const at of tenths(around.west, around.east).slice(0, 600))
      add(0.1, [at, around.south - 3], [at, around.north + 3], true);
    for (const at of tenths(around.south, around.north).slice(0, 600))
      add(0.1, [around.west - 3, at], [around.east + 3, at], false);
  }
  return { type: 'FeatureCollection', features: lines };
}
