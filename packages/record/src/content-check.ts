import { chainBeginning } from './chain.ts';
import { millisecondsAt, readClock } from './clock.ts';
import { mayBeErased } from './effect.ts';
import type { Entry, Proposal } from './entry.ts';
import { RecordError } from './errors.ts';
import { lift } from './kinds/lift.ts';
import { type Kinds, mayBeAbout } from './kinds/registry.ts';

/** Why an entry whose signature holds still does not count. */
export type ContentFault = 'bad clock' | 'not yours to write' | 'wrong about' | 'wrong body' | 'body missing';

/**
 * Record checks shape: is this entry, as far as this program knows its kind, what such an entry must be. Unknown kinds
 * and newer versions pass: they are kept and forwarded.
 *
 * @param fromOffice the entry stands in the office's own chain
 */
export function contentFault(entry: Entry, fromOffice: boolean, kinds: Kinds): ContentFault | null {
  const { envelope } = entry;
  try {
    readClock(envelope.clock);
    millisecondsAt(envelope.at);
  } catch (error) {
    if (error instanceof RecordError) return 'bad clock';
    throw error;
  }
  const kind = kinds.get(envelope.kind);
  if (kind !== undefined) {
    if (kind.writer === 'office' && !fromOffice) return 'not yours to write';
    if (!mayBeAbout(kind, envelope.about)) return 'wrong about';
    // A device speaks only for itself, and says who it is only once.
    if (kind.kind === 'device' && chainBeginning(entry) === null) return 'wrong about';
    if (kind.kind === 'resealing' && envelope.about.id !== envelope.device) return 'wrong about';
  }
  if (entry.salt === null) return mayBeErased(entry, kinds) ? null : 'body missing';
  return lift(kinds, envelope.kind, envelope.version, entry.body).fault === 'wrong body' ? 'wrong body' : null;
}

/**
 * Checks what is to be written here. An unknown kind, an old version or a wrong field is refused loudly: only entries
 * from elsewhere may be newer than this program.
 *
 * @returns the proposals with their bodies as the kind reads them
 * @throws RecordError `unknown kind`, `wrong about`, `wrong body`
 */
export function checkedProposals(proposals: readonly Proposal[], kinds: Kinds): Proposal[] {
  return proposals.map((proposal) => {
    const kind = kinds.get(proposal.kind);
    if (kind === undefined || kind.version !== proposal.version) {
      throw new RecordError('unknown kind', `${proposal.kind} ${proposal.version}`);
    }
    if (!mayBeAbout(kind, proposal.about)) {
      throw new RecordError('wrong about', `${proposal.kind} about a ${proposal.about.type}`);
    }
    const read = lift(kinds, proposal.kind, proposal.version, proposal.body);
    if (read.fault === 'wrong body') throw new RecordError('wrong body', read.where);
    if (read.fault !== null) throw new RecordError('unknown kind', `${proposal.kind}: ${read.fault}`);
    return { ...proposal, body: read.body, replaces: [...new Set(proposal.replaces)] };
  });
}

/** Identifiers of other entries that proposals rest on: what they replace, correct or erase. */
export function namedBy(proposals: readonly Proposal[], kinds: Kinds): string[] {
  const named = new Set<string>();
  for (const { kind, body, replaces } of proposals) {
    for (const id of replaces) named.add(id);
    const as = kinds.get(kind)?.fold.as;
    if (as === 'correction') named.add((body as { corrects: string }).corrects);
    if (as === 'erasure') for (const id of (body as { entries: string[] }).entries) named.add(id);
  }
  for (const { id } of proposals) if (id !== undefined) named.delete(id);
  return [...named];
}
