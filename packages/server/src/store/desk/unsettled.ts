import { isContested, openProposals } from '@combside/casework/register/settle';
import type { Unsettled, UnsettledAsked } from '@combside/contract/unsettled';
import type { ApiaryState, ColonyState, KeeperState } from '@combside/record/states';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { pageMark, readPageMark } from './paging.ts';
import { keeperIn } from './register-search.ts';

/** Records of the register that wait for somebody's word: contested values, proposed changes nobody answered. */
export async function unsettledListed(database: Database, rights: Rights, asked: UnsettledAsked): Promise<Unsettled> {
  const districts = districtsAsked(rights, asked.district);
  const mark = readPageMark(asked.after, 2);
  const found = await sql<{
    type: 'apiary' | 'keeper' | 'colony';
    id: string;
    name: string | null;
    district: string | null;
    apiary: string | null;
    state: ApiaryState | ColonyState | KeeperState;
  }>`
    select state.entity_type as type, state.entity_id as id, state.name, coalesce(state.district, site.district) as district,
      state.apiary, state.state
    from combside.states state
    left join combside.states site on state.entity_type = 'colony' and site.entity_type = 'apiary'
      and site.entity_id = state.apiary
    where state.unsettled and state.entity_type in ('apiary', 'keeper', 'colony')
      and (${districts === 'all'} or coalesce(state.district, site.district) = any(${districts === 'all' ? [] : [...districts]}::text[])
        or (state.entity_type = 'keeper' and ${keeperIn(districts)}))
      and (${mark?.[0] ?? null}::text is null
        or (state.entity_type, state.entity_id) > (${mark?.[0] ?? null}::text, ${mark?.[1] ?? null}::uuid))
    order by state.entity_type, state.entity_id limit ${asked.limit + 1}`.execute(database.sql);
  const rows = found.rows.slice(0, asked.limit);
  const last = rows.at(-1);
  return {
    lines: rows.map(({ state, name, ...row }) => ({
      ...row,
      name: name ?? '',
      contested: isContested(state),
      proposals: 'proposals' in state ? openProposals(state).length : 0,
    })),
    next: found.rows.length > asked.limit && last ? pageMark([last.type, last.id]) : null,
  };
}
