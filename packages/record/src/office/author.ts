import type { Entry } from '../entry.ts';
import type { Statement } from './entities-named.ts';

/** What stands at the office around an entry. */
export interface Surroundings {
  /** What it says, through a correction; null where this program cannot read it. */
  readonly statement: Statement | null;
  /** Where the entity belonged before this entry, and belongs with it. */
  readonly before: readonly string[];
  readonly after: readonly string[];
  /** Where each further entity belongs that it names, or that would gain a reader by it; empty for one not known. */
  readonly named: readonly (readonly string[])[];
  /** False where the visit, apiary and colony of a finding are known and stand nowhere together. */
  readonly agree: boolean;
  /** What it speaks over: the entry it corrects, the examination it assesses, all that was said of the visit it describes. */
  readonly judged: readonly Entry[];
}

/** Who sends, and what they may write. */
export interface Author {
  readonly person: string;
  /** @returns null when this person may write it, else the reason as an id without personal data */
  mayWrite(entry: Entry, surroundings: Surroundings): string | null;
}

/**
 * The usual rule of who may write where: whoever was granted one of the districts the entity belongs to, before the
 * entry (when it belonged anywhere) and after it, and one of each entity it names. A device speaks only for itself.
 *
 * @param districts scopes granted, or `all`
 */
export function writesIn(districts: readonly string[] | 'all'): Author['mayWrite'] {
  const granted = (scopes: readonly string[]) => scopes.some((scope) => districts.includes(scope));
  return ({ envelope }, { before, after, named }) => {
    if (envelope.about.type === 'device') return envelope.about.id === envelope.device ? null : 'not your device';
    if (districts === 'all') return null;
    if (after.length === 0) return 'place not known';
    const open = [before, ...named].every((scopes) => scopes.length === 0 || granted(scopes));
    return granted(after) && open ? null : 'not your district';
  };
}
