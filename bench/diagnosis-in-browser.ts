/*
 * How fast the reasoning is on a weak phone: Chromium slowed down four times.
 *
 *   npx tsx bench/diagnosis-in-browser.ts
 *
 * Goals: the line in 20 ms, everything with its 400 draws in 1.5 s, the line in sight while the whole is worked out.
 *
 * Chromium slows down a page's main thread only, not its workers (checked here by a loop of known work). So the worker's
 * own bundle is run on the slowed main thread for the times, and in two real workers, as the page has them, for the order.
 */
import { loadavg } from 'node:os';
import { chromium } from '@playwright/test';
import { draftFrom } from '../packages/casework/src/draft/draft-from-taps.ts';
import type { Tap } from '../packages/casework/src/draft/tap.ts';
import { loadPack } from '../packages/law/src/load-pack.ts';
import type { ColonyState } from '../packages/record/src/states.ts';
import { signs } from '../packages/science/src/signs/catalogue.ts';
import { browserFlags, findBrowser } from '../packages/web/e2e/browser.ts';
import { bundled } from '../packages/web/e2e/bundled.ts';
import type { Question } from '../packages/web/src/ui/reasoning/reasoning-worker.ts';

const slowed = 4;
const address = 'http://localhost:4998';
const id = '01900000-0000-7000-8000-000000000001';
const pack = await loadPack('quillmoor');

const colony = {
  about: { type: 'colony', id },
  colony: {
    current: {
      body: {
        apiary: id,
        label: '7',
        hiveType: 'langstroth-deep',
        broodBoxes: [{ box: 'lower', frames: 10 }],
        hiveState: 'living',
      },
    },
    contested: [],
    history: [],
  },
  examinations: [],
  assessments: [],
  combReadings: [],
  proposals: [],
  reasons: [],
} as unknown as ColonyState;

function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] as number;
}

const brood = signs.filter((sign) => !sign.ofHealthyBrood);
function questions(seen: number, notSeen: number): { readonly line: Question; readonly whole: Question } {
  const taps: Tap[] = [
    { tap: 'everything looked at' },
    { tap: 'hold', hold: 'top bar toward the viewer' },
    ...brood.slice(0, seen).map((sign): Tap => ({ tap: 'sign', sign: sign.id, outcome: 'seen' })),
    ...brood.slice(seen, seen + notSeen).map((sign): Tap => ({ tap: 'sign', sign: sign.id, outcome: 'not seen' })),
  ];
  const of = {
    draft: draftFrom(taps, colony),
    colony,
    pack,
    observedAt: '2027-05-04T09:30:00.000Z',
    known: null,
    visit: id,
  };
  return { line: { ask: 'line', ...of }, whole: { ask: 'whole', ...of } };
}

const cases: Readonly<Record<string, ReturnType<typeof questions>>> = {
  'nothing entered': questions(0, 0),
  'nothing seen, all looked for': questions(0, 39),
  '3 seen, 10 not seen': questions(3, 10),
  '8 seen, 20 not seen': questions(8, 20),
  '20 seen, 19 not seen': questions(20, 19),
};

