import { chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildWhenStale } from './build.mjs';
import { installWhenNeeded } from './install.mjs';
import { endChildrenOnInterrupt, house, Missing, runNode, spent } from './run.mjs';

const fullDisk = 'The disk is full: make room, then run the command again.';

const results = join(house, 'test-results');

/** What a step found: how many passed, what failed and what was skipped, by name; and what it said, where it was kept. */
class Tally {
  passed = 0;
  output = '';
  failed = [];
  skipped = [];

  judge(name, isGood) {
    if (isGood) this.passed += 1;
    else this.failed.push(name);
  }

  add(other) {
    this.passed += other.passed;
    this.failed.push(...other.failed);
    this.skipped.push(...other.skipped);
  }
}

/**
 * Every step by its heading, in turns. A turn has one lane or two, which run beside each other; the steps of a lane run
 * one after another. A step that fails does not keep the next from running.
 */
const turns = [
  [
    [
      ['Types', types],
      ['Lint and format', lint],
      ['Build of the pages', build],
    ],
    [
      [
        'The house itself: arrows, purity, sources, rooms, notices',
        () => unitTests('house', ['--project', 'checks'], { quiet: true }),
      ],
      ['Dead code', deadCode],
    ],
  ],
  [
    [
      [
        'Unit, property and acceptance tests',
        // By name: of two that are left out, each would let the other in again.
        () =>
          unitTests(
            'unit',
            packages().flatMap((name) => ['--project', name]),
          ),
      ],
    ],
  ],
  [[['Screens, each in a browser by itself', screens]]],
  [[['Browser journeys', journeys]]],
  [[['Nothing left in the temporary folder', nothingLeft]]],
];

/** Installs when needed, runs every step, names what failed and what was skipped, and closes with one line of counts. */
export async function testCombside() {
  const since = performance.now();
  const whole = new Tally();
  const times = [];
  endChildrenOnInterrupt();
  useOwnTemporaryFolder();
  try {
    await installWhenNeeded();
    rmSync(results, { recursive: true, force: true });
    mkdirSync(results, { recursive: true });
    for (const lanes of turns) {
      const isAlone = lanes.length === 1;
      await Promise.all(
        lanes.map(async (steps) => {
          for (const [heading, step] of steps) {
            const began = performance.now();
            if (isAlone) console.log(`\n== ${heading}`);
            const tally = await attempt(heading, step);
            whole.add(tally);
            const line = `${counts(tally)} (${spent(began)})`;
            times.push([heading, spent(began), isAlone ? '' : ' beside another']);
            // Steps beside each other keep what they say to the end, so that nobody reads two at once.
            if (!isAlone) console.log(`\n== ${heading}\n${tally.output.trimEnd()}`.trimEnd());
            console.log(`== ${heading}: ${line}`);
          }
        }),
      );
    }
  } catch (error) {
    if (error.code !== 'ENOSPC' && !(error instanceof Missing)) throw error;
    console.error(error instanceof Missing ? error.message : fullDisk);
    whole.failed.push('what the tests need');
  }
  for (const name of whole.skipped) console.log(`skipped: ${name}`);
  for (const name of whole.failed) console.log(`failed: ${name}`);
  console.log('\nTime by step');
  for (const [heading, time, beside] of times) console.log(`${time.padStart(12)}  ${heading}${beside}`);
  console.log(`${spent(since).padStart(12)}  in all`);
  process.exitCode = whole.failed.length === 0 && whole.passed > 0 ? 0 : 1;
  console.log(counts(whole));
}

/** Gives this run a temporary folder of its own, removed with it: what is in it at the last step was left by this run. */
function useOwnTemporaryFolder() {
  const folder = mkdtempSync(join(tmpdir(), 'combside-'));
  // As root the databases run as another user, who must be able to pass.
  chmodSync(folder, 0o755);
  process.env.TMPDIR = folder;
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
}

async function attempt(heading, step) {
  try {
    return await step();
  } catch (error) {
    console.error(error.code === 'ENOSPC' ? fullDisk : error instanceof Missing ? error.message : error);
    const tally = new Tally();
    tally.judge(heading, false);
    return tally;
  }
}

function counts({ passed, failed, skipped }) {
  const base = `${passed} passed, ${failed.length} failed`;
  return skipped.length === 0 ? base : `${base}, ${skipped.length} skipped`;
}

function packages() {
  return readdirSync(join(house, 'packages'));
}

/** The script an installed package offers under a command name. */
function command(packageName, name = packageName) {
  const folder = join(house, 'node_modules', packageName);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return join(folder, typeof bin === 'string' ? bin : bin[name]);
}

async function lint() {
  const tally = new Tally();
  const args = [command('@biomejs/biome', 'biome'), 'check', '--error-on-warnings', '.'];
  const { code, output } = await runNode(args, { quiet: true });
  tally.output = output;
  tally.judge('lint and format (npx biome check --write . mends most of it)', code === 0);
  return tally;
}

