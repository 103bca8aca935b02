import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { buildWhenStale } from './build.mjs';
import { installWhenNeeded } from './install.mjs';
import { endChildrenOnInterrupt, house, Missing, runNode, spent } from './run.mjs';

const fullDisk = 'The disk is full: make room, then run the command again.';

const results = join(house, 'test-results');

/** What a step found: how many passed, what failed and what was skipped, by name. */
class Tally {
  passed = 0;
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

/** Every step in the order in which it runs. A step that fails does not keep the next from running. */
const steps = [
  ['Lint and format', lint],
  ['Types', types],
  ['The house itself: arrows, purity, sources, rooms, notices', () => unitTests('house', ['--project', 'checks'])],
  ['Unit, property and acceptance tests', () => unitTests('unit', ['--project', '!checks'])],
  ['Dead code', deadCode],
  ['Build of the pages', build],
  ['Browser journeys', journeys],
];

/** Installs when needed, runs every step, names what failed and what was skipped, and closes with one line of counts. */
export async function testCombside() {
  const since = performance.now();
  const whole = new Tally();
  endChildrenOnInterrupt();
  try {
    await installWhenNeeded();
    rmSync(results, { recursive: true, force: true });
    mkdirSync(results, { recursive: true });
    for (const [heading, step] of steps) {
      const began = performance.now();
      console.log(`\n== ${heading}`);
      const tally = await attempt(heading, step);
      whole.add(tally);
      console.log(`== ${heading}: ${counts(tally)} (${spent(began)})`);
    }
  } catch (error) {
    if (error.code !== 'ENOSPC' && !(error instanceof Missing)) throw error;
    console.error(
      error instanceof Missing ? error.message : 'The disk is full: make room, then run the command again.',
    );
    whole.failed.push('what the tests need');
  }
  for (const name of whole.skipped) console.log(`skipped: ${name}`);
  for (const name of whole.failed) console.log(`failed: ${name}`);
  console.log(`\nIn all ${spent(since)}.`);
  process.exitCode = whole.failed.length === 0 && whole.passed > 0 ? 0 : 1;
  console.log(counts(whole));
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

/** The script an installed package offers under a command name. */
function command(packageName, name = packageName) {
  const folder = join(house, 'node_modules', packageName);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return join(folder, typeof bin === 'string' ? bin : bin[name]);
}

async function lint() {
  const tally = new Tally();
  const { code } = await runNode([command('@biomejs/biome', 'biome'), 'check', '--error-on-warnings', '.']);
  tally.judge('lint and format (npx biome check --write . mends most of it)', code === 0);
  return tally;
}

/** Checks each package under its own compiler settings, and all tests under theirs; two at a time, remembering what is unchanged. */
async function types() {
  const tally = new Tally();
  const tsc = command('typescript', 'tsc');
  const projects = [
    ['tests', 'tsconfig.tests.json'],
    ...readdirSync(join(house, 'packages'))
      .filter((name) => existsSync(join(house, 'packages', name, 'tsconfig.json')))
      .map((name) => [name, `packages/${name}/tsconfig.json`]),
  ];
  const queue = projects[Symbol.iterator]();
  const work = async () => {
    for (const [name, path] of queue) {
      const memory = join(house, '.cache/types', `${name}.tsbuildinfo`);
      const { code, output } = await runNode([tsc, '-p', path, '--incremental', '--tsBuildInfoFile', memory], {
        quiet: true,
      });
      if (code !== 0) console.log(output.trimEnd());
      tally.judge(`types of ${name} (npx tsc -p ${path})`, code === 0);
    }
  };
  await Promise.all([work(), work()]);
  return tally;
}

async function unitTests(name, projects) {
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
  const { code } = await runNode(args, { env: { CI: '1' } });
  const tally = new Tally();
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
  const { code } = await runNode([command('knip'), '--no-progress', '--no-config-hints']);
  tally.judge('dead code (npx knip)', code === 0);
  return tally;
}

async function build() {
  const tally = new Tally();
  tally.judge('build of the pages', await buildWhenStale());
  return tally;
}

async function journeys() {
  const web = join(house, 'packages/web');
  const found = await runNode(['--import', 'tsx', join(web, 'e2e/browser.ts')], { quiet: true });
  if (found.code !== 0) throw new Missing(found.output.trim());
  const browser = found.output.trim().split('\n').at(-1);
  console.log(`browser: ${browser}`);
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

function readReport(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined;
}

/** A run that failed without naming a failed test, or that ran nothing, is itself a failure. */
function whole(tally, code, name) {
  if (code !== 0 && tally.failed.length === 0) tally.judge(`${name} ended with an error outside any test`, false);
  else if (tally.passed + tally.failed.length === 0) tally.judge(`${name} found no tests`, false);
  return tally;
}
