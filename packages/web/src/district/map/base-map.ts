import type { Feature, FeatureCollection, LineString, MultiLineString, MultiPolygon, Polygon, Position } from 'geojson';
import { feature, mesh } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';
import landAndBorders from 'world-atlas/countries-50m.json?url';

/** Land and the borders upon it, from Natural Earth at 1 : 50 million; shipped with the program. */
export interface BaseMap {
  readonly land: Feature<MultiPolygon>;
  readonly borders: Feature<MultiLineString>;
}

type World = Topology<{ countries: GeometryCollection; land: GeometryCollection<object> }>;

/** Whether it is the file meant: a topology with arcs and the two things drawn. Its builder, not a stranger, wrote the rest. */
function isWorld(given: unknown): given is World {
  const { type, arcs, objects } = (given ?? {}) as Partial<Record<keyof World, unknown>>;
  const { land, countries } = (objects ?? {}) as Partial<Record<'land' | 'countries', { type?: unknown }>>;
  const isCollection = (one: { type?: unknown } | undefined) => one?.type === 'GeometryCollection';
  return type === 'Topology' && Array.isArray(arcs) && isCollection(land) && isCollection(countries);
}

/** Fetches the base map; the service worker holds it after the first visit, so it needs no network. */
export async function fetchBaseMap(): Promise<BaseMap> {
  const response = await fetch(landAndBorders);
  if (!response.ok) throw new Error(`the base map answered ${response.status}`);
  const world: unknown = await response.json();
  if (!isWorld(world)) throw new Error('the base map is not the one this program was built with');
  const polygons = feature(world, world.objects.land).features.flatMap(({ geometry }) =>
    geometry.type === 'MultiPolygon'
      ? geometry.coordinates
      : geometry.type === 'Polygon'
        ? [(geometry as Polygon).coordinates]
        : [],
  );
  const borders = mesh(world, world.objects.countries, (one, other) => one !== other);
  return {
    land: {
      type: 'Feature',
      properties: {},
      geometry: { type: 'MultiPolygon', coordinates: polygons.map((rings) => rings.map(onAFlatMap)) },
    },
    borders: { type: 'Feature', properties: {}, geometry: borders },
  };
}

/**
 * A ring of the globe as a flat map takes it. The data join land across the 180th meridian, where a flat map would jump
 * from edge to edge: longitudes are told on beyond 180 instead, which the map wraps round. A ring around a pole is led
 * along it.
 */
export function onAFlatMap(ring: readonly Position[]): Position[] {
  let turns = 0;
  const flat = ring.map(([longitude = 0, latitude = 0], place): Position => {
    const before = ring[place - 1]?.[0] ?? longitude;
    if (longitude - before > 180) turns -= 1;
    else if (longitude - before < -180) turns += 1;
    return [longitude + 360 * turns, latitude];
  });
  const first = flat[0];
  const last = flat.at(-1);
  if (!first || !last || turns === 0) return flat;
  const pole = (first[1] ?? 0) < 0 ? -90 : 90;
  return [...flat, [last[0] ?? 0, pole], [first[0] ?? 0, pole], first];
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
