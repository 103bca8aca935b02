/** Bees on a painted comb and in its cells. Lengths in pitches, comb coordinates. */
import type { Chance } from '../../random/seeded.ts';
import type { Cover } from './cover.ts';
import { placeNoise, smoothNoise } from './noise.ts';
import type { Colour, PainterSettings } from './settings.ts';

interface Bee {
  readonly u: number;
  readonly v: number;
  readonly cos: number;
  readonly sin: number;
  readonly size: number;
  readonly headDown: boolean;
  readonly shade: number;
  readonly wings: number;
  readonly salt: number;
}

/** @returns a function that lays the bees at a place over `out` */
export function beesOver(
  settings: PainterSettings,
  chance: Chance,
  halfWidth: number,
  halfHeight: number,
  towardsU: number,
  towardsV: number,
): (u: number, v: number, out: Cover) => void {
  const bees = drawBees(settings, chance, halfWidth, halfHeight);
  const bins = new Map<number, number[]>();
  const bin = (u: number, v: number): number => (Math.floor(u / 2) + 5000) * 10_001 + Math.floor(v / 2) + 5000;
  bees.forEach((bee, n) => {
    for (let ou = -1; ou <= 1; ou++) {
      for (let ov = -1; ov <= 1; ov++) {
        const k = bin(bee.u + 2 * ou, bee.v + 2 * ov);
        const list = bins.get(k);
        if (list) list.push(n);
        else bins.set(k, [n]);
      }
    }
  });
  const direct = settings.light.direct;
  const throwU = -towardsU * 0.3;
  const throwV = -towardsV * 0.3;

  return (u, v, out) => {
    const near = bins.get(bin(u, v));
    if (near) {
      for (let k = near.length - 1; k >= 0; k--) {
        const bee = bees[near[k] as number] as Bee;
        const alpha = drawBee(settings, bee, u, v, towardsU, towardsV, out);
        if (alpha > 0) {
          out.alpha = alpha;
          if (alpha > 0.85) {
            out.opaque = true;
            break;
          }
        }
        if (!bee.headDown) {
          const su = u - throwU - bee.u;
          const sv = v - throwV - bee.v;
          const x = bee.cos * su + bee.sin * sv;
          const y = -bee.sin * su + bee.cos * sv;
          const d = (x + 0.1) ** 2 / 1.15 + y ** 2 / 0.16;
          if (d < 1.3) out.shadow = Math.min(out.shadow, 1 - 0.6 * direct * Math.min(1, (1.3 - d) / 0.5));
        }
      }
    }
  };
}

/** As many bees as cover the share of the settings, some of them in clusters. */
function drawBees(settings: PainterSettings, chance: Chance, halfWidth: number, halfHeight: number): Bee[] {
  const bees: Bee[] = [];
  const ground = 4 * halfWidth * halfHeight;
  // A bee hides about two square pitches; overlap makes the cover saturate like 1 - exp(-n a / A).
  const count = settings.beeCover > 0 ? Math.round((-Math.log(1 - settings.beeCover) * ground) / 1.75) : 0;
  const clusters = Array.from({ length: 1 + chance.integer(5) }, () => [
    chance.between(-1, 1) * halfWidth,
    chance.between(-1, 1) * halfHeight,
    chance.between(2, 0.5 * halfWidth + 3),
  ]);
  const clustered = chance.uniform() < 0.6 ? chance.between(0.2, 0.8) : 0;
  for (let k = 0; k < count; k++) {
    let u = chance.between(-1.02, 1.02) * halfWidth;
    let v = chance.between(-1.02, 1.02) * halfHeight;
    if (chance.uniform() < clustered) {
      const c = clusters[chance.integer(clusters.length)] as number[];
      u = (c[0] as number) + chance.normal() * (c[2] as number);
      v = (c[1] as number) + chance.normal() * (c[2] as number);
    }
    const heading = chance.between(0, 2 * Math.PI);
    bees.push({
      u,
      v,
      cos: Math.cos(heading),
      sin: Math.sin(heading),
      size: chance.between(0.92, 1.1),
      headDown: chance.uniform() < settings.headDown,
      shade: chance.between(0.75, 1.2),
      wings: chance.between(0.05, 0.45),
      salt: chance.integer(1_000_000),
    });
  }
  return bees;
}

