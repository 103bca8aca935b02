/*
 * How well science/comb reads: painted combs of the held-out family (settings never used for tuning or training), curves
 * against pitch, blur, tilt, bees and shadow, and the real pictures.
 *
 *   npx tsx bench/comb-evaluate.ts [family] [pictures] [curves|no-curves]
 */
import { readFileSync } from 'node:fs';
import { decodePicture } from '../packages/cli/src/decode-picture.ts';
import { cellClasses, coarseClass } from '../packages/science/src/comb/cells/cell-classes.ts';
import type { CombResult } from '../packages/science/src/comb/comb-result.ts';
import { type PaintedComb, paintComb } from '../packages/science/src/comb/painter/paint-comb.ts';
import { drawSettings, type Family, type FixedSettings } from '../packages/science/src/comb/painter/settings.ts';
import { readComb } from '../packages/science/src/comb/read-comb.ts';
import { type ScoredTruth, scoreCells, trueSolidness } from '../packages/science/src/comb/reading/score-reading.ts';

const family = (process.argv[2] ?? 'held-out') as Family;
const pictures = Number(process.argv[3] ?? 120);
const curves = process.argv[4] !== 'no-curves';
const firstSeed = family === 'held-out' ? 500_000 : 10_000;

class Tally {
  pictures = 0;
  refused = 0;
  wanted = 0;
  hit = 0;
  wantedVisible = 0;
  hitVisible = 0;
  false = 0;
  coarse = { decided: 0, right: 0, undecided: 0 };
  fine = { decided: 0, right: 0, undecided: 0 };
  confusion = new Map<string, number>();
  solidness: number[] = [];
  reasons = new Map<string, number>();

  add(painted: PaintedComb, result: CombResult): void {
    this.pictures++;
    if (result.verdict === 'refused') {
      this.refused++;
      for (const reason of result.reasons) this.reasons.set(reason, (this.reasons.get(reason) ?? 0) + 1);
      return;
    }
    const truth = painted.cells.map(
      (cell): ScoredTruth => ({
        x: cell.x,
        y: cell.y,
        pitch: cell.pitch,
        class: cell.class,
        coarse: cell.covered > 0.3 && cell.covered <= 0.6 ? 'not-decided' : coarseClass(cell.class),
      }),
    );
    const score = scoreCells(result.cells, truth, painted.width, painted.height);
    this.wanted += score.wanted;
    this.hit += score.hit;
    this.wantedVisible += score.wantedVisible;
    this.hitVisible += score.hitVisible;
    this.false += score.false;
    // Mouths between three and six tenths covered have no clear truth: placed, not classed.
    for (const [pair, count] of score.coarseConfusion) {
      const [true_, read] = pair.split(' > ') as [string, string];
      if (true_ === 'not-decided') continue;
      if (read === 'not-decided') this.coarse.undecided += count;
      else {
        this.coarse.decided += count;
        if (true_ === read) this.coarse.right += count;
      }
    }
    for (const part of ['decided', 'right', 'undecided'] as const) this.fine[part] += score.fine[part];
    for (const [pair, count] of score.confusion) this.confusion.set(pair, (this.confusion.get(pair) ?? 0) + count);
    // The truth of what a reader can be asked about: cells not cut by the picture's edge.
    const whole = painted.cells.filter((cell) => {
      const margin = 0.5 * cell.pitch;
      return cell.x > margin && cell.y > margin && cell.x < painted.width - margin && cell.y < painted.height - margin;
    });
    const solid = trueSolidness(whole);
    if (solid !== undefined && result.reading?.solidness) this.solidness.push(result.reading.solidness.value - solid);
  }

