/*
 * How cappings of sealed worker brood look, each against its neighbours. Light, wax and camera change a capping's
 * brightness more than any disease does, so nothing here is absolute. These are measurements of a picture: dark, sunken
 * and perforated cappings are shown by several conditions and by healthy combs (half-capped honey, brood just emerging),
 * and a look at the cell decides, not a number.
 */
import type { LatticeCell } from '../lattice/lattice-cell.ts';
import type { GreyPyramid } from '../photograph/grey-pyramid.ts';
import { brightness, type Plane, shrink, valueAt } from '../photograph/picture.ts';

/** A number with how far to trust it, 0 to 1. */
export interface Measured {
  readonly value: number;
  readonly confidence: number;
}

/** What was measured on one capping. */
export interface CappingLook {
  /** Brightness over the middle of its neighbours' brightness, as a power of two: -1 is half as bright. */
  readonly brightness: Measured;
  /** Difference of colour from its neighbours whatever the brightness, in hundredths of the whole. */
  readonly colour: Measured;
  /**
   * How sunken it looks: -1 (domed like its neighbours) over 0 (flat) to 1 (shaded the other way round), from the way
   * brightness runs across it. Worth little in even light, and the confidence says so.
   */
  readonly sunken: Measured;
  /** Depth of the darkest small spot: 0 none, 1 black. */
  readonly perforation: Measured;
  /** Share of the capping's middle that such a spot takes up, 0 to 1. */
  readonly perforatedShare: number;
  /** How far it stands out among its neighbours: the largest of the four, in spreads of the neighbourhood. */
  readonly outlying: number;
  /** Which of the four that was. */
  readonly most: 'brightness' | 'colour' | 'sunken' | 'perforation';
}

/** Below this pitch, in pixels, cappings are not measured (a judgement: no picture was measured for it). */
export const smallestCappingPitch = 25;

const measuringPitch = 34;
const rings = [0, 0.09, 0.18, 0.27, 0.35] as const;

interface Raw {
  readonly level: number;
  readonly red: number;
  readonly blue: number;
  /** Brightness slope over the capping along picture x and y, per pitch, as a share of its level. */
  readonly slopeX: number;
  readonly slopeY: number;
  readonly hole: number;
  readonly holeShare: number;
}

/**
 * Measures cappings.
 *
 * @param cells the sealed worker brood cells of one picture, picture pixels
 * @returns one look for each cell, in order; undefined where fewer than five such neighbours are near to compare with
 */
export function measureCappings(
  pyramid: GreyPyramid,
  cells: readonly LatticeCell[],
  pitch: number,
): (CappingLook | undefined)[] {
  const { picture } = pyramid;
  const scale = Math.min(1, measuringPitch / pitch);
  const colour = shrink(picture, scale);
  const grey = scale === 1 ? pyramid.at(1) : brightness(colour);
  const ratioX = grey.width / picture.width;
  const ratioY = grey.height / picture.height;
  const raw = cells.map((cell) => measure(cell, grey, colour.red, colour.blue, ratioX, ratioY));
  const byPlace = new Map(cells.map((cell, n) => [`${cell.column},${cell.row}`, n]));

  return cells.map((cell, n) => {
    const own = raw[n] as Raw;
    const near: Raw[] = [];
    for (let dr = -4; dr <= 4; dr++) {
      for (let dc = Math.max(-4, -4 - dr); dc <= Math.min(4, 4 - dr); dc++) {
        if (dc === 0 && dr === 0) continue;
        const other = byPlace.get(`${cell.column + dc},${cell.row + dr}`);
        if (other !== undefined) near.push(raw[other] as Raw);
      }
    }
    if (near.length < 5) return undefined;
    const many = Math.min(1, near.length / 16);
    const level = middle(near.map((one) => one.level));
    const red = middle(near.map((one) => one.red));
    const blue = middle(near.map((one) => one.blue));
    const bright = Math.log2((own.level + 4) / (level + 4));
    const brightSpread = spreadAbout(near.map((one) => Math.log2((one.level + 4) / (level + 4)))) + 0.08;
    const tint = 100 * Math.hypot(own.red - red, own.blue - blue);
    const tintSpread = middle(near.map((one) => 100 * Math.hypot(one.red - red, one.blue - blue))) * 1.5 + 1.2;
    // The light's side is where most cappings are brighter. A hollow is brighter on the other side.
    const gx = middle(near.map((one) => one.slopeX));
    const gy = middle(near.map((one) => one.slopeY));
    const steep = Math.hypot(gx, gy);
    const scatter = Math.hypot(spreadAbout(near.map((one) => one.slopeX)), spreadAbout(near.map((one) => one.slopeY)));
    const along = steep > 1e-6 ? (own.slopeX * gx + own.slopeY * gy) / (steep * steep) : 0;
    const oneSided = Math.max(0, Math.min(1, steep / (0.5 * scatter + 0.05) - 0.4));
    const sunken = -Math.max(-1, Math.min(1, along));
    const holeUsual = middle(near.map((one) => one.hole));
    const holeSpread = spreadAbout(near.map((one) => one.hole)) + 0.05;
    const looks = {
      brightness: Math.max(0, -bright) / brightSpread,
      colour: tint / tintSpread,
      sunken: (oneSided * Math.max(0, sunken + 0.3) * 2 * steep) / (scatter * 0.5 + 0.04),
      perforation: Math.max(0, own.hole - holeUsual) / holeSpread,
    };
    const most = (Object.keys(looks) as (keyof typeof looks)[]).reduce((a, b) => (looks[b] > looks[a] ? b : a));
    return {
      brightness: { value: bright, confidence: many },
      colour: { value: tint, confidence: many },
      sunken: { value: sunken, confidence: many * oneSided },
      perforation: {
        value: own.hole,
        confidence: many * Math.max(0, Math.min(1, looks.perforation / 4)),
      },
      perforatedShare: own.holeShare,
      outlying: looks[most],
      most,
    };
  });
}

