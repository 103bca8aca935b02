/** How sharp and how light a picture is, measured against its cells where there are any. */
import type { LatticeCell } from '../lattice/lattice-growth.ts';
import { halve, type Picture, type Plane, shrinkToGrey } from './picture.ts';

/**
 * Blur as a share of the pitch: the standard deviation of a bell-shaped blur that would make the steepest steps round the
 * cells as soft as they are (step height over steepest slope over the root of 2 pi). Middle over the seen cells.
 */
export function blurOverPitch(picture: Picture, cells: readonly LatticeCell[]): number {
  const seen = cells.filter((cell) => cell.seen > 0);
  if (seen.length === 0) return Number.POSITIVE_INFINITY;
  const pitchOf = (cell: LatticeCell): number => Math.sqrt(Math.abs(cell.ax * cell.by - cell.ay * cell.bx) / 0.8660254);
  const pitch = pitchOf(seen[seen.length >> 1] as LatticeCell);
  const scale = Math.min(1, 30 / pitch);
  const grey = shrinkToGrey(picture, scale);
  const every = Math.max(1, Math.floor(seen.length / 120));
  const ratios: number[] = [];
  for (let n = 0; n < seen.length; n += every) {
    const cell = seen[n] as LatticeCell;
    const own = pitchOf(cell) * scale;
    const x = Math.round((cell.x + 0.5) * scale - 0.5);
    const y = Math.round((cell.y + 0.5) * scale - 0.5);
    const r = Math.ceil(0.6 * own);
    if (x - r < 1 || y - r < 1 || x + r >= grey.width - 1 || y + r >= grey.height - 1) continue;
    const values: number[] = [];
    const slopes: number[] = [];
    for (let py = y - r; py <= y + r; py++) {
      for (let px = x - r; px <= x + r; px++) {
        const k = py * grey.width + px;
        values.push(grey.data[k] as number);
        const gx = (grey.data[k + 1] as number) - (grey.data[k - 1] as number);
        const gy = (grey.data[k + grey.width] as number) - (grey.data[k - grey.width] as number);
        slopes.push(Math.sqrt(gx * gx + gy * gy) * 0.5);
      }
    }
    values.sort((a, b) => a - b);
    slopes.sort((a, b) => a - b);
    const height =
      (values[Math.floor(0.93 * values.length)] as number) - (values[Math.floor(0.07 * values.length)] as number);
    const steepest = slopes[Math.floor(0.95 * slopes.length)] as number;
    if (height > 6 && steepest > 0) ratios.push(height / steepest / Math.sqrt(2 * Math.PI) / own);
  }
  if (ratios.length === 0) return Number.POSITIVE_INFINITY;
  ratios.sort((a, b) => a - b);
  return ratios[ratios.length >> 1] as number;
}

/** Light of a whole picture on a 0 to 255 scale. */
export interface Exposure {
  readonly mean: number;
  /** The value 95 in 100 pixels stay below. */
  readonly bright: number;
  /** Share of pixels at the top of the scale. */
  readonly clipped: number;
  /**
   * How much fine detail there is against coarse: mean step between neighbouring pixels over mean step between pixels
   * eight times as coarse. A sharp picture of anything stays above about a fifth.
   */
  readonly detail: number;
}

/** Measures the light and detail of a picture on its brightness, shrunk to about 1400 pixels. */
export function exposureOf(grey: Plane): Exposure {
  const histogram = new Uint32Array(256);
  let sum = 0;
  for (let k = 0; k < grey.data.length; k++) {
    const v = grey.data[k] as number;
    sum += v;
    const bin = Math.min(255, Math.max(0, Math.round(v)));
    histogram[bin] = (histogram[bin] as number) + 1;
  }
  let bright = 255;
  let above = 0;
  for (let v = 255; v >= 0; v--) {
    above += histogram[v] as number;
    if (above >= 0.05 * grey.data.length) {
      bright = v;
      break;
    }
  }
  let clipped = 0;
  for (let v = 252; v < 256; v++) clipped += histogram[v] as number;
  let coarse = grey;
  for (let k = 0; k < 3 && Math.min(coarse.width, coarse.height) >= 16; k++) coarse = halve(coarse);
  const rough = meanStep(coarse);
  return {
    mean: sum / grey.data.length,
    bright,
    clipped: clipped / grey.data.length,
    detail: rough > 0 ? meanStep(grey) / rough : 0,
  };
}

function meanStep(plane: Plane): number {
  let sum = 0;
  let count = 0;
  for (let y = 0; y < plane.height; y++) {
    for (let x = 1; x < plane.width; x++) {
      sum += Math.abs((plane.data[y * plane.width + x] as number) - (plane.data[y * plane.width + x - 1] as number));
      count++;
    }
  }
  return count > 0 ? sum / count : 0;
}
