/*
 * A photograph of one side of a comb, read cell by cell: the door of this room.
 *
 * The reading is a measurement, never a diagnosis. A face-on photograph cannot show scale, which lies along the lower
 * walls, and a picture without an outlying capping is no evidence that the brood is sound. Both sentences stand among
 * the reasons of every reading.
 */

import { type CellClass, type CoarseClass, coarseClass, type DecidedClass } from './cells/cell-classes.ts';
import { CellView, featureCount } from './cells/cell-features.ts';
import { classOfOutput, classShares, outputCount, outputs, readNetwork } from './cells/classifier.ts';
import { classifierWeights } from './cells/classifier-weights.ts';
import { type JudgedPlaces, placeKey, settleEdge } from './cells/edge-of-comb.ts';
import {
  type CombPlane,
  combPlane,
  cornersOfRegion,
  latticeContradicts,
  widened,
  withinFrame,
} from './frame/comb-plane.ts';
import { findFrameCorners } from './frame/frame-corners.ts';
import { findLattice, type LatticeOptions, overviewOf, polygonTest } from './lattice/lattice.ts';
import { type LatticeCell, pitchOf } from './lattice/lattice-growth.ts';
import { checkPicture, halvePicture, type Picture, type Plane } from './photograph/picture.ts';
import { blurOverPitch, type Exposure, exposureOf } from './photograph/sharpness.ts';
import { type CappingLook, measureCappings, smallestCappingPitch } from './reading/capping.ts';
import { type CombReading, readCells } from './reading/reading.ts';

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

export interface ReadOptions {
  /**
   * Only this part is read: corners in picture pixels. Four round a convex quadrilateral are taken for the inner corners of
   * the frame, set by a person, and fix the plane. Without a region the corners of a frame seen whole are looked for.
   */
  readonly region?: readonly (readonly [number, number])[];
  /** Smallest pitch to read, pixels. Below 8 open and sealed can hardly be told apart; only tests go lower. */
  readonly smallestPitch?: number;
}

export type ReadStage = 'looking' | 'lattice' | 'cells' | 'cappings' | 'reading';

export interface ReadWatch {
  /** Told how far the reading is, 0 to 1. */
  readonly progress?: (stage: ReadStage, done: number) => void;
  /** Asked often; true stops the reading with `ReadingCancelled`. */
  readonly cancelled?: () => boolean;
}

/** Thrown by `readComb` when `cancelled` said so. */
export class ReadingCancelled extends Error {
  override readonly name = 'ReadingCancelled';
  constructor() {
    super('the reading of the comb photograph was stopped');
  }
}

/** Longer pictures are first tried at half the size, pixels. */
const largestSide = 2200;
const mostAttempts = 3;
const smallestSide = 96;
const smallestPitchPx = 7.5;
const fewestCells = 30;
/** Pitch from which a class is told with fair certainty; below it only sealed, open and hidden. A setting of ours. */
const contentsPitch = 15;
const eggsPitch = 22;
const mostBlur = 0.19;
/** Share of belief a class needs to be told, and its group (sealed, open, hidden). */
const usual: Demand = { class: 0.52, group: 0.55 };
/**
 * The same where a picture looks unlike the painted combs the classifier has learnt from, which shows in how often it
 * cannot decide: one in five on painted combs, nearly all under bees on one real picture, where what it decided was often wrong.
 */
const strict: Demand = { class: 0.9, group: 0.75 };
const mostUndecided = 0.37;
const secondLooks = 12;
const outlyingFrom = 4;
/** Share of a lattice that must lie within the frame for it to stand as it is. */
const keptAtLeast = 0.98;

/**
 * Reads a comb photograph.
 *
 * @param picture 8-bit RGB or RGBA as decoded; orientation does not matter
 * @returns verdict, reasons, cells and reading; `x` and `y` are pixels of the picture given
 * @throws RangeError when the picture is malformed or the region has fewer than three corners
 * @throws ReadingCancelled when the watch says so
 */
