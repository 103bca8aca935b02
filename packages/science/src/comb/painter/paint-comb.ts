/** Paints a comb whose truth is known: the test bed of the reader, and pictures for learning. All of it is invented. */
import { seeded } from '../../random/seeded.ts';
import type { DecidedClass } from '../cells/cell-classes.ts';
import { type Cover, coverOf } from './cover-comb.ts';
import { addNoise, blur, type Planes, saturate, sharpen, throughJpeg, tone } from './develop.ts';
import { contentFiller, type PaintedCell, type Sickness } from './fill-comb.ts';
import { smoothNoise } from './noise.ts';
import type { PainterSettings } from './settings.ts';
import { type Light, shadeCell } from './shade-cell.ts';
import { viewOf } from './view.ts';

/** The truth about one painted cell. */
export interface TrueCell {
  /** Centre of the mouth, pixels. */
  readonly x: number;
  readonly y: number;
  /** Local pitch, pixels. */
  readonly pitch: number;
  /** What it holds, or `hidden` when more than half of the mouth is covered. */
  readonly class: DecidedClass;
  /** What it holds even when hidden. */
  readonly holds: DecidedClass;
  readonly stage: 'egg' | 'larva' | 'none';
  /** Share of the mouth covered by bees, glove or brush, 0 to 1. */
  readonly covered: number;
  readonly sickness: Sickness;
  readonly degree: number;
  /** Lattice coordinates. */
  readonly column: number;
  readonly row: number;
}

export interface PaintedComb {
  readonly width: number;
  readonly height: number;
  /** RGB, three bytes per pixel. */
  readonly data: Uint8ClampedArray;
  readonly cells: readonly TrueCell[];
  /** Corners of the frame's opening where wood begins, clockwise from the top left, pixels; null unless a whole frame is painted. */
  readonly opening: readonly (readonly [number, number])[] | null;
}

const rowHeight = Math.sqrt(3) / 2;

/**
 * @param seed whole number; decides what the settings leave open (places of bees, contents, noise)
 */