  line(): string {
    const share = (a: number, b: number): string => (b > 0 ? (a / b).toFixed(3) : '  -  ');
    const absolute = this.solidness.map(Math.abs).sort((a, b) => a - b);
    const at = (q: number): string =>
      absolute.length > 0
        ? (absolute[Math.min(absolute.length - 1, Math.floor(q * absolute.length))] as number).toFixed(3)
        : '-';
    return (
      `${String(this.pictures).padStart(4)} pictures ${String(this.refused).padStart(3)} refused  ` +
      `recall ${share(this.hit, this.wanted)} (visible ${share(this.hitVisible, this.wantedVisible)})  ` +
      `precision ${share(this.hit, this.hit + this.false)}  ` +
      `sealed/open/hidden ${share(this.coarse.right, this.coarse.decided)} (undecided ${share(this.coarse.undecided, this.coarse.undecided + this.coarse.decided)})  ` +
      `class ${share(this.fine.right, this.fine.decided)} (undecided ${share(this.fine.undecided, this.fine.undecided + this.fine.decided)})  ` +
      `solidness off by ${at(0.5)} middle, ${at(0.9)} nine in ten (${absolute.length})`
    );
  }
}

function run(tally: Tally, seed: number, fixed: FixedSettings = {}, smallestPitch?: number): CombResult {
  const settings = drawSettings(family, seed, fixed);
  const painted = paintComb(settings, seed);
  const result = readComb(painted, smallestPitch === undefined ? {} : { smallestPitch });
  tally.add(painted, result);
  return result;
}

/**
 * Readable, by the reader's own figures and never by the truth: it read the picture, could read seven tenths of the comb,
 * from 8 px pitch, and measured a blur of no more than 0.12 of the pitch.
 */
function readable(result: CombResult): boolean {
  return (
    result.verdict === 'read' &&
    !result.reasons.includes('much-hidden') &&
    result.pitchPx >= 8 &&
    (result.measured.blur ?? 1) <= 0.12
  );
}

const all = new Tally();
const clear = new Tally();
const clearLarge = new Tally();
const small = new Tally();
const large = new Tally();
for (let n = 0; n < pictures; n++) {
  const seed = firstSeed + n;
  const settings = drawSettings(family, seed);
  const painted = paintComb(settings, seed);
  const result = readComb(painted);
  all.add(painted, result);
  (settings.pitch < 15 ? small : large).add(painted, result);
  if (readable(result)) {
    clear.add(painted, result);
    if (settings.pitch >= 15) clearLarge.add(painted, result);
  }
  if (process.env.EACH) {
    const one = new Tally();
    one.add(painted, result);
    console.log(
      seed,
      settings.pitch.toFixed(1),
      result.pitchPx.toFixed(1),
      settings.wax.name,
      settings.content.kind,
      settings.frame,
      `bees ${settings.beeCover.toFixed(2)}`,
      `blur ${(settings.camera.blur / settings.pitch).toFixed(3)} (${result.measured.blur?.toFixed(3)})`,
      result.verdict === 'refused' ? result.reasons.join() : one.line().slice(24),
    );
  }
}
console.log(`\n${family} family, seeds ${firstSeed} to ${firstSeed + pictures - 1}`);
console.log('all             ', all.line());
console.log('pitch under 15  ', small.line());
console.log('pitch 15 and up ', large.line());
console.log('readable        ', clear.line());
console.log('readable, 15 up ', clearLarge.line());
if (all.reasons.size > 0) console.log('refused for', [...all.reasons].map(([why, n]) => `${why} ${n}`).join(', '));

console.log('\nconfusion at 15 px and up (rows: truth; columns: read)');
const columns = [...cellClasses, 'not-decided'] as const;
console.log(`${''.padEnd(20)}${columns.map((name) => name.slice(0, 12).padStart(13)).join('')}`);
for (const truth of cellClasses) {
  console.log(
    truth.padEnd(20) +
      columns.map((read) => String(large.confusion.get(`${truth} > ${read}`) ?? 0).padStart(13)).join(''),
  );
}

