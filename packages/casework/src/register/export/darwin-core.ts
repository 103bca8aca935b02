import { metresBetween } from '../distance.ts';
import type { RegisterRowsHeld } from '../rows.ts';

/**
 * What of the register may be public, as Darwin Core (TDWG, http://rs.tdwg.org/dwc/terms/): where honey bee colonies are
 * kept, by cells of 0.1 degree, without anything about a keeper or a single site.
 *
 * Rules of ours (common practice, no source), to be set stricter where the law of the place asks for it: a position is
 * the middle of its cell; a cell in which fewer than five known keepers keep bees is left out; sites whose keeper is not
 * known are counted, but count for no keeper.
 */
export const cellDegrees = 0.1;
export const fewestKeepers = 5;

/** Terms in the order in which they are written; each is a term of Darwin Core. */
const terms = [
  'occurrenceID',
  'basisOfRecord',
  'scientificName',
  'taxonRank',
  'kingdom',
  'occurrenceStatus',
  'organismQuantity',
  'organismQuantityType',
  'eventDate',
  'decimalLatitude',
  'decimalLongitude',
  'geodeticDatum',
  'coordinateUncertaintyInMeters',
  'dataGeneralizations',
  'informationWithheld',
] as const;

export interface DarwinCoreRows {
  /** First row the terms. */
  readonly table: string[][];
  readonly cells: number;
  /** Left out by rule, or because nobody knows where they are. */
  readonly cellsSuppressed: number;
  readonly sitesSuppressed: number;
  readonly sitesWithoutPosition: number;
}

interface Cell {
  /** South-west corner, in whole steps of `cellDegrees`. */
  readonly north: number;
  readonly east: number;
  sites: number;
  readonly keepers: Set<string>;
  earliest: string | null;
  latest: string | null;
}

/** @param district names the record's identifiers, so that another export of the same district keeps them */
export function darwinCore(held: RegisterRowsHeld, district: string): DarwinCoreRows {
  const cells = new Map<string, Cell>();
  let sitesWithoutPosition = 0;
  for (const { body, mergedInto } of held.apiaries) {
    if (mergedInto !== null || body.coloniesRegistered === 0) continue;
    if (body.position === null) {
      sitesWithoutPosition += 1;
      continue;
    }
    const north = step(body.position.latitude, 90);
    const east = step(body.position.longitude, 180);
    const key = `${north} ${east}`;
    const cell = cells.get(key) ?? { north, east, sites: 0, keepers: new Set(), earliest: null, latest: null };
    cell.sites += 1;
    if (body.keeper !== null) cell.keepers.add(body.keeper);
    const day = body.lastConfirmedOn;
    if (day !== null) {
      if (cell.earliest === null || day < cell.earliest) cell.earliest = day;
      if (cell.latest === null || day > cell.latest) cell.latest = day;
    }
    cells.set(key, cell);
  }
  const all = [...cells.values()].sort((a, b) => a.north - b.north || a.east - b.east);
  const shown = all.filter((cell) => cell.keepers.size >= fewestKeepers);
  const withheld = all.filter((cell) => cell.keepers.size < fewestKeepers);
  return {
    table: [[...terms], ...shown.map((cell) => rowOf(cell, district))],
    cells: shown.length,
    cellsSuppressed: withheld.length,
    sitesSuppressed: withheld.reduce((sum, cell) => sum + cell.sites, 0),
    sitesWithoutPosition,
  };
}

/** Whole steps of a tenth of a degree; the edge itself belongs to the last cell. Free of the error of binary fractions. */
function step(degrees: number, most: number): number {
  return Math.min(Math.floor(degrees * 10 + 1e-9), most * 10 - 1);
}

function rowOf(cell: Cell, district: string): string[] {
  const middle = { latitude: (cell.north + 0.5) / 10, longitude: (cell.east + 0.5) / 10 };
  // The corner nearest the equator is the furthest from the middle.
  const south = cell.north / 10;
  const edge = Math.abs(south) < Math.abs(south + cellDegrees) ? south : south + cellDegrees;
  const uncertainty = Math.ceil(metresBetween(middle, { latitude: edge, longitude: cell.east / 10 }));
  const values: Record<(typeof terms)[number], string> = {
    occurrenceID: `${district}:apis-mellifera:${middle.latitude.toFixed(2)}:${middle.longitude.toFixed(2)}`,
    basisOfRecord: 'HumanObservation',
    scientificName: 'Apis mellifera Linnaeus, 1758',
    taxonRank: 'species',
    kingdom: 'Animalia',
    occurrenceStatus: 'present',
    organismQuantity: String(cell.sites),
    organismQuantityType: 'apiaries',
    eventDate:
      cell.earliest === null ? '' : cell.earliest === cell.latest ? cell.earliest : `${cell.earliest}/${cell.latest}`,
    decimalLatitude: middle.latitude.toFixed(2),
    decimalLongitude: middle.longitude.toFixed(2),
    geodeticDatum: 'EPSG:4326',
    coordinateUncertaintyInMeters: String(uncertainty),
    dataGeneralizations: `Apiaries counted by cells of ${cellDegrees} degree; the coordinates are the middle of the cell.`,
    informationWithheld: `Keepers, single sites and numbers of colonies; cells with fewer than ${fewestKeepers} keepers.`,
  };
  return terms.map((term) => values[term]);
}
