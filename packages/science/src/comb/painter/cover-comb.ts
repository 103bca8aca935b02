/** What lies over a painted comb: bees on it and in it, a glove, a brush. Lengths in pitches, comb coordinates. */
import type { Chance } from '../../random/seeded.ts';
import { beesOver } from './bees.ts';
import type { Cover } from './cover.ts';
import { smoothNoise } from './noise.ts';
import type { Colour, PainterSettings } from './settings.ts';

/** Lays one thing over `out` at a place on the comb. */
type Layer = (u: number, v: number, out: Cover) => void;

/** @returns a function that fills `out` for a place on the comb */
export function coverOf(
  settings: PainterSettings,
  chance: Chance,
  halfWidth: number,
  halfHeight: number,
  towardsU: number,
  towardsV: number,
): Layer {
  const bees = beesOver(settings, chance, halfWidth, halfHeight, towardsU, towardsV);
  // Both are drawn from chance, seen or not, so that a comb with a glove has the cells of the one without.
  const glove = gloveOver(chance, halfWidth, halfHeight);
  const brush = brushOver(chance, halfWidth, halfHeight);
  return (u, v, out) => {
    out.alpha = 0;
    out.shadow = 1;
    out.opaque = false;
    bees(u, v, out);
    if (settings.glove) glove(u, v, out);
    if (settings.brush) brush(u, v, out);
  };
}

/** Three fingers of a glove that reach in from one side. */
function gloveOver(chance: Chance, halfWidth: number, halfHeight: number): Layer {
  const gloveColour: Colour = (
    [
      [150, 200, 225],
      [235, 225, 200],
      [225, 190, 90],
      [90, 110, 160],
    ] as const
  )[chance.integer(4)] as Colour;
  const gloveSide = chance.integer(4);
  const gloveAt = chance.between(-0.6, 0.6);
  return (u, v, out) => {
    const [pu, pv] =
      gloveSide === 0
        ? [u + halfWidth, v - gloveAt * halfHeight]
        : gloveSide === 1
          ? [halfWidth - u, v - gloveAt * halfHeight]
          : gloveSide === 2
            ? [v + halfHeight, u - gloveAt * halfWidth]
            : [halfHeight - v, u - gloveAt * halfWidth];
    const finger = halfHeight * 0.18;
    for (let f = -1; f <= 1; f++) {
      const off = pv - f * finger * 1.15;
      const length = halfWidth * (0.3 + 0.08 * (1 - Math.abs(f)));
      const tip = Math.max(0, pu - length);
      const d = Math.hypot(tip, off) / (finger * 0.55);
      if (d < 1) {
        const l = (0.55 + 0.45 * Math.sqrt(1 - d * d)) * (0.9 + 0.2 * smoothNoise(u * 0.7, v * 0.7, 12));
        out.r = gloveColour[0] * l;
        out.g = gloveColour[1] * l;
        out.b = gloveColour[2] * l;
        out.alpha = 1;
        out.opaque = true;
      }
    }
  };
}

/** A bee brush laid across the comb: its handle and its bristles. */
function brushOver(chance: Chance, halfWidth: number, halfHeight: number): Layer {
  const brushTurn = chance.between(0, Math.PI);
  const brushAt = chance.between(-0.5, 0.5) * halfHeight;
  return (u, v, out) => {
    const x = Math.cos(brushTurn) * u + Math.sin(brushTurn) * (v - brushAt);
    const y = -Math.sin(brushTurn) * u + Math.cos(brushTurn) * (v - brushAt);
    const wide = halfHeight * 0.1;
    if (Math.abs(y) < wide && x > -halfWidth * 0.5 && x < halfWidth * 0.9) {
      out.r = 232;
      out.g = 190;
      out.b = 66;
      out.alpha = 1;
      out.opaque = true;
    } else if (y >= wide && y < wide * 3.4 && x > -halfWidth * 0.45 && x < halfWidth * 0.85) {
      const bristle = 0.6 + 0.5 * smoothNoise(x * 6, y * 0.6, 8);
      out.r = 235 * bristle;
      out.g = 235 * bristle;
      out.b = 228 * bristle;
      out.alpha = 1;
      out.opaque = true;
    }
  };
}
