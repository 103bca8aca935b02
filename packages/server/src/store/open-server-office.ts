import { newIdentifier } from '@combside/record/identifier';
import type { Office } from '@combside/record/office/office';
import { openOffice } from '@combside/record/office/open-office';
import type { Keys, WallClock } from '@combside/record/ports';
import { districtScope, everyoneScope } from '@combside/record/transport';
import { sql } from 'kysely';
import type { Database } from './database.ts';
import { withDatabaseLock } from './database.ts';
import { districtsKnown } from './districts.ts';
import { ServerError } from './errors.ts';
import { authorOf } from './may-write.ts';
import { chance, hasher, verifier } from './node-ports.ts';
import { openOfficeStore } from './office-store/open-office-store.ts';
import { writePerson } from './people.ts';
import { mayPull } from './rights.ts';
import type { OfficePort } from './server-ports.ts';

/** Number of the lock under which the server's identity is made (ours, chosen freely). */
const identityLock = 3_301_405;

/** The server's key ring: keys by device, and whether one is there already. */
export interface ServerKeys extends Keys {
  readonly holds: (device: string) => Promise<boolean>;
}

export interface OpenedOffice {
  readonly office: Office;
  /** The office as people reach it: each question asked with their rights. */
  readonly officePort: OfficePort;
  /** The identifier under which the server's own entries name their author. */
  readonly person: string;
}

/**
 * Opens the office over its database. At the first start the server gets a device of its own and a key, which stays in
 * the data folder; whoever has the database but not the key cannot speak in its name.
 *
 * @throws ServerError `key-missing`
 */
export async function openServerOffice(database: Database, keys: ServerKeys, clock: WallClock): Promise<OpenedOffice> {
  const identity = await withDatabaseLock(database, identityLock, async () => {
    const known = await identityOf(database);
    if (known) {
      if (!(await keys.holds(known.device))) throw new ServerError('key-missing', known.device);
      return known;
    }
    const fresh = { device: newIdentifier(clock, chance), person: newIdentifier(clock, chance) };
    await keys.signerFor(fresh.device);
    await writePerson(
      database,
      { person: fresh.person, name: 'Combside', role: 'server', active: true, account: null, districts: [] },
      new Date(clock.now()),
    );
    await sql`insert into combside.server_identity (device, person) values (${fresh.device}, ${fresh.person})`.execute(
      database.sql,
    );
    return fresh;
  });
  const office = await openOffice(
    {
      store: openOfficeStore(database),
      hasher,
      signer: await keys.signerFor(identity.device),
      verifier,
      clock,
      chance,
    },
    { ...identity, name: 'server' },
  );
  return { office, officePort: officeForPeople(database, office), person: identity.person };
}

function officeForPeople(database: Database, office: Office): OfficePort {
  return {
    greet: async (rights) => {
      const districts = rights.districts === 'all' ? await districtsKnown(database) : rights.districts;
      return office.greet([everyoneScope, ...districts.map(districtScope)]);
    },
    push: (rights, entries) => office.push(entries, authorOf(rights)),
    pull: async (rights, scope, after, limit) => {
      if (!mayPull(rights, scope)) throw new ServerError('not-granted', scope);
      return office.pull(scope, after, limit);
    },
    checkpoint: async (rights, scope, position) => {
      if (!mayPull(rights, scope)) throw new ServerError('not-granted', scope);
      return office.checkpoint(scope, position);
    },
  };
}

async function identityOf(database: Database): Promise<{ device: string; person: string } | null> {
  const found = await sql<{ device: string; person: string }>`
    select device, person from combside.server_identity`.execute(database.sql);
  return found.rows[0] ?? null;
}
