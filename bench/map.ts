/**
 * The map and planning over very many apiaries, on this machine: `npx tsx bench/map.ts [apiaries]`. Build the web app first.
 *
 * A server with its own embedded PostgreSQL holds 250,000 apiaries (rows written straight into the table of folded
 * states) with a colony each, one in a thousand suspect. Asked: what the office takes to answer a window of the map and
 * planning, and what a person in Chromium waits from opening the map, and from each step of its scale, until what lies
 * there is drawn. "Drawn" is what the map itself says it has rendered, never its load event.
 */

import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { daysLater } from '@combside/calendar/day';
import { dayOf } from '@combside/calendar/instant';
import { chromium, type Page } from '@playwright/test';
import { foldVersion } from '../packages/record/src/fold.ts';
import { startServer } from '../packages/server/src/start.ts';
import { browserFlags, findBrowser } from '../packages/web/e2e/browser.ts';
import { signIn } from '../packages/web/e2e/sign-in.ts';

const apiaries = Number(process.argv[2] ?? 250_000);
const runs = 7;

const folder = mkdtempSync(join(tmpdir(), 'combside-bench-'));
chmodSync(folder, 0o755);
const server = await startServer({ data: join(folder, 'data'), port: 0 });
const account = { email: 'bench@office.example', password: 'a long enough password' };

function report(what: string, milliseconds: number, note = ''): void {
  console.log(`${what.padEnd(62)} ${milliseconds.toFixed(0).padStart(8)} ms  ${note}`);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

try {
  await server.accounts.addPerson(
    { ...account, person: '01900000-0000-7000-8000-00000000000a', name: 'Bench', role: 'office', districts: 'all' },
    new Date(),
  );
  await fill();
  const cookie = await signedIn();
  await questions(cookie);
  await inTheBrowser();
} finally {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
}

async function fill(): Promise<void> {
  const { pool } = server.database;
  await pool.query(
    `insert into combside.states (entity_type, entity_id, fold_version, state, summary, district, name, search, place)
     select 'apiary', md5('apiary' || n)::uuid, $2, '{}',
       json_build_object('about', json_build_object('type', 'apiary', 'id', md5('apiary' || n)::uuid), 'foldVersion',
         $2::int, 'contested', false, 'writtenByNewer', false, 'name', name, 'number', null, 'district', district,
         'keeper', null, 'latitude', lat, 'longitude', lon, 'uncertaintyMetres', 10, 'coloniesRegistered', 1,
         'lastConfirmedOn', null, 'proposals', 0, 'mergedInto', null),
       district, name, name, point(lon, lat)
     from generate_series(1, $1::int) n, lateral (select 'bench-' || (n % 50) as district, 'Apiary ' || n as name,
       46 + (n % 500) * 0.016 as lat, 6 + (n / 500) * 0.016 as lon) w`,
    [apiaries, foldVersion],
  );
  await pool.query(
    `insert into combside.states (entity_type, entity_id, fold_version, state, summary, apiary, name, last_result)
     select 'colony', md5('colony' || n)::uuid, $2, '{"examinations":[],"assessments":[]}',
       json_build_object('about', json_build_object('type', 'colony', 'id', md5('colony' || n)::uuid), 'label', '1',
         'hiveState', 'living'),
       md5('apiary' || n)::uuid, '1', case when n % 1000 = 0 then 'suspect' else 'nothing seen with this look' end
     from generate_series(1, $1::int) n`,
    [apiaries, foldVersion],
  );
  await pool.query(
    `insert into combside.examined (examination, colony, visit, apiary, observed_at, depth, hive_state, frames_seen,
       frames_held, result, suspected, basis, finds)
     select md5('look' || n)::uuid, md5('colony' || n)::uuid, md5('visit' || n)::uuid, md5('apiary' || n)::uuid,
       now() - (n % 700) * interval '1 day', 'full', 'living', 10, 10,
       case when n % 1000 = 0 then 'suspect' else 'nothing seen with this look' end,
       case when n % 1000 = 0 then array['american-foulbrood'] else '{}'::text[] end, 'inspector', '{}'
     from generate_series(1, $1::int) n`,
    [apiaries],
  );
  await pool.query('analyze combside.states');
  await pool.query('analyze combside.examined');
  console.log(`${apiaries} apiaries, each with a colony looked at once`);
}

async function signedIn(): Promise<string> {
  const answer = await fetch(`${server.address}/api/auth/sign-in/email`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: server.address },
    body: JSON.stringify(account),
  });
  return answer.headers.getSetCookie()[0]?.split(';')[0] ?? '';
}

