import type { Entry } from '@combside/record/entry';
import type { Author } from '@combside/record/office/author';
import { mayPull, type Rights } from './rights.ts';

/** Why an entry of a sound chain is refused here, besides the record's own reasons. Screens put them into words. */
export const refusalReasons = ['not your district', 'visit of another inspector', 'not yours to write'] as const;
export type RefusalReason = (typeof refusalReasons)[number];

/**
 * What a person may write: as himself alone (the record checks that), about what belongs to a district granted, and
 * bringing it into no district that is not. What belongs nowhere yet may be written by whoever found it.
 */
export function authorOf(rights: Rights): Author {
  return { person: rights.person, mayWrite: (entry, scopes) => refusalFor(rights, entry, scopes) };
}

function refusalFor(
  rights: Rights,
  entry: Entry,
  scopes: { readonly before: readonly string[]; readonly after: readonly string[] },
): RefusalReason | null {
  const { about, device, kind } = entry.envelope;
  if (about.type === 'device') return about.id === device ? null : 'not yours to write';
  if (about.type === 'server' || rights.role === 'server') return 'not yours to write';
  if (kind === 'visit' && rights.role !== 'office') {
    const { inspector } = (entry.body ?? {}) as { inspector?: string };
    if (inspector !== rights.person) return 'visit of another inspector';
  }
  const { before, after } = scopes;
  const granted = (scope: string): boolean => mayPull(rights, scope);
  if (before.length > 0 && !before.some(granted)) return 'not your district';
  // Bees cross borders: whoever may write at one end of a movement may say where the other is.
  if (about.type === 'movement') return after.length === 0 || after.some(granted) ? null : 'not your district';
  if (!after.every((scope) => before.includes(scope) || granted(scope))) return 'not your district';
  return null;
}
