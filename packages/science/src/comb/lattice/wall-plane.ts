import { type Plane, windowMean } from '../photograph/picture.ts';

/**
 * Where walls are likely: the strength of brightness steps, made even across light and shadow.
 *
 * Open cells may be darker or as bright as their rims and sealed cells are plateaus with a dark moat, so brightness
 * itself changes sign from cell to cell. The strength of the step does not: it is high round every cell and low in the
 * middle of it, whatever the cell holds.
 *
 * @param grey brightness, 0 to 255
 * @param radius half side of the window over which contrast is evened out, pixels (about one pitch)
 * @returns a plane of mean near 0 and spread near 1, clipped to -1.5 ... 2.5; flat regions stay near 0
 */
export function wallPlane(grey: Plane, radius: number): Plane {
  const { width, height, data } = grey;
  const steps = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const up = (y > 0 ? y - 1 : y) * width;
    const at = y * width;
    const low = (y + 1 < height ? y + 1 : y) * width;
    for (let x = 0; x < width; x++) {
      const l = x > 0 ? x - 1 : x;
      const r = x + 1 < width ? x + 1 : x;
      const ul = data[up + l] as number;
      const ur = data[up + r] as number;
      const ll = data[low + l] as number;
      const lr = data[low + r] as number;
      const gx = ur + 2 * (data[at + r] as number) + lr - ul - 2 * (data[at + l] as number) - ll;
      const gy = ll + 2 * (data[low + x] as number) + lr - ul - 2 * (data[up + x] as number) - ur;
      // The logarithm lets a faint wall between two dark cells count beside the glaring edge of a honey capping.
      steps[at + x] = Math.log1p(Math.sqrt(gx * gx + gy * gy) * 0.06);
    }
  }
  return evenOut({ width, height, data: steps }, radius, 0.1);
}

/**
 * Takes the local mean away and divides by the local spread.
 *
 * @param floor added to the spread, in the plane's own unit, so that noise in flat regions is not blown up
 */
export function evenOut(plane: Plane, radius: number, floor: number): Plane {
  const { width, height, data } = plane;
  const mean = windowMean(plane, radius);
  const squares = new Float32Array(width * height);
  for (let k = 0; k < data.length; k++) {
    const d = (data[k] as number) - (mean.data[k] as number);
    squares[k] = d * d;
  }
  const spread = windowMean({ width, height, data: squares }, radius);
  const out = squares;
  for (let k = 0; k < data.length; k++) {
    const d =
      ((data[k] as number) - (mean.data[k] as number)) / (Math.sqrt(Math.max(0, spread.data[k] as number)) + floor);
    out[k] = d < -1.5 ? -1.5 : d > 2.5 ? 2.5 : d;
  }
  return { width, height, data: out };
}
