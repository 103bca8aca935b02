import { chainBeginning, linkOf, verifyChain, verifyEntry } from '@combside/record/chain';
import { checkpointIsSigned, headsMissing } from '@combside/record/checkpoint';
import type { StoredEntry } from '@combside/record/store';
import { hasher, verifier } from '../store/node-ports.ts';
import type { WholeRecord } from './records.ts';

/**
 * How deep a check goes.
 * - `entry`: each body matches its hash, each signature its key
 * - `chain`: also no gap, no fork, every link right, every device vouched for by the office
 * - `copy`: also nothing is missing at the ends: every chain reaches the head the office signed
 */
export const depths = ['entry', 'chain', 'copy'] as const;
export type Depth = (typeof depths)[number];

/** Something that does not hold: which chain, where in it, and what. */
export interface RecordFinding {
  readonly device: string;
  readonly seq: number;
  readonly fault: string;
}

export interface Verdict {
  readonly depth: Depth;
  readonly holds: boolean;
  readonly entries: number;
  readonly chains: number;
  readonly refused: number;
  /** Entries whose body an erasure has named. */
  readonly erased: number;
  /** When the office signed the checkpoint that was used; null below depth `copy`, or where there is none. */
  readonly checkpointAt: string | null;
  /** The key everything was checked against. */
  readonly officeKey: string;
  readonly findings: readonly RecordFinding[];
}

/**
 * Checks a whole record.
 *
 * @param trustedKey the office's public key as known from elsewhere; the record's own word on it when left out, which
 * shows only that the record agrees with itself
 */
export async function verifyRecord(record: WholeRecord, depth: Depth, trustedKey?: string): Promise<Verdict> {
  const officeKey = trustedKey ?? record.office.publicKey;
  const office = record.office.device;
  const findings: RecordFinding[] = [];
  const { erased, vouched } = await saidByOthers(record, office);
  const tally = { entries: 0, chains: 0, refused: 0, erased: 0 };
  const links = new Map<string, ReadonlyMap<number, string>>();

  for await (const chain of record.chains()) {
    const first = chain[0];
    if (!first) continue;
    const { device } = first.entry.envelope;
    tally.chains += 1;
    tally.entries += chain.length;
    tally.refused += chain.filter((kept) => kept.refused !== null).length;
    tally.erased += chain.filter((kept) => kept.entry.salt === null && kept.refused === null).length;
    const beginning = chainBeginning(first.entry);
    if (device === office && beginning?.publicKey !== officeKey) {
      findings.push({ device, seq: 1, fault: 'another key than the office’s' });
    }
    if (depth === 'entry') {
      findings.push(...(await entryFaults(chain, beginning?.publicKey ?? '', erased)));
    } else {
      findings.push(...(await verifyChain({ hasher, verifier }, chain, { erased, office })));
      if (device !== office && !vouched.has(await linkOf(hasher, first.entry.envelope))) {
        findings.push({ device, seq: 1, fault: 'not countersigned' });
      }
    }
    // The links as computed, never as written down beside the entries.
    const computed = new Map<number, string>();
    for (const { entry, hash } of chain) {
      const link = await linkOf(hasher, entry.envelope);
      computed.set(entry.envelope.seq, link);
      if (link !== hash) findings.push({ device, seq: entry.envelope.seq, fault: 'wrong link' });
    }
    links.set(device, computed);
  }

  const checkpoint = depth === 'copy' ? await record.checkpoint() : null;
  if (depth === 'copy') {
    if (!checkpoint) findings.push({ device: office, seq: 0, fault: 'no checkpoint' });
    else {
      if (checkpoint.office !== office || !(await checkpointIsSigned(verifier, checkpoint, officeKey))) {
        findings.push({ device: office, seq: 0, fault: 'checkpoint not signed by the office' });
      }
      const missing = await headsMissing(checkpoint, async (device, seq) => links.get(device)?.get(seq) ?? null);
      findings.push(...missing.map(({ device, seq }) => ({ device, seq, fault: 'signed head missing' })));
    }
  }
  return {
    depth,
    holds: findings.length === 0,
    ...tally,
    checkpointAt: checkpoint?.at ?? null,
    officeKey,
    findings,
  };
}

async function entryFaults(
  chain: readonly StoredEntry[],
  publicKey: string,
  erased: ReadonlySet<string>,
): Promise<RecordFinding[]> {
  const findings: RecordFinding[] = [];
  for (const { entry, refused } of chain) {
    const { device, seq, id } = entry.envelope;
    if (publicKey === '') {
      findings.push({ device, seq, fault: 'no device entry' });
      continue;
    }
    for (const fault of await verifyEntry({ hasher, verifier }, entry, publicKey)) {
      if (fault !== 'body missing' || !(refused !== null || erased.has(id))) findings.push({ device, seq, fault });
    }
  }
  return findings;
}

/** What other entries say about entries: bodies that were erased, and first entries the office vouches for. */
async function saidByOthers(
  record: WholeRecord,
  office: string,
): Promise<{ erased: ReadonlySet<string>; vouched: ReadonlySet<string> }> {
  const erased = new Set<string>();
  const vouched = new Set<string>();
  for await (const chain of record.chains()) {
    for (const { entry, refused } of chain) {
      if (refused !== null || entry.envelope.device !== office) continue;
      const body = entry.body as { entries?: string[]; envelopeHash?: string } | null;
      if (entry.envelope.kind === 'erasure') for (const id of body?.entries ?? []) erased.add(id);
      if (entry.envelope.kind === 'countersignature' && body?.envelopeHash) vouched.add(body.envelopeHash);
    }
  }
  return { erased, vouched };
}
