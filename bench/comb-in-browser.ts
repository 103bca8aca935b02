/*
 * How long a weak phone takes to read a comb photograph of 12 megapixels, and what memory: Chromium slowed down four times.
 *
 *   npx tsx bench/comb-in-browser.ts [runs]
 *
 * Goals: 6 s from the file to the cells, at most 400 MB.
 *
 * Chromium slows down a page's main thread only, not its workers (a loop of known work in both says so below). So the
 * worker's own bundle is run on the slowed main thread for the time, decoding and reading alike, and in a real worker, not
 * slowed, for the time and memory the page has. Decoding happens outside the main thread in Chromium and is slowed in
 * neither. Memory is the resident set of the renderer, asked of the system every 20 ms while the reading runs.
 */
import { readFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { type Browser, chromium, type Page } from '@playwright/test';
import { browserFlags, findBrowser } from '../packages/web/e2e/browser.ts';
import { bundled } from '../packages/web/e2e/bundled.ts';
import type { ReadingRequest } from '../packages/web/src/device/comb/messages.ts';
import { twelveMegapixels } from './twelve-megapixels.ts';

const runs = Number(process.argv[2] ?? 3);
const slowed = 4;
const address = 'http://localhost:4997';

interface Read {
  readonly opened: number;
  readonly whole: number;
  readonly cells: number;
}

/** One reading on the main thread, where it is slowed: the worker's bundle answers by an event. */
function readOnPage(page: Page): Promise<Read> {
  return page.evaluate(async () => {
    const file = await (await fetch('/photograph.jpg')).blob();
    const start = performance.now();
    let opened = 0;
    return new Promise<Read>((resolve, reject) => {
      const listen = (event: Event) => {
        const told = (event as CustomEvent).detail;
        if (told.tell === 'progress' && told.stage === 'looking') opened = performance.now() - start;
        if (told.tell === 'failed') reject(new Error(told.why));
        if (told.tell !== 'done') return;
        removeEventListener('told', listen);
        if (told.read.verdict !== 'read') reject(new Error(told.read.reasons.join()));
        else resolve({ opened, whole: performance.now() - start, cells: told.read.part.cells.count });
      };
      addEventListener('told', listen);
      const order: ReadingRequest = { job: 'read', photograph: file, corners: null };
      dispatchEvent(new MessageEvent('message', { data: order }));
    });
  });
}

/** One reading in a worker of its own, as the page has it. */
function readInWorker(page: Page): Promise<Read> {
  return page.evaluate(async () => {
    const file = await (await fetch('/photograph.jpg')).blob();
    const worker = new Worker('/worker.js', { type: 'module' });
    const start = performance.now();
    let opened = 0;
    try {
      return await new Promise<Read>((resolve, reject) => {
        worker.onerror = (event) => reject(new Error(event.message));
        worker.onmessage = ({ data: told }) => {
          if (told.tell === 'progress' && told.stage === 'looking') opened = performance.now() - start;
          if (told.tell === 'failed') reject(new Error(told.why));
          if (told.tell !== 'done') return;
          if (told.read.verdict !== 'read') reject(new Error(told.read.reasons.join()));
          else resolve({ opened, whole: performance.now() - start, cells: told.read.part.cells.count });
        };
        const order: ReadingRequest = { job: 'read', photograph: file, corners: null };
        worker.postMessage(order);
      });
    } finally {
      worker.terminate();
    }
  });
}

/** The same loop on the page and in a worker: what the slowing reaches. */
function loops(page: Page): Promise<{ page: number; worker: number }> {
  return page.evaluate(async () => {
    const loop = 'let sum = 0; const start = performance.now(); for (let i = 0; i < 5e7; i++) sum += Math.sqrt(i);';
    const onPage = new Function(`${loop} return { ms: performance.now() - start, sum };`)() as { ms: number };
    const source = URL.createObjectURL(new Blob([`${loop} postMessage({ ms: performance.now() - start, sum });`]));
    const inWorker = await new Promise<{ ms: number }>((resolve) => {
      const worker = new Worker(source);
      worker.onmessage = ({ data }) => {
        worker.terminate();
        resolve(data);
      };
    });
    return { page: onPage.ms, worker: inWorker.ms };
  });
}

/** Resident memory of the largest of these processes, MB; Linux says it in /proc. */
function largestResident(processes: readonly number[]): number {
  return Math.max(
    ...processes.map((id) => {
      const kilobytes = /^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1];
      return Number(kilobytes ?? 0) / 1024;
    }),
  );
}

const file = await twelveMegapixels();
const launch = async () => chromium.launch({ executablePath: await findBrowser(), args: browserFlags() });
const browser = await launch();
try {
  const code = await bundled('../src/device/comb/comb-worker.ts');
  const open = async (of: Browser): Promise<Page> => {
    const page = await of.newPage();
    await page.route(`${address}/**`, (route) => {
      const url = route.request().url();
      if (url.endsWith('.js')) return route.fulfill({ contentType: 'text/javascript', body: code });
      if (url.endsWith('.jpg')) return route.fulfill({ contentType: 'image/jpeg', body: file });
      return route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>bench</title>' });
    });
    // What runs this file gives functions their names by a call that the page does not know.
    await page.addInitScript('globalThis.__name = (made) => made');
    await page.goto(address);
    return page;
  };

  const slow = await open(browser);
  await slow.evaluate(() => {
    globalThis.postMessage = ((told: unknown) =>
      dispatchEvent(new CustomEvent('told', { detail: told }))) as typeof globalThis.postMessage;
  });
  await slow.addScriptTag({ type: 'module', url: '/worker.js' });
  const session = await slow.context().newCDPSession(slow);
  const plain = await loops(slow);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const under = await loops(slow);
  console.log(
    `slowed ${slowed} times: a loop of known work took ${(under.page / plain.page).toFixed(1)} times as long on the page, ` +
      `${(under.worker / plain.worker).toFixed(1)} times in a worker\n`,
  );
  for (let run = 0; run < runs; run++) {
    const { opened, whole, cells } = await readOnPage(slow);
    console.log(
      `on the slowed main thread: opened after ${(opened / 1000).toFixed(1)} s, ${cells} cells after ${(whole / 1000).toFixed(1)} s`,
    );
  }
  await slow.close();

  // A browser of its own for each, so that memory is that of one reading. Without a graphics processor, everything that a
  // reading holds is in the renderer.
  for (let run = 0; run < runs; run++) {
    const own = await launch();
    try {
      const page = await open(own);
      const session = await own.newBrowserCDPSession();
      const { processInfo } = await session.send('SystemInfo.getProcessInfo');
      const renderers = processInfo.filter((one) => one.type === 'renderer').map((one) => one.id);
      const before = largestResident(renderers);
      let most = before;
      const watch = setInterval(() => {
        most = Math.max(most, largestResident(renderers));
      }, 20);
      const { opened, whole, cells } = await readInWorker(page);
      clearInterval(watch);
      console.log(
        `in a worker, not slowed: opened after ${(opened / 1000).toFixed(1)} s, ${cells} cells after ${(whole / 1000).toFixed(1)} s; ` +
          `the renderer had ${before.toFixed(0)} MB before and ${most.toFixed(0)} MB at most`,
      );
    } finally {
      await own.close();
    }
  }
  console.log(
    `load of the machine while measuring: ${loadavg()
      .map((load) => load.toFixed(1))
      .join(' ')} (1, 5, 15 minutes)`,
  );
} finally {
  await browser.close();
}
