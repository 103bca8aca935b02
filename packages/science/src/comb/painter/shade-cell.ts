/*
 * The colour of a comb at one point: rims, and behind each mouth either a capping or the inside of the cell. The inside
 * is found by following the line of sight down a hexagonal tube until it meets wall, base or content, and then asking
 * whether the sun reaches that spot through the mouth. Lengths in pitches, light linear enough for a test bed.
 */

import type { PaintedCell } from './fill-comb.ts';
import { placeNoise, smoothNoise } from './noise.ts';
import type { PainterSettings } from './settings.ts';
import { shadeContent } from './shade-content.ts';
import { ease, hexagon, type Light } from './shade-light.ts';

/** Unit vectors across the three pairs of walls of a cell whose rows run along u. */
const across: readonly (readonly [number, number])[] = [
  [1, 0],
  [0.5, 0.8660254],
  [-0.5, 0.8660254],
];

/**
 * @param du place relative to the cell's centre
 * @param edge distance to the nearest wall's middle line, 0 at the wall
 * @param slantU sideways way of the line of sight per pitch of depth
 * @param out receives red, green, blue, 0 to about 255 (may exceed)
 */
export function shadeCell(
  settings: PainterSettings,
  light: Light,
  cell: PaintedCell,
  du: number,
  dv: number,
  edge: number,
  slantU: number,
  slantV: number,
  out: Float64Array,
): void {
  const grain = 0.92 + 0.16 * placeGrain(cell, du, dv);
  if (cell.content === 'worker' || cell.content === 'drone') {
    shadeCapping(settings, light, cell, du, dv, edge, grain, out);
  } else if (cell.content === 'honey' && !halfOpen(cell, du, dv)) {
    shadeHoney(settings, cell, du, dv, edge, out);
  } else {
    shadeInside(settings, light, cell, du, dv, edge, slantU, slantV, grain, out);
  }
}

/** A capping of sealed brood, sound or sick. */
function shadeCapping(
  settings: PainterSettings,
  light: Light,
  cell: PaintedCell,
  du: number,
  dv: number,
  edge: number,
  grain: number,
  out: Float64Array,
): void {
  const { wax } = settings;
  const direct = settings.light.direct;
  const ambient = 1 - direct;
  const drone = cell.content === 'drone';
  const reach = Math.min(1, Math.hypot(du, dv) / 0.5);
  const soft = Math.min(1, edge / 0.5);
  // Height of the capping: a plateau with a slight dip, falling to a moat at the edge; drones stand up like bullets.
  let rise = drone ? 0.95 : 0.22;
  let dip = drone ? 0 : 0.05;
  let tone = cell.shade;
  let shine = 0;
  let dark = 0;
  if (cell.sickness === 'sunken') {
    rise = 0.22 - 0.62 * cell.degree;
    dip = 0.05 + 0.2 * cell.degree;
    tone *= 1 - 0.35 * cell.degree;
    shine = 0.5 * cell.degree;
  } else if (cell.sickness === 'dark') {
    tone *= 1 - 0.55 * cell.degree;
    shine = 0.35 * cell.degree;
  } else if (cell.sickness === 'perforated') {
    rise = 0.22 - 0.3 * cell.degree;
    tone *= 1 - 0.2 * cell.degree;
    const ragged = 0.75 + 0.5 * smoothNoise(Math.atan2(dv - cell.holeV, du - cell.holeU) * 1.6 + 9, 3, cell.salt);
    const hole = (0.05 + 0.13 * cell.degree) * ragged;
    dark = 1 - ease(hole * 0.7, hole * 1.25, Math.hypot(du - cell.holeU, dv - cell.holeV));
  }
  // Slope of the height profile along the radius; positive outwards means falling.
  const fall = rise * 2 * reach * (drone ? 1 : ease(0.25, 1, reach)) - dip * 4 * reach * (1 - ease(0.2, 0.6, reach));
  const angleU = reach > 1e-6 ? du / (reach * 0.5) : 0;
  const angleV = reach > 1e-6 ? dv / (reach * 0.5) : 0;
  const bumpU = 0.25 * (smoothNoise(du * 9 + 5, dv * 9, cell.salt) - 0.5);
  const bumpV = 0.25 * (smoothNoise(du * 9, dv * 9 + 5, cell.salt + 1) - 0.5);
  const nu = fall * angleU + bumpU;
  const nv = fall * angleV + bumpV;
  const lambert =
    Math.max(0, nu * light.towardsU + nv * light.towardsV + light.up) / Math.sqrt(1 + nu * nu + nv * nv) / light.up;
  const moat = drone ? 0.45 * (1 - ease(0.01, 0.1, edge)) : 0.6 * (1 - ease(0.015, 0.085, edge));
  const corner = 0.25 * ease(0.5, 0.58, Math.hypot(du, dv));
  const lit = (ambient * (0.75 + 0.25 * soft) + direct * Math.min(1.6, lambert)) * tone * grain;
  const shadeIt = lit * (1 - moat) * (1 - corner) * (1 - 0.88 * dark);
  const hue = 1 + 0.05 * cell.hue;
  let r = wax.capping[0] * shadeIt * (drone ? 1.04 : 1);
  let g = wax.capping[1] * shadeIt * hue;
  let b = wax.capping[2] * shadeIt * hue * (1 - 0.3 * shine);
  if (shine > 0) {
    const spark =
      shine *
      90 *
      direct *
      ease(0.93, 1, (nu * light.towardsU + nv * light.towardsV + light.up) / Math.sqrt(1 + nu * nu + nv * nv));
    r += spark;
    g += spark;
    b += spark;
  }
  out[0] = r;
  out[1] = g;
  out[2] = b;
}

