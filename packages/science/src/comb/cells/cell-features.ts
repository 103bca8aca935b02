/*
 * What the classifier is told about a cell: a small picture of it, straightened so that every cell looks like a regular
 * hexagon seen square-on, in brightness and colour relative to the comb around; how its neighbours look; and how large
 * it is in the photograph. Relative values, because light and white balance change from picture to picture and the same
 * capping may be twice as bright in one as in the other.
 */
import type { LatticeCell } from '../lattice/lattice-cell.ts';
import type { GreyPyramid } from '../photograph/grey-pyramid.ts';
import { brightness, halve, type Plane, shrink, valueAt, windowMean } from '../photograph/picture.ts';

/** Points across the straightened cell, and how far it reaches from the centre in pitches. */
const points = 15;
const reach = 0.77;
/** Where the points stand, pitches: closer in the middle, where larvae and glints are small, than at the walls. */
const offsets = Float64Array.from({ length: points }, (_, k) => {
  const part = (2 * k) / (points - 1) - 1;
  return reach * Math.sign(part) * Math.abs(part) ** 1.3;
});
const coarsePoints = 5;
const coarseReach = 0.6;
/** Pitch at which cells are looked at; larger ones are shrunk to it. */
const viewPitch = 21;

/** How much smaller the planes of the surroundings are. */
const coarser = 4;

/** Number of values `CellView.features` gives. */
export const featureCount = points * points + 3 * coarsePoints * coarsePoints + 3 * 6 + 9;

/** Planes from which cells are looked at. Made once per picture. */
export class CellView {
  private readonly grey: Plane;
  private readonly greyMean: Plane;
  private readonly greySpread: Plane;
  /** Redness and blueness: colour less brightness. */
  private readonly rednessMean: Plane;
  private readonly bluenessMean: Plane;
  private readonly softGrey: Plane;
  private readonly softRed: Plane;
  private readonly softBlue: Plane;
  /** How much smaller the soft planes are. */
  private readonly softer: 1 | 2;
  private readonly ratioX: number;
  private readonly ratioY: number;

  constructor(pyramid: GreyPyramid, pitch: number) {
    const { picture } = pyramid;
    const scale = Math.min(1, viewPitch / pitch);
    const colour = shrink(picture, scale);
    // At full size the colours are those of the picture, and the pyramid may have their brightness already.
    this.grey = scale === 1 ? pyramid.at(1) : brightness(colour);
    this.ratioX = this.grey.width / picture.width;
    this.ratioY = this.grey.height / picture.height;
    // Colour is only looked at softly: half the size is enough unless cells are small already. A quarter is enough for
    // the smooth surroundings.
    this.softer = pitch * scale >= 16 ? 2 : 1;
    const eased = (plane: Plane): Plane => (this.softer === 2 ? halve(plane) : plane);
    const quarter = (plane: Plane): Plane => (this.softer === 2 ? halve(plane) : halve(halve(plane)));
    const softGrey = eased(this.grey);
    const redness = less(eased(colour.red), softGrey);
    const blueness = less(eased(colour.blue), softGrey);
    const around = Math.max(2, Math.round((2.6 * pitch * scale) / coarser));
    this.greyMean = windowMean(quarter(softGrey), around);
    const variance = windowMean(squaresAbout(this.grey, this.greyMean), around);
    const spread = Float32Array.from(variance.data, (v) => Math.sqrt(Math.max(0, v)));
    this.greySpread = { width: variance.width, height: variance.height, data: spread };
    this.rednessMean = windowMean(quarter(redness), around);
    this.bluenessMean = windowMean(quarter(blueness), around);
    const soft = Math.max(1, Math.round((0.18 * pitch * scale) / this.softer));
    this.softGrey = windowMean(softGrey, soft);
    this.softRed = windowMean(redness, soft);
    this.softBlue = windowMean(blueness, soft);
  }

