import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { ColonyState, Folded } from '@combside/record/states';
import { type CellClass, cellClasses } from '@combside/science/comb/cells/cell-classes';
import type { Area, CombReading } from '@combside/science/comb/reading/reading';
import { correctedReading } from './corrected-reading.ts';
import { type MeasuredSolidness, measuredSolidness, ninety, sealedCellsOff } from './reader-error.ts';

/**
 * Why two readings are not, or only with care, set against each other; each has a sentence (`comb.compare.<id>`).
 * The first five forbid to speak of a change; the figures still stand side by side.
 */
export const comparisonDoubts = [
  'other-place',
  'place-not-known',
  'other-reader',
  'much-unread',
  'unreadable',
  'other-extent',
  'some-unread',
  'few-cells',
  'not-accepted',
] as const;
export type ComparisonDoubt = (typeof comparisonDoubts)[number];

const forbidding: readonly ComparisonDoubt[] = comparisonDoubts.slice(0, 5);

/** Settings of ours: shares of a side that could not be read; cells below which a figure says little. */
const mostUnread = 0.5;
const someUnread = 0.3;
const fewCells = 100;
/** Photographs whose cells differ in number by more than this share show different parts of the side. */
const sameExtent = 0.15;

/** What one reading says of a comb side. */
export interface SideFigures {
  readonly observedAt: string;
  readonly cells: number;
  readonly brood: Area;
  readonly solidness: MeasuredSolidness | null;
  /** Share of the decided cells, by class; they add up to 1 (all 0 where nothing was decided). */
  readonly shares: Readonly<Record<Exclude<CellClass, 'not-decided'>, number>>;
  readonly unread: number;
  readonly accepted: boolean;
}

/** Later less earlier, with the middle 90 % of what it may be. */
export interface Change {
  readonly difference: number;
  readonly low: number;
  readonly high: number;
  /** `within-error` where the interval holds 0. */
  readonly says: 'more' | 'less' | 'within-error';
}

export interface Comparison {
  /** Null where the cells cannot be read by this program. */
  readonly earlier: SideFigures | null;
  readonly later: SideFigures | null;
  /** Null where nothing may be said of a change; `doubts` says why. */
  readonly change: {
    /** cm2 of brood; null where the photographs show different parts of the side. */
    readonly broodArea: Change | null;
    /** Null where either has too few sealed cells. */
    readonly solidness: Change | null;
    /** Classes by how much their share changed, greatest first. */
    readonly shares: readonly {
      readonly class: Exclude<CellClass, 'not-decided'>;
      readonly earlier: number;
      readonly later: number;
    }[];
  } | null;
  /** In the order of `comparisonDoubts`. */
  readonly doubts: readonly ComparisonDoubt[];
}

/**
 * Sets two readings of one comb side against each other: brood area, solidness with its error, shares by class.
 *
 * A change is only spoken of when both are readings of the same box, frame and side, made by the same version of the
 * reader, with at least half of the cells read. Combs are moved between visits: whether it is the same comb, and not only
 * the same place, no photograph says.
 */
export function compareReadings(one: CombReadingBody, other: CombReadingBody): Comparison {
  const [first, second] = one.observedAt <= other.observedAt ? [one, other] : [other, one];
  const earlier = figuresOf(first);
  const later = figuresOf(second);
  const found = new Set<ComparisonDoubt>();
  if (!samePlace(first.place, second.place)) found.add('other-place');
  else if (first.place.frame === null || first.place.side === null) found.add('place-not-known');
  if (first.reader.version !== second.reader.version) found.add('other-reader');
  if (!first.accepted || !second.accepted) found.add('not-accepted');
  if (!earlier || !later) found.add('unreadable');
  else {
    const unread = Math.max(earlier.unread, later.unread);
    if (unread > mostUnread) found.add('much-unread');
    else if (unread > someUnread) found.add('some-unread');
    if (Math.min(earlier.cells, later.cells) < fewCells) found.add('few-cells');
    const larger = Math.max(earlier.cells, later.cells);
    const isPart = first.reader.region !== null || second.reader.region !== null;
    if (isPart || larger - Math.min(earlier.cells, later.cells) > sameExtent * larger) found.add('other-extent');
  }
  const doubts = comparisonDoubts.filter((doubt) => found.has(doubt));
  const silent = doubts.some((doubt) => forbidding.includes(doubt));
  return {
    earlier,
    later,
    change: silent || !earlier || !later ? null : changeBetween(earlier, later, found.has('other-extent')),
    doubts,
  };
}

function changeBetween(earlier: SideFigures, later: SideFigures, otherExtent: boolean): Comparison['change'] {
  const areaError = (side: SideFigures): number => sealedCellsOff.value * side.brood.squareCentimetres;
  return {
    // The size of the cells is the same on both days, so only the counting is uncertain.
    broodArea: otherExtent
      ? null
      : changed(
          later.brood.squareCentimetres - earlier.brood.squareCentimetres,
          Math.hypot(areaError(earlier), areaError(later)),
        ),
    solidness:
      earlier.solidness && later.solidness
        ? changed(
            later.solidness.value - earlier.solidness.value,
            Math.hypot(earlier.solidness.error, later.solidness.error),
          )
        : null,
    shares: cellClasses
      .map((of) => ({ class: of, earlier: earlier.shares[of], later: later.shares[of] }))
      .filter((share) => share.earlier > 0 || share.later > 0)
      .sort((a, b) => Math.abs(b.later - b.earlier) - Math.abs(a.later - a.earlier)),
  };
}

function changed(difference: number, error: number): Change {
  const low = difference - ninety * error;
  const high = difference + ninety * error;
  return { difference, low, high, says: low > 0 ? 'more' : high < 0 ? 'less' : 'within-error' };
}

/** The figures of one kept reading as it stands, corrections counted; null when its cells cannot be read. */
export function figuresOf(body: CombReadingBody): SideFigures | null {
  const standing = correctedReading(body);
  if (!standing) return null;
  const { reading } = standing;
  return {
    observedAt: body.observedAt,
    cells: reading.cells,
    brood: reading.areas.brood,
    solidness: measuredSolidness(reading),
    shares: sharesOf(reading),
    unread: reading.unread,
    accepted: body.accepted,
  };
}

function sharesOf(reading: CombReading): SideFigures['shares'] {
  const decided = cellClasses.reduce((sum, of) => sum + reading.counts[of], 0);
  return Object.fromEntries(
    cellClasses.map((of) => [of, decided === 0 ? 0 : reading.counts[of] / decided]),
  ) as unknown as SideFigures['shares'];
}

/** True for the same box, frame and side; where frame or side is not known on both, nobody can tell more. */
export function samePlace(one: CombReadingBody['place'], other: CombReadingBody['place']): boolean {
  return one.box === other.box && one.frame === other.frame && one.side === other.side;
}

/** The readings of a colony by comb side, newest first in each; sides in the order of their newest reading. */
export function sidesRead(colony: Pick<ColonyState, 'combReadings'>): {
  readonly place: CombReadingBody['place'];
  readonly readings: readonly Folded<CombReadingBody>[];
}[] {
  const sides: { place: CombReadingBody['place']; readings: Folded<CombReadingBody>[] }[] = [];
  for (const reading of colony.combReadings) {
    const side = sides.find((one) => samePlace(one.place, reading.body.place));
    if (side) side.readings.push(reading);
    else sides.push({ place: reading.body.place, readings: [reading] });
  }
  return sides;
}
