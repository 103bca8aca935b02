import { demoDistrictFrom } from '@combside/casework/demo/district';
import { type DemoPerson, demoDistrict, demoPeople } from '@combside/casework/demo/people';
import { sealDistrict } from '@combside/casework/demo/seal-district';
import { loadPack } from '@combside/law/load-pack';
import type { Entry } from '@combside/record/entry';
import type { Keys } from '@combside/record/ports';
import { batchLimit, type PushResult } from '@combside/record/transport';
import { sql } from 'kysely';
import type { Accounts } from '../accounts/accounts.ts';
import { type Database, withDatabaseLock } from '../store/database.ts';
import { writeDistrict } from '../store/districts.ts';
import { newSigner } from '../store/keys.ts';
import { chance, hasher } from '../store/node-ports.ts';
import { rightsOfPerson } from '../store/people.ts';
import type { OfficePort } from '../store/server-ports.ts';

/** One password for every demo account: an invented district holds nothing to protect, and the terminal prints it. */
export const demoPassword = 'quillmoor-comb-7';

/** The same every time, so that tours and tests find what they look for. */
const demoSeed = 20_260_601;

/** The rule pack of the invented place. */
export const demoPack = 'quillmoor';

/** Two servers that start at once on one database plant one district (number ours, chosen freely). */
const demoLock = 3_301_406;

export interface DemoAccount {
  readonly person: string;
  readonly name: string;
  readonly email: string;
  readonly role: 'inspector' | 'office';
  readonly districts: 'all' | readonly string[];
}

/** The named people of the demo, with what each may see. */
export const demoAccounts: readonly DemoAccount[] = demoPeople.map((one) => ({
  person: one.id,
  name: one.name,
  email: emailOf(one),
  role: one.role === 'inspector' ? 'inspector' : 'office',
  districts: one.role === 'inspector' ? [demoDistrict] : 'all',
}));

/** `.example` can never be anybody's address (RFC 2606, section 2). */
function emailOf(one: DemoPerson): string {
  return `${one.account}@${demoDistrict}.example`;
}

export interface DemoPorts {
  readonly database: Database;
  readonly accounts: Pick<Accounts, 'addPerson'>;
  readonly office: OfficePort;
  /** The day that counts as today in the demo, `2026-05-04`. */
  readonly today: string;
  readonly now: Date;
  /** Called before the work begins, when there is any. */
  readonly begin?: () => void;
}

/**
 * In an empty record, and nowhere else, makes the demo accounts and the invented district: played by casework, sealed with
 * keys of devices that exist only for it, and pushed as any phone pushes. Later starts touch neither: an account that was
 * closed stays closed. A planting that was broken off before its first entry goes on with the accounts that are missing.
 *
 * @returns how many entries were stored; 0 where the demo stands already; null where the record is somebody's own
 * @throws Error when the office does not take one of them: the demo must be as sound as what people write
 */
export async function plantDemo(ports: DemoPorts): Promise<number | null> {
  return withDatabaseLock(ports.database, demoLock, async () => {
    const { people, isOwn, isWritten } = await whatStands(ports.database);
    if (isOwn) return null;
    if (isWritten) return people.length > 0 ? 0 : null;
    ports.begin?.();
    await writeDistrict(ports.database, demoDistrict, true);
    for (const account of demoAccounts.filter(({ person }) => !people.includes(person))) {
      await ports.accounts.addPerson({ ...account, password: demoPassword }, ports.now);
    }
    const pack = await loadPack(demoPack);
    const district = await demoDistrictFrom({ today: ports.today, seed: demoSeed, pack, hasher });
    const sealed = await sealDistrict(district, { hasher, keys: keysOfTheMoment(), chance });
    for (const { id } of demoPeople) await pushAs(ports, id, sealed);
    return sealed.length;
  });
}

async function pushAs(ports: DemoPorts, person: string, sealed: readonly Entry[]): Promise<void> {
  const rights = await rightsOfPerson(ports.database, person);
  if (!rights) throw new Error(`the demo person ${person} has no account`);
  const own = sealed.filter((entry) => entry.envelope.by === person);
  for (let start = 0; start < own.length; start += batchLimit) {
    const results = await ports.office.push(rights, own.slice(start, start + batchLimit));
    const bad = results.find((result) => result.outcome !== 'received');
    if (bad) throw new Error(`the office did not take the demo entry ${bad.id}: ${described(bad)}`);
  }
}

function described(result: PushResult): string {
  return 'reason' in result ? `${result.outcome}, ${result.reason}` : result.outcome;
}

/** Who is known beside the server, whether anything there is not the demo's, and whether anything was written yet. */
async function whatStands(
  database: Database,
): Promise<{ readonly people: readonly string[]; readonly isOwn: boolean; readonly isWritten: boolean }> {
  const { rows } = await sql<{ people: string[]; real: boolean; written: boolean }>`
    select array(select person::text from combside.people where role <> 'server') as people,
      exists (select from combside.districts where not invented) as real,
      exists (select from combside.entries where device not in (select device from combside.server_identity))
        or exists (select from combside.states where entity_type = 'apiary') as written`.execute(database.sql);
  const [found] = rows;
  if (!found) throw new Error('the database does not say what stands in it');
  const people = found.people.filter((person) => !demoAccounts.some((account) => account.person === person));
  return { people: found.people, isOwn: found.real || people.length > 0, isWritten: found.written };
}

/** Keys that live as long as the planting: the devices of the demo never write again. */
function keysOfTheMoment(): Keys {
  const signers = new Map<string, ReturnType<typeof newSigner>>();
  return {
    signerFor: async (device) => {
      const signer = signers.get(device) ?? newSigner();
      signers.set(device, signer);
      return signer;
    },
  };
}
