/**
 * `combside read PHOTOGRAPH|FOLDER`: reads comb photographs cell by cell.
 *
 * One photograph: prose, or with `--json` one object. Several, or a folder: a table, or with `--json` one object on each
 * line (JSON Lines), in the order of their names; progress goes to standard error. An interrupt is heard after the
 * photograph at hand, so that what was written are whole lines.
 */
import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { CombResult } from '@combside/science/comb/comb-result';
import type { CombPlane } from '@combside/science/comb/frame/comb-plane';
import { isQuadrilateral } from '@combside/science/comb/frame/frame-plane';
import { type ReadOptions, readComb } from '@combside/science/comb/read-comb';
import { type Language, languages } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import type { Words } from '@combside/words/words';
import { type DecodeProblem, decodePicture } from './decode-picture.ts';

/** Where a command writes; given in, so that tests can read along. */
export interface Outlet {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

type FileResult = Omit<CombResult, 'reasons' | 'measured'> & {
  readonly file: string;
  readonly reasons: readonly string[];
  readonly says: readonly string[];
  readonly measured?: CombResult['measured'];
  readonly width?: number;
  readonly height?: number;
  readonly orientation?: number;
  readonly frames?: number;
};

/** Listens for an interrupt; given in, so that tests can interrupt. */
export interface Interrupts {
  readonly on: (event: 'SIGINT', heard: () => void) => unknown;
  readonly off: (event: 'SIGINT', heard: () => void) => unknown;
}

/** What a shell calls the end by an interrupt. */
const interrupted = 130;

/**
 * @param args what stands after `read`
 * @returns 0 when every picture was read or refused with its reason, 2 when the command itself was wrong, 130 when it was
 *   interrupted
 */
export async function read(args: readonly string[], outlet: Outlet, interrupts: Interrupts = process): Promise<number> {
  let json = false;
  let help = false;
  let language: Language = 'en';
  let regionText: string | undefined;
  let cornersText: string | undefined;
  const paths: string[] = [];
  let unknown: string | undefined;
  for (let k = 0; k < args.length; k++) {
    const arg = args[k] as string;
    if (arg === '--json') json = true;
    else if (arg === '--help') help = true;
    else if (arg === '--language') {
      const next = args[++k];
      const found = languages.find((one) => one === next);
      if (found) language = found;
      else unknown = `--language ${next ?? ''}`;
    } else if (arg === '--region') regionText = args[++k] ?? '';
    else if (arg === '--corners') cornersText = args[++k] ?? '';
    else if (arg.startsWith('--')) unknown = arg;
    else paths.push(arg);
  }
  const words = await loadWords(language, ['comb']);
  if (help) {
    outlet.out(words.say('comb.command.usage'));
    return 0;
  }
  if (unknown !== undefined) {
    outlet.err(words.say('comb.command.bad-option', { option: unknown.trim() }));
    outlet.err(words.say('comb.command.usage'));
    return 2;
  }
  if (paths.length === 0) {
    outlet.err(words.say('comb.command.usage'));
    return 2;
  }
  if (cornersText !== undefined && regionText !== undefined) {
    outlet.err(words.say('comb.command.corners-or-region'));
    return 2;
  }
  const corners = cornersText === undefined ? {} : parseCorners(cornersText);
  if (!corners) {
    outlet.err(words.say('comb.command.bad-corners', { text: cornersText ?? '' }));
    return 2;
  }
  const options = regionText === undefined ? corners : parseRegion(regionText);
  if (!options) {
    outlet.err(words.say('comb.command.bad-region', { text: regionText ?? '' }));
    return 2;
  }
  let folder = false;
  const files: string[] = [];
  for (const path of paths) {
    const about = await stat(path).catch(() => undefined);
    if (!about) {
      outlet.err(words.say('comb.command.missing', { path }));
      return 2;
    }
    if (!about.isDirectory()) {
      files.push(path);
      continue;
    }
    folder = true;
    const inside = (await readdir(path)).filter((name) => /\.(jpe?g|png|webp|avif|tiff?|gif)$/i.test(name)).sort();
    if (inside.length === 0) {
      outlet.err(words.say('comb.command.empty-folder', { path }));
      return 2;
    }
    files.push(...inside.map((name) => join(path, name)));
  }
  if (!folder && files.length === 1) {
    const result = await readFileAt(files[0] as string, options, words);
    if (json) outlet.out(JSON.stringify(result, rounded, 1));
    else tell(result, words, outlet);
    return 0;
  }

  let stop = false;
  const heard = (): void => {
    stop = true;
  };
  interrupts.on('SIGINT', heard);
  try {
    const table = json ? null : new Table(files, words);
    for (const line of table?.head() ?? []) outlet.out(line);
    for (const [n, file] of files.entries()) {
      // A reading keeps the machine to itself; between two of them an interrupt gets its turn.
      await new Promise((done) => setImmediate(done));
      if (stop) {
        outlet.err(words.say('comb.command.stopped', { done: n, count: files.length }));
        return interrupted;
      }
      outlet.err(words.say('comb.command.progress', { number: n + 1, count: files.length, file }));
      const result = await readFileAt(file, options, words);
      outlet.out(table ? table.row(result) : JSON.stringify(result, rounded));
    }
    for (const line of table?.foot() ?? []) outlet.out(line);
    return 0;
  } finally {
    interrupts.off('SIGINT', heard);
  }
}

const columns = ['verdict', 'pitch', 'cells', 'brood', 'solidness', 'unread', 'second-look'] as const;

/** One line for each photograph; written as they come, so widths are settled before the first. */
class Table {
  readonly #words: Words<'comb'>;
  readonly #fileWidth: number;
  readonly #titles: readonly string[];
  /** Each sentence, and the photographs it was said of. */
  readonly #said = new Map<string, string[]>();
  #read = 0;