if (curves) {
  const each = 5;
  const plain: FixedSettings = { frame: 'comb only', glove: false, brush: false, beeCover: 0.1, light: { shadow: 1 } };
  const curve = (title: string, values: readonly number[], fix: (value: number) => FixedSettings): void => {
    console.log(`\n${title}`);
    for (const value of values) {
      const tally = new Tally();
      for (let n = 0; n < each; n++) run(tally, firstSeed + 100_000 + n, { ...plain, ...fix(value) }, 6);
      console.log(String(value).padStart(6), tally.line());
    }
  };
  curve('pitch, px', [7, 8, 10, 12, 15, 20, 30, 50, 70], (pitch) => ({ pitch }));
  curve('blur, share of the pitch (pitch 24)', [0.02, 0.05, 0.08, 0.12, 0.16, 0.2, 0.25], (share) => ({
    pitch: 24,
    camera: { blur: share * 24, shallow: 0 },
  }));
  curve('tilt, degrees (pitch 24)', [0, 10, 20, 30, 35], (degrees) => ({
    pitch: 24,
    tiltX: (degrees * Math.PI) / 180,
    tiltY: 0,
  }));
  curve('share under bees (pitch 24)', [0, 0.2, 0.4, 0.6, 0.75, 0.9], (beeCover) => ({ pitch: 24, beeCover }));
  curve('cast shadow, light left in it (pitch 24)', [1, 0.6, 0.4, 0.25, 0.15], (shadow) => ({
    pitch: 24,
    light: { shadow, shadowWidth: 0.4 },
  }));
}

console.log('\nreal pictures (see packages/science/src/comb/reference)');
const reference = new URL('../packages/science/src/comb/reference/', import.meta.url);
for (const name of ['a-open-white-comb', 'd-new-comb-queen', 'f-frame-in-hand']) {
  const decoded = await decodePicture(readFileSync(new URL(`${name}.jpg`, reference)));
  if ('problem' in decoded) throw new Error(`${name}: ${decoded.problem}`);
  const result = readComb(decoded.picture);
  console.log(
    name,
    result.verdict,
    result.reasons.join(', '),
    `pitch ${result.pitchPx.toFixed(1)}`,
    `cells ${result.cells.length}`,
  );
  if (name === 'f-frame-in-hand') continue;
  const labels = JSON.parse(readFileSync(new URL(`${name}.cells.json`, reference), 'utf8')) as {
    cells: { x: number; y: number; class: string; coarse: string; confidence: string }[];
  };
  const score = scoreCells(
    result.cells,
    labels.cells.map((cell) => ({
      x: cell.x,
      y: cell.y,
      pitch: result.pitchPx,
      class: undefined,
      coarse: cell.coarse === 'occluded' ? 'hidden' : cell.coarse === 'open' ? 'open' : 'not-decided',
    })),
    decoded.picture.width,
    decoded.picture.height,
  );
  console.log(
    `  recall ${score.hit} of ${score.wanted}, other cells found ${score.false}, mean offset ${score.offset.toFixed(3)} pitch,`,
    [...score.coarseConfusion].map(([pair, n]) => `${pair} ${n}`).join(', '),
  );
  // What was labelled by eye beside what was read. Of an open cell the label says only that its contents cannot be told,
  // unless liquid was seen.
  const table = new Map<string, number>();
  let named = 0;
  let agreed = 0;
  for (const label of labels.cells) {
    const cell = result.cells.find(({ x, y, pitch }) => Math.hypot(x - label.x, y - label.y) < 0.3 * pitch);
    const read = cell?.class ?? 'not found';
    const pair = `${label.class} > ${read}${read === 'not-decided' && cell?.coarse !== read ? ` (${cell?.coarse})` : ''}`;
    table.set(pair, (table.get(pair) ?? 0) + 1);
    if (!cell || read === 'not-decided') continue;
    named++;
    const meant = { open: ['open-empty', 'egg-or-larva'], nectar: ['nectar'], occluded: ['hidden'] }[label.class] ?? [];
    if (meant.includes(read)) agreed++;
  }
  console.log('  labelled > read:', [...table].map(([pair, n]) => `${pair} ${n}`).join(', '));
  console.log(`  class told for ${named} of ${labels.cells.length}; agreed, bare for open: ${agreed}`);
  const fine = new Map<string, number>();
  for (const cell of result.cells) fine.set(cell.class, (fine.get(cell.class) ?? 0) + 1);
  console.log('  classes of all found:', [...fine].map(([name, n]) => `${name} ${n}`).join(', '));
}