export function readComb(picture: Picture, options: ReadOptions = {}, watch: ReadWatch = {}): CombResult {
  checkPicture(picture);
  let told = -1;
  const step = (stage: ReadStage, done: number): void => {
    checkpoint();
    // A second try at the full size goes through the stages again; what is told only goes forward.
    if (done < told) return;
    told = done;
    watch.progress?.(stage, done);
  };
  const checkpoint = (): void => {
    if (watch.cancelled?.()) throw new ReadingCancelled();
  };
  if (Math.min(picture.width, picture.height) < smallestSide) {
    return refused(['picture-too-small'], 0, { brightness: 0, clipped: 0, detail: 0 });
  }
  step('looking', 0);
  if (Math.max(picture.width, picture.height) > largestSide) {
    // Cells of a large photograph are larger than they need be: read it at half the size, and only when they prove small
    // at the full one.
    const half = readAt(halvePicture(picture), halved(options), checkpoint, step);
    if (half.pitchPx === 0 || half.pitchPx >= smallestCappingPitch * 0.8) return doubled(half);
  }
  return readAt(picture, options, checkpoint, step);
}

function halved(options: ReadOptions): ReadOptions {
  return {
    ...options,
    ...(options.region ? { region: options.region.map(([x, y]) => [(x - 0.5) / 2, (y - 0.5) / 2] as const) } : {}),
    ...(options.smallestPitch === undefined ? {} : { smallestPitch: options.smallestPitch / 2 }),
  };
}

/** A result for the picture of twice the size. Blur is a share of the pitch and stays. */
function doubled(result: CombResult): CombResult {
  return {
    ...result,
    pitchPx: 2 * result.pitchPx,
    cells: result.cells.map((cell) => ({ ...cell, x: 2 * cell.x + 0.5, y: 2 * cell.y + 0.5, pitch: 2 * cell.pitch })),
    plane: result.plane && {
      ...result.plane,
      corners: result.plane.corners?.map(([x, y]) => [2 * x + 0.5, 2 * y + 0.5] as const) ?? null,
    },
  };
}

/** What a look for cells brought: cells with their classes, or why there are none. */
interface Looked {
  readonly classified?: Classified;
  readonly refusal?: Refusal;
  readonly pitch: number;
  readonly blur?: number;
}

/** Finds cells and classes in a region, by the likeliest lattice or, when that proves no comb, by its rivals. */
function lookForCells(
  picture: Picture,
  about: {
    readonly grey: Plane;
    readonly exposure: Exposure;
    readonly region: ReadOptions['region'];
    readonly known: LatticeOptions['known'];
    readonly smallestPitch: number | undefined;
  },
  checkpoint: () => void,
  step: (stage: ReadStage, done: number) => void,
): Looked {
  const { grey, exposure, region, known: starts } = about;
  let first: Looked | undefined;
  for (let attempt = 0; attempt < mostAttempts; attempt++) {
    const lattice = findLattice(picture, { region, grey, known: starts, checkpoint, attempt });
    const { pitch } = lattice;
    const seen = lattice.cells.filter((cell) => cell.seen > 0).length;
    if (seen < fewestCells * 0.5) {
      // Nothing (more) that looks like honeycomb: say what stood in the way of the first attempt.
      first ??= { refusal: whyNoComb(exposure), pitch: 0 };
      break;
    }
    step('cells', 0.5);
    const judged = classify(picture, lattice.cells, pitch, region, checkpoint);
    const visible = judged.cells.filter((cell) => cell.coarse === 'sealed' || cell.coarse === 'open').length;
    const covered = judged.cells.filter((cell) => cell.coarse === 'hidden').length;
    const blur = blurOverPitch(picture, judged.places);
    const known = Number.isFinite(blur) ? { blur } : {};
    if (visible < fewestCells * 0.5 || visible < 0.2 * lattice.cells.length) {
      const refusal = covered > 0.4 * lattice.cells.length ? 'under-bees' : 'no-comb';
      first ??= { refusal, pitch, ...known };
      continue;
    }
    if (pitch < (about.smallestPitch ?? smallestPitchPx)) {
      first ??= { refusal: 'cells-too-small', pitch, ...known };
      break;
    }
    if (!(blur <= mostBlur)) {
      first ??= { refusal: exposure.bright < 60 ? 'too-dark' : 'out-of-focus', pitch, ...known };
      break;
    }
    return { classified: judged, pitch, ...known };
  }
  return first ?? { refusal: whyNoComb(exposure), pitch: 0 };
}

/**
 * What was seen within a frame. A lattice that ran on over wood and ground, or that was led astray by them, is looked for
 * again inside the frame alone; one that kept to the comb stands.
 */
function lookWithin(
  frame: readonly (readonly [number, number])[],
  looked: Looked,
  look: (region: ReadOptions['region']) => Looked,
): Looked {
  const { classified, pitch } = looked;
  const within = classified && onlyWithin(classified, withinFrame(frame));
  if (classified && within && within.places.length >= keptAtLeast * classified.places.length) {
    return { ...looked, classified: within };
  }
  const again = look(widened(frame, pitch));
  if (again.classified) return again;
  return within && within.places.length >= fewestCells ? { ...looked, classified: within } : looked;
}

