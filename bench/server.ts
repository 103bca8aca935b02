/**
 * The server's speed on this machine: `npx tsx bench/server.ts [apiaries]`. Medians in milliseconds, on a server with its
 * own embedded PostgreSQL (syncing to disk as in the field), asked over a socket.
 *
 * - up and down: 10,000 signed entries of one phone pushed in messages of 500, then pulled in pages of 500
 * - live: from the push of one entry to its event in an open stream
 * - lists: 250,000 apiaries in 50 districts. Their rows are written straight into the table of folded states; signing
 *   and pushing a quarter of a million entries would measure the push again
 * - combs: as many photographs of combs, one at each apiary over eleven years, the newest tenth unread, some waiting
 */
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { protocolHeader, protocolVersion } from '../packages/contract/src/version.ts';
import type { Entry, Proposal } from '../packages/record/src/entry.ts';
import { foldVersion } from '../packages/record/src/fold.ts';
import { readerVersion } from '../packages/science/src/comb/reading/reader-version.ts';
import { newId, phoneOf } from '../packages/server/src/acceptance/test-house.ts';
import {
  apiaryProposal,
  colonyProposal,
  examinationProposal,
  visitProposal,
} from '../packages/server/src/acceptance/test-proposals.ts';
import { startServer } from '../packages/server/src/start.ts';

const entries = 10_000;
const apiaries = Number(process.argv[2] ?? 250_000);
const runs = 9;

const folder = mkdtempSync(join(tmpdir(), 'combside-bench-'));
chmodSync(folder, 0o755);
const server = await startServer({ data: join(folder, 'data'), port: 0 });
const person = '01900000-0000-7000-8000-00000000000a';
const account = { email: 'bench@office.example', password: 'a long enough password' };
const cookie = await signedInAs().catch(async (error: unknown) => {
  await server.stop();
  throw error;
});
const headers = {
  cookie,
  [protocolHeader]: String(protocolVersion),
  'content-type': 'application/json',
};
const post = async (path: string, message: unknown): Promise<unknown> => {
  const answer = await fetch(`${server.address}${path}`, { method: 'POST', headers, body: JSON.stringify(message) });
  if (answer.status !== 200) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
  return answer.json();
};

function report(what: string, milliseconds: number, note = ''): void {
  console.log(`${what.padEnd(58)} ${milliseconds.toFixed(1).padStart(10)} ms  ${note}`);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const since = performance.now();
  await work();
  return performance.now() - since;
}

try {
  await upAndDown();
  await live();
  await lists();
  await combs();
} finally {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
}

async function upAndDown(): Promise<void> {
  const phone = phoneOf(person);
  const sealed: Entry[] = [];
  while (sealed.length < entries) {
    const [apiary, visit] = [newId(), newId()];
    const proposals: Proposal[] = [apiaryProposal(apiary, 'north'), visitProposal(visit, apiary, person)];
    for (let number = 1; number <= 9; number += 1) {
      const colony = newId();
      proposals.push(colonyProposal(colony, apiary, String(number)), examinationProposal(colony, visit, apiary));
    }
    sealed.push(...(await phone.write(...proposals)));
  }
  const sent = sealed.slice(0, entries);
  const up = await timed(async () => {
    for (let start = 0; start < sent.length; start += 500) {
      const { results } = (await post('/api/push', { entries: sent.slice(start, start + 500) })) as {
        results: { outcome: string }[];
      };
      if (results.some((result) => result.outcome !== 'received')) throw new Error('an entry was not received');
    }
  });
  report(`push of ${entries} entries, 500 at a time`, up, `${Math.round((entries / up) * 1000)} entries/s`);
  let pulled = 0;
  const down = await timed(async () => {
    for (const scope of ['everyone', 'district/north']) {
      for (let after = 0, more = true; more; ) {
        const page = (await post('/api/pull', { scope, after, limit: 500 })) as {
          items: { position: number }[];
          more: boolean;
        };
        pulled += page.items.length;
        after = page.items.at(-1)?.position ?? after;
        more = page.more;
      }
    }
  });
  if (pulled < entries) throw new Error(`pulled ${pulled} of ${entries}`);
  report(`pull of ${pulled} entries, 500 at a time`, down, `${Math.round((pulled / down) * 1000)} entries/s`);
  const again = await timed(() => post('/api/push', { entries: sent.slice(0, 500) }));
  report('push of 500 entries that are known', again);
}

