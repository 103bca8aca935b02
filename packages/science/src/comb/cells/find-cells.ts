/** Finds the cells of a comb and their classes, by the likeliest lattice or, when that proves no comb, by its rivals. */
import type { Refusal } from '../comb-result.ts';
import { latticeContradicts, widened, withinFrame } from '../frame/comb-plane.ts';
import { blurOverPitch } from '../lattice/blur-over-pitch.ts';
import { latticesOf } from '../lattice/lattice.ts';
import type { Exposure } from '../photograph/exposure.ts';
import type { GreyPyramid } from '../photograph/grey-pyramid.ts';
import { type Classified, judgePlaces, onlyWithin } from './judge-places.ts';

type Corners = readonly (readonly [number, number])[];

/** What a look for cells brought: cells with their classes, or why there are none. */
interface Looked {
  readonly classified?: Classified;
  readonly refusal?: Refusal;
  /** Middle pitch, pixels; 0 without a lattice. */
  readonly pitch: number;
  /** Standard deviation of the blur over the pitch, where it could be measured. */
  readonly blur?: number;
}

/** What is known before cells are looked for. */
export interface Sought {
  readonly exposure: Exposure;
  /** Only this part is looked at: corners a person set, in picture pixels. */
  readonly region: Corners | undefined;
  /** Corners of a frame that were found; believed unless the lattice contradicts them. */
  readonly frame: Corners | null;
  /** Smallest pitch to read, pixels. */
  readonly smallestPitch: number;
}

const mostAttempts = 3;
const fewestCells = 30;
const mostBlur = 0.19;
/** Share of a lattice that must lie within the frame for it to stand as it is. */
const keptAtLeast = 0.98;

/**
 * Finds cells and classes.
 *
 * @param progress told when classes are looked for, with how far the reading is, 0 to 1
 * @param checkpoint called now and then; throw from it to stop
 * @returns what was found, and the corners of the frame where they are still believed
 */
export function findCells(
  pyramid: GreyPyramid,
  { exposure, region, frame, smallestPitch }: Sought,
  progress: (stage: 'cells', done: number) => void,
  checkpoint: () => void,
): Looked & { readonly frame: Corners | null } {
  const latticesIn = latticesOf(pyramid, checkpoint);
  const contradicted = (looked: Looked, corners: Corners): boolean =>
    looked.classified !== undefined && latticeContradicts(corners, looked.classified.places, pyramid.picture);

  const everywhere = lookIn(region);
  if (!frame || contradicted(everywhere, frame)) return { ...everywhere, frame: null };
  const within = lookWithin(frame, everywhere);
  return { ...within, frame: contradicted(within, frame) ? null : frame };

  function lookIn(region: Corners | undefined): Looked {
    let first: Looked | undefined;
    const lattices = latticesIn(region);
    for (let attempt = 0; attempt < mostAttempts; attempt++) {
      const lattice = lattices.next().value;
      // Nothing (more) that looks like honeycomb: what stood in the way of the first attempt is said.
      if (!lattice || lattice.cells.filter((cell) => cell.seen > 0).length < fewestCells * 0.5) break;
      const { pitch } = lattice;
      progress('cells', 0.5);
      const judged = judgePlaces(pyramid, lattice, region, checkpoint);
      const visible = judged.cells.filter((cell) => cell.coarse === 'sealed' || cell.coarse === 'open').length;
      const covered = judged.cells.filter((cell) => cell.coarse === 'hidden').length;
      const blur = blurOverPitch(pyramid, judged.places);
      const known = Number.isFinite(blur) ? { blur } : {};
      if (visible < fewestCells * 0.5 || visible < 0.2 * lattice.cells.length) {
        const refusal = covered > 0.4 * lattice.cells.length ? 'under-bees' : 'no-comb';
        first ??= { refusal, pitch, ...known };
        continue;
      }
      if (pitch < smallestPitch) {
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
  function lookWithin(frame: Corners, looked: Looked): Looked {
    const { classified, pitch } = looked;
    const within = classified && onlyWithin(classified, withinFrame(frame));
    if (classified && within && within.places.length >= keptAtLeast * classified.places.length) {
      return { ...looked, classified: within };
    }
    const again = lookIn(widened(frame, pitch));
    if (again.classified) return again;
    return within && within.places.length >= fewestCells ? { ...looked, classified: within } : looked;
  }
}

/** What most likely hid the comb, from the light and detail of the whole picture. */
export function whyNoComb(exposure: Exposure): Refusal {
  if (exposure.bright < 60) return 'too-dark';
  if (exposure.clipped > 0.6) return 'too-bright';
  if (exposure.detail < 0.2) return 'out-of-focus';
  return 'no-comb';
}
