/*
 * How far the two figures that count as evidence may be off: solidness of sealed brood, and the number of brood cells.
 * Painted combs of the held-out family, seeds of their own; prints means, spreads and the nine-in-ten limits, which stand
 * in casework/src/comb/reader-error.ts with the date of the run.
 *
 *   npx tsx bench/comb-evidence.ts [pictures] [first seed]
 */
import { paintComb } from '../packages/science/src/comb/painter/paint-comb.ts';
import { drawSettings } from '../packages/science/src/comb/painter/settings.ts';
import { readComb } from '../packages/science/src/comb/read-comb.ts';
import { readerVersion } from '../packages/science/src/comb/reading/reader-version.ts';
import { trueSolidness } from '../packages/science/src/comb/reading/score-reading.ts';

const pictures = Number(process.argv[2] ?? 150);
const firstSeed = Number(process.argv[3] ?? 700_000);

interface One {
  readonly pitch: number;
  readonly unread: number;
  /** Read less true, where both have a figure: of the cells seen, and of all cells, those under bees too. */
  readonly solidnessSeen: number | undefined;
  readonly solidnessAll: number | undefined;
  /** Brood cells read over brood cells that could be seen. */
  readonly brood: number | undefined;
}

const all: One[] = [];
let refused = 0;
for (let seed = firstSeed; seed < firstSeed + pictures; seed++) {
  const painted = paintComb(drawSettings('held-out', seed), seed);
  const { reading, verdict, pitchPx } = readComb(painted);
  if (verdict === 'refused' || !reading) {
    refused++;
    continue;
  }
  const whole = painted.cells.filter(({ x, y, pitch }) => {
    const margin = 0.5 * pitch;
    return x > margin && y > margin && x < painted.width - margin && y < painted.height - margin;
  });
  const seen = trueSolidness(whole);
  const complete = trueSolidness(whole.map((cell) => ({ ...cell, class: cell.holds })));
  const read = reading.solidness?.value;
  const isBrood = (name: string): boolean =>
    name === 'sealed-worker-brood' || name === 'sealed-drone-brood' || name === 'egg-or-larva';
  const sealed = whole.filter((cell) => isBrood(cell.class) && cell.class !== 'egg-or-larva').length;
  all.push({
    pitch: pitchPx,
    unread: reading.unread,
    solidnessSeen: read !== undefined && seen !== undefined ? read - seen : undefined,
    solidnessAll: read !== undefined && complete !== undefined ? read - complete : undefined,
    brood: sealed >= 60 ? reading.areas.sealedBrood.cells / sealed : undefined,
  });
}

function line(title: string, values: (number | undefined)[], about = 0): void {
  const known = values.filter((one) => one !== undefined);
  if (known.length < 3) {
    console.log(`${title.padEnd(44)} ${known.length} only`);
    return;
  }
  const mean = known.reduce((sum, one) => sum + one, 0) / known.length;
  const spread = Math.sqrt(known.reduce((sum, one) => sum + (one - about) ** 2, 0) / known.length);
  const far = known.map((one) => Math.abs(one - about)).sort((a, b) => a - b);
  const at = (share: number): string =>
    (far[Math.min(far.length - 1, Math.floor(share * far.length))] as number).toFixed(3);
  console.log(
    `${title.padEnd(44)} n ${String(known.length).padStart(3)}  mean ${mean.toFixed(3)}  rms off ${spread.toFixed(3)}  middle ${at(0.5)}  nine in ten ${at(0.9)}  most ${at(1)}`,
  );
}

console.log(
  `reader version ${readerVersion}, ${pictures} held-out painted combs from seed ${firstSeed}, ${refused} refused`,
);
const groups: [string, (one: One) => boolean][] = [
  ['all', () => true],
  ['unread under 0.15', (one) => one.unread < 0.15],
  ['unread 0.15 to 0.3', (one) => one.unread >= 0.15 && one.unread < 0.3],
  ['unread 0.3 to 0.5', (one) => one.unread >= 0.3 && one.unread < 0.5],
  ['unread 0.5 and up', (one) => one.unread >= 0.5],
  ['pitch under 15', (one) => one.pitch < 15],
  ['pitch 15 and up', (one) => one.pitch >= 15],
];
for (const [title, among] of groups) {
  const some = all.filter(among);
  line(
    `solidness, of cells seen, ${title}`,
    some.map((one) => one.solidnessSeen),
  );
  line(
    `solidness, of all cells, ${title}`,
    some.map((one) => one.solidnessAll),
  );
  line(
    `sealed brood read over seen, ${title}`,
    some.map((one) => one.brood),
    1,
  );
}