/** Draws one bee at a place into `out`. @returns how opaque it is there, 0 to 1 */
function drawBee(
  settings: PainterSettings,
  bee: Bee,
  u: number,
  v: number,
  towardsU: number,
  towardsV: number,
  out: Cover,
): number {
  const look = settings.bees;
  const direct = settings.light.direct;
  const du = u - bee.u;
  const dv = v - bee.v;
  const x = (bee.cos * du + bee.sin * dv) / bee.size;
  const y = (-bee.sin * du + bee.cos * dv) / bee.size;
  if (x * x + y * y > 2.6) return 0;
  const lightSide = 0.78 + 0.3 * Math.max(-1, Math.min(1, ((-bee.sin * towardsU + bee.cos * towardsV) * y) / 0.4));
  const hairs = 1 + look.hair * 0.5 * (placeNoise(Math.floor(x * 26), Math.floor(y * 26), bee.salt) - 0.5);
  let alpha = 0;
  const set = (c: Colour, l: number, a: number): void => {
    out.r = c[0] * l * bee.shade;
    out.g = c[1] * l * bee.shade;
    out.b = c[2] * l * bee.shade;
    alpha = a;
  };
  if (bee.headDown) {
    // Only the striped end stands out of the cell.
    const rr = Math.hypot(x, y);
    if (rr < 0.4) {
      const ring = Math.sin(rr * 24) > 0.1;
      set(ring ? look.band : look.stripe, lightSide * hairs * (1.05 - rr), 1);
    }
    return alpha;
  }
  // Legs.
  for (const [lx, reach] of [
    [0.1, 0.62],
    [0.3, 0.7],
    [0.5, 0.6],
  ] as const) {
    const bent = lx + (Math.abs(y) - 0.2) * (lx - 0.3) * 1.6;
    if (Math.abs(y) > 0.2 && Math.abs(y) < reach && Math.abs(x - bent) < 0.035) set(look.stripe, 0.8, 0.9);
  }
  const ax = (x + 0.58) / 0.68;
  const ay = y / (0.42 - 0.1 * Math.max(0, -x - 0.6));
  if (ax * ax + ay * ay < 1) {
    const band = Math.sin((x + 1.2) * 17 + 0.6 * y * y) > -0.15 && x > -1.0;
    const round = Math.sqrt(Math.max(0, 1 - ay * ay * 0.8));
    set(band ? look.band : look.stripe, (0.45 + 0.6 * round) * lightSide * hairs, 1);
  }
  const tx = (x - 0.33) / 0.36;
  const ty = y / 0.34;
  if (tx * tx + ty * ty < 1) set(look.thorax, (0.7 + 0.4 * (1 - tx * tx - ty * ty)) * lightSide * hairs, 1);
  const hx = (x - 0.83) / 0.2;
  const hy = y / 0.27;
  if (hx * hx + hy * hy < 1) set([40, 32, 28], 0.9 * lightSide, 1);
  // Wings over the abdomen, half clear, with a milky sheen.
  for (const side of [-1, 1]) {
    const wx = x + 0.38;
    const wy = y - side * 0.2;
    const along = 0.965 * wx - side * -0.26 * wy;
    const over = side * -0.26 * wx + 0.965 * wy;
    if ((along / 0.72) ** 2 + (over / 0.2) ** 2 < 1) {
      const vein = smoothNoise(along * 7, over * 14 + 4, bee.salt) > 0.62 ? 0.25 : 0;
      const sheen = bee.wings + vein;
      const l = 205 * (0.6 + 0.4 * direct);
      if (alpha > 0.5) {
        out.r = out.r * (1 - sheen) + l * sheen;
        out.g = out.g * (1 - sheen) + l * 0.96 * sheen;
        out.b = out.b * (1 - sheen) + l * sheen;
      } else {
        out.r = l;
        out.g = l * 0.96;
        out.b = l;
        alpha = Math.max(alpha, 0.3 + 0.5 * sheen);
      }
    }
  }
  return alpha;
}
