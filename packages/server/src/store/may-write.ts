import type { Entry } from '@combside/record/entry';
import type { VisitBody } from '@combside/record/kinds/visit';
import type { Author, Surroundings } from '@combside/record/office/author';
import { mayPull, type Rights } from './rights.ts';

/** Why an entry of a sound chain is refused here, besides the record's own reasons. Screens put them into words. */
export const refusalReasons = [
  'not your district',
  'visit of another inspector',
  'not yours to write',
  'places disagree',
] as const;
export type RefusalReason = (typeof refusalReasons)[number];

/** What everybody's phone is given, by what it is about: nothing else goes there, of a newer program neither. */
const kindsForEverybody: ReadonlyMap<string, readonly string[]> = new Map([
  ['device', ['device', 'resealing']],
  ['laboratory', ['laboratory-limits', 'correction']],
]);

/**
 * What a person may write: as himself alone (the record checks that), about what belongs to a district granted, naming
 * nothing of a district that is not, and bringing it into none. What belongs nowhere yet may be written by whoever found
 * it. What an inspector found is corrected and assessed by himself alone, not by the office either.
 */
export function authorOf(rights: Rights): Author {
  return { person: rights.person, mayWrite: (entry, surroundings) => refusalFor(rights, entry, surroundings) };
}

function refusalFor(rights: Rights, entry: Entry, surroundings: Surroundings): RefusalReason | null {
  const { about, device, kind } = entry.envelope;
  const everybodys = kindsForEverybody.get(about.type);
  if (everybodys?.includes(kind) === false) return 'not yours to write';
  if (about.type === 'device') return about.id === device ? null : 'not yours to write';
  if (about.type === 'server' || rights.role === 'server') return 'not yours to write';
  if (rights.districts.length === 0) return 'not your district';
  if (isOfColleague(rights, entry, surroundings)) return 'visit of another inspector';
  const { before, after, named, agree } = surroundings;
  const granted = (scope: string): boolean => mayPull(rights, scope);
  const open = (scopes: readonly string[]): boolean => scopes.length === 0 || scopes.some(granted);
  if (![before, ...named].every(open)) return 'not your district';
  // Bees cross borders: whoever may write at one end of a movement may say where the other is.
  if (about.type === 'movement') return open(after) ? null : 'not your district';
  if (!after.every((scope) => before.includes(scope) || granted(scope))) return 'not your district';
  return agree ? null : 'places disagree';
}

/**
 * True for a visit, an examination or an assessment that is another inspector's to write. Whoever was ever named as the
 * inspector of a visit may write it: on a phone without a network nobody hears that the office has given it to another.
 */
function isOfColleague(rights: Rights, { envelope, body }: Entry, { statement, judged }: Surroundings): boolean {
  const isOthers = ({ envelope: { kind, by } }: Entry) =>
    (kind === 'examination' || kind === 'assessment') && by !== rights.person;
  if (judged.some(isOthers)) return true;
  // The office plans the visits of others; it does not correct them.
  if (rights.role === 'office' && envelope.kind === 'visit') return false;
  if (envelope.kind !== 'visit' && statement?.kind !== 'visit') return false;
  const isOwn = ({ inspector }: Pick<VisitBody, 'inspector'>) => inspector === rights.person;
  const before = judged.filter((entry) => entry.envelope.kind === 'visit');
  const wasOwn = before.length === 0 || before.some((entry) => isOwn(entry.body as VisitBody));
  // A visit written by a newer program still says whose it is.
  return !isOwn((statement?.body ?? body) as VisitBody) || !wasOwn;
}
