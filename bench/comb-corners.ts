/*
 * How well frame corners are found on painted combs, what they do to the reading, and how well the tilt is told.
 *
 *   npx tsx bench/comb-corners.ts [family] [pictures]
 *
 * Three series of as many pictures each: whole frames with straight wood (real wood is; the painter bends it with the
 * rows), whole frames as drawn, and pictures without a whole frame, on which anything found is false.
 */
import { coarseClass } from '../packages/science/src/comb/cells/cell-classes.ts';
import type { CombResult } from '../packages/science/src/comb/comb-result.ts';
import { findFrameCorners } from '../packages/science/src/comb/frame/frame-corners.ts';
import { type PaintedComb, paintComb } from '../packages/science/src/comb/painter/paint-comb.ts';
import {
  drawSettings,
  type Family,
  type FixedSettings,
  type PainterSettings,
} from '../packages/science/src/comb/painter/settings.ts';
import { GreyPyramid } from '../packages/science/src/comb/photograph/grey-pyramid.ts';
import { readComb } from '../packages/science/src/comb/read-comb.ts';
import { scoreCells } from '../packages/science/src/comb/reading/score-reading.ts';

type Point = readonly [number, number];

const family = (process.argv[2] ?? 'held-out') as Family;
const pictures = Number(process.argv[3] ?? 60);
const firstSeed = family === 'held-out' ? 700_000 : 30_000;

/** Beyond this from its place, pitches, a corner is no use to a person. */
const useless = 3;

class Reading {
  readonly name: string;
  refused = 0;
  wanted = 0;
  hit = 0;
  false = 0;
  right = 0;
  decided = 0;
  constructor(name: string) {
    this.name = name;
  }
  add(painted: PaintedComb, result: CombResult): void {
    if (result.verdict === 'refused') {
      this.refused++;
      return;
    }
    const truth = painted.cells.map((cell) => ({
      x: cell.x,
      y: cell.y,
      pitch: cell.pitch,
      class: cell.class,
      coarse: cell.covered > 0.3 && cell.covered <= 0.6 ? ('not-decided' as const) : coarseClass(cell.class),
    }));
    const score = scoreCells(result.cells, truth, painted.width, painted.height);
    this.wanted += score.wantedVisible;
    this.hit += score.hitVisible;
    this.false += score.false;
    this.right += score.coarse.right;
    this.decided += score.coarse.decided;
  }
  line(): string {
    return (
      `  ${this.name.padEnd(34)} refused ${String(this.refused).padStart(2)}  recall of cells seen ${share(this.hit, this.wanted)}  ` +
      `precision ${share(this.hit, this.hit + this.false)} (${this.false} false)  sealed/open/hidden ${share(this.right, this.decided)}`
    );
  }
}

function share(a: number, b: number): string {
  return b > 0 ? (a / b).toFixed(4) : '-';
}

function at(values: readonly number[], q: number): string {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.length > 0
    ? (sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] as number).toFixed(3)
    : '-';
}

function errors(found: readonly Point[], opening: readonly Point[], pitch: number): number[] {
  // A frame turned by 45 degrees has two corners that may come first: the turn that fits best counts.
  let best: number[] = [];
  for (let turn = 0; turn < 4; turn++) {
    const off = found.map(([x, y], n) => {
      const [u, v] = opening[(n + turn) % 4] as Point;
      return Math.hypot(x - u, y - v) / pitch;
    });
    if (turn === 0 || Math.max(...off) < Math.max(...best)) best = off;
  }
  return best;
}

function trueTilt(settings: PainterSettings): number {
  return (Math.acos(Math.cos(settings.tiltX) * Math.cos(settings.tiltY)) * 180) / Math.PI;
}