/** Checks each package under its own compiler settings, tests and benches under theirs, remembering what is unchanged. */
async function types() {
  const tally = new Tally();
  const args = [command('typescript-7', 'tsc'), '--build', '--verbose', '--pretty', 'false'];
  const { code, output } = await runNode(args, { quiet: true });
  const lines = output.split(/\r?\n/);
  // The compiler names the project it turns to, then what is wrong there.
  const wrong = new Set();
  let here = '';
  for (const line of lines) {
    here = /Building project '(.+)'/.exec(line)?.[1] ?? here;
    if (/error TS\d+/.test(line)) wrong.add(here);
  }
  const settings = packages().map((name) => `packages/${name}/tsconfig.json`);
  for (const path of [...settings, 'tsconfig.tests.json', 'tsconfig.bench.json']) {
    const isChecked = lines.includes(`    * ${path}`);
    if (!isChecked) tally.output += `tsconfig.json does not name ${path}, so nobody checks its types.\n`;
    tally.judge(`types of ${path} (npx tsc -b ${path})`, isChecked && !wrong.has(path));
  }
  const isProgress = (line) => /^\d+:\d+:\d+ [AP]M - |^ {4}[*] |^$/.test(line);
  for (const line of lines) if (!isProgress(line)) tally.output += `${line}\n`;
  return whole(tally, code, 'tsc -b');
}

async function unitTests(name, projects, { quiet = false, env = {} } = {}) {
  const report = join(results, `${name}.json`);
  const args = [
    command('vitest'),
    'run',
    ...projects,
    '--reporter=dot',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ];
  // CI: a missing snapshot is then a failure, and is not written down as if it had been right.
  const { code, output } = await runNode(args, { env: { CI: '1', ...env }, quiet });
  const tally = new Tally();
  if (quiet) tally.output = output;
  for (const file of readReport(report)?.testResults ?? []) {
    const path = file.name.slice(house.length + 1);
    for (const { status, fullName } of file.assertionResults) {
      const test = `${path}: ${fullName}`;
      if (status === 'passed' || status === 'failed') tally.judge(test, status === 'passed');
      else tally.skipped.push(test);
    }
    const hasFailure = file.assertionResults.some(({ status }) => status === 'failed');
    if (file.status === 'failed' && !hasFailure) tally.judge(`${path}: could not be loaded`, false);
  }
  return whole(tally, code, `vitest run ${projects.join(' ')}`);
}

async function deadCode() {
  const tally = new Tally();
  const { code, output } = await runNode([command('knip'), '--no-progress', '--no-config-hints'], { quiet: true });
  tally.output = output;
  tally.judge('dead code (npx knip)', code === 0);
  return tally;
}

async function build() {
  const tally = new Tally();
  tally.judge('build of the pages', await buildWhenStale({ quiet: true }));
  return tally;
}

/** The browser of the screens and the journeys. */
async function findBrowser() {
  const found = await runNode(['--import', 'tsx', join(house, 'packages/web/e2e/browser.ts')], { quiet: true });
  if (found.code !== 0) throw new Missing(found.output.trim());
  const browser = found.output.trim().split('\n').at(-1);
  console.log(`browser: ${browser}`);
  return browser;
}

async function screens() {
  return unitTests('screens', ['--project', 'screens'], { env: { COMBSIDE_BROWSER: await findBrowser() } });
}

async function journeys() {
  const web = join(house, 'packages/web');
  const browser = await findBrowser();
  const report = join(results, 'journeys.json');
  const { code } = await runNode([command('@playwright/test', 'playwright'), 'test'], {
    cwd: web,
    env: { COMBSIDE_BROWSER: browser, PLAYWRIGHT_JSON_OUTPUT_FILE: report },
  });
  const tally = new Tally();
  const visit = (suite, title) => {
    const here = suite.title ? [...title, suite.title] : title;
    for (const inner of suite.suites ?? []) visit(inner, here);
    for (const { title: name, tests } of suite.specs ?? []) {
      for (const { projectName, status } of tests) {
        const test = `${projectName}: ${[...here, name].join(' > ')}`;
        if (status === 'skipped') tally.skipped.push(test);
        else tally.judge(test, status === 'expected');
      }
    }
  };
  for (const suite of readReport(report)?.suites ?? []) visit(suite, []);
  return whole(tally, code, 'playwright test');
}

/** What known tools keep in the temporary folder for their next run, and cannot be told to keep elsewhere. */
const toolsKeep = /^(tsx-|playwright-transform-cache-|node-compile-cache)/;

/** Everything this run put into its temporary folder must be gone again. */
async function nothingLeft() {
  const tally = new Tally();
  const left = readdirSync(tmpdir()).filter((name) => !toolsKeep.test(name));
  for (const name of left) console.log(`left in the temporary folder: ${name}`);
  tally.judge(`nothing is left in the temporary folder (${left.length} left)`, left.length === 0);
  return tally;
}

function readReport(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined;
}

/** A run that failed without naming a failed test, or that ran nothing, is itself a failure. */
function whole(tally, code, name) {
  if (code !== 0 && tally.failed.length === 0) tally.judge(`${name} ended with an error outside any test`, false);
  else if (tally.passed + tally.failed.length === 0) tally.judge(`${name} found no tests`, false);
  return tally;
}
