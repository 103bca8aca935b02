import { openDatabase } from '../store/database.ts';
import { keysIn } from '../store/keys.ts';
import { authorOf } from '../store/may-write.ts';
import { wallClock } from '../store/node-ports.ts';
import { openServerOffice } from '../store/open-server-office.ts';
import type { Rights } from '../store/rights.ts';
import { newId, phoneOf } from './test-house.ts';
import { apiaryProposal, noteProposal } from './test-proposals.ts';

/**
 * A server process of its own, for tests with several: writes as one inspector from two phones at once, in many small
 * pushes, and prints each entry the office said it received. Arguments: socket folder, user, database, keys, person,
 * pushes for each phone.
 */
const [socketFolder = '', user = '', name = '', keys = '', person = '', pushes = '0'] = process.argv.slice(2);
const database = await openDatabase({ cluster: { socketFolder, user }, name }, 4);
const { office } = await openServerOffice(database, keysIn(keys), wallClock);
const rights: Rights = { person, name: '', role: 'inspector', districts: ['north'] };

async function writeFrom(): Promise<void> {
  const phone = phoneOf(person);
  const apiary = newId();
  for (let push = 0; push < Number(pushes); push += 1) {
    const proposals = push === 0 ? [apiaryProposal(apiary, 'north')] : [noteProposal('apiary', apiary, `note ${push}`)];
    const entries = await phone.write(...proposals, noteProposal('apiary', apiary, 'and one more'));
    for (const result of await office.push(entries, authorOf(rights))) {
      if (result.outcome !== 'received') throw new Error(JSON.stringify(result));
      process.stdout.write(`${result.id}\n`);
    }
  }
}

await Promise.all([writeFrom(), writeFrom()]);
await database.close();
