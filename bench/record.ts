/*
 * How fast the record is: the fold in Node; the device in Chromium: writing, and opening with a whole district.
 *
 *   npx tsx bench/record.ts
 *
 * Goals: a district of 5,000 apiaries and 30,000 colonies opens and lists within 2 s at a quarter of the processor's
 * speed. The hive side's whole opening, screens included, is timed in the browser journeys' own bench.
 */
import { cpus, loadavg } from 'node:os';
import { chromium } from '@playwright/test';
import { sampleBodies } from '../packages/record/src/acceptance/golden-bodies.ts';
import { sampleColony, sampleId, sampleStoredEntry } from '../packages/record/src/acceptance/samples.ts';
import type { Entry } from '../packages/record/src/entry.ts';
import { fold, summarise } from '../packages/record/src/fold.ts';
import { examination } from '../packages/record/src/kinds/examination.ts';
import { browserFlags, findBrowser } from '../packages/web/e2e/browser.ts';
import { bundled, openBundled } from '../packages/web/e2e/bundled.ts';
import type { RecordBench } from './record.page.ts';

const examinations = 20_000;
const perColony = 5;

function median(times: readonly number[]): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] as number;
}

function say(what: string, milliseconds: number): void {
  console.log(`${what.padEnd(72)} ${milliseconds.toFixed(milliseconds < 10 ? 2 : 0).padStart(8)} ms`);
}

function colonies(): Entry[][] {
  const body = sampleBodies[`examination.${examination.version}`]?.body;
  const device = sampleId(1, 1);
  let seq = 0;
  return Array.from({ length: examinations / perColony }, (_, i) => {
    const about = { type: 'colony', id: sampleId(2, i) };
    const sealed = (kind: string, version: number, content: unknown) =>
      sampleStoredEntry({ device, seq: ++seq, id: sampleId(3, seq), about, kind, version, body: content }).entry;
    return [
      sealed('colony', 1, sampleColony(sampleId(4, i >> 3), `${i}`)),
      ...Array.from({ length: perColony }, () => sealed('examination', examination.version, body)),
    ];
  });
}

function timeFold(): void {
  const all = colonies();
  const times: number[] = [];
  for (let run = 0; run < 5; run++) {
    const begun = performance.now();
    for (const entries of all) {
      const [first] = entries;
      if (first !== undefined) summarise(fold(first.envelope.about, entries));
    }
    times.push(performance.now() - begun);
  }
  say(`fold of ${examinations} examinations of ${all.length} colonies, from nothing`, median(times));
  const [one] = all as [Entry[]];
  const single = Array.from({ length: 200 }, () => {
    const begun = performance.now();
    fold((one[0] as Entry).envelope.about, one);
    return performance.now() - begun;
  });
  say('one late entry: its colony folded again', median(single));
}

async function timeDevice(): Promise<void> {
  const code = await bundled('../../../bench/record.page.ts');
  const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags() });
  try {
    const page = await (await browser.newContext()).newPage();
    await openBundled(page, code);
    const run = <T>(work: (bench: RecordBench) => Promise<T>): Promise<T> =>
      page.evaluate(`(${work.toString()})(globalThis.record)`) as Promise<T>;

    const { draft, examination: sealed } = await run((bench) => bench.acknowledgements(200));
    say('tap to durable draft (median of 200)', median(draft));
    say('colony closed to durable, sealed examination (median of 200)', median(sealed));

    say(
      '5,000 apiaries and 30,000 colonies stored in packs, with fold',
      await run((bench) => bench.fillDistrict(5000, 6)),
    );
    for (const rate of [1, 4]) {
      const session = await page.context().newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate });
      const runs = [];
      for (let i = 0; i < 3; i++) runs.push(await run((bench) => bench.openDistrict()));
      const [found] = runs;
      if (found?.apiaries !== 5000 || found.colonies !== 30_000) throw new Error('the district is not whole');
      const speed = rate === 1 ? 'full speed' : `speed / ${rate}`;
      say(`that store opened, at ${speed} (median of 3)`, median(runs.map(({ open }) => open)));
      say(`  apiaries listed and sorted, colonies listed, at ${speed}`, median(runs.map(({ list }) => list)));
      say(
        `  states of one apiary’s colonies, at ${speed}`,
        median(runs.map(({ coloniesOfOneApiary }) => coloniesOfOneApiary)),
      );
      await session.detach();
    }
  } finally {
    await browser.close();
  }
}

console.log(
  `Node ${process.version}, ${cpus().length} processors, load ${loadavg()
    .map((one) => one.toFixed(1))
    .join(' ')}`,
);
timeFold();
await timeDevice();