async function live(): Promise<void> {
  const stream = await fetch(`${server.address}/api/live`, { headers });
  const reader = (stream.body as ReadableStream<Uint8Array>).getReader();
  const decoder = new TextDecoder();
  let text = '';
  const until = async (wanted: string): Promise<void> => {
    while (!text.includes(wanted)) {
      const { value, done } = await reader.read();
      if (done) throw new Error('the stream ended');
      text += decoder.decode(value, { stream: true });
    }
  };
  await until('event: open');
  const phone = phoneOf(person);
  await post('/api/push', { entries: await phone.write() });
  const times: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const [entry] = await phone.write(apiaryProposal(newId(), 'north'));
    times.push(
      await timed(async () => {
        await Promise.all([post('/api/push', { entries: [entry] }), until(entry?.envelope.id ?? '')]);
      }),
    );
  }
  await reader.cancel();
  report('live: push of one entry to its event in an open stream', median(times));
}

async function lists(): Promise<void> {
  const { pool } = server.database;
  const written = await timed(async () => {
    await pool.query(
      `insert into combside.states (entity_type, entity_id, fold_version, state, summary, name, search)
       select 'keeper', md5('keeper' || n)::uuid, $2, '{}', '{}', 'Keeper ' || n || ' ' || word,
         'Keeper ' || n || ' ' || word || E'\\nK-' || n
       from generate_series(1, ($1::int / 3)) n, lateral (select substr(md5('word' || n), 1, 6) as word) w`,
      [apiaries, foldVersion],
    );
    await pool.query(
      `insert into combside.states (entity_type, entity_id, fold_version, state, summary, district, keeper, name, search, place)
       select 'apiary', md5('apiary' || n)::uuid, $2, '{}',
         json_build_object('about', json_build_object('type', 'apiary', 'id', md5('apiary' || n)::uuid), 'foldVersion', $2::int,
           'contested', false, 'writtenByNewer', false, 'name', name, 'number', null, 'district', district,
           'keeper', md5('keeper' || (n % ($1::int / 3) + 1))::uuid, 'latitude', lat, 'longitude', lon, 'uncertaintyMetres', 10,
           'coloniesRegistered', 5, 'lastConfirmedOn', null, 'proposals', 0, 'mergedInto', null),
         district, md5('keeper' || (n % ($1::int / 3) + 1))::uuid, name, name || E'\\nLane ' || n, point(lon, lat)
       from generate_series(1, $1::int) n, lateral (select 'bench-' || (n % 50) as district,
         substr(md5('name' || n), 1, 8) || case n % 3 when 0 then ' Bank' when 1 then ' End' else ' Field' end as name,
         40 + (n % 1000) * 0.02 as lat, (n / 1000) * 0.1 as lon) w`,
      [apiaries, foldVersion],
    );
    await pool.query('analyze combside.states');
  });
  console.log(
    `${apiaries} apiaries and ${Math.floor(apiaries / 3)} keepers written in ${(written / 1000).toFixed(1)} s`,
  );
  const ask = async (what: string, query: string, atLeast: number): Promise<void> => {
    const times: number[] = [];
    let found = 0;
    for (let run = 0; run < runs; run += 1) {
      times.push(
        await timed(async () => {
          const answer = await fetch(`${server.address}/api/apiaries?${query}`, { headers });
          found = ((await answer.json()) as { apiaries: unknown[] }).apiaries.length;
        }),
      );
    }
    if (found < atLeast) throw new Error(`${what}: ${found} rows`);
    report(`apiaries: ${what}`, median(times), `${found} rows`);
  };
  await ask('first page of all', 'limit=50', 50);
  await ask('first page of a district', 'district=bench-7&limit=50', 50);
  const middle = (await (await fetch(`${server.address}/api/apiaries?search=bank&limit=500`, { headers })).json()) as {
    next: string;
  };
  await ask('a page further on', `limit=50&after=${middle.next}`, 50);
  await ask('search, a frequent word', 'search=bank', 50);
  await ask('search, one name', `search=${(await nameOf(123)).slice(0, 8)}`, 1);
  await ask('search, a keeper’s number', 'search=K-4321', 1);
  await ask('search, two letters', 'search=a7', 1);
  await ask('search, nothing found', 'search=zzzzzz', 0);
  await ask('a box on the map, 500 at most', 'box=0.5,45,1.5,46&limit=500', 100);
  report('districts with their counts', await timed(() => fetch(`${server.address}/api/districts`, { headers })));
}

