import type { GreyPyramid } from '../photograph/grey-pyramid.ts';
import { type LatticeCell, pitchOf } from './lattice-cell.ts';

/**
 * Blur as a share of the pitch: the standard deviation of a bell-shaped blur that would make the steepest steps round the
 * cells as soft as they are (step height over steepest slope over the root of 2 pi). Middle over the seen cells.
 */
export function blurOverPitch(pyramid: GreyPyramid, cells: readonly LatticeCell[]): number {
  const seen = cells.filter((cell) => cell.seen > 0);
  if (seen.length === 0) return Number.POSITIVE_INFINITY;
  const pitch = pitchOf(seen[seen.length >> 1] as LatticeCell);
  const scale = Math.min(1, 30 / pitch);
  const grey = pyramid.at(scale);
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
