/** How light a picture is, and how much detail it shows. */
import type { GreyPyramid } from './grey-pyramid.ts';
import type { Plane } from './picture.ts';

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

/** Measures the light and detail of a picture on its overview. */
export function exposureOf(pyramid: GreyPyramid): Exposure {
  const grey = pyramid.overview;
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
  for (let k = 0; k < 3 && Math.min(coarse.width, coarse.height) >= 16; k++) coarse = pyramid.half(coarse);
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
