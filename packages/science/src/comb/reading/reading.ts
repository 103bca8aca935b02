/** What a comb's cells amount to: counts, areas, how solid the brood is, stages, what could not be read. */
import { cellsOnComb } from '../../brood/comb-constants.ts';
import { steadyRatio } from '../../brood/development-calendar.ts';
import { type CellClass, type CoarseClass, cellClasses, coarseClass } from '../cells/cell-classes.ts';

/** A cell as the reading needs it; both the machine's and a person's cells fit. */
export interface ReadCell {
  readonly column: number;
  readonly row: number;
  readonly class: CellClass;
  readonly coarse: CoarseClass;
  /** Egg or larva, when it was told apart. */
  readonly stage?: 'egg' | 'larva' | undefined;
  /** Open, and more likely empty or brood than pollen or nectar: counts as missed among sealed brood. */
  readonly openWithoutStores?: boolean | undefined;
  /** Sealed, and more likely brood than honey: counts as sealed brood in solidness. */
  readonly likelyBrood?: boolean | undefined;
}

export interface Area {
  readonly cells: number;
  /** From cells per cm2 of worker comb (CELLRACE), or of drone comb; the ends come from the spread of cell sizes. */
  readonly squareCentimetres: number;
  readonly low: number;
  readonly high: number;
}

/** The reading of a comb side, as far as it was seen. */
export interface CombReading {
  readonly cells: number;
  readonly counts: Readonly<Record<CellClass, number>>;
  readonly coarseCounts: Readonly<Record<CoarseClass, number>>;
  readonly areas: {
    readonly comb: Area;
    readonly brood: Area;
    readonly sealedBrood: Area;
    readonly honey: Area;
  };
  /** Undefined when fewer than `fewestForSolidness` sealed and missed cells stand in sealed patches. */
  readonly solidness?: {
    /** Sealed over sealed and missed, 0 to 1. */
    readonly value: number;
    /** Sealed brood cells in the patches. */
    readonly sealed: number;
    readonly missed: number;
    /** Cells in the patches left out: pollen, nectar, hidden, not decided. */
    readonly leftOut: number;
  };
  /** Cells of each stage seen, and what steady laying would show for the sealed ones (RATIO). */
  readonly stages: {
    readonly egg: number;
    readonly larva: number;
    /** Egg or larva, not told which. */
    readonly eggOrLarva: number;
    readonly sealed: number;
    readonly steadyEggAndLarvaForSealed: number;
  };
  /** Share of the found cells that were hidden or not decided, 0 to 1. */
  readonly unread: number;
}

/** From so many cells on counting alone leaves a standard error below 0.03 where four in five are sealed (binomial). */
export const fewestForSolidness = 200;

/**
 * @param cells every found cell of one comb side
 *
 * Solidness, method of our own (no published one was found): a place is covered where at least two cells within two steps
 * of it, besides the cell that is judged, are sealed brood; a cell stands in a sealed patch when every decided place within
 * two steps of it is covered. Where an open cell has only open cells around it, a band of younger brood or the rim of the
 * nest begins: nothing within two steps of such a cell belongs to a patch. Whether a cell counts never hangs on what it holds
 * itself, so the share is that of the patch. Inside patches, open cells without stores are missed; pollen, nectar, sealed
 * honey, hidden and undecided cells are left out (a cell that is surely sealed or open, and likelier brood than stores, counts), because a patch of pollen in good brood is no failure (seen on a real
 * comb: 82 sealed, 8 open and 13 pollen cells). How near it comes: `docs/measured/comb-reading.md`.
 */
export function readCells(cells: readonly ReadCell[]): CombReading {
  const counts = Object.fromEntries([...cellClasses, 'not-decided'].map((name) => [name, 0])) as Record<
    CellClass,
    number
  >;
  const coarseCounts: Record<CoarseClass, number> = { sealed: 0, open: 0, hidden: 0, 'not-decided': 0 };
  let egg = 0;
  let larva = 0;
  for (const cell of cells) {
    counts[cell.class]++;
    coarseCounts[cell.coarse]++;
    if (cell.class === 'egg-or-larva' && cell.stage === 'egg') egg++;
    if (cell.class === 'egg-or-larva' && cell.stage === 'larva') larva++;
  }
  const worker = counts['sealed-worker-brood'];
  const drone = counts['sealed-drone-brood'];
  const steady = steadyRatio('worker');
  const patches = solidness(cells);
  const unread = coarseCounts.hidden + coarseCounts['not-decided'];
  return {
    cells: cells.length,
    counts,
    coarseCounts,
    areas: {
      comb: area(cells.length - drone, drone),
      brood: area(worker + counts['egg-or-larva'], drone),
      sealedBrood: area(worker, drone),
      honey: area(counts['sealed-honey'], 0),
    },
    ...(patches.sealed + patches.missed >= fewestForSolidness
      ? { solidness: { value: patches.sealed / (patches.sealed + patches.missed), ...patches } }
      : {}),
    stages: {
      egg,
      larva,
      eggOrLarva: counts['egg-or-larva'] - egg - larva,
      sealed: worker,
      steadyEggAndLarvaForSealed: (worker * (steady.egg + steady.larva)) / steady.capped,
    },
    unread: cells.length > 0 ? unread / cells.length : 1,
  };
}

function area(worker: number, drone: number): Area {
  const w = cellsOnComb.workerPerSquareCentimetreSide;
  const d = cellsOnComb.dronePerSquareCentimetreSide;
  return {
    cells: worker + drone,
    squareCentimetres: worker / w.value + drone / d.value,
    low: worker / w.high + drone / d.high,
    high: worker / w.low + drone / d.low,
  };
}

