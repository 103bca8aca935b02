import type { Chance } from '../../random/seeded.ts';
import type { PainterSettings } from './settings.ts';
import type { View } from './view.ts';

/** Size of a painted comb and where its wood begins, in pitches from the middle; infinite where no wood is. */
export interface Extent {
  readonly halfWidth: number;
  readonly halfHeight: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** All that is seen, or a frame with something behind it. */
export function extentOf(settings: PainterSettings, view: View, chance: Chance): Extent {
  const { width, height } = settings;
  let halfWidth = 0;
  let halfHeight = 0;
  for (const [x, y] of [
    [0, 0],
    [width, 0],
    [0, height],
    [width, height],
  ] as const) {
    const at = view.toComb(x, y);
    if (!at) continue;
    halfWidth = Math.max(halfWidth, Math.abs(at[0]));
    halfHeight = Math.max(halfHeight, Math.abs(at[1]));
  }
  halfWidth = Math.min(halfWidth, (1.6 * width) / settings.pitch + 4);
  halfHeight = Math.min(halfHeight, (1.6 * width) / settings.pitch + 4);
  let left = -Infinity;
  let right = Infinity;
  let top = -Infinity;
  let bottom = Infinity;
  if (settings.frame === 'whole frame') {
    const w = (0.38 * width) / settings.pitch;
    const h = (0.36 * height) / settings.pitch;
    left = -w;
    right = w;
    top = -h;
    bottom = h;
    halfWidth = w;
    halfHeight = h;
  } else if (settings.frame === 'one edge') {
    const where = chance.between(0.15, 0.35);
    const side = chance.integer(4);
    if (side === 0) left = (-where * width) / settings.pitch;
    else if (side === 1) right = (where * width) / settings.pitch;
    else if (side === 2) top = (-where * height) / settings.pitch;
    else bottom = (where * height) / settings.pitch;
  }
  return { halfWidth, halfHeight, left, right, top, bottom };
}

/** Corners of the frame's opening in the picture, clockwise from the one nearest to the top left. */
export function cornersSeen({ left, right, top, bottom }: Extent, view: View): readonly (readonly [number, number])[] {
  const places = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ] as const;
  const corners = places.map(([u, v]) => view.toPicture(u, v));
  // The comb may be turned any way: the first corner is the one nearest to the top left of the picture.
  const sums = corners.map(([x, y]) => x + y);
  const first = sums.indexOf(Math.min(...sums));
  return [...corners.slice(first), ...corners.slice(0, first)];
}
