import type { PhotographShown } from '@combside/contract/photograph';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { Folded } from '@combside/record/states';
import type { Database } from '../database.ts';
import { combStandings } from './comb-photographs.ts';

/** Photographs of examinations, each marked whether its bytes have arrived and how the comb on it stands. */
export async function photographsShown(
  database: Database,
  examinations: readonly { readonly colony: string; readonly examination: Folded<ExaminationBody> }[],
): Promise<PhotographShown[]> {
  const shown = new Map<string, Omit<PhotographShown, 'held' | 'comb'>>();
  for (const { colony, examination } of examinations) {
    for (const photograph of examination.body.photographs) shown.set(photograph.hash, { ...photograph, colony });
  }
  if (shown.size === 0) return [];
  const all = [...shown.values()];
  const rows = await database.sql
    .selectFrom('combside.photographs')
    .select('hash')
    .where('hash', 'in', [...shown.keys()])
    .execute();
  const held = new Set(rows.map((row) => row.hash));
  const standing = await combStandings(
    database,
    all.map(({ colony, hash }) => ({ colony, hash })),
  );
  return all.map((photograph) => ({
    ...photograph,
    held: held.has(photograph.hash),
    comb: standing(photograph.colony, photograph.hash),
  }));
}
