import { type LineFault, lineFault, type Table, type TableRow } from './table.ts';

/**
 * Reads GeoJSON (RFC 7946) as a table: one row for each feature, one column for each property, and latitude and longitude
 * from the geometry. Positions are WGS 84, longitude first (sections 3.1.1 and 4).
 *
 * @param text a FeatureCollection, or one Feature
 * @returns rows whose `line` is the number of the feature, counted from 1
 */
export function readGeoJson(text: string): Table {
  let read: unknown;
  try {
    read = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    const where = { value: error instanceof Error ? error.message : '' };
    return { header: [], rows: [], faults: [lineFault('register.fault.not-json', 1, where)] };
  }
  const features = featuresOf(read);
  if (features === null) return { header: [], rows: [], faults: [lineFault('register.fault.not-features', 1)] };

  const header = ['latitude', 'longitude'];
  const places = new Map<string, number>();
  const rows: TableRow[] = [];
  const faults: LineFault[] = [];
  features.forEach((feature, index) => {
    const line = index + 1;
    const cells = ['', ''];
    const { type, geometry, properties } = (feature ?? {}) as {
      type?: unknown;
      geometry?: { type?: unknown; coordinates?: unknown } | null;
      properties?: unknown;
    };
    const point = geometry?.type === 'Point' && Array.isArray(geometry.coordinates) ? geometry.coordinates : null;
    const [longitude, latitude] = point ?? [];
    if (type !== 'Feature' || (geometry != null && (typeof longitude !== 'number' || typeof latitude !== 'number'))) {
      faults.push(lineFault('register.fault.feature-not-point', line, { value: String(geometry?.type ?? type ?? '') }));
    } else if (point) {
      cells[0] = plainNumber(latitude);
      cells[1] = plainNumber(longitude);
    }
    if (typeof properties === 'object' && properties !== null) {
      for (const [name, value] of Object.entries(properties)) {
        // A property named like the geometry's own columns would stand there twice.
        if (name === 'latitude' || name === 'longitude' || value === null) continue;
        let place = places.get(name);
        if (place === undefined) {
          place = header.push(name) - 1;
          places.set(name, place);
        }
        while (cells.length < place) cells.push('');
        cells[place] = typeof value === 'object' ? JSON.stringify(value) : plainNumber(value);
      }
    }
    rows.push({ line, cells: Array.from(cells, (cell) => cell ?? '') });
  });
  return { header, rows, faults };
}

function featuresOf(read: unknown): readonly unknown[] | null {
  const { type, features } = (read ?? {}) as { type?: unknown; features?: unknown };
  if (type === 'FeatureCollection' && Array.isArray(features)) return features;
  return type === 'Feature' ? [read] : null;
}

/** A number without powers of ten, which no cell of a table has; anything else as it stands. */
function plainNumber(value: unknown): string {
  return typeof value === 'number' && !Number.isInteger(value) ? value.toFixed(9) : String(value);
}