function whole(title: string, fixed: FixedSettings): void {
  let inside = 0;
  let found = 0;
  let useful = 0;
  let insideUseful = 0;
  let kept = 0;
  const off: number[] = [];
  const milliseconds: number[] = [];
  const tilts: Record<string, number[]> = { 'by corners found': [], 'by corners set': [], 'by the lattice': [] };
  const small: Record<string, number[]> = { 'by corners found': [], 'by corners set': [], 'by the lattice': [] };
  const alone = new Reading('lattice alone');
  const self = new Reading('corners looked for');
  const person = new Reading('corners set (the true ones)');
  const near = new Reading('corners set, half a pitch astray');
  const aloneInside = new Reading('lattice alone, frame in picture');
  const personInside = new Reading('corners set, frame in picture');
  for (let n = 0; n < pictures; n++) {
    const settings = drawSettings(family, firstSeed + n, { ...fixed, frame: 'whole frame' });
    const painted = paintComb(settings, firstSeed + n);
    const opening = painted.opening as readonly Point[];
    const isInside = opening.every(([x, y]) => x >= 0 && y >= 0 && x < painted.width && y < painted.height);
    if (isInside) inside++;
    const before = process.cpuUsage();
    const corners = findFrameCorners(new GreyPyramid(painted));
    milliseconds.push(process.cpuUsage(before).user / 1000);
    if (corners) {
      found++;
      const these = errors(corners.corners, opening, settings.pitch);
      off.push(...these);
      if (Math.max(...these) < useless) {
        useful++;
        if (isInside) insideUseful++;
      }
    }
    const { width, height } = painted;
    // Five points are no frame: nothing is looked for, nothing cut off.
    const everything: Point[] = [
      [-1, -1],
      [width, -1],
      [width, height / 2],
      [width, height],
      [-1, height],
    ];
    const astray = opening.map(([x, y], k): Point => {
      const angle = 2.4 * (4 * n + k);
      return [x + 0.5 * settings.pitch * Math.cos(angle), y + 0.5 * settings.pitch * Math.sin(angle)];
    });
    const results = {
      'by the lattice': readComb(painted, { region: everything }),
      'by corners found': readComb(painted),
      'by corners set': readComb(painted, { region: opening }),
    };
    if (results['by corners found'].plane?.by === 'corners-found') kept++;
    alone.add(painted, results['by the lattice']);
    self.add(painted, results['by corners found']);
    person.add(painted, results['by corners set']);
    near.add(painted, readComb(painted, { region: astray }));
    if (isInside) {
      aloneInside.add(painted, results['by the lattice']);
      personInside.add(painted, results['by corners set']);
    }
    for (const [by, { plane }] of Object.entries(results)) {
      if (plane?.tiltDegrees == null || (by === 'by corners found' && plane.by !== 'corners-found')) continue;
      const true_ = trueTilt(settings);
      (true_ < 10 ? small : tilts)[by]?.push(Math.abs(plane.tiltDegrees - true_));
      if (process.env.EACH)
        console.log(
          n,
          by,
          true_.toFixed(1),
          plane.tiltDegrees.toFixed(1),
          plane.sides?.map((s) => s.toFixed(1)).join(' x '),
          `true ${((0.76 * width) / settings.pitch).toFixed(1)} x ${((0.72 * height) / settings.pitch).toFixed(1)}`,
        );
    }
  }
  console.log(`\n${title}: ${pictures} whole frames, all four corners in the picture in ${inside}`);
  console.log(
    `  corners found in ${found}; within ${useless} pitches in ${useful}; of those in the picture ${insideUseful} of ${inside}; kept by the reader in ${kept}`,
  );
  console.log(
    `  off by, pitches: middle ${at(off, 0.5)}, nine in ten below ${at(off, 0.9)}; processor ${at(milliseconds, 0.5)} ms, nine in ten below ${at(milliseconds, 0.9)}`,
  );
  for (const one of [alone, self, person, near, aloneInside, personInside]) console.log(one.line());
  for (const by of Object.keys(tilts)) {
    const a = tilts[by] as number[];
    const b = small[by] as number[];
    console.log(
      `  tilt ${by}, degrees off: from 10 degrees up ${at(a, 0.5)} middle, ${at(a, 0.9)} nine in ten (${a.length}); below 10 ${at(b, 0.5)}, ${at(b, 0.9)} (${b.length})`,
    );
  }
}

function none(): void {
  const found: Record<string, number> = { 'comb only': 0, 'one edge': 0 };
  let kept = 0;
  for (const frame of ['comb only', 'one edge'] as const) {
    for (let n = 0; n < pictures; n++) {
      const seed = firstSeed + 10_000 + n;
      const painted = paintComb(drawSettings(family, seed, { frame }), seed);
      if (!findFrameCorners(new GreyPyramid(painted))) continue;
      found[frame] = (found[frame] ?? 0) + 1;
      if (readComb(painted).plane?.by === 'corners-found') kept++;
    }
  }
  console.log(
    `\nno whole frame: corners found falsely on ${found['comb only']} of ${pictures} with comb only, ${found['one edge']} of ${pictures} with one edge; kept by the reader on ${kept}`,
  );
}

console.log(`${family} family, seeds from ${firstSeed}`);
none();
whole('straight wood, held within 20 degrees of level', { bend: 0, turn: 0.3 });
whole('as drawn', {});
