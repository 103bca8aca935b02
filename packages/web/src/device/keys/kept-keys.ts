import type { Keys } from '@combside/record/ports';
import type { DeviceDatabase } from '../store/schema.ts';
import { ecdsa, ecdsaSha256, publicKeyText } from './web-ports.ts';

/**
 * The device's signing keys, kept in its database as keys that no script can read out: not ours, and not one that got
 * in. Losing the database loses the key; the person then signs under a new device identity.
 */
export function keptKeys(database: DeviceDatabase): Keys {
  return {
    async signerFor(device) {
      const kept = (await database.get('keys', device)) ?? (await makeKey(database, device));
      return {
        publicKey: kept.publicKey,
        sign: async (bytes) =>
          new Uint8Array(await crypto.subtle.sign(ecdsaSha256, kept.privateKey, bytes as BufferSource)),
      };
    },
  };
}

async function makeKey(database: DeviceDatabase, device: string) {
  const pair = await crypto.subtle.generateKey(ecdsa, false, ['sign', 'verify']);
  const made = { device, publicKey: await publicKeyText(pair.publicKey), privateKey: pair.privateKey };
  const transaction = database.transaction('keys', 'readwrite', { durability: 'strict' });
  // Another tab may have been quicker: the first key stays.
  const first = await transaction.store.get(device);
  if (first === undefined) await transaction.store.put(made);
  await transaction.done;
  return first ?? made;
}
