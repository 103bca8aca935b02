import type { Entry } from '../entry.ts';

/** Who sends, and what they may write. */
export interface Author {
  readonly person: string;
  /**
   * @param scopes where the entity belonged before this entry, and after it
   * @returns null when this person may write it, else the reason as an id without personal data
   */
  mayWrite(
    entry: Entry,
    scopes: { readonly before: readonly string[]; readonly after: readonly string[] },
  ): string | null;
}

/**
 * The usual rule of who may write where: whoever was granted one of the districts the entity belongs to, before the
 * entry (when it belonged anywhere) and after it. A device speaks only for itself.
 *
 * @param districts scopes granted, or `all`
 */
export function writesIn(districts: readonly string[] | 'all'): Author['mayWrite'] {
  const granted = (scopes: readonly string[]) => scopes.some((scope) => districts.includes(scope));
  return ({ envelope }, { before, after }) => {
    if (envelope.about.type === 'device') return envelope.about.id === envelope.device ? null : 'not your device';
    if (districts === 'all') return null;
    if (after.length === 0) return 'place not known';
    return granted(after) && (before.length === 0 || granted(before)) ? null : 'not your district';
  };
}