/** A capping of honey: pale and folded where dry, darker where wet. */
function shadeHoney(
  settings: PainterSettings,
  cell: PaintedCell,
  du: number,
  dv: number,
  edge: number,
  out: Float64Array,
): void {
  const { wax, content } = settings;
  const direct = settings.light.direct;
  const ambient = 1 - direct;
  const wetness = ease(
    0.52,
    0.66,
    smoothNoise((cell.u + du) * 0.8 + 31, (cell.v + dv) * 0.8 + 7, 77 + (settings.width % 13)),
  );
  const fold = 0.9 + 0.2 * smoothNoise((cell.u + du) * 4, (cell.v + dv) * 4, 5);
  const line = content.honeyWalls * (1 - ease(0.0, 0.09, edge));
  const lit = (ambient + direct * (0.85 + 0.3 * fold - 0.15)) * fold * (0.85 + 0.15 * cell.shade) * (1 - 0.5 * line);
  out[0] = (wax.honey[0] + (wax.wet[0] - wax.honey[0]) * wetness) * lit;
  out[1] = (wax.honey[1] + (wax.wet[1] - wax.honey[1]) * wetness) * lit;
  out[2] = (wax.honey[2] + (wax.wet[2] - wax.honey[2]) * wetness) * lit;
}

/** The inside of an open cell behind its rim: wall or base where the line of sight meets it, and what lies there. */
function shadeInside(
  settings: PainterSettings,
  light: Light,
  cell: PaintedCell,
  du: number,
  dv: number,
  edge: number,
  slantU: number,
  slantV: number,
  grain: number,
  out: Float64Array,
): void {
  const { wax } = settings;
  const direct = settings.light.direct;
  const ambient = 1 - direct;
  const wall = wax.wall;
  // Rim and mouth. Mouths are rounder than the hexagon of the walls.
  const hex = hexagon(du, dv);
  const round = Math.hypot(du, dv);
  const rounded = 0.55 * hex + 0.45 * round * 0.97;
  const mouth = 0.5 - wall;
  const onRim = Math.max(ease(mouth - 0.03, mouth + 0.03, rounded), 1 - ease(wall * 0.6, wall * 1.15, edge));
  const depth = settings.depth;
  const fu = slantU * depth;
  const fv = slantV * depth + settings.slope * 0.3;
  const mouthHex = Math.max(mouth - 0.01, 0.2);
  const pu = du * Math.min(1, (mouthHex - 0.005) / Math.max(1e-6, hex));
  const pv = dv * Math.min(1, (mouthHex - 0.005) / Math.max(1e-6, hex));
  let deepest = 1;
  const filled = cell.content === 'nectar' || cell.content === 'pollen';
  if (filled) deepest = cell.amount;
  let s = deepest;
  let hitWall = -1;
  let facing = 0;
  for (let k = 0; k < 3; k++) {
    const [nu, nv] = across[k] as readonly [number, number];
    const start = nu * pu + nv * pv;
    const way = nu * fu + nv * fv;
    if (Math.abs(way) < 1e-9) continue;
    const limit = way > 0 ? (mouthHex - start) / way : (-mouthHex - start) / way;
    if (limit < s) {
      s = Math.max(0, limit);
      hitWall = k;
      facing = way > 0 ? -(nu * light.towardsU + nv * light.towardsV) : nu * light.towardsU + nv * light.towardsV;
    }
  }
  const qu = pu + s * fu;
  const qv = pv + s * fv;
  // Sunlight: follow it back from the spot to the mouth.
  const backU = qu - s * depth * light.u;
  const backV = qv - s * depth * light.v;
  const sun = 1 - ease(mouthHex - 0.05, mouthHex + 0.03, hexagon(backU, backV));
  const open = 1 - ease(0, 1, s * Math.min(1, depth / 1.5)) * 0.72;
  const glow = wax.glow * (0.35 + 0.65 * s);
  let lit = ambient * open * 0.95 + direct * sun * (hitWall >= 0 ? 0.85 : 0.9) + glow * 0.75;
  lit = Math.min(1.25, lit) * (0.9 + 0.1 * cell.shade) * grain;
  if (hitWall >= 0) lit *= 1 + settings.wallFacing * facing;
  else lit *= 1 + settings.seeThrough * behind(cell, qu, qv);
  // Corners of the tube are darker.
  const corner = ease(0.36, 0.56, Math.hypot(qu, qv));
  lit *= 1 - 0.18 * corner;
  let r = wax.inside[0] * lit;
  let g = wax.inside[1] * lit;
  let b = wax.inside[2] * lit;
  if (hitWall < 0) {
    // Base: three rhombs meet in the middle.
    const facet = Math.floor(((Math.atan2(qv, qu) + Math.PI) / (2 * Math.PI)) * 3 + 0.25) % 3;
    const tint = 0.94 + 0.06 * facet;
    const pale = settings.paleBase * Math.max(0.15, wax.glow + 0.15);
    r = (r * (1 - pale) + 205 * lit * pale) * tint;
    g = (g * (1 - pale) + 198 * lit * pale) * tint;
    b = (b * (1 - pale) + 165 * lit * pale) * tint;
    const blur = 0.5 * settings.seeThrough * paleBlur(cell, qu, qv);
    r += (235 * lit - r) * blur;
    g += (228 * lit - g) * blur;
    b += (200 * lit - b) * blur;
  }
  out[0] = r;
  out[1] = g;
  out[2] = b;
  shadeContent(settings, light, cell, { qu, qv, s, sun, glow, mouthHex, onBase: hitWall < 0 }, out);
  r = out[0] as number;
  g = out[1] as number;
  b = out[2] as number;
  if (settings.glints > 0 && hitWall < 0 && !filled) {
    const glint = 220 * smallGlint(cell, settings.glints, qu, qv);
    r += glint;
    g += glint;
    b += glint;
  }
  if (cell.scale && hitWall >= 0 && dv > 0.05 && s > 0.12) {
    r *= 0.35;
    g *= 0.3;
    b *= 0.3;
  }
  if (onRim > 0) {
    // The rim is a rounded ridge: bright on the side of the light.
    const slope = (round > 1e-6 ? 1 / round : 0) * (ease(mouth - 0.05, 0.5, rounded) - 0.5);
    const facing = -slope * (du * light.towardsU + dv * light.towardsV);
    const l = (ambient * 0.95 + direct * Math.max(0.35, 1 + 0.9 * facing)) * grain * (1 + 0.15 * wax.glow);
    r = r * (1 - onRim) + wax.rim[0] * l * onRim;
    g = g * (1 - onRim) + wax.rim[1] * l * onRim;
    b = b * (1 - onRim) + wax.rim[2] * l * onRim;
  }
  out[0] = r;
  out[1] = g;
  out[2] = b;
}

