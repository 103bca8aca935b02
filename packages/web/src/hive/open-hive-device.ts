import { loadPack } from '@combside/law/load-pack';
import type { Session } from '../app/session.ts';
import { openDevice } from '../device/start.ts';
import type { DatabaseWatch } from '../device/store/database.ts';
import { timeZoneHere } from '../ui/time-zone.ts';
import type { HiveDevice } from './hive-device.tsx';

/** Opens the device for the person signed in and gives the hive screens what they may use of it. */
export async function openHiveDevice(session: Session, watch: DatabaseWatch): Promise<HiveDevice> {
  const [device, pack] = await Promise.all([openDevice(session.person, watch), loadPack(session.pack)]);
  return {
    session,
    book: device.book,
    hasher: device.hasher,
    pack,
    timeZone: timeZoneHere,
    now: () => new Date().toISOString(),
    drafts: device.drafts,
    photographs: device.photographs,
    notTaken: async () =>
      (await device.refused()).map(({ entry, refused }) => ({
        id: entry.envelope.id,
        kind: entry.envelope.kind,
        at: entry.envelope.at,
        reason: refused ?? '',
      })),
    names: device.names,
    sync: device.sync,
    storage: device.storage,
    close: device.close,
  };
}
