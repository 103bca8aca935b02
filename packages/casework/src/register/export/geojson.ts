import { readNumber } from '../import/cells.ts';
import { headerOf } from '../import/columns.ts';

/** Headers whose values are numbers in GeoJSON. */
const numbers = new Set([headerOf.uncertaintyMetres, headerOf.coloniesRegistered]);

/**
 * The table of `registerTable` as GeoJSON (RFC 7946): a FeatureCollection of Points in WGS 84, longitude first; a site
 * without a position has a null geometry (section 3.2). Empty cells are left out.
 */
export function registerGeoJson(table: readonly (readonly string[])[]): string {
  const [header = [], ...rows] = table;
  const latitude = header.indexOf(headerOf.latitude);
  const longitude = header.indexOf(headerOf.longitude);
  const features = rows.map((cells) => {
    const properties: Record<string, string | number> = {};
    header.forEach((name, index) => {
      const cell = cells[index] ?? '';
      if (cell === '' || index === latitude || index === longitude) return;
      properties[name] = numbers.has(name) ? (readNumber(cell) ?? cell) : cell;
    });
    const [north, east] = [readNumber(cells[latitude] ?? ''), readNumber(cells[longitude] ?? '')];
    const geometry = north === null || east === null ? null : { type: 'Point', coordinates: [east, north] };
    return { type: 'Feature', geometry, properties };
  });
  return `${JSON.stringify({ type: 'FeatureCollection', features })}\n`;
}