export function paintComb(settings: PainterSettings, seed: number): PaintedComb {
  const chance = seeded(seed);
  const view = viewOf(settings, chance.between(0, 2 * Math.PI));
  const { width, height } = settings;

  // Size of the comb in pitches: all that is seen, or a frame with something behind it.
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

  // The cells.
  const fill = contentFiller(settings, chance, halfWidth, halfHeight);
  const firstRow = Math.floor(-halfHeight / rowHeight) - 2;
  const lastRow = Math.ceil(halfHeight / rowHeight) + 2;
  const firstColumn = Math.floor(-halfWidth) - 2;
  const columns = Math.ceil(halfWidth) + 2 - firstColumn + 1;
  const rows = lastRow - firstRow + 1;
  const cells: (PaintedCell | undefined)[] = new Array(columns * rows);
  const inset = 0.75;
  for (let row = firstRow; row <= lastRow; row++) {
    for (let c = 0; c < columns; c++) {
      const u0 = firstColumn + c + (row & 1 ? 0.5 : 0);
      const v0 = row * rowHeight;
      const cell = fill(u0, v0);
      cell.u += settings.jitter * Math.max(-2.5, Math.min(2.5, chance.normal()));
      cell.v += settings.jitter * Math.max(-2.5, Math.min(2.5, chance.normal()));
      if (u0 < left + inset || u0 > right - inset || v0 < top + inset || v0 > bottom - inset) continue;
      cells[(row - firstRow) * columns + c] = cell;
    }
  }

  const towardsU0 = Math.cos(settings.light.azimuth);
  const towardsV0 = Math.sin(settings.light.azimuth);
  // Light is given in picture directions; turn it into comb directions.
  const ct = Math.cos(-settings.turn);
  const st = Math.sin(-settings.turn);
  const flat = Math.cos(settings.light.height);
  const towardsU = (ct * towardsU0 - st * towardsV0) * flat;
  const towardsV = (st * towardsU0 + ct * towardsV0) * flat;
  const up = Math.sin(settings.light.height);
  const light: Light = { u: -towardsU / up, v: -towardsV / up, towardsU, towardsV, up };
  const coverAt = coverOf(settings, chance, halfWidth, halfHeight, towardsU, towardsV);

  const shadowTurn = chance.between(0, Math.PI);
  const shadowAt = chance.between(-0.3, 0.3);
  const gradientTurn = chance.between(0, 2 * Math.PI);
  const ground = chance.integer(3);
  const salt = chance.integer(100_000);
  const wood = [chance.between(200, 240), chance.between(165, 200), chance.between(110, 150)] as const;

  // Small cells are painted at two by two points per pixel, or the rims would be jagged.
  const points = settings.pitch < 24 ? 2 : 1;
  const planes: Planes = {
    width,
    height,
    red: new Float32Array(width * height),
    green: new Float32Array(width * height),
    blue: new Float32Array(width * height),
  };
  const out = new Float64Array(3);
  const cover: Cover = { r: 0, g: 0, b: 0, alpha: 0, shadow: 1, opaque: false };

  const background = (u: number, v: number, x: number, y: number): void => {
    const beyond = Math.max(left - u, u - right, top - v, v - bottom);
    const bar = 1.4 + (settings.frame === 'whole frame' ? 0.02 * width : 0.01 * width) / settings.pitch;
    if (beyond < 0) {
      // Between comb and wood: a dark gap.
      out[0] = 60;
      out[1] = 44;
      out[2] = 28;
    } else if (beyond < bar) {
      const along = left - u > 0 || u - right > 0 ? v : u;
      const fibre = 0.85 + 0.2 * smoothNoise(along * 0.15, beyond * 5, 4 + salt);
      out[0] = wood[0] * fibre;
      out[1] = wood[1] * fibre;
      out[2] = wood[2] * fibre;
    } else if (ground === 0) {
      const leaf = smoothNoise(x / 9, y / 9, salt) * 0.6 + 0.4 * smoothNoise(x / 3, y / 3, salt + 1);
      out[0] = 20 + 90 * leaf * leaf;
      out[1] = 40 + 110 * leaf * leaf;
      out[2] = 16 + 60 * leaf * leaf;
    } else if (ground === 1) {
      const soft = smoothNoise(x / 60, y / 60, salt);
      out[0] = 120 + 80 * soft;
      out[1] = 130 + 80 * soft;
      out[2] = 120 + 70 * soft;
    } else {
      const weave = 0.9 + 0.1 * Math.sin(x * 1.1) * Math.sin(y * 1.1);
      out[0] = 205 * weave;
      out[1] = 205 * weave;
      out[2] = 200 * weave;
    }
  };

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
        // Nearest and second nearest centre among the candidates round this place.
        const row0 = Math.round(v / rowHeight);
        let nearest: PaintedCell | undefined;
        let first = Infinity;
        let second = Infinity;
        let secondCell: PaintedCell | undefined;
        for (let row = row0 - 1; row <= row0 + 1; row++) {
          if (row < firstRow || row > lastRow) continue;
          const c0 = Math.round(u - (row & 1 ? 0.5 : 0)) - firstColumn;
          for (let c = c0 - 1; c <= c0 + 1; c++) {
            if (c < 0 || c >= columns) continue;
            const cell = cells[(row - firstRow) * columns + c];
            if (!cell) continue;
            const d = (cell.u - u) ** 2 + (cell.v - v) ** 2;
            if (d < first) {
              second = first;
              secondCell = nearest;
              first = d;
              nearest = cell;
            } else if (d < second) {
              second = d;
              secondCell = cell;
            }
          }
        }
        if (nearest && first < 0.42) {
          const edge =
            secondCell === undefined
              ? Math.max(0, 0.5 - Math.sqrt(first))
              : (second - first) / (2 * Math.hypot(secondCell.u - nearest.u, secondCell.v - nearest.v));
          const [slantU, slantV] = view.slant(u, v);
          shadeCell(settings, light, nearest, u - nearest.u, v - nearest.v, edge, slantU, slantV, out);
        } else background(u, v, px, py);
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
      const scale = 1 / (points * points);
      let shade =
        1 +
        settings.light.gradient *
          ((Math.cos(gradientTurn) * (x - width / 2)) / width + (Math.sin(gradientTurn) * (y - height / 2)) / height) *
          2;
      if (settings.light.shadow < 1) {
        const along =
          (Math.cos(shadowTurn) * (x - width / 2) + Math.sin(shadowTurn) * (y - height / 2)) / Math.max(width, height) -
          shadowAt;
        const inside = 0.5 * settings.light.shadowWidth - Math.abs(along);
        const soft = (0.3 * settings.pitch) / Math.max(width, height);
        const t = Math.max(0, Math.min(1, 0.5 + inside / soft));
        shade *= 1 - (1 - settings.light.shadow) * t;
      }
      const k = y * width + x;
      planes.red[k] = r * scale * shade * settings.light.cast[0];
      planes.green[k] = g * scale * shade * settings.light.cast[1];
      planes.blue[k] = b * scale * shade * settings.light.cast[2];
    }
  }

  // Cameras expose for the whole picture: bring the mean to a middle grey, so that `exposure` is an error of theirs.
  let total = 0;
  for (let k = 0; k < planes.red.length; k++) {
    total += 0.3 * (planes.red[k] as number) + 0.6 * (planes.green[k] as number) + 0.1 * (planes.blue[k] as number);
  }
  const gain = Math.min(2.6, (112 * planes.red.length) / Math.max(1, total)) * settings.light.exposure;
  for (const plane of [planes.red, planes.green, planes.blue]) {
    for (let k = 0; k < plane.length; k++) plane[k] = (plane[k] as number) * gain;
  }

  const { camera } = settings;
  blur(planes, (along) => camera.blur + camera.shallow * Math.abs(along - 0.5) * 2);
  if (camera.saturation !== 1) saturate(planes, camera.saturation);
  tone(planes, camera.contrast);
  if (camera.noise > 0) addNoise(planes, camera.noise, chance);
  if (camera.sharpen > 0) sharpen(planes, camera.sharpen);
  tone(planes, 1);
  if (camera.jpeg > 0) throughJpeg(planes, camera.jpeg, chance.uniform() < 0.6);

  const data = new Uint8ClampedArray(width * height * 3);
  for (let k = 0; k < width * height; k++) {
    data[3 * k] = planes.red[k] as number;
    data[3 * k + 1] = planes.green[k] as number;
    data[3 * k + 2] = planes.blue[k] as number;
  }

  const truth: TrueCell[] = [];
  for (let row = firstRow; row <= lastRow; row++) {
    for (let c = 0; c < columns; c++) {
      const cell = cells[(row - firstRow) * columns + c];
      if (!cell) continue;
      const [x, y] = view.toPicture(cell.u, cell.v);
      if (!(x >= 0 && y >= 0 && x < width && y < height)) continue;
      const [x1, y1] = view.toPicture(cell.u + 1, cell.v);
      const [x2, y2] = view.toPicture(cell.u, cell.v + 1);
      const pitch = Math.sqrt(Math.abs((x1 - x) * (y2 - y) - (y1 - y) * (x2 - x)));
      let covered = 0;
      for (let k = 0; k < 19; k++) {
        const ring = k === 0 ? 0 : k < 7 ? 0.2 : 0.36;
        const angle = k < 7 ? (k * Math.PI) / 3 : ((k - 7) * Math.PI) / 6;
        coverAt(cell.u + ring * Math.cos(angle), cell.v + ring * Math.sin(angle), cover);
        if (cover.opaque) covered++;
      }
      covered /= 19;
      const holds = classOf(cell);
      truth.push({
        x,
        y,
        pitch,
        class: covered > 0.5 ? 'hidden' : holds,
        holds,
        stage: cell.content === 'egg' ? 'egg' : cell.content === 'larva' ? 'larva' : 'none',
        covered,
        sickness: cell.sickness,
        degree: cell.degree,
        column: c + firstColumn - ((row - (row & 1)) >> 1),
        row,
      });
    }
  }
  return { width, height, data, cells: truth, opening: settings.frame === 'whole frame' ? cornersSeen() : null };

  function cornersSeen(): (readonly [number, number])[] {
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
}

function classOf(cell: PaintedCell): DecidedClass {
  switch (cell.content) {
    case 'worker':
      return 'sealed-worker-brood';
    case 'drone':
      return 'sealed-drone-brood';
    case 'honey':
      return cell.amount < 0.55 ? 'nectar' : 'sealed-honey';
    case 'empty':
      return 'open-empty';
    case 'egg':
    case 'larva':
      return 'egg-or-larva';
    case 'nectar':
      return 'nectar';
    case 'pollen':
      return 'pollen';
  }
}
