/** Decides what every cell of a painted comb holds: a brood nest in rings, with patches and failures, or something else. */
import type { Chance } from '../../random/seeded.ts';
import { placeNoise, smoothNoise } from './noise.ts';
import type { Colour, PainterSettings } from './settings.ts';

export type Sickness = 'none' | 'sunken' | 'perforated' | 'dark';

/** What one painted cell holds. Lengths in pitches. */
export interface PaintedCell {
  /** Centre in comb coordinates. */
  u: number;
  v: number;
  content: 'worker' | 'drone' | 'honey' | 'empty' | 'egg' | 'larva' | 'nectar' | 'pollen';
  /** Larva: size of its curl. Nectar and pollen: depth of the surface. Honey: how much of it is already capped. */
  amount: number;
  /** Direction in which a larva or egg lies, radians. */
  lie: number;
  /** Brightness of this cell's capping or wall relative to the comb's. */
  shade: number;
  /** Slight change of hue, -1 to 1. */
  hue: number;
  sickness: Sickness;
  /** How far the sickness has gone, 0 to 1. */
  degree: number;
  holeU: number;
  holeV: number;
  /** Dark scale on the lower wall. */
  scale: boolean;
  colour: Colour;
  salt: number;
}

const pollens: readonly Colour[] = [
  [96, 74, 26],
  [120, 96, 40],
  [176, 110, 28],
  [200, 150, 40],
  [110, 100, 76],
  [150, 60, 24],
  [84, 70, 52],
];

/** @returns the content of a cell at lattice place (u, v); draws from chance in the order of the calls */
export function contentFiller(
  settings: PainterSettings,
  chance: Chance,
  halfWidth: number,
  halfHeight: number,
): (u: number, v: number) => PaintedCell {
  const { content } = settings;
  const salt = chance.integer(1_000_000);
  const nestU = chance.between(-0.3, 0.3) * halfWidth;
  const nestV = chance.between(-0.3, 0.3) * halfHeight;
  const nestWide = chance.between(0.6, 1.2) * halfWidth;
  const nestHigh = chance.between(0.6, 1.2) * halfHeight;
  const rings = chance.between(0.55, 0.9);
  const youngAt = chance.between(0, 0.9);
  // Pollen strays from its palette, and no two plugs are quite alike.
  const stray = (colour: Colour, which: number): Colour => {
    if (content.pollenSpread === 0) return colour;
    const f = (k: number): number => Math.exp(0.35 * content.pollenSpread * (2 * placeNoise(k, which, salt) - 1));
    return [colour[0] * f(0), colour[1] * f(1), colour[2] * f(2)];
  };
  const patches = Array.from({ length: content.pollenPatches }, () => ({
    u: chance.between(-1, 1) * halfWidth,
    v: chance.between(-1, 1) * halfHeight,
    r: chance.between(1, 3.2),
    colour: pollens[chance.integer(pollens.length)] as Colour,
  }));
  const dronePatch = { u: chance.between(-0.8, 0.8) * halfWidth, v: chance.between(-0.8, 0.8) * halfHeight };
  const scattered = chance.uniform() < 0.5;
  const openKind = chance.uniform();

  return (u, v) => {
    const cell: PaintedCell = {
      u,
      v,
      content: 'empty',
      amount: 0,
      lie: chance.between(0, 2 * Math.PI),
      shade: Math.exp(content.cappingSpread * Math.max(-2.2, Math.min(2.2, chance.normal()))),
      hue: chance.between(-1, 1),
      sickness: 'none',
      degree: 0,
      holeU: chance.between(-0.16, 0.16),
      holeV: chance.between(-0.16, 0.16),
      scale: false,
      colour: pollens[chance.integer(pollens.length)] as Colour,
      salt: chance.integer(1_000_000),
    };
    const wave = smoothNoise(u / 5 + 100, v / 5 + 100, salt) - 0.5;
    const far = Math.hypot((u - nestU) / nestWide, (v - nestV) / nestHigh) + 0.35 * wave;
    const sealed = (): void => {
      if (chance.uniform() < content.missed) {
        const draw = chance.uniform();
        if (draw < 0.55) cell.content = 'empty';
        else young();
        return;
      }
      const drone =
        content.drone > 0 &&
        (scattered
          ? chance.uniform() < content.drone * 0.5
          : Math.hypot(u - dronePatch.u, v - dronePatch.v) < 2 + 12 * content.drone);
      cell.content = drone ? 'drone' : 'worker';
      if (chance.uniform() < content.sick) {
        const draw = chance.uniform();
        cell.sickness = draw < 0.45 ? 'sunken' : draw < 0.75 ? 'perforated' : 'dark';
        cell.degree = chance.between(0.25, 1);
      }
    };
    const young = (): void => {
      if (chance.uniform() < 0.35) cell.content = 'egg';
      else {
        cell.content = 'larva';
        cell.amount = chance.between(0.12, 1);
      }
    };
    const stores = (): void => {
      const ripe = smoothNoise(u / 7 + 40, v / 7 - 9, salt + 3) + chance.between(-0.2, 0.2);
      if (ripe > 0.58) {
        cell.content = 'honey';
        cell.amount = ripe < 0.66 ? chance.between(0.3, 0.95) : 1;
      } else if (ripe > 0.28) {
        cell.content = 'nectar';
        cell.amount = chance.between(0.12, 0.75);
      } else cell.content = 'empty';
    };
    const openMix = (): void => {
      if (openKind < 0.3) cell.content = 'empty';
      else if (chance.uniform() < 0.25) {
        cell.content = 'nectar';
        cell.amount = chance.between(0.15, 0.9);
      } else cell.content = 'empty';
    };
    switch (content.kind) {
      case 'all sealed':
        sealed();
        break;
      case 'empty comb':
        openMix();
        break;
      case 'stores':
        stores();
        break;
      case 'mixed': {
        const draw = chance.uniform();
        if (draw < 0.4) sealed();
        else if (draw < 0.6) young();
        else if (draw < 0.72) {
          cell.content = 'pollen';
          cell.amount = chance.between(0.1, 0.6);
        } else if (draw < 0.85) {
          cell.content = 'nectar';
          cell.amount = chance.between(0.12, 0.8);
        } else cell.content = 'empty';
        break;
      }
      case 'brood nest': {
        if (far < rings) {
          // Inside the nest the queen went round in rings: a band of open brood between sealed ones.
          const band = Math.abs(far / rings - youngAt);
          if (band < 0.16) young();
          else sealed();
        } else if (far < rings + 0.18) {
          if (chance.uniform() < 0.6) {
            cell.content = 'pollen';
            cell.amount = chance.between(0.1, 0.6);
          } else if (chance.uniform() < 0.4) young();
          else openMix();
        } else stores();
        break;
      }
    }
    for (const patch of patches) {
      if (Math.hypot(u - patch.u, v - patch.v) < patch.r && chance.uniform() < 0.85) {
        cell.content = 'pollen';
        cell.amount = chance.between(0.1, 0.6);
        cell.colour = chance.uniform() < 0.7 ? patch.colour : cell.colour;
      }
    }
    cell.colour = stray(cell.colour, cell.salt);
    if (cell.content === 'empty' && content.scale > 0 && chance.uniform() < content.scale) cell.scale = true;
    return cell;
  };
}
