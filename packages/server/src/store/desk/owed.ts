import { dutiesOwed, dutyBearingResults } from '@combside/casework/assess/duties-owed';
import type { DutyLine, Owed, OwedAsked } from '@combside/contract/owed';
import type { Pack } from '@combside/law/pack';
import { sql } from 'kysely';
import type { Database } from '../database.ts';
import { statesOf } from '../folded-states.ts';
import { newestArrival } from '../newest-arrival.ts';
import { districtsAsked, type Rights } from '../rights.ts';
import { isResult } from './result-order.ts';
import { visitsListed } from './visits.ts';

const visitsShown = 500;

interface LawAndInstant {
  readonly pack: Pack;
  /** The instant at which "late" is judged. */
  readonly now: string;
}

/** Visits not ended, and duties nobody has met. */
export async function owedListed(
  database: Database,
  rights: Rights,
  asked: OwedAsked,
  { pack, now }: LawAndInstant,
): Promise<Owed> {
  const position = await newestArrival(database);
  const { visits, next } = await visitsListed(database, rights, { ...asked, limit: visitsShown }, 'not ended');
  return { visits, more: next !== null, duties: await dutiesIn(database, rights, asked, { pack, now }), now, position };
}

async function dutiesIn(
  database: Database,
  rights: Rights,
  asked: OwedAsked,
  { pack, now }: LawAndInstant,
): Promise<DutyLine[]> {
  const districts = districtsAsked(rights, asked.district);
  const listed = pack.notifiableFinds.map((one) => one.find);
  // Only apiaries where something was seen that can start a duty; what meets one was written there too.
  const rows = await sql<{ colony: string; label: string | null; apiary: string; name: string | null }>`
    select colony.entity_id as colony, colony.name as label, apiary.entity_id as apiary, apiary.name
    from combside.states apiary
    join combside.states colony on colony.apiary = apiary.entity_id and colony.entity_type = 'colony'
    where apiary.entity_type = 'apiary'
      and (${districts === 'all'} or apiary.district = any(${districts === 'all' ? [] : districts}::text[]))
      and apiary.entity_id in (select seen.apiary from combside.examined seen
        where ${isResult(sql`seen.result`, dutyBearingResults)}
          or seen.finds && ${listed}::text[])`.execute(database.sql);
  const names = new Map(rows.rows.map((row) => [row.apiary, row.name]));
  const labels = new Map(rows.rows.map((row) => [row.colony, row.label]));
  const colonies = await statesOf(
    database,
    'colony',
    rows.rows.map((row) => row.colony),
  );
  return dutiesOwed(colonies, pack, now)
    .filter((duty) => duty.state === 'open' || duty.state === 'late')
    .map((duty) => ({
      duty: duty.duty,
      rule: duty.rule,
      owedBy: duty.owedBy,
      condition: duty.condition,
      apiary: duty.apiary,
      apiaryName: names.get(duty.apiary) ?? null,
      colony: duty.colony,
      colonyLabel: duty.colony === null ? null : (labels.get(duty.colony) ?? null),
      since: duty.since,
      notBefore: duty.notBefore,
      due: duty.due,
      promptness: duty.promptness,
      late: duty.state === 'late',
      article: duty.article,
    }));
}
