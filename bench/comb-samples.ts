/*
 * Cells of painted combs with their true class, as the classifier of science/comb sees them: what bench/comb-train.ts
 * learns from. Only combs of the tuning family.
 */
import { CellView, featureCount } from '../packages/science/src/comb/cells/cell-features.ts';
import { outputCount, outputNumber } from '../packages/science/src/comb/cells/classifier.ts';
import { latticesOf } from '../packages/science/src/comb/lattice/lattice.ts';
import { type LatticeCell, neighbourSteps } from '../packages/science/src/comb/lattice/lattice-cell.ts';
import { type PaintedComb, paintComb } from '../packages/science/src/comb/painter/paint-comb.ts';
import { drawSettings } from '../packages/science/src/comb/painter/settings.ts';
import type { TrueCell } from '../packages/science/src/comb/painter/truth.ts';
import { GreyPyramid } from '../packages/science/src/comb/photograph/grey-pyramid.ts';
import type { Chance } from '../packages/science/src/random/seeded.ts';

export interface Sample {
  /** The same cell seen turned or mirrored, and a little off its centre; `featureCount` values each. */
  readonly views: readonly Float32Array[];
  /** Number of the output that is right. */
  readonly label: number;
}

/** Cells of one class taken of one comb, at most. */
const perClass = 45;
const viewsPerCell = 2;
/** Part of the usual width and height that is painted: many small combs teach more than few large ones. */
const share = 0.7;

/**
 * Cells of one painted comb of the tuning family.
 *
 * @param seed of settings and comb
 */
export function samplesOf(seed: number, chance: Chance): Sample[] {
  const drawn = drawSettings('tuning', seed);
  const painted = paintComb(
    { ...drawn, width: Math.round(share * drawn.width), height: Math.round(share * drawn.height) },
    seed,
  );
  const pyramid = new GreyPyramid(painted);
  const lattice = latticesOf(pyramid)().next().value;
  if (!lattice || lattice.cells.length < 20) return [];
  const view = new CellView(pyramid, lattice.pitch);
  const places = withBrim(lattice.cells, lattice.pitch, painted, chance);
  const buckets: LatticeCell[][] = Array.from({ length: outputCount }, () => []);
  for (const place of places) {
    const label = labelAt(place, painted.cells);
    if (label !== undefined) (buckets[label] as LatticeCell[]).push(place);
  }
  const samples: Sample[] = [];
  buckets.forEach((bucket, label) => {
    for (let k = bucket.length - 1; k > 0; k--) {
      const o = chance.integer(k + 1);
      [bucket[k], bucket[o]] = [bucket[o] as LatticeCell, bucket[k] as LatticeCell];
    }
    for (const place of bucket.slice(0, perClass)) {
      const views = Array.from({ length: viewsPerCell }, () => {
        const shaken = {
          ...place,
          x: place.x + 0.04 * lattice.pitch * chance.normal(),
          y: place.y + 0.04 * lattice.pitch * chance.normal(),
        };
        const features = new Float32Array(featureCount);
        view.features(shaken, features, chance.integer(6), chance.uniform() < 0.5);
        return features;
      });
      samples.push({ views, label });
    }
  });
  return samples;
}

/** The places of a lattice and those one step beyond its edge, where a reader may run on to. */
function withBrim(cells: readonly LatticeCell[], pitch: number, painted: PaintedComb, chance: Chance): LatticeCell[] {
  const present = new Set(cells.map((cell) => `${cell.column},${cell.row}`));
  const places = [...cells];
  for (const cell of cells) {
    for (const [dc, dr] of neighbourSteps) {
      const key = `${cell.column + dc},${cell.row + dr}`;
      if (present.has(key)) continue;
      present.add(key);
      const x = cell.x + dc * cell.ax + dr * cell.bx;
      const y = cell.y + dc * cell.ay + dr * cell.by;
      const margin = 0.45 * pitch;
      if (x < margin || y < margin || x > painted.width - margin || y > painted.height - margin) continue;
      places.push({ ...cell, column: cell.column + dc, row: cell.row + dr, x, y, seen: 0.1 * chance.uniform() });
    }
  }
  return places;
}

/** What a place teaches; nothing where that is not clear. */
function labelAt(place: LatticeCell, cells: readonly TrueCell[]): number | undefined {
  let nearest = Number.POSITIVE_INFINITY;
  let truth: TrueCell | undefined;
  for (const cell of cells) {
    const dx = (cell.x - place.x) / cell.pitch;
    const dy = (cell.y - place.y) / cell.pitch;
    if (dx * dx + dy * dy < nearest) {
      nearest = dx * dx + dy * dy;
      truth = cell;
    }
  }
  const distance = Math.sqrt(nearest);
  if (!truth) return undefined;
  if (distance > 0.55) return outputNumber('no cell');
  // Neither on a cell nor beside it, or a half-covered mouth.
  if (distance >= 0.33 || (truth.covered > 0.3 && truth.covered <= 0.5)) return undefined;
  if (truth.class !== 'egg-or-larva') return outputNumber(truth.class);
  // An egg that cannot be seen teaches only to guess: in small pictures its cell looks empty.
  if (truth.stage === 'egg') return outputNumber(truth.pitch < 18 ? 'open-empty' : 'egg');
  return outputNumber('larva');
}
