import { chainBeginning, signatureMatches } from '../chain.ts';
import { type TrustedDevice, trustedDevices } from '../trust.ts';
import type { Author } from './author.ts';
import type { OfficeContext } from './office.ts';
import type { SentEntry } from './read-sent-entry.ts';

/** What a push is checked against. */
export interface PushContext {
  readonly author: Author;
  /** Devices whose key counts, those among them whose chain begins in this push. */
  readonly trusted: ReadonlyMap<string, TrustedDevice>;
  /** The entries whose signature holds by the key of their device. */
  readonly signedWell: ReadonlySet<SentEntry>;
}

/** Works out whose keys count for these entries, and which of them are signed by those keys. */
export async function preparePush(
  office: OfficeContext,
  readable: readonly SentEntry[],
  author: Author,
): Promise<PushContext> {
  const devices = readable.map(({ entry }) => entry.envelope.device);
  const trusted = await trustedDevices(office, office.key, devices, []);
  for (const { entry, begins } of readable) {
    const beginning = begins ? chainBeginning(entry) : null;
    if (beginning !== null && !trusted.has(entry.envelope.device)) trusted.set(entry.envelope.device, beginning);
  }
  const signedWell = new Set<SentEntry>();
  await Promise.all(
    readable.map(async (item) => {
      const device = trusted.get(item.entry.envelope.device);
      if (device !== undefined && (await signatureMatches(office.verifier, item.entry.envelope, device.publicKey))) {
        signedWell.add(item);
      }
    }),
  );
  return { author, trusted, signedWell };
}
