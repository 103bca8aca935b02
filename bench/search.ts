/**
 * Search over the register on this machine: `npx tsx bench/search.ts [apiaries]`. Medians and worst of several runs, in
 * milliseconds, over a socket, on a server with its own embedded PostgreSQL.
 *
 * 250,000 apiaries and a third as many keepers in 50 districts. Their rows are written straight into the table of folded
 * states, each with a state as long as a real one, so that a row weighs what it weighs in the field. Goals: first rows
 * in 200 ms, the whole answer in 300 ms. Beside them stand 60,000 visits of two inspectors, four colonies to each, for the
 * search that finds visits by words, days and results.
 */
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { RegisterHits } from '../packages/contract/src/register-search.ts';
import type { Visits } from '../packages/contract/src/visits.ts';
import { foldVersion } from '../packages/record/src/fold.ts';
import { startServer } from '../packages/server/src/start.ts';

const apiaries = Number(process.argv[2] ?? 250_000);
const visits = 60_000;
const runs = 9;
/** Characters of the folded state of an apiary with one change in its history. */
const stateLength = 2400;

const folder = mkdtempSync(join(tmpdir(), 'combside-bench-'));
chmodSync(folder, 0o755);
const server = await startServer({ data: join(folder, 'data'), port: 0 });
const people = {
  office: { email: 'office@office.example', person: '01900000-0000-7000-8000-00000000000a', districts: 'all' },
  inspector: { email: 'one@office.example', person: '01900000-0000-7000-8000-00000000000b', districts: ['bench-7'] },
} as const;
const password = 'a long enough password';

try {
  await writeRows();
  const office = await signedIn('office');
  const inspector = await signedIn('inspector');
  await ask(office, 'one name', (await nameOf(123)).slice(0, 8), 1);
  await ask(office, 'a frequent word (a third of all)', 'bank', 30);
  await ask(office, 'two words, each frequent alone', 'field lane', 30);
  await ask(office, 'a number of a keeper', 'k-4321', 1);
  await ask(office, 'a telephone number', '03012345', 1);
  await ask(office, 'three letters', 'a7f', 1);
  await ask(office, 'two letters', 'a7', 1);
  await ask(office, 'one letter', 'f', 1);
  await ask(office, 'nothing found', 'zzzzzz', 0);
  await ask(inspector, 'one of 50 districts: a frequent word', 'bank', 30);
  await ask(inspector, 'one of 50 districts: two letters', 'a7', 1);
  await ask(inspector, 'one of 50 districts: nothing found', 'zzzzzz', 0);
  const asked = (query: Record<string, string>) => `visits?limit=20&${new URLSearchParams(query)}`;
  await ask(office, 'visits: one apiary', asked({ text: await nameOf(495) }), 1);
  await ask(office, 'visits: a frequent word', asked({ text: 'bank' }), 20);
  await ask(office, 'visits: a frequent word and an inspector', asked({ text: 'bank inspector' }), 20);
  await ask(office, 'visits: two letters', asked({ text: 'a7' }), 1);
  await ask(office, 'visits: nothing found', asked({ text: 'zzzzzz' }), 0);
  await ask(office, 'visits: a rare result (one in 10,000)', asked({ results: 'suspect' }), 6);
  await ask(office, 'visits: a rare result at a frequent word', asked({ results: 'suspect', text: 'bank' }), 1);
  const day = { from: '2026-05-01T00:00:00.000Z', to: '2026-05-02T00:00:00.000Z' };
  await ask(office, 'visits: a day', asked(day), 20);
  await ask(office, 'visits: a day and a frequent word', asked({ ...day, text: 'bank' }), 1);
  await ask(inspector, 'visits, one of 50 districts: a frequent word', asked({ text: 'bank' }), 1);
} finally {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
}

