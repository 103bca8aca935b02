import { seal } from '@combside/record/chain';
import type { Entry, Proposal } from '@combside/record/entry';
import { type DeviceBody, device } from '@combside/record/kinds/device';
import type { Chance, Hasher, Keys } from '@combside/record/ports';
import type { Head } from '@combside/record/store';
import type { DemoDistrict } from './district.ts';
import { demoPeople } from './people.ts';

/**
 * Seals the played district for real: one signed chain for each person's device, beginning with the entry that names its
 * key. The entries come back in the order of their clocks, device by device ready to be sent.
 *
 * @param ports hashing, the devices' keys, and chance for the salts
 */
export async function sealDistrict(
  district: Pick<DemoDistrict, 'sown'>,
  ports: { readonly hasher: Hasher; readonly keys: Keys; readonly chance: Chance },
): Promise<Entry[]> {
  const sealed: Entry[] = [];
  const ends = new Map<string, { head: Head | null; clock: string | null }>();
  for (const one of district.sown) {
    const signer = await ports.keys.signerFor(one.device);
    const proposals: Proposal[] = [];
    const end = ends.get(one.device) ?? { head: null, clock: null };
    if (end.head === null) proposals.push(beginning(one.device, one.author, signer.publicKey));
    proposals.push(one.proposal);
    const written = await seal(
      { hasher: ports.hasher, signer, chance: ports.chance, clock: { now: () => one.at } },
      { device: one.device, by: one.author, head: end.head, clock: end.clock },
      proposals,
    );
    for (const kept of written.kept) sealed.push(kept.entry);
    const last = written.kept.at(-1);
    if (last) {
      const { device: name, seq } = last.entry.envelope;
      ends.set(one.device, { head: { device: name, seq, hash: last.hash }, clock: written.clock });
    }
  }
  return sealed;
}

function beginning(id: string, author: string, publicKey: string): Proposal<DeviceBody> {
  const name = demoPeople.find((one) => one.device.id === id)?.device.name ?? '';
  return {
    kind: device.kind,
    version: device.version,
    about: { type: 'device', id },
    body: { publicKey, person: author, predecessor: null, name },
    replaces: [],
  };
}