/** A honey cell being capped has a round hole left in the middle. */
function halfOpen(cell: PaintedCell, du: number, dv: number): boolean {
  return cell.amount < 1 && Math.hypot(du - 0.5 * cell.holeU, dv - 0.5 * cell.holeV) < 0.42 * (1 - cell.amount);
}

/**
 * Light through the base of a new comb, about -0.6 to 0.3: the walls of three cells behind meet under its middle, and what
 * is beyond them is lighter here and darker there.
 */
function behind(cell: PaintedCell, qu: number, qv: number): number {
  let nearest = 1;
  for (const [du, dv] of arms) {
    if (du * qu + dv * qv > 0) nearest = Math.min(nearest, Math.abs(du * qv - dv * qu));
  }
  const wall = 1 - ease(0.015, 0.09, nearest);
  const beyond = smoothNoise((cell.u + qu) * 0.9 + 13, (cell.v + qv) * 0.9 + 5, 51);
  return 0.6 * (beyond - 0.5) - 0.25 * wall;
}

/** Directions of the walls behind the base, at every other corner of the cell. */
const arms: readonly (readonly [number, number])[] = [
  [0, 1],
  [-0.8660254, -0.5],
  [0.8660254, -0.5],
];

/** A pale blur on the base of every other cell seen through, 0 to 1. */
function paleBlur(cell: PaintedCell, qu: number, qv: number): number {
  const strength = Math.max(0, 2 * placeNoise(5, 1, cell.salt) - 1);
  const offU = 0.2 * (placeNoise(5, 2, cell.salt) - 0.5);
  const offV = 0.2 * (placeNoise(5, 3, cell.salt) - 0.5);
  return strength * (1 - ease(0.08, 0.34, Math.hypot(qu - offU, qv - offV)));
}

/** One or two glints on a floor that is only wet or smooth, 0 to 1. */
function smallGlint(cell: PaintedCell, share: number, qu: number, qv: number): number {
  let glint = 0;
  for (let k = 0; k < 2; k++) {
    if (placeNoise(7 + k, 0, cell.salt) > share * (k === 0 ? 1 : 0.4)) continue;
    const atU = 0.5 * (placeNoise(7 + k, 1, cell.salt) - 0.5);
    const atV = 0.5 * (placeNoise(7 + k, 2, cell.salt) - 0.5);
    const size = 0.02 + 0.025 * placeNoise(7 + k, 3, cell.salt);
    const strength = 0.35 + 0.65 * placeNoise(7 + k, 4, cell.salt);
    glint = Math.max(glint, strength * (1 - ease(0.7 * size, 1.4 * size, Math.hypot(qu - atU, qv - atV))));
  }
  return glint;
}

function placeGrain(cell: PaintedCell, du: number, dv: number): number {
  return placeNoise(Math.floor(du * 40), Math.floor(dv * 40), cell.salt);
}
