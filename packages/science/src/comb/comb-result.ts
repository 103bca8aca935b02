/** What a reading of a comb photograph comes to: cells and their reading, or why there is none. */
import type { CellClass, CoarseClass } from './cells/cell-classes.ts';
import type { CombPlane } from './frame/comb-plane.ts';
import type { CappingLook } from './reading/capping.ts';
import type { CombReading } from './reading/reading.ts';

/** Why a picture was refused; each has a sentence that says what to do (words: `comb.reason.<id>`). */
export const refusals = [
  'picture-too-small',
  'no-comb',
  'cells-too-small',
  'out-of-focus',
  'too-dark',
  'too-bright',
  'under-bees',
] as const;

/** What a reading cannot say, or says with less certainty (words: `comb.reason.<id>`). */
export const limits = [
  'never-a-diagnosis',
  'scale-not-visible',
  'contents-untested',
  'contents-uncertain',
  'unlike-learnt',
  'eggs-not-visible',
  'cappings-not-measured',
  'much-hidden',
  'few-cells',
] as const;

export type Refusal = (typeof refusals)[number];
export type Limit = (typeof limits)[number];

/** One read cell. `x`, `y` in pixels of the picture given, at the middle of the mouth. */
export interface CombCell {
  readonly x: number;
  readonly y: number;
  /** Local distance between cell centres, pixels. */
  readonly pitch: number;
  /** Lattice coordinates: neighbours differ by one of six steps; pieces that never met are thousands apart. */
  readonly column: number;
  readonly row: number;
  readonly class: CellClass;
  /** Share of belief in `class`, 0 to 1; for `not-decided` the share of the likeliest class. */
  readonly confidence: number;
  readonly coarse: CoarseClass;
  readonly coarseConfidence: number;
  /** How well the walls were seen, 0 (placed by its neighbours only) to 1. */
  readonly seen: number;
  readonly stage?: 'egg' | 'larva';
  readonly openWithoutStores?: boolean;
  /** Of a sealed cell that is not decided: more likely brood than honey. */
  readonly likelyBrood?: boolean;
  readonly capping?: CappingLook;
}

/** A capping worth a second look: `cell` is its place in `cells`. */
export interface SecondLook {
  readonly cell: number;
  readonly outlying: number;
  readonly why: CappingLook['most'];
}

export interface CombResult {
  readonly verdict: 'read' | 'refused';
  readonly reasons: readonly (Refusal | Limit)[];
  /** Middle pitch, pixels; 0 when no lattice was found. */
  readonly pitchPx: number;
  /** Empty when refused. */
  readonly cells: readonly CombCell[];
  readonly reading?: CombReading & { readonly secondLook: readonly SecondLook[] };
  /** The plane of the comb and what it follows from; null when refused. */
  readonly plane: CombPlane | null;
  /** What the verdict rests on. */
  readonly measured: {
    readonly brightness: number;
    readonly clipped: number;
    readonly detail: number;
    /** Standard deviation of the blur over the pitch; absent without a lattice. */
    readonly blur?: number;
  };
}

/** A result without cells. */
export function refused(reasons: Refusal[], pitchPx: number, measured: CombResult['measured']): CombResult {
  return { verdict: 'refused', reasons, pitchPx, cells: [], plane: null, measured };
}