async function questions(cookie: string): Promise<void> {
  const ask = async (what: string, path: string, told: (answer: Record<string, unknown>) => string, times = runs) => {
    const all: number[] = [];
    let note = '';
    for (let run = 0; run < times; run += 1) {
      const since = performance.now();
      const answer = await fetch(`${server.address}${path}`, { headers: { cookie } });
      const body = (await answer.json()) as Record<string, unknown>;
      all.push(performance.now() - since);
      if (answer.status !== 200) throw new Error(`${path}: ${answer.status}`);
      note = told(body);
    }
    report(`office: ${what}`, median(all), note);
  };
  const window = (answer: Record<string, unknown>) =>
    `${answer.apiaries} apiaries, ${(answer.points as unknown[]).length} points, ${(answer.heaps as unknown[]).length} heaps`;
  await ask('the extent of everything', '/api/map/extent', () => '');
  await ask('the whole world, zoom 1', '/api/map?box=-180,-85,180,85&zoom=1', window);
  await ask('everything, zoom 6', '/api/map?box=5,45,15,55&zoom=6', window);
  await ask('a degree, zoom 9', '/api/map?box=9,49,10,50&zoom=9', window);
  await ask('a tenth of a degree, zoom 12', '/api/map?box=9,49,9.1,49.1&zoom=12', window);
  const ranked = (answer: Record<string, unknown>) => `${answer.ranked} ranked`;
  await ask('planning in one district', '/api/planning?district=bench-7', ranked, 3);
  await ask('planning over all', '/api/planning', ranked, 3);
  const counted = (answer: Record<string, unknown>) => `${(answer.figures as unknown[]).length} numbers`;
  const year = `from=${dayBefore(365)}&to=${dayBefore(0)}`;
  await ask('figures of a year, one district', `/api/figures?${year}&district=bench-7`, counted, 3);
  await ask('figures of a year, all', `/api/figures?${year}`, counted, 1);
}

function dayBefore(days: number): string {
  return daysLater(dayOf(new Date().toISOString()), -days);
}

async function inTheBrowser(): Promise<void> {
  const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags() });
  try {
    const context = await browser.newContext({ baseURL: server.address, viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    await page.goto('/');
    await signIn(page, account.email);
    await page.getByRole('heading', { name: 'What is owed' }).waitFor({ timeout: 60_000 });
    const since = performance.now();
    await page.getByRole('radio', { name: 'Map' }).click();
    await drawn(page);
    report('browser: from the choice "Map" to everything drawn', performance.now() - since, await told(page));
    const again = performance.now();
    await page.reload();
    await drawn(page);
    report('browser: the page opened anew', performance.now() - again, await told(page));
    for (const zoom of [7, 9, 11, 13]) {
      const step = performance.now();
      await page.locator('.map-frame').evaluate((element, to) => {
        const { map } = element as unknown as { map: { jumpTo(options: object): void } };
        element.removeAttribute('data-shown');
        map.jumpTo({ center: [9.5, 49.5], zoom: to });
      }, zoom);
      await drawn(page);
      report(`browser: a step to zoom ${zoom}, until it is drawn`, performance.now() - step, await told(page));
    }
  } finally {
    await browser.close();
  }
}

/** Waits until the map has rendered what the office answered last: as many marks and heaps as it was given. */
async function drawn(page: Page): Promise<void> {
  await page.waitForFunction(
    () => {
      const frame = document.querySelector('.map-frame');
      const map = (frame as unknown as { map?: { queryRenderedFeatures(options: object): object[] } } | null)?.map;
      if (!map || !frame?.hasAttribute('data-shown')) return false;
      const seen = map.queryRenderedFeatures({ layers: ['marks', 'heaps'] }).length;
      return seen > 0 || frame.getAttribute('data-shown') === '0';
    },
    undefined,
    { timeout: 60_000, polling: 20 },
  );
}

async function told(page: Page): Promise<string> {
  return (await page.locator('.map-told p').last().textContent()) ?? '';
}
