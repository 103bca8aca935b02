import type { SourcedValue } from '@combside/sources/sourced-value';
import { calculation, shown } from '../distributions/calculation.ts';
import {
  acceptCount,
  acceptFields,
  acceptList,
  acceptNonNegative,
  acceptPositive,
  DomainError,
  isUnknown,
} from '../distributions/domain.ts';
import { always, type CautionId } from './cautions.ts';
import { acceptBeesDead, acceptChosen } from './chosen.ts';
import * as described from './inputs-described.ts';

/** The one published cover depth over ashes: two feet. A rule of California; elsewhere ask. */
export const coverOverAshes: SourcedValue = {
  value: 0.61,
  unit: 'm of soil',
  standing: 'published',
  sources: ['CA-FAC'],
  population: 'California, s. 29207(b)(1): at least 2 feet',
};

/** Things of one size that go into the pit. Outer measures in cm, above 0. */
export interface Pieces {
  count: number;
  lengthCentimetres: number;
  widthCentimetres: number;
  heightCentimetres: number;
}

/** A pit, after the cautions. */
export interface Pit {
  readonly cautions: readonly CautionId[];
  /** m³ of everything to be burned, by outer measures. */
  readonly volumeToBurn: number;
  /** m: so long that every piece finds its place, or as given. */
  readonly pitLength: number;
  /** m². */
  readonly groundArea: number;
  /** m: what is left, and the cover over it. */
  readonly pitDepth: number;
  /** m³ of soil to move. */
  readonly soilToMove: number;
}

/** How often a piece of this size fits into a room of that size; both in the same unit. */
const timesIn = (room: number, piece: number): number => Math.floor(room / piece + 1e-9);

/** The six ways to lay a piece down: along the pit, across it, upward. */
const ways = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 0, 2],
  [1, 2, 0],
  [2, 0, 1],
  [2, 1, 0],
] as const;

/**
 * How long must a pit of this width be, for whole pieces stacked no higher than that? Each size lies in the way that takes
 * least length, in rows and layers, one size behind the other: what anybody can stack, not the tightest there is.
 *
 * @returns m; null when some piece fits in no way
 */
export function lengthForPieces(
  pieces: readonly Pieces[],
  pitWidthMetres: number,
  stackingHeightMetres: number,
): number | null {
  const counts = new Map<string, number>();
  for (const one of pieces) {
    const size = [one.lengthCentimetres, one.widthCentimetres, one.heightCentimetres].sort((a, b) => a - b).join(' ');
    counts.set(size, (counts.get(size) ?? 0) + one.count);
  }
  let length = 0;
  for (const [size, count] of counts) {
    const sides = size.split(' ').map(Number) as [number, number, number];
    const lengths = ways.map(([along, across, upward]) => {
      const inOneRow =
        timesIn(pitWidthMetres * 100, sides[across]) * timesIn(stackingHeightMetres * 100, sides[upward]);
      return (Math.ceil(count / inOneRow) * sides[along]) / 100;
    });
    length += Math.min(...lengths);
  }
  return Number.isFinite(length) ? length : null;
}

/**
 * How large must the pit be?
 *
 *   volume to burn V = sum of count * length * width * height (outer measures)
 *   pit length: whole pieces in rows and layers (`lengthForPieces`), unless a length is given; ground area A = length *
 *   width
 *   depth = height of what is left after burning + cover; soil to move = A * depth
 *
 * Geometry only: no dimensions per hive were found in any official text, so width, stacking height and remains have no
 * default, and the cover is the local rule. The pit must take and cover everything that is left; liquid honey runs into
 * the soil, where no bee may reach it. Worked (arithmetic, not a rule): pit 1.0 m by 1.0 m, remains 0.20 m, cover
 * 0.61 m: depth 0.81 m, 0.81 m³ of soil.
 *
 * @param inputs.pieces what goes in; at least one kind, counts whole
 * @param inputs.pitWidthMetres chosen, above 0
 * @param inputs.pitLengthMetres chosen, above 0, or null to work it out from the stacking height
 * @param inputs.stackingHeightMetres height to which the pieces are stacked in the pit, chosen, above 0; may be null when
 *   the length is given. Where both are given, the pieces must fit
 * @param inputs.remainsHeightMetres height of what is left, measured on site (or expected), 0 or more
 * @param inputs.coverMetres soil over the remains, by the local rule, above 0
 * @param inputs.beesDead must be true
 * @throws DomainError on inputs outside these ranges, when the pieces do not fit, and while bees live
 * Source: CA-FAC for the cover; WA-AFB22 for taking and covering all that is left; the rest geometry
 */
