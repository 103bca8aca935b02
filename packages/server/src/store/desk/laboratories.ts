import type { Laboratories } from '@combside/contract/laboratories';
import type { Database } from '../database.ts';
import { statesOf } from '../folded-states.ts';
import { peopleIn } from '../people.ts';

/** Every laboratory with the limits it stated, by name. */
export async function laboratoriesListed(database: Database): Promise<Laboratories> {
  const rows = await database.sql
    .selectFrom('combside.states')
    .select('entity_id')
    .where('entity_type', '=', 'laboratory')
    .orderBy('name')
    .orderBy('entity_id')
    .execute();
  const ids = rows.map((row) => row.entity_id);
  const found = new Map((await statesOf(database, 'laboratory', ids)).map((state) => [state.about.id, state]));
  const states = ids.flatMap((id) => found.get(id) ?? []).filter(({ limits }) => limits.length > 0);
  return { laboratories: states, people: [...(await peopleIn(database, states, []))] } as unknown as Laboratories;
}
