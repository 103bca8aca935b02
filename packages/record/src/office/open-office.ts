import { chainBeginning } from '../chain.ts';
import { instantAt } from '../clock.ts';
import type { About } from '../entry.ts';
import { RecordError } from '../errors.ts';
import { newIdentifier } from '../identifier.ts';
import { kinds as knownKinds } from '../kinds/registry.ts';
import { openReader, refoldStale } from '../reader.ts';
import { commitEntries } from './commit-entries.ts';
import { eraseBodies } from './erase-bodies.ts';
import type { Office, OfficeContext, OfficeOptions, OfficePorts } from './office.ts';
import { pull } from './pull.ts';
import { push } from './push.ts';
import { scopeGrowth } from './scope-growth.ts';
import { stateCheckpoint } from './state-checkpoint.ts';
import { writeAtDesk } from './write-at-desk.ts';

/**
 * Opens the office over its store. The first opening begins the office's own chain. Any number of processes may.
 *
 * @throws RecordError `wrong server` when the store was opened with another key before
 */
export async function openOffice(ports: OfficePorts, options: OfficeOptions): Promise<Office> {
  const { store, signer, clock, chance } = ports;
  const kinds = options.kinds ?? knownKinds;
  const key = { device: options.device, publicKey: signer.publicKey };
  const context: OfficeContext = { ...ports, kinds, key, person: options.person };

  if ((await store.head(options.device)) === null) await beginOfficeChain(context, options.name);
  const [own] = await store.chain(options.device, 1, 1);
  if (own !== undefined && chainBeginning(own.entry)?.publicKey !== signer.publicKey) {
    throw new RecordError('wrong server', `the store of ${options.device} was opened with another key`);
  }

  return {
    ...openReader(store, kinds),
    key,
    greet: (scopes) => ({
      office: key.device,
      publicKey: key.publicKey,
      now: instantAt(clock.now()),
      scopes: [...scopes],
    }),
    push: (entries, author) => push(context, entries, author),
    pull: (scope, after, limit) => pull(store, scope, after, limit),
    checkpoint: (scope, position) => stateCheckpoint(context, scope, position),
    write: (proposals, by) => writeAtDesk(context, proposals, by),
    erase: (ids, reason, by) => eraseBodies(context, ids, reason, by),
    newId: () => newIdentifier(clock, chance),
    refold: (limit) => refoldStale(store, limit, kinds),
  };
}

/** Writes the entry of kind `device` with which the office's own chain begins, unless another process was faster. */
async function beginOfficeChain(context: OfficeContext, name: string): Promise<void> {
  const { store, key, person, kinds } = context;
  const about: About = { type: 'device', id: key.device };
  const body = { publicKey: key.publicKey, person, predecessor: null, name };
  await store.exclusive(async (inside) => {
    if ((await inside.head(key.device)) !== null) return;
    await commitEntries(context, inside, {
      received: [],
      proposals: [{ kind: 'device', version: 1, about, replaces: [], body }],
      by: person,
      growth: scopeGrowth(inside, kinds),
    });
  });
}