function readAt(
  picture: Picture,
  options: ReadOptions,
  checkpoint: () => void,
  step: (stage: ReadStage, done: number) => void,
): CombResult {
  const grey = overviewOf(picture);
  const exposure = exposureOf(grey);
  const measured: { brightness: number; clipped: number; detail: number; blur?: number } = {
    brightness: exposure.mean,
    clipped: exposure.clipped,
    detail: exposure.detail,
  };

  if (exposure.bright < 25) return refused(['too-dark'], 0, measured);

  step('lattice', 0.05);
  const set = cornersOfRegion(options.region);
  const known: LatticeOptions['known'] = new Map();
  const look = (region: ReadOptions['region']): Looked =>
    lookForCells(picture, { grey, exposure, region, known, smallestPitch: options.smallestPitch }, checkpoint, step);
  let looked = look(options.region);
  let frame = set;
  if (!options.region) {
    frame = findFrameCorners(picture, grey)?.corners ?? null;
    if (frame && looked.classified && latticeContradicts(frame, looked.classified.places, picture)) frame = null;
    if (frame) looked = lookWithin(frame, looked, look);
    if (frame && looked.classified && latticeContradicts(frame, looked.classified.places, picture)) frame = null;
  }
  const { classified, pitch } = looked;
  if (looked.blur !== undefined) measured.blur = looked.blur;
  if (!classified) return refused([looked.refusal ?? whyNoComb(exposure)], pitch, measured);
  const { places } = classified;
  const plane = combPlane(set ? 'corners-set' : frame ? 'corners-found' : 'lattice', frame, places, picture);
  const unlike = classified.cells.filter((cell) => cell.class === 'not-decided').length > mostUndecided * places.length;
  const cells = unlike
    ? places.map((place, n) => decide(place, classified.shares[n] as Float32Array, strict))
    : classified.cells;

  step('cappings', 0.85);
  const secondLook: SecondLook[] = [];
  let finished: CombCell[] = cells;
  if (pitch >= smallestCappingPitch) {
    const sealed = cells.flatMap((cell, n) => (cell.class === 'sealed-worker-brood' ? [n] : []));
    const looks = measureCappings(
      picture,
      sealed.map((n) => places[n] as LatticeCell),
      pitch,
    );
    finished = cells.slice();
    sealed.forEach((n, k) => {
      const capping = looks[k];
      if (!capping) return;
      finished[n] = { ...(cells[n] as CombCell), capping };
      if (capping.outlying >= outlyingFrom) secondLook.push({ cell: n, outlying: capping.outlying, why: capping.most });
    });
    secondLook.sort((one, other) => other.outlying - one.outlying);
    secondLook.length = Math.min(secondLook.length, secondLooks);
  }

  step('reading', 0.95);
  const reading = readCells(finished);
  const reasons: Limit[] = ['never-a-diagnosis', 'scale-not-visible', 'contents-untested'];
  if (pitch < contentsPitch) reasons.push('contents-uncertain');
  if (unlike) reasons.push('unlike-learnt');
  if (pitch < eggsPitch) reasons.push('eggs-not-visible');
  if (pitch < smallestCappingPitch) reasons.push('cappings-not-measured');
  if (reading.unread > 0.3) reasons.push('much-hidden');
  if (cells.length < 100) reasons.push('few-cells');
  step('reading', 1);
  return {
    verdict: 'read',
    reasons,
    pitchPx: pitch,
    cells: finished,
    reading: { ...reading, secondLook },
    plane,
    measured,
  };
}

/** What most likely hid the comb, from the light and detail of the whole picture. */
function whyNoComb(exposure: Exposure): Refusal {
  if (exposure.bright < 60) return 'too-dark';
  if (exposure.clipped > 0.6) return 'too-bright';
  if (exposure.detail < 0.2) return 'out-of-focus';
  return 'no-comb';
}

function refused(reasons: Refusal[], pitchPx: number, measured: CombResult['measured']): CombResult {
  return { verdict: 'refused', reasons, pitchPx, cells: [], plane: null, measured };
}

interface Classified {
  readonly cells: CombCell[];
  /** Where each of the cells stands in the lattice, in the same order. */
  readonly places: LatticeCell[];
  readonly shares: Float32Array[];
}

