/*
 * A photograph of one side of a comb, read cell by cell: the door of this room.
 *
 * The reading is a measurement, never a diagnosis. A face-on photograph cannot show scale, which lies along the lower
 * walls, and a picture without an outlying capping is no evidence that the brood is sound. Both sentences stand among
 * the reasons of every reading.
 */
import { decide, eggsPitch, strict } from './cells/decide-class.ts';
import { findCells, whyNoComb } from './cells/find-cells.ts';
import { type CombResult, type Limit, refused } from './comb-result.ts';
import { combPlane, cornersOfRegion } from './frame/comb-plane.ts';
import { findFrameCorners } from './frame/frame-corners.ts';
import { exposureOf } from './photograph/exposure.ts';
import { GreyPyramid } from './photograph/grey-pyramid.ts';
import { checkPicture, halvePicture, type Picture } from './photograph/picture.ts';
import { smallestCappingPitch } from './reading/capping.ts';
import { readCells } from './reading/reading.ts';
import { lookAtCappings } from './reading/second-look.ts';

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
const smallestSide = 96;
const smallestPitchPx = 7.5;
/** Pitch from which a class is told with fair certainty; below it only sealed, open and hidden. A setting of ours. */
const contentsPitch = 15;
/** Share of cells that cannot be told, above which a picture is unlike what the classifier has learnt from. */
const mostUndecided = 0.37;

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

/** The way of the pixels: brightness, corners of the frame, lattice and cells, plane, cappings, reading. */
function readAt(
  picture: Picture,
  options: ReadOptions,
  checkpoint: () => void,
  step: (stage: ReadStage, done: number) => void,
): CombResult {
  const pyramid = new GreyPyramid(picture);
  const exposure = exposureOf(pyramid);
  const light = { brightness: exposure.mean, clipped: exposure.clipped, detail: exposure.detail };
  if (exposure.bright < 25) return refused(['too-dark'], 0, light);

  step('lattice', 0.05);
  const set = cornersOfRegion(options.region);
  const found = options.region ? null : (findFrameCorners(pyramid)?.corners ?? null);
  const { region, smallestPitch = smallestPitchPx } = options;
  const looked = findCells(pyramid, { exposure, region, frame: found, smallestPitch }, step, checkpoint);
  const { classified, pitch } = looked;
  const measured = looked.blur === undefined ? light : { ...light, blur: looked.blur };
  if (!classified) return refused([looked.refusal ?? whyNoComb(exposure)], pitch, measured);
  const { places, shares } = classified;

  const source = set ? 'corners-set' : looked.frame ? 'corners-found' : 'lattice';
  const plane = combPlane(source, set ?? looked.frame, places, picture);
  const undecided = classified.cells.filter((cell) => cell.class === 'not-decided').length;
  const unlike = undecided > mostUndecided * places.length;
  const told = unlike ? places.map((place, n) => decide(place, shares[n] as Float32Array, strict)) : classified.cells;

  step('cappings', 0.85);
  const { cells, secondLook } = lookAtCappings(pyramid, told, places, pitch);

  step('reading', 0.95);
  const reading = readCells(cells);
  const reasons: Limit[] = ['never-a-diagnosis', 'scale-not-visible', 'contents-untested'];
  if (pitch < contentsPitch) reasons.push('contents-uncertain');
  if (unlike) reasons.push('unlike-learnt');
  if (pitch < eggsPitch) reasons.push('eggs-not-visible');
  if (pitch < smallestCappingPitch) reasons.push('cappings-not-measured');
  if (reading.unread > 0.3) reasons.push('much-hidden');
  if (cells.length < 100) reasons.push('few-cells');
  step('reading', 1);
  return { verdict: 'read', reasons, pitchPx: pitch, cells, reading: { ...reading, secondLook }, plane, measured };
}