function solidness(cells: readonly ReadCell[]): { sealed: number; missed: number; leftOut: number } {
  const sealedPlaces = new Set<number>();
  const decided = new Set<number>();
  const sealedWithinTwo = new Map<number, number>();
  for (const cell of cells) {
    if (cell.coarse !== 'hidden' && cell.coarse !== 'not-decided') decided.add(placeOf(cell.column, cell.row));
    if (!isSealedBrood(cell)) continue;
    sealedPlaces.add(placeOf(cell.column, cell.row));
    for (const place of around(cell, withinTwo)) sealedWithinTwo.set(place, (sealedWithinTwo.get(place) ?? 0) + 1);
  }
  const bands = new Set<number>();
  for (const cell of cells) {
    const near = around(cell, withinOne).filter((place) => decided.has(place));
    if (near.length < fewestOfSeven || near.some((place) => sealedPlaces.has(place))) continue;
    for (const place of around(cell, withinTwo)) bands.add(place);
  }
  let sealed = 0;
  let missed = 0;
  let leftOut = 0;
  for (const cell of cells) {
    const place = placeOf(cell.column, cell.row);
    if (bands.has(place)) continue;
    const own = sealedPlaces.has(place) ? 1 : 0;
    const near = around(cell, withinTwo).filter((one) => decided.has(one));
    if (near.length < fewestOfNineteen) continue;
    if (!near.every((one) => (sealedWithinTwo.get(one) ?? 0) - own >= sealedToCover)) continue;
    const open =
      cell.class === 'open-empty' ||
      cell.class === 'egg-or-larva' ||
      (cell.class === 'not-decided' && cell.openWithoutStores === true);
    if (own === 1) sealed++;
    else if (open) missed++;
    else leftOut++;
  }
  return { sealed, missed, leftOut };
}

function isSealedBrood(cell: ReadCell): boolean {
  const undecided = cell.class === 'not-decided' && cell.likelyBrood === true;
  return cell.class === 'sealed-worker-brood' || cell.class === 'sealed-drone-brood' || undecided;
}

const sealedToCover = 2;
/** Of the places around a cell, itself among them, so many must have been decided for anything to be said. */
const fewestOfSeven = 4;
const fewestOfNineteen = 7;

/** A place of the lattice as one number; pieces that never met lie thousands apart, far from a million. */
function placeOf(column: number, row: number): number {
  return column * 2_000_003 + row;
}

/** Places so many steps around a cell and fewer, the cell itself among them. */
function around({ column, row }: ReadCell, within: readonly (readonly [number, number])[]): number[] {
  return within.map(([dc, dr]) => placeOf(column + dc, row + dr));
}

const withinOne = stepsWithin(1);
const withinTwo = stepsWithin(2);

function stepsWithin(most: number): readonly (readonly [number, number])[] {
  const places: (readonly [number, number])[] = [];
  for (let dr = -most; dr <= most; dr++) {
    for (let dc = -most; dc <= most; dc++) {
      const steps = (Math.abs(dc) + Math.abs(dr) + Math.abs(dc + dr)) / 2;
      if (steps <= most) places.push([dc, dr]);
    }
  }
  return places;
}

/** A person's correction of one cell. */
export interface CellCorrection {
  readonly column: number;
  readonly row: number;
  readonly class: CellClass;
}

/**
 * Lays a person's corrections over the machine's cells. The machine's own are not changed.
 *
 * @throws RangeError when a correction names a cell that is not there
 */
export function withCorrections<T extends ReadCell>(
  cells: readonly T[],
  corrections: readonly CellCorrection[],
): (T | (T & { readonly corrected: true }))[] {
  const byPlace = new Map(corrections.map((one) => [`${one.column},${one.row}`, one]));
  const known = new Set(cells.map((cell) => `${cell.column},${cell.row}`));
  for (const key of byPlace.keys()) {
    if (!known.has(key)) throw new RangeError(`a correction names cell ${key}, which was not found on this comb`);
  }
  return cells.map((cell) => {
    const correction = byPlace.get(`${cell.column},${cell.row}`);
    if (!correction) return cell;
    return {
      ...cell,
      class: correction.class,
      coarse: coarseClass(correction.class),
      stage: undefined,
      openWithoutStores: undefined,
      likelyBrood: undefined,
      corrected: true as const,
    };
  });
}

/**
 * How far machine and person agree on the cells the person looked at.
 *
 * @param looked the cells the person went through, corrected or confirmed
 * @returns share of equal classes and, beside it, Cohen's kappa (agreement beyond chance; undefined when chance alone
 *   would agree always); undefined without cells
 */
export function agreement(
  looked: readonly { readonly machine: CellClass; readonly person: CellClass }[],
): { readonly share: number; readonly kappa?: number } | undefined {
  if (looked.length === 0) return undefined;
  const machine = new Map<CellClass, number>();
  const person = new Map<CellClass, number>();
  let equal = 0;
  for (const one of looked) {
    if (one.machine === one.person) equal++;
    machine.set(one.machine, (machine.get(one.machine) ?? 0) + 1);
    person.set(one.person, (person.get(one.person) ?? 0) + 1);
  }
  const n = looked.length;
  let chance = 0;
  for (const [name, count] of machine) chance += (count / n) * ((person.get(name) ?? 0) / n);
  const share = equal / n;
  return chance < 1 - 1e-12 ? { share, kappa: (share - chance) / (1 - chance) } : { share };
}