/** The places that pass, with what belongs to them. */
function onlyWithin(classified: Classified, passes: (place: LatticeCell) => boolean): Classified {
  const kept = classified.places.flatMap((place, n) => (passes(place) ? [n] : []));
  return {
    cells: kept.map((n) => classified.cells[n] as CombCell),
    places: kept.map((n) => classified.places[n] as LatticeCell),
    shares: kept.map((n) => classified.shares[n] as Float32Array),
  };
}

interface Demand {
  readonly class: number;
  readonly group: number;
}

const noCell = outputCount - 1;

/** Classes for the found places; places beyond the edge of the comb fall away, missed ones at the edge are added. */
function classify(
  picture: Picture,
  found: readonly LatticeCell[],
  pitch: number,
  region: ReadOptions['region'],
  checkpoint: () => void,
): Classified {
  const network = readNetwork(classifierWeights);
  const view = new CellView(picture, pitch);
  const features = new Float32Array(featureCount);
  let judged = 0;
  const judge = (cell: LatticeCell): Float32Array => {
    if (++judged % 256 === 0) checkpoint();
    const total = new Float32Array(outputCount);
    const one = new Float32Array(outputCount);
    // Three turns of the same hexagon are three looks; their mean is steadier than one.
    const turns = found.length > 2500 ? [0] : [0, 2, 4];
    for (const turn of turns) {
      view.features(cell, features, turn);
      classShares(network, features, one);
      for (let o = 0; o < outputCount; o++) total[o] = (total[o] as number) + (one[o] as number) / turns.length;
    }
    return total;
  };
  const held: JudgedPlaces = new Map();
  for (const cell of found) held.set(placeKey(cell.column, cell.row), { cell, shares: judge(cell) });
  settleEdge(held, picture, pitch, judge);

  const places: LatticeCell[] = [];
  const cells: CombCell[] = [];
  const all: Float32Array[] = [];
  const inside = region ? polygonTest(region) : () => true;
  for (const { cell, shares } of held.values()) {
    if (!inside(cell.x, cell.y)) continue;
    places.push(cell);
    all.push(shares);
    cells.push(decide(cell, shares, usual));
  }
  return { cells, places, shares: all };
}

function decide(cell: LatticeCell, shares: Float32Array, demand: Demand): CombCell {
  const byClass = new Map<DecidedClass, number>();
  let egg = 0;
  let larva = 0;
  const total = Math.max(1e-6, 1 - (shares[noCell] as number));
  outputs.forEach((name, o) => {
    const of = classOfOutput(name);
    if (!of) return;
    const share = (shares[o] as number) / total;
    byClass.set(of, (byClass.get(of) ?? 0) + share);
    if (name === 'egg') egg = share;
    if (name === 'larva') larva = share;
  });
  let best: DecidedClass = 'hidden';
  let bestShare = 0;
  const coarse = { sealed: 0, open: 0, hidden: 0 };
  for (const [name, share] of byClass) {
    coarse[coarseClass(name) as 'sealed' | 'open' | 'hidden'] += share;
    if (share > bestShare) {
      best = name;
      bestShare = share;
    }
  }
  const group = (['sealed', 'open', 'hidden'] as const).reduce((a, b) => (coarse[b] > coarse[a] ? b : a));
  const unclear = (shares[noCell] as number) > 0.6;
  const coarseDecided = !unclear && coarse[group] >= demand.group;
  const of: CellClass =
    coarseDecided && bestShare >= demand.class && coarseClass(best) === group ? best : 'not-decided';
  const stage = of === 'egg-or-larva' && pitchOf(cell) >= eggsPitch ? (egg > larva ? 'egg' : 'larva') : undefined;
  const stores = (byClass.get('pollen') ?? 0) + (byClass.get('nectar') ?? 0);
  return {
    x: cell.x,
    y: cell.y,
    pitch: pitchOf(cell),
    column: cell.column,
    row: cell.row,
    class: of,
    confidence: unclear ? Math.min(bestShare, 1 - (shares[noCell] as number)) : bestShare,
    coarse: coarseDecided ? group : 'not-decided',
    coarseConfidence: coarse[group],
    seen: cell.seen,
    ...(stage ? { stage } : {}),
    ...(coarseDecided && group === 'open' ? { openWithoutStores: coarse.open - stores > stores } : {}),
    ...(of === 'not-decided' && coarseDecided && group === 'sealed'
      ? { likelyBrood: coarse.sealed > 2 * (byClass.get('sealed-honey') ?? 0) }
      : {}),
  };
}