  /**
   * @param turn how many sixths of a full turn to turn the view (0 to 5), and whether to mirror it; for training only
   * @param out receives `featureCount` values of about unit size
   */
  features(cell: LatticeCell, out: Float32Array, turn = 0, mirror = false): void {
    const x = (cell.x + 0.5) * this.ratioX - 0.5;
    const y = (cell.y + 0.5) * this.ratioY - 0.5;
    let ax = cell.ax * this.ratioX;
    let ay = cell.ay * this.ratioY;
    let bx = cell.bx * this.ratioX;
    let by = cell.by * this.ratioY;
    // Of the six ways to lay the regular hexagon on the cell take the one turned least in the picture.
    for (let k = 0; k < 6; k++) {
      const length = Math.hypot(ax, ay);
      if (ax / length > 0.866) break;
      [ax, ay, bx, by] = [bx, by, bx - ax, by - ay];
    }
    for (let k = 0; k < turn; k++) [ax, ay, bx, by] = [bx, by, bx - ax, by - ay];
    if (mirror) [ax, ay, bx, by] = [bx, by, ax, ay];
    // Comb axes: e1 along the row, e2 across it; b = e1 / 2 + e2 * root(3) / 2.
    const e2x = (bx - 0.5 * ax) / 0.8660254;
    const e2y = (by - 0.5 * ay) / 0.8660254;
    const cx = (x + 0.5) / coarser - 0.5;
    const cy = (y + 0.5) / coarser - 0.5;
    const mean = valueAt(this.greyMean, cx, cy);
    const spread = valueAt(this.greySpread, cx, cy) + 6;
    const redMean = valueAt(this.rednessMean, cx, cy);
    const blueMean = valueAt(this.bluenessMean, cx, cy);
    let n = 0;
    let own = 0;
    let ownSquares = 0;
    for (let j = 0; j < points; j++) {
      const v = offsets[j] as number;
      for (let i = 0; i < points; i++) {
        const u = offsets[i] as number;
        const value = (valueAt(this.grey, x + u * ax + v * e2x, y + u * ay + v * e2y) - mean) / spread;
        own += value;
        ownSquares += value * value;
        out[n++] = clip(value);
      }
    }
    for (let j = 0; j < coarsePoints; j++) {
      const v = coarseReach * ((2 * j) / (coarsePoints - 1) - 1);
      for (let i = 0; i < coarsePoints; i++) {
        const u = coarseReach * ((2 * i) / (coarsePoints - 1) - 1);
        const px = x + u * ax + v * e2x;
        const py = y + u * ay + v * e2y;
        out[n++] = clip((this.soft(this.softGrey, px, py) - mean) / spread);
        out[n++] = clip((this.soft(this.softRed, px, py) - redMean) / 16);
        out[n++] = clip((this.soft(this.softBlue, px, py) - blueMean) / 16);
      }
    }
    let [sx, sy, tx, ty] = [ax, ay, bx, by];
    for (let k = 0; k < 6; k++) {
      out[n++] = clip((this.soft(this.softGrey, x + sx, y + sy) - mean) / spread);
      out[n++] = clip((this.soft(this.softRed, x + sx, y + sy) - redMean) / 16);
      out[n++] = clip((this.soft(this.softBlue, x + sx, y + sy) - blueMean) / 16);
      [sx, sy, tx, ty] = [tx, ty, tx - sx, ty - sy];
    }
    const all = points * points;
    out[n++] = (mean - 110) / 60;
    out[n++] = (spread - 35) / 20;
    out[n++] = redMean / 30;
    out[n++] = blueMean / 40;
    out[n++] = clip(own / all);
    out[n++] = Math.sqrt(Math.max(0, ownSquares / all - (own / all) ** 2)) - 0.8;
    out[n++] = Math.log(Math.min(60, Math.sqrt(Math.abs(cell.ax * cell.by - cell.ay * cell.bx))) / 18);
    out[n++] = cell.seen * 2 - 1;
    out[n++] = this.soft(this.softGrey, x, y) / 100 - 1;
  }

  /** Value of a soft plane at a place given in pixels of the full one. */
  private soft(plane: Plane, x: number, y: number): number {
    return valueAt(plane, (x + 0.5) / this.softer - 0.5, (y + 0.5) / this.softer - 0.5);
  }
}

/** Mean squares about a local mean that is given a quarter of the size, as a plane of that size. */
function squaresAbout(grey: Plane, mean: Plane): Plane {
  const { width, height } = mean;
  const data = new Float32Array(width * height);
  for (let y = 0; y < height * coarser; y++) {
    const row = (y >> 2) * width;
    for (let x = 0, k = y * grey.width; x < width * coarser; x++, k++) {
      const at = row + (x >> 2);
      const d = (grey.data[k] as number) - (mean.data[at] as number);
      data[at] = (data[at] as number) + (d * d) / (coarser * coarser);
    }
  }
  return { width, height, data };
}

function less(one: Plane, other: Plane): Plane {
  const data = new Float32Array(one.data.length);
  for (let k = 0; k < data.length; k++) data[k] = (one.data[k] as number) - (other.data[k] as number);
  return { width: one.width, height: one.height, data };
}

function clip(value: number): number {
  return value < -3 ? -3 : value > 3 ? 3 : value;
}