async function combs(): Promise<void> {
  const { pool } = server.database;
  await pool.query(
    `insert into combside.comb_photographs (colony, hash, visit, apiary, taken_at, caption, accepted)
     select md5('colony' || n)::uuid, md5('a' || n) || md5('b' || n), md5('visit' || n / 40)::uuid, md5('apiary' || n)::uuid,
       timestamptz '2015-01-01' + n * interval '1400 seconds', '', case when n < 0.9 * $1::int then n % 2 = 0 end
     from generate_series(1, $1::int) n`,
    [apiaries],
  );
  await pool.query(
    `insert into combside.photographs (hash, bytes, media_type, uploaded_by, received_at)
     select hash, 4000000, 'image/jpeg', $1, taken_at from combside.comb_photographs`,
    [person],
  );
  await pool.query(
    `insert into combside.comb_readings (photograph, reader_version, state, asked_at)
     select hash, $1, 'waiting', now() from combside.comb_photographs order by taken_at desc limit 500`,
    [readerVersion],
  );
  await pool.query('analyze combside.comb_photographs, combside.photographs, combside.comb_readings');
  const ask = async (what: string, query: string, atLeast: number): Promise<string | null> => {
    const times: number[] = [];
    let answer: { photographs: unknown[]; next: string | null } = { photographs: [], next: null };
    for (let run = 0; run < runs; run += 1) {
      times.push(
        await timed(async () => {
          answer = await (await fetch(`${server.address}/api/comb-photographs?${query}`, { headers })).json();
        }),
      );
    }
    if (answer.photographs.length < atLeast) throw new Error(`${what}: ${answer.photographs.length} rows`);
    report(`combs: ${what}`, median(times), `${answer.photographs.length} rows`);
    return answer.next;
  };
  await ask('first page of all', 'limit=60', 60);
  const far = await ask('500 not read', 'standing=not-read&limit=500', 500);
  await ask('the page after these', `limit=60&after=${far}`, 60);
  await ask('first page of a district', 'district=bench-7&limit=60', 60);
  await ask('accepted ones, behind all that is unread', 'standing=accepted&limit=60', 60);
  await ask('a standing that none has', 'standing=refused&limit=60', 0);
  const { rows } = await pool.query<{ visit: string }>(`select md5('visit' || 7)::uuid as visit`);
  await ask('of a visit', `visit=${rows[0]?.visit}&limit=60`, 40);
}

async function nameOf(number: number): Promise<string> {
  const { rows } = await server.database.pool.query<{ name: string }>(
    `select name from combside.states where entity_type = 'apiary' and entity_id = md5('apiary' || $1::int)::uuid`,
    [number],
  );
  return rows[0]?.name ?? '';
}

async function signedInAs(): Promise<string> {
  await server.accounts.addPerson({ ...account, person, name: 'Bench', role: 'office', districts: 'all' }, new Date());
  const signedIn = await fetch(`${server.address}/api/auth/sign-in/email`, {
    method: 'POST',
    // As a browser does: the sign-in takes no message that does not say from which page it comes.
    headers: { 'content-type': 'application/json', origin: server.address },
    body: JSON.stringify(account),
  });
  if (signedIn.status !== 200) throw new Error(`sign-in: ${signedIn.status} ${await signedIn.text()}`);
  return signedIn.headers.getSetCookie()[0]?.split(';')[0] ?? '';
}
