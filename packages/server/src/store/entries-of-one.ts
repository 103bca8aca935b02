import type { EntriesOfOne } from '@combside/contract/entries-of-one';
import { aboutKey } from '@combside/record/store';
import { everyoneScope } from '@combside/record/transport';
import type { Database } from './database.ts';
import { ServerError } from './errors.ts';
import { openOfficeStore } from './office-store/open-office-store.ts';
import { mayPull, type Rights } from './rights.ts';

/**
 * All entries about one thing, so that a device which changes it can name what it replaces.
 *
 * @throws ServerError `not-found`, also for what belongs to no scope that is granted
 */
export async function entriesOfOne(
  database: Database,
  rights: Rights,
  type: string,
  id: string,
): Promise<EntriesOfOne> {
  const store = openOfficeStore(database);
  const about = { type, id };
  const key = aboutKey(about);
  const scopes = (await store.memberships([about])).get(key) ?? [];
  // What laboratories state is for everyone; of devices nobody is told this way.
  const open =
    type === 'laboratory' ||
    rights.districts === 'all' ||
    scopes.some((scope) => scope !== everyoneScope && mayPull(rights, scope));
  const kept = open ? ((await store.entriesAbout([about])).get(key) ?? []) : [];
  if (kept.length === 0) throw new ServerError('not-found');
  return { items: kept.map(({ entry, receivedAt }) => ({ entry, receivedAt: receivedAt ?? entry.envelope.at })) };
}