const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags() });
try {
  const page = await browser.newPage();
  const code = await bundled('../src/ui/reasoning/reasoning-worker.ts');
  await page.route(`${address}/**`, (route) =>
    route.request().url().endsWith('.js')
      ? route.fulfill({ contentType: 'text/javascript', body: code })
      : route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>bench</title>' }),
  );
  // What runs this file gives functions their names by a call that the page does not know.
  await page.addInitScript('globalThis.__name = (made) => made');
  await page.goto(address);
  // On the page itself the bundle answers by an event, in place of a worker's message.
  await page.evaluate(() => {
    globalThis.postMessage = ((reply: unknown) =>
      dispatchEvent(new CustomEvent('reply', { detail: reply }))) as typeof globalThis.postMessage;
  });
  await page.addScriptTag({ type: 'module', url: '/worker.js' });

  const loop = () =>
    page.evaluate(() => {
      let sum = 0;
      const start = performance.now();
      for (let i = 0; i < 5e7; i++) sum += Math.sqrt(i);
      return { ms: performance.now() - start, sum };
    });
  const time = (question: Question, runs: number) =>
    page.evaluate(
      ({ question, runs }) => {
        const times: number[] = [];
        let last: unknown = null;
        for (let run = 0; run < runs; run++) {
          let answered: unknown = null;
          const listen = (event: Event) => {
            answered = (event as CustomEvent<{ ok: boolean }>).detail;
          };
          addEventListener('reply', listen);
          const start = performance.now();
          dispatchEvent(new MessageEvent('message', { data: { turn: run, question } }));
          times.push(performance.now() - start);
          removeEventListener('reply', listen);
          last = answered;
          if (!(answered as { ok: boolean } | null)?.ok) throw new Error(`no answer: ${JSON.stringify(answered)}`);
        }
        const sorted = [...times].sort((a, b) => a - b);
        return {
          answer: JSON.stringify(last).length,
          first: times[0] as number,
          median: sorted[Math.floor(runs / 2)] as number,
          worst: sorted.at(-1) as number,
        };
      },
      { question, runs },
    );

  // Quick and slow by turns, the median of each: the machine is shared, and what else runs on it comes and goes.
  const session = await page.context().newCDPSession(page);
  const taken: Readonly<Record<1 | 4, number[]>> = { 1: [], 4: [] };
  for (let round = 0; round < 4; round++) {
    for (const rate of [1, slowed] as const) {
      await session.send('Emulation.setCPUThrottlingRate', { rate });
      for (let run = 0; run < 4; run++) taken[rate].push((await loop()).ms);
    }
  }
  const [plain, slow] = [median(taken[1]), median(taken[slowed])];
  console.log(`slowed ${slowed} times; a loop of known work took ${(slow / plain).toFixed(1)} times as long\n`);

  const ms = (value: number): string => value.toFixed(value < 10 ? 1 : 0).padStart(8);
  console.log(
    'ms, on the slowed main thread   line: first  median   worst   whole: first  median   worst   not slowed',
  );
  for (const [name, { line, whole }] of Object.entries(cases)) {
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    const unslowed = await time(whole, 5);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    const quick = await time(line, 40);
    const thorough = await time(whole, 5);
    console.log(
      `${name.padEnd(32)}   ${ms(quick.first)}${ms(quick.median)}${ms(quick.worst)}       ${ms(thorough.first)}${ms(thorough.median)}${ms(thorough.worst)}   ${ms(unslowed.median)}${String(thorough.answer).padStart(12)}`,
    );
  }

  const order = await page.evaluate(
    async ({ line, whole }) => {
      const ask = (worker: Worker, question: unknown) =>
        new Promise<number>((resolve, reject) => {
          worker.addEventListener('message', () => resolve(performance.now()), { once: true });
          worker.addEventListener('error', (event) => reject(new Error(event.message)), { once: true });
          worker.postMessage({ turn: 1, question });
        });
      const [quick, thorough] = [0, 1].map(() => new Worker('/worker.js', { type: 'module' })) as [Worker, Worker];
      // Both are up before anything is timed.
      await Promise.all([ask(quick, line), ask(thorough, line)]);
      const start = performance.now();
      const [wholeAt, lineAt] = await Promise.all([ask(thorough, whole), ask(quick, line)]);
      return { line: lineAt - start, whole: wholeAt - start };
    },
    cases['8 seen, 20 not seen'] as ReturnType<typeof questions>,
  );
  console.log(
    `\nin two workers, the whole asked first: the line came after ${order.line.toFixed(0)} ms, the whole after ${order.whole.toFixed(0)} ms`,
  );
  console.log(
    `load of the machine while measuring: ${loadavg()
      .map((load) => load.toFixed(1))
      .join(' ')} (1, 5, 15 minutes)`,
  );
} finally {
  await browser.close();
}
