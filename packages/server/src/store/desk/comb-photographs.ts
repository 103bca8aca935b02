import type { CombPhotographLine, CombPhotographs, CombPhotographsAsked } from '@combside/contract/comb-photographs';
import type { CombStanding } from '@combside/contract/comb-standing';
import { readerVersion } from '@combside/science/comb/reading/reader-version';
import { type RawBuilder, sql } from 'kysely';
import type { Database } from '../database.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { pageMark, readPageMark } from './paging.ts';

interface Row {
  readonly hash: string;
  readonly colony: string;
  readonly label: string | null;
  readonly visit: string;
  readonly apiary: string;
  readonly apiary_name: string | null;
  readonly taken_at: Date;
  readonly caption: string;
  readonly standing: CombStanding;
  readonly reasons: string[] | null;
}

/** To `photograph` (hash and `accepted`) come `stored`, its bytes, and `reading`, what today's reader made of it. */
const withStanding = sql`
  left join combside.photographs stored on stored.hash = photograph.hash
  left join combside.comb_readings reading
    on reading.photograph = photograph.hash and reading.reader_version = ${sql.lit(readerVersion)}`;

/** What a person kept counts before what the machine says, and that only of bytes that are here. */
const standing = sql<CombStanding>`case
  when photograph.accepted then 'accepted'
  when photograph.accepted is not null then 'kept'
  when stored.hash is null then 'not-held'
  else coalesce(reading.state, 'not-read') end`;

/** Photographs taken at the combs of colonies, newest first, a page at a time, each with how it stands. */
export async function combPhotographsListed(
  database: Database,
  rights: Rights,
  asked: CombPhotographsAsked,
): Promise<CombPhotographs> {
  const districts = districtsAsked(rights, asked.district);
  const here: RawBuilder<unknown>[] = [sql`true`];
  if (districts !== 'all') {
    here.push(sql`exists (select 1 from combside.states site where site.entity_type = 'apiary'
      and site.entity_id = photograph.apiary and site.district = any(${districts}::text[]))`);
  }
  if (asked.apiary) here.push(sql`photograph.apiary = ${asked.apiary}::uuid`);
  if (asked.visit) here.push(sql`photograph.visit = ${asked.visit}::uuid`);
  const page = [...here];
  if (asked.standing) page.push(standsLike(asked.standing));
  const mark = readPageMark(asked.after, 3);
  if (mark) {
    const [at, hash, colony] = mark;
    page.push(sql`(photograph.taken_at, photograph.hash, photograph.colony)
      < (${at}::timestamptz, ${hash}::text, ${colony}::uuid)`);
  }
  const [found, open] = await Promise.all([
    sql<Row>`
      select photograph.hash, photograph.colony, photograph.visit, photograph.apiary, photograph.taken_at,
        photograph.caption, ${standing} as standing, reading.reasons,
        (select colony.name from combside.states colony
          where colony.entity_type = 'colony' and colony.entity_id = photograph.colony) as label,
        (select apiary.name from combside.states apiary
          where apiary.entity_type = 'apiary' and apiary.entity_id = photograph.apiary) as apiary_name
      from combside.comb_photographs photograph ${withStanding}
      where ${sql.join(page, sql` and `)}
      order by photograph.taken_at desc, photograph.hash desc, photograph.colony desc
      limit ${asked.limit + 1}`.execute(database.sql),
    sql<{ state: 'waiting' | 'reading'; count: number }>`
      select reading.state, count(distinct reading.photograph)::int as count
      from combside.comb_readings reading
      join combside.comb_photographs photograph on photograph.hash = reading.photograph
      where reading.state in ('waiting', 'reading') and reading.reader_version = ${readerVersion}
        and photograph.accepted is null and ${sql.join(here, sql` and `)}
      group by reading.state`.execute(database.sql),
  ]);
  const rows = found.rows.slice(0, asked.limit);
  const last = rows.at(-1);
  const counted = (state: string): number => open.rows.find((row) => row.state === state)?.count ?? 0;
  return {
    photographs: rows.map(lineOf),
    next:
      found.rows.length > asked.limit && last ? pageMark([last.taken_at.toISOString(), last.hash, last.colony]) : null,
    waiting: counted('waiting'),
    reading: counted('reading'),
  };
}

/** The condition that a photograph stands so, in words for which there is an index where few do. */
function standsLike(asked: CombStanding): RawBuilder<unknown> {
  switch (asked) {
    case 'accepted':
    case 'kept':
      return sql`photograph.accepted = ${asked === 'accepted'}`;
    case 'not-held':
      return sql`photograph.accepted is null and stored.hash is null`;
    case 'not-read':
      return sql`photograph.accepted is null and stored.hash is not null and reading.state is null`;
    default:
      return sql`photograph.accepted is null and stored.hash is not null and reading.state = ${asked}`;
  }
}

function lineOf(row: Row): CombPhotographLine {
  return {
    hash: row.hash,
    colony: row.colony,
    label: row.label ?? '',
    visit: row.visit,
    apiary: row.apiary,
    apiaryName: row.apiary_name,
    takenAt: row.taken_at.toISOString(),
    caption: row.caption,
    standing: row.standing,
    reasons: row.standing === 'refused' || row.standing === 'failed' ? (row.reasons ?? []) : [],
  };
}

/** How the combs on these photographs of colonies stand, by colony and hash. */
export async function combStandings(
  database: Database,
  photographs: readonly { readonly colony: string; readonly hash: string }[],
): Promise<(colony: string, hash: string) => CombStanding> {
  const { rows } = await sql<{ colony: string; hash: string; standing: CombStanding }>`
    select photograph.colony, photograph.hash, ${standing} as standing from (
      select asked.colony, asked.hash, kept.accepted
      from jsonb_to_recordset(${JSON.stringify(photographs)}::jsonb) as asked (colony uuid, hash text)
      left join combside.comb_photographs kept on kept.colony = asked.colony and kept.hash = asked.hash
    ) photograph ${withStanding}`.execute(database.sql);
  const found = new Map(rows.map((row) => [`${row.colony} ${row.hash}`, row.standing]));
  return (colony, hash) => found.get(`${colony} ${hash}`) ?? 'not-held';
}