  constructor(files: readonly string[], words: Words<'comb'>) {
    this.#words = words;
    const fileTitle = words.say('comb.table.file');
    this.#fileWidth = Math.max(fileTitle.length, ...files.map((file) => file.length));
    this.#titles = [fileTitle, ...columns.map((column) => words.say(`comb.table.${column}`))];
  }

  head(): string[] {
    return [this.#line(this.#titles)];
  }

  row(result: FileResult): string {
    const verdict = this.#words.say(`comb.verdict.${result.verdict}`);
    const { reading } = result;
    if (!reading) return this.#line([result.file, `${verdict}: ${result.says.join(' ')}`]);
    this.#read++;
    for (const sentence of result.says) this.#said.set(sentence, [...(this.#said.get(sentence) ?? []), result.file]);
    return this.#line([
      result.file,
      verdict,
      String(Math.round(result.pitchPx)),
      String(reading.cells),
      `${Math.round(reading.areas.brood.squareCentimetres)} cm²`,
      reading.solidness ? percent(reading.solidness.value) : '-',
      percent(reading.unread),
      String(reading.secondLook.length),
    ]);
  }

  /** What the readings above cannot say: each sentence once, with the photographs it holds for unless it holds for all. */
  foot(): string[] {
    const lines = [...this.#said].map(([sentence, files]) =>
      files.length === this.#read ? sentence : `${sentence} (${files.map((file) => basename(file)).join(', ')})`,
    );
    return lines.length === 0 ? [] : ['', ...lines];
  }

