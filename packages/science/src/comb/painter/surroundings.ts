/** What stands behind and beside a painted comb, and the light that lies over the whole picture. */
import type { Chance } from '../../random/seeded.ts';
import type { Extent } from './extent.ts';
import { smoothNoise } from './noise.ts';
import type { PainterSettings } from './settings.ts';
import type { Light } from './shade-light.ts';

/** What the settings leave open of a comb's surroundings. */
export interface Surroundings {
  readonly shadowTurn: number;
  readonly shadowAt: number;
  readonly gradientTurn: number;
  /** Grass, something out of focus, or cloth. */
  readonly ground: number;
  readonly salt: number;
  readonly wood: readonly [number, number, number];
}

export function drawSurroundings(chance: Chance): Surroundings {
  const shadowTurn = chance.between(0, Math.PI);
  const shadowAt = chance.between(-0.3, 0.3);
  const gradientTurn = chance.between(0, 2 * Math.PI);
  const ground = chance.integer(3);
  const salt = chance.integer(100_000);
  const wood = [chance.between(200, 240), chance.between(165, 200), chance.between(110, 150)] as const;
  return { shadowTurn, shadowAt, gradientTurn, ground, salt, wood };
}

/** The light over the comb; settings give it in directions of the picture. */
export function lightOf(settings: PainterSettings): Light {
  const towardsU0 = Math.cos(settings.light.azimuth);
  const towardsV0 = Math.sin(settings.light.azimuth);
  // Light is given in picture directions; turn it into comb directions.
  const ct = Math.cos(-settings.turn);
  const st = Math.sin(-settings.turn);
  const flat = Math.cos(settings.light.height);
  const towardsU = (ct * towardsU0 - st * towardsV0) * flat;
  const towardsV = (st * towardsU0 + ct * towardsV0) * flat;
  const up = Math.sin(settings.light.height);
  return { u: -towardsU / up, v: -towardsV / up, towardsU, towardsV, up };
}

/**
 * Paints gap, wood or ground beyond the comb.
 *
 * @param u place on the comb's plane, pitches
 * @param x the same place in the picture, pixels
 * @param out receives red, green, blue
 */
export function shadeBeyond(
  settings: PainterSettings,
  { ground, salt, wood }: Surroundings,
  { left, right, top, bottom }: Extent,
  u: number,
  v: number,
  x: number,
  y: number,
  out: Float64Array,
): void {
  const { width } = settings;
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
}

/** How light a pixel is against the others: the light falls off across the picture, and something may cast a shadow. */
export function lightAt(settings: PainterSettings, around: Surroundings, x: number, y: number): number {
  const { width, height } = settings;
  const { shadowTurn, shadowAt, gradientTurn } = around;
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
  return shade;
}
