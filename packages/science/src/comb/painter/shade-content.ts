/** Paints what lies in an open cell over its base and walls: pollen, nectar, a larva, an egg. */

import type { PaintedCell } from './fill-comb.ts';
import { placeNoise, smoothNoise } from './noise.ts';
import type { PainterSettings } from './settings.ts';
import { ease, hexagon, type Light } from './shade-light.ts';

/** Where the line of sight ends in a cell. Lengths in pitches. */
export interface Spot {
  /** Place relative to the cell's centre. */
  readonly qu: number;
  readonly qv: number;
  /** Depth, 0 at the mouth to 1 at the base. */
  readonly s: number;
  /** Sunlight that reaches it, 0 to 1. */
  readonly sun: number;
  /** Light through the wax. */
  readonly glow: number;
  /** Half the width of the mouth. */
  readonly mouthHex: number;
  /** True on the base or the surface of what fills the cell, false on a wall. */
  readonly onBase: boolean;
}

/** @param out holds the colour of base or wall there, and receives that of the content, 0 to about 255 */
export function shadeContent(
  settings: PainterSettings,
  light: Light,
  cell: PaintedCell,
  spot: Spot,
  out: Float64Array,
): void {
  if (cell.content === 'pollen' && spot.onBase) shadePollen(settings, cell, spot, out);
  else if (cell.content === 'nectar' && spot.onBase) shadeNectar(settings, light, cell, spot, out);
  else if (cell.content === 'larva') shadeLarva(settings, cell, spot, out);
  else if (cell.content === 'egg' && spot.onBase) shadeEgg(settings, cell, spot, out);
}

function shadePollen(settings: PainterSettings, cell: PaintedCell, spot: Spot, out: Float64Array): void {
  const { qu, qv, s, sun } = spot;
  const direct = settings.light.direct;
  const ambient = 1 - direct;
  const granule = 0.8 + 0.4 * smoothNoise(qu * 16 + 3, qv * 16, cell.salt);
  const slab = 0.85 + 0.3 * smoothNoise(qu * 3.5 + 3, qv * 3.5, cell.salt + 5);
  const l = (ambient * (0.95 - 0.25 * s) + direct * (0.25 + 0.75 * sun)) * granule * slab * 1.05;
  out[0] = cell.colour[0] * l;
  out[1] = cell.colour[1] * l;
  out[2] = cell.colour[2] * l;
}

function shadeNectar(settings: PainterSettings, light: Light, cell: PaintedCell, spot: Spot, out: Float64Array): void {
  const { wax, content } = settings;
  const { qu, qv, s, sun, glow, mouthHex } = spot;
  const direct = settings.light.direct;
  const ambient = 1 - direct;
  let r = out[0] as number;
  let g = out[1] as number;
  let b = out[2] as number;
  const clear = cell.hue > 0.2 ? 0.55 : 0.2;
  const meniscus = ease(mouthHex - 0.1, mouthHex, hexagon(qu, qv));
  const l = ambient * (0.8 - 0.25 * s) + direct * (0.25 + 0.35 * sun) + glow * 0.6 + 0.15 * meniscus;
  // Water-clear nectar shows the floor below, a little warmer.
  const water = content.nectarClear;
  r = (wax.inside[0] * clear + 176 * (1 - clear)) * l * (1 - water) + r * water;
  g = (wax.inside[1] * clear + 96 * (1 - clear)) * l * (1 - water) + 0.95 * g * water;
  b = (wax.inside[2] * clear + 24 * (1 - clear)) * l * (1 - water) + 0.82 * b * water;
  const gu = qu - light.towardsU * 0.22 + 0.06 * cell.hue;
  const gv = qv - light.towardsV * 0.22;
  const turned = Math.cos(cell.lie) * gu + Math.sin(cell.lie) * gv;
  const crossed = -Math.sin(cell.lie) * gu + Math.cos(cell.lie) * gv;
  const size = 0.05 + 0.06 * Math.abs(cell.hue);
  const spark = content.nectarShine * (1 - ease(0.6, 1.1, Math.hypot(turned / (size * 1.9), crossed / (size * 0.7))));
  const sky = 0.18 * content.nectarShine * (1 - ease(0.2, 0.34, Math.hypot(qu + 0.08, qv + 0.1)));
  const shine = spark * 230 + sky * 200 + 230 * water * crescent(cell, qu, qv, mouthHex);
  r += shine;
  g += shine;
  b += shine * 1.02;
  out[0] = r;
  out[1] = g;
  out[2] = b;
}

