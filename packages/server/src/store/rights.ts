import { districtScope, everyoneScope } from '@combside/record/transport';
import { ServerError } from './errors.ts';

/** Who asks, and which districts were granted. */
export interface Rights {
  readonly person: string;
  readonly name: string;
  readonly role: 'inspector' | 'office' | 'server';
  /** `all` where the grant is for every district there is or will be. */
  readonly districts: 'all' | readonly string[];
}

/** The grant that stands for every district. */
export const everyDistrict = '*';

export function mayRead(rights: Rights, district: string): boolean {
  return rights.districts === 'all' || rights.districts.includes(district);
}

/**
 * The districts to search for a question that may name one.
 *
 * @throws ServerError `not-granted` when a district was named that is not granted
 */
export function districtsAsked(rights: Rights, district: string | undefined): 'all' | readonly string[] {
  if (district === undefined) return rights.districts;
  if (!mayRead(rights, district)) throw new ServerError('not-granted', district);
  return [district];
}

/** True when a scope of the record is open to this person. */
export function mayPull(rights: Rights, scope: string): boolean {
  if (scope === everyoneScope || rights.districts === 'all') return true;
  return rights.districts.some((district) => scope === districtScope(district));
}

/**
 * Refuses a page that lies in a district not granted, with the same words as one that does not exist. What stands at no
 * known site may be read by its author and by whoever reads every district.
 */
export function assertReadable(rights: Rights, district: string | null, author: string | null): void {
  const open = district === null ? rights.districts === 'all' || author === rights.person : mayRead(rights, district);
  if (!open) throw new ServerError('not-found');
}