  #line(cells: readonly string[]): string {
    const last = cells.length - 1;
    return cells
      .map((cell, n) => (n === last ? cell : cell.padEnd(n === 0 ? this.#fileWidth : this.#width(n))))
      .join('  ');
  }

  #width(column: number): number {
    const least = column === 1 ? this.#words.say('comb.verdict.read').length : 8;
    return Math.max(least, this.#titles[column]?.length ?? 0);
  }
}

async function readFileAt(file: string, options: ReadOptions, words: Words<'comb'>): Promise<FileResult> {
  const bytes = await readFile(file).catch(() => new Uint8Array());
  const decoded = await decodePicture(bytes);
  if ('problem' in decoded) return refusedFile(file, decoded.problem, words);
  const { picture, orientation, frames } = decoded;
  const result = readComb(picture, options);
  return {
    file,
    width: picture.width,
    height: picture.height,
    orientation,
    ...(frames > 1 ? { frames } : {}),
    ...result,
    says: result.reasons.map((reason) => words.say(`comb.reason.${reason}`)),
  };
}

function refusedFile(file: string, problem: DecodeProblem, words: Words<'comb'>): FileResult {
  return {
    file,
    verdict: 'refused',
    reasons: [problem],
    says: [words.say(`comb.reason.${problem}`)],
    pitchPx: 0,
    cells: [],
    plane: null,
  };
}

/** Three decimals are a thousandth of a pixel or of certainty: more would only look exact. */
function rounded(_key: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isInteger(value) ? Math.round(value * 1000) / 1000 : value;
}

function parseRegion(text: string): ReadOptions | undefined {
  const corners = text
    .trim()
    .split(/\s+/)
    .map((pair) => pair.split(',').map(Number));
  if (corners.length < 3 || corners.some((c) => c.length !== 2 || !c.every(Number.isFinite))) return undefined;
  return { region: corners as unknown as [number, number][] };
}

/** Eight numbers with commas or spaces between them: the frame's four inner corners in order round it. */
function parseCorners(text: string): ReadOptions | undefined {
  const numbers = text
    .trim()
    .split(/[\s,]+/)
    .map((number) => (number === '' ? Number.NaN : Number(number)));
  if (numbers.length !== 8 || !numbers.every(Number.isFinite)) return undefined;
  const region = [0, 2, 4, 6].map((n) => [numbers[n] as number, numbers[n + 1] as number] as const);
  return isQuadrilateral(region) ? { region } : undefined;
}

function tell(result: FileResult, words: Words<'comb'>, outlet: Outlet): void {
  outlet.out(words.say(`comb.verdict.${result.verdict}`));
  for (const sentence of result.says) outlet.out(`  ${sentence}`);
  const { reading } = result;
  if (!reading) return;
  outlet.out(
    `  ${words.say('comb.cells', { count: reading.cells })}, ${words.say('comb.pitch', { pixels: Math.round(result.pitchPx) })}`,
  );
  if (result.plane) outlet.out(`  ${planeLine(result.plane, words)}`);
  for (const [name, count] of Object.entries(reading.counts)) {
    if (count > 0) outlet.out(`    ${words.say(`comb.class.${name as keyof typeof reading.counts}`)}: ${count}`);
  }
  const { brood } = reading.areas;
  outlet.out(
    `  ${words.say('comb.brood-area', { cells: brood.cells, area: Math.round(brood.squareCentimetres), low: Math.round(brood.low), high: Math.round(brood.high) })}`,
  );
  outlet.out(
    `  ${
      reading.solidness
        ? words.say('comb.solidness', {
            share: percent(reading.solidness.value),
            missed: reading.solidness.missed,
            sealed: reading.solidness.sealed,
          })
        : words.say('comb.solidness.too-few')
    }`,
  );
  outlet.out(`  ${words.say('comb.unread', { share: percent(reading.unread) })}`);
  outlet.out(`  ${words.say('comb.second-look', { count: reading.secondLook.length })}`);
  for (const look of reading.secondLook) {
    const cell = result.cells[look.cell];
    if (!cell) continue;
    outlet.out(
      `    ${words.say(`comb.second-look.${look.why}`)} ${words.say('comb.second-look.at', { x: Math.round(cell.x), y: Math.round(cell.y) })}`,
    );
  }
}

/** Less than this cannot be told from a comb held square to the camera, degrees. */
const leastTilt = 15;

/** What the plane follows from, the corners found, and the tilt as far as it can be told. */
function planeLine({ by, corners, tiltDegrees }: CombPlane, words: Words<'comb'>): string {
  const source = words.say(`comb.plane.${by}`);
  const where =
    by === 'corners-found' && corners ? ` ${corners.map((c) => c.map(Math.round).join(',')).join(' ')}` : '';
  if (tiltDegrees === null) return `${source}${where}`;
  const tilt =
    tiltDegrees < leastTilt
      ? words.say('comb.plane.tilt-small', { degrees: leastTilt })
      : words.say('comb.plane.tilt', { degrees: Math.round(tiltDegrees) });
  return `${source}${where}; ${tilt}`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