function measure(cell: LatticeCell, grey: Plane, red: Plane, blue: Plane, ratioX: number, ratioY: number): Raw {
  const x = (cell.x + 0.5) * ratioX - 0.5;
  const y = (cell.y + 0.5) * ratioY - 0.5;
  const ax = cell.ax * ratioX;
  const ay = cell.ay * ratioY;
  const e2x = (cell.bx * ratioX - 0.5 * ax) / 0.8660254;
  const e2y = (cell.by * ratioY - 0.5 * ay) / 0.8660254;
  const pitch = Math.sqrt(Math.abs(ax * e2y - ay * e2x));
  const values: number[] = [];
  let reds = 0;
  let blues = 0;
  let mx = 0;
  let my = 0;
  let sxx = 0;
  for (const [ring, radius] of rings.entries()) {
    const count = ring === 0 ? 1 : ring * 6;
    for (let k = 0; k < count; k++) {
      const angle = (2 * Math.PI * (k + 0.5 * (ring & 1))) / count;
      const u = radius * Math.cos(angle);
      const v = radius * Math.sin(angle);
      const px = u * ax + v * e2x;
      const py = u * ay + v * e2y;
      const value = valueAt(grey, x + px, y + py);
      values.push(value);
      reds += valueAt(red, x + px, y + py);
      blues += valueAt(blue, x + px, y + py);
      mx += (value * px) / pitch;
      my += (value * py) / pitch;
      sxx += (px / pitch) ** 2;
    }
  }
  const count = values.length;
  const mean = values.reduce((a, b) => a + b, 0) / count;
  const usual = middle(values);
  let least = usual;
  let dark = 0;
  for (let k = 0; k < count; k++) {
    const value = values[k] as number;
    if (value < 0.55 * usual) dark++;
    if (value < least) least = value;
  }
  const all = Math.max(12, 3 * mean);
  return {
    level: usual,
    red: reds / count / all,
    blue: blues / count / all,
    slopeX: mx / Math.max(1e-9, sxx) / Math.max(8, mean),
    slopeY: my / Math.max(1e-9, sxx) / Math.max(8, mean),
    hole: Math.max(0, 1 - least / Math.max(6, usual)),
    holeShare: dark / count,
  };
}

function middle(values: number[]): number {
  const sorted = values.slice().sort((a, b) => a - b);
  const n = sorted.length;
  if (n === 0) return 0;
  return n % 2 === 1 ? (sorted[n >> 1] as number) : 0.5 * ((sorted[n / 2 - 1] as number) + (sorted[n / 2] as number));
}

/** Spread like a standard deviation, blind to a few outliers: 1.4826 times the middle distance from the middle. */
function spreadAbout(values: number[]): number {
  const m = middle(values);
  return 1.4826 * middle(values.map((value) => Math.abs(value - m)));
}