export function pitForBurning(inputs: {
  pieces: readonly Pieces[];
  pitWidthMetres: number;
  pitLengthMetres: number | null;
  stackingHeightMetres: number | null;
  remainsHeightMetres: number;
  coverMetres: number;
  beesDead: boolean;
}): Pit {
  acceptBeesDead(inputs.beesDead);
  const pieces = acceptList('pieces', inputs.pieces, (name, value): Pieces => {
    const one = acceptFields(name, value);
    return {
      count: acceptCount(`${name}.count`, one.count, 1),
      lengthCentimetres: acceptPositive(`${name}.lengthCentimetres`, one.lengthCentimetres),
      widthCentimetres: acceptPositive(`${name}.widthCentimetres`, one.widthCentimetres),
      heightCentimetres: acceptPositive(`${name}.heightCentimetres`, one.heightCentimetres),
    };
  });
  const volumeToBurn = pieces.reduce(
    (sum, one) => sum + (one.count * one.lengthCentimetres * one.widthCentimetres * one.heightCentimetres) / 1e6,
    0,
  );
  const width = acceptChosen('pitWidthMetres', inputs.pitWidthMetres);
  const given = isUnknown(inputs.pitLengthMetres) ? null : acceptChosen('pitLengthMetres', inputs.pitLengthMetres);
  const height =
    given !== null && isUnknown(inputs.stackingHeightMetres)
      ? null
      : acceptChosen('stackingHeightMetres', inputs.stackingHeightMetres);
  const pitLength = acceptLength(pieces, width, given, height);
  const remains = acceptNonNegative('remainsHeightMetres', inputs.remainsHeightMetres);
  const pitDepth = remains + acceptChosen('coverMetres', inputs.coverMetres);
  const groundArea = pitLength * width;
  return {
    cautions: [
      ...always,
      'ask about fire bans',
      'keep clear of ground water',
      'honey must not reach bees',
      'lift by two',
    ],
    volumeToBurn,
    pitLength,
    groundArea,
    pitDepth,
    soilToMove: groundArea * pitDepth,
  };
}

/** The length of the pit, given or worked out; every piece must find its place in it. */
function acceptLength(pieces: readonly Pieces[], width: number, given: number | null, height: number | null): number {
  // Where nobody says how high they stack, each piece must still fit the ground.
  const needed = lengthForPieces(pieces, width, height ?? Number.MAX_SAFE_INTEGER);
  if (needed === null) {
    throw new DomainError('pitWidthMetres', 'wide enough, and the stack high enough, for the largest piece', width);
  }
  if (given === null) return needed;
  if (given + 1e-9 < needed) {
    throw new DomainError('pitLengthMetres', `${needed.toFixed(2)} m or more, or the pieces do not fit`, given);
  }
  return given;
}

export const pitForBurningCalculation = calculation({
  name: 'pitForBurning',
  room: 'disposal',
  line: 'pit for burning: length, depth, soil to move',
  inputs: {
    pieces: 'list of {count, lengthCentimetres, widthCentimetres, heightCentimetres}, outer measures',
    pitWidthMetres: `above 0 ${described.toBeChosen}`,
    pitLengthMetres: 'above 0, or null to work it out from the stacking height',
    stackingHeightMetres: `above 0 ${described.toBeChosen}, or null when the length is given`,
    remainsHeightMetres: 'height of what is left, measured on site, 0 or more',
    coverMetres: 'soil over the remains by the local rule, above 0',
    beesDead: described.beesDead,
  },
  formula:
    'V = sum(count * l * w * h); length: whole pieces in rows and layers; depth = remains + cover; soil = area * depth',
  sources: ['CA-FAC', 'WA-AFB22'],
  call: pitForBurning,
  steps: (i, r) => [
    `to burn ${shown(r.volumeToBurn)} m³`,
    `pit ${shown(r.pitLength)} m by ${shown(i.pitWidthMetres)} m, ${shown(r.pitDepth)} m deep (${shown(i.remainsHeightMetres)} + ${shown(i.coverMetres)})`,
    `soil to move ${shown(r.soilToMove)} m³`,
  ],
});