function shadeLarva(settings: PainterSettings, cell: PaintedCell, spot: Spot, out: Float64Array): void {
  const { wax, depth } = settings;
  const { qu, qv, s, sun, onBase } = spot;
  const direct = settings.light.direct;
  const ambient = 1 - direct;
  let r = out[0] as number;
  let g = out[1] as number;
  let b = out[2] as number;
  const size = cell.amount;
  // A curl round the middle of the base; a full-grown larva fills it.
  const curl = 0.1 + 0.14 * Math.min(1, size * 1.4);
  const thick = 0.045 + 0.14 * size;
  const cu = qu;
  const cv = qv;
  const angle = Math.atan2(cv, cu) - cell.lie;
  const turnedAngle = angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
  const span = 1.2 + 1.9 * Math.min(1, size * 1.3);
  const rr = Math.hypot(cu, cv);
  const off = Math.abs(turnedAngle) > span ? (Math.abs(turnedAngle) - span) * curl : 0;
  const distance = Math.hypot(rr - curl, off);
  const body = onBase || s > 0.75 ? 1 - ease(thick * 0.85, thick * 1.1, distance) : 0;
  if (body > 0) {
    const ringed = 0.93 + 0.07 * Math.sin(turnedAngle * 11);
    const bulge = 0.72 + 0.28 * (1 - ease(0, thick, distance));
    const l =
      (ambient * (1 - 0.4 * s * Math.min(1, depth / 2)) + direct * (0.3 + 0.75 * sun) + 0.15 * wax.glow) *
      ringed *
      bulge;
    const pearl = 0.9 * body;
    r = r * (1 - pearl) + 240 * l * pearl;
    g = g * (1 - pearl) + 236 * l * pearl;
    b = b * (1 - pearl) + 222 * l * pearl;
  } else if (size > 0.15 && onBase) {
    // Brood food shines a little.
    const wet = 0.35 * (1 - ease(0.2, 0.34, rr));
    r += wet * 60;
    g += wet * 60;
    b += wet * 55;
  }
  out[0] = r;
  out[1] = g;
  out[2] = b;
}

function shadeEgg(settings: PainterSettings, cell: PaintedCell, spot: Spot, out: Float64Array): void {
  const { qu, qv, sun } = spot;
  const direct = settings.light.direct;
  const ambient = 1 - direct;
  let r = out[0] as number;
  let g = out[1] as number;
  let b = out[2] as number;
  const eu = qu - 0.05 * cell.hue;
  const ev = qv - 0.06 * Math.cos(cell.lie * 3);
  const along = Math.cos(cell.lie) * eu + Math.sin(cell.lie) * ev;
  const side = -Math.sin(cell.lie) * eu + Math.cos(cell.lie) * ev;
  const egg = 1 - ease(0.8, 1.2, Math.hypot(along / 0.13, side / 0.034));
  const l = (0.55 + 0.45 * (ambient + direct * sun)) * egg;
  r = r * (1 - egg) + 236 * l;
  g = g * (1 - egg) + 234 * l;
  b = b * (1 - egg) + 224 * l;
  out[0] = r;
  out[1] = g;
  out[2] = b;
}

/** A thin bright arc where clear liquid climbs the wall, 0 to 1; every such cell has one. */
function crescent(cell: PaintedCell, qu: number, qv: number, mouthHex: number): number {
  const turned = Math.cos(Math.atan2(qv, qu) - 1.57 - 0.9 * cell.hue);
  const length = 0.55 + 0.35 * placeNoise(6, 1, cell.salt);
  const from = mouthHex * (0.55 + 0.3 * placeNoise(6, 2, cell.salt));
  return ease(length, length + 0.12, turned) * (1 - ease(0.015, 0.04, Math.abs(Math.hypot(qu, qv) - from)));
}
