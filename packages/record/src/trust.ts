import { bodyMatches, chainBeginning, linkOf, signatureMatches } from './chain.ts';
import type { Entry } from './entry.ts';
import type { CountersignatureBody } from './kinds/countersignature.ts';
import type { Hasher, Verifier } from './ports.ts';
import { aboutKey, type Change, type EntryStore, type OfficeKey } from './store.ts';

/** Whose key a device signs with. */
export interface TrustedDevice {
  readonly publicKey: string;
  readonly person: string;
}

export interface TrustPorts {
  readonly store: EntryStore<Change>;
  readonly hasher: Hasher;
  readonly verifier: Verifier;
}

/**
 * The devices whose entries count, with their keys. A device is trusted when the office countersigned the first entry
 * of its chain, this very envelope. The office itself is trusted by the key known from the first contact.
 *
 * @param also entries just arrived, whose own signatures were checked, to be taken into account beside the stored ones
 */
export async function trustedDevices(
  ports: TrustPorts,
  office: OfficeKey | null,
  devices: readonly string[],
  also: readonly Entry[],
): Promise<Map<string, TrustedDevice>> {
  const trusted = new Map<string, TrustedDevice>();
  const abouts = [...new Set(devices)].map((id) => ({ type: 'device', id }));
  const stored = await ports.store.entriesAbout(abouts);
  for (const about of abouts) {
    const here = (stored.get(aboutKey(about)) ?? []).map(({ entry }) => entry);
    const entries = [...here, ...also.filter(({ envelope }) => aboutKey(envelope.about) === aboutKey(about))];
    const vouched = new Set<string>();
    for (const { envelope, body } of entries) {
      if (envelope.kind === 'countersignature' && envelope.device === office?.device && body !== null) {
        vouched.add((body as CountersignatureBody).envelopeHash);
      }
    }
    for (const entry of entries) {
      const beginning = entry.envelope.device === about.id ? chainBeginning(entry) : null;
      if (beginning === null) continue;
      const isOffice = office !== null && about.id === office.device && beginning.publicKey === office.publicKey;
      if (isOffice || vouched.has(await linkOf(ports.hasher, entry.envelope))) {
        trusted.set(about.id, { publicKey: beginning.publicKey, person: beginning.person });
      }
    }
  }
  return trusted;
}

/** Whether the first entry of a chain holds by itself: body, and signature by the key it declares. */
export async function beginsItsChain(hasher: Hasher, verifier: Verifier, entry: Entry): Promise<boolean> {
  const beginning = chainBeginning(entry);
  if (beginning === null || !(await bodyMatches(hasher, entry))) return false;
  return signatureMatches(verifier, entry.envelope, beginning.publicKey);
}
