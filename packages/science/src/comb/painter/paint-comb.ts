/** Paints a comb whose truth is known: the test bed of the reader, and pictures for learning. All of it is invented. */
import { seeded } from '../../random/seeded.ts';
import { CellGrid, type NearestCell } from './cell-grid.ts';
import type { Cover } from './cover.ts';
import { coverOf } from './cover-comb.ts';
import { develop, type Planes } from './develop.ts';
import { cornersSeen, extentOf } from './extent.ts';
import type { PainterSettings } from './settings.ts';
import { shadeCell } from './shade-cell.ts';
import { drawSurroundings, lightAt, lightOf, shadeBeyond } from './surroundings.ts';
import { type TrueCell, truthOf } from './truth.ts';
import { viewOf } from './view.ts';

export interface PaintedComb {
  readonly width: number;
  readonly height: number;
  /** RGB, three bytes per pixel. */
  readonly data: Uint8ClampedArray;
  readonly cells: readonly TrueCell[];
  /** Corners of the frame's opening where wood begins, clockwise from the top left, pixels; null unless a whole frame is painted. */
  readonly opening: readonly (readonly [number, number])[] | null;
}

/**
 * @param seed whole number; decides what the settings leave open (places of bees, contents, noise)
 */
export function paintComb(settings: PainterSettings, seed: number): PaintedComb {
  // What is drawn from chance first, and what next, decides the picture: the order stays.
  const chance = seeded(seed);
  const view = viewOf(settings, chance.between(0, 2 * Math.PI));
  const extent = extentOf(settings, view, chance);
  const grid = new CellGrid(settings, chance, extent);
  const light = lightOf(settings);
  const coverAt = coverOf(settings, chance, extent.halfWidth, extent.halfHeight, light.towardsU, light.towardsV);
  const around = drawSurroundings(chance);

  const { width, height } = settings;
  const planes: Planes = {
    width,
    height,
    red: new Float32Array(width * height),
    green: new Float32Array(width * height),
    blue: new Float32Array(width * height),
  };
  // Small cells are painted at two by two points per pixel, or the rims would be jagged.
  const points = settings.pitch < 24 ? 2 : 1;
  const scale = 1 / (points * points);
  const out = new Float64Array(3);
  const cover: Cover = { r: 0, g: 0, b: 0, alpha: 0, shadow: 1, opaque: false };
  const near: NearestCell = { cell: undefined, distance: Infinity, edge: 0 };
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let r = 0;
      let g = 0;
      let b = 0;
      for (let p = 0; p < points * points; p++) {
        const px = x + ((p % points) + 0.5) / points - 0.5;
        const py = y + (Math.floor(p / points) + 0.5) / points - 0.5;
        const at = view.toComb(px, py);
        if (!at) continue;
        const [u, v] = at;
        grid.nearest(u, v, near);
        const { cell } = near;
        if (cell && near.distance < 0.42) {
          const [slantU, slantV] = view.slant(u, v);
          shadeCell(settings, light, cell, u - cell.u, v - cell.v, near.edge, slantU, slantV, out);
        } else shadeBeyond(settings, around, extent, u, v, px, py, out);
        coverAt(u, v, cover);
        let f = cover.shadow;
        let cr = out[0] as number;
        let cg = out[1] as number;
        let cb = out[2] as number;
        if (cover.alpha > 0) {
          const a = cover.alpha;
          cr = cr * f * (1 - a) + cover.r * a;
          cg = cg * f * (1 - a) + cover.g * a;
          cb = cb * f * (1 - a) + cover.b * a;
          f = 1;
        }
        r += cr * f;
        g += cg * f;
        b += cb * f;
      }
      const shade = lightAt(settings, around, x, y);
      const k = y * width + x;
      planes.red[k] = r * scale * shade * settings.light.cast[0];
      planes.green[k] = g * scale * shade * settings.light.cast[1];
      planes.blue[k] = b * scale * shade * settings.light.cast[2];
    }
  }
  develop(planes, settings, chance);

  const data = new Uint8ClampedArray(width * height * 3);
  for (let k = 0; k < width * height; k++) {
    data[3 * k] = planes.red[k] as number;
    data[3 * k + 1] = planes.green[k] as number;
    data[3 * k + 2] = planes.blue[k] as number;
  }
  const opening = settings.frame === 'whole frame' ? cornersSeen(extent, view) : null;
  return { width, height, data, cells: truthOf(settings, view, grid, coverAt), opening };
}