async function writeRows(): Promise<void> {
  const { pool } = server.database;
  const since = performance.now();
  // Hash texts do not pack well, as real states do not.
  const state = `json_build_object('filler', (select string_agg(md5(n || ':' || part), '') from generate_series(1, ${Math.ceil(stateLength / 32)}) part))`;
  await pool.query(
    `insert into combside.states (entity_type, entity_id, fold_version, state, summary, name, search)
     select 'keeper', md5('keeper' || n)::uuid, $2, ${state}, json_build_object('number', 'K-' || n), 'Keeper ' || word,
       'Keeper ' || word || E'\\nK-' || n || E'\\n030' || (12345000 + n)
     from generate_series(1, ($1::int / 3)) n, lateral (select substr(md5('word' || n), 1, 8) as word) w`,
    [apiaries, foldVersion],
  );
  await pool.query(
    `insert into combside.states (entity_type, entity_id, fold_version, state, summary, district, keeper, name, search, place)
     select 'apiary', md5('apiary' || n)::uuid, $2, ${state}, json_build_object('number', null), 'bench-' || (n % 50),
       md5('keeper' || (n % ($1::int / 3) + 1))::uuid, name, name || E'\\nLane ' || n, point((n / 1000) * 0.1, 40 + (n % 1000) * 0.02)
     from generate_series(1, $1::int) n,
       lateral (select substr(md5('name' || n), 1, 8) || case n % 3 when 0 then ' Bank' when 1 then ' End' else ' Field' end as name) w`,
    [apiaries, foldVersion],
  );
  await pool.query(
    `insert into combside.states (entity_type, entity_id, fold_version, state, summary, apiary, inspector, happened_at)
     select 'visit', md5('visit' || n)::uuid, $2, ${state}, json_build_object('about', json_build_object('id', md5('visit' || n)::uuid),
         'apiary', site, 'inspector', who, 'reason', 'programme', 'plannedFor', null, 'startedAt', null, 'endedAt', null),
       site, who, timestamptz '2026-11-01' - n * interval '12 minutes'
     from generate_series(1, $1::int) n,
       lateral (select md5('apiary' || (n * 4 + n % 4))::uuid as site, (array[$3, $4]::uuid[])[n % 2 + 1] as who) v`,
    [visits, foldVersion, people.office.person, people.inspector.person],
  );
  await pool.query(
    `insert into combside.visit_colonies (visit, colony, result)
     select md5('visit' || n)::uuid, md5('colony' || n || ':' || part)::uuid,
       case when n % 10000 = 9999 and part = 1 then 'suspect' else 'nothing seen with this look' end
     from generate_series(1, $1::int) n, generate_series(1, 4) part`,
    [visits],
  );
  await pool.query('vacuum analyze combside.states');
  await pool.query('vacuum analyze combside.visit_colonies');
  console.log(`${apiaries} apiaries and their keepers written in ${((performance.now() - since) / 1000).toFixed(1)} s`);
}

async function ask(cookie: string, what: string, text: string, atLeast: number): Promise<void> {
  const first: number[] = [];
  const whole: number[] = [];
  let found = 0;
  for (let run = 0; run < runs; run += 1) {
    const since = performance.now();
    const path = text.startsWith('visits?') ? text : `register/search?text=${encodeURIComponent(text)}`;
    const answer = await fetch(`${server.address}/api/${path}`, { headers: { cookie } });
    first.push(performance.now() - since);
    const told = (await answer.json()) as RegisterHits | Visits;
    found = ('hits' in told ? told.hits : told.visits).length;
    whole.push(performance.now() - since);
  }
  if (found < atLeast) throw new Error(`${what}: ${found} rows`);
  const middle = (times: number[]) => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
  console.log(
    `${what.padEnd(40)} first ${middle(first).toFixed(0).padStart(5)} ms, whole ${middle(whole).toFixed(0).padStart(5)} ms, ` +
      `at most ${Math.max(...whole)
        .toFixed(0)
        .padStart(5)} ms, ${found} rows`,
  );
}

async function nameOf(number: number): Promise<string> {
  const { rows } = await server.database.pool.query<{ name: string }>(
    `select name from combside.states where entity_type = 'apiary' and entity_id = md5('apiary' || $1::int)::uuid`,
    [number],
  );
  return rows[0]?.name ?? '';
}

async function signedIn(who: keyof typeof people): Promise<string> {
  const { email, person, districts } = people[who];
  const role = who === 'office' ? 'office' : 'inspector';
  await server.accounts.addPerson({ email, password, person, name: who, role, districts }, new Date());
  const answer = await fetch(`${server.address}/api/auth/sign-in/email`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: server.address },
    body: JSON.stringify({ email, password }),
  });
  if (answer.status !== 200) throw new Error(`sign-in: ${answer.status}`);
  return answer.headers.getSetCookie()[0]?.split(';')[0] ?? '';
}
