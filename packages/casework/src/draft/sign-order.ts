import {
  type HiveState,
  isSign as isCatalogued,
  type Sign,
  type SignGroup,
  type SignId,
  signGroups,
  signs,
} from '@combside/science/signs/catalogue';

/**
 * The signs in the order in which they meet the inspector: outside and on opening, pattern, cappings, contents, lower
 * wall, hive floor last. The order and what each sign asks of the look are the catalogue's.
 */
export interface OrderedGroup {
  readonly group: SignGroup;
  readonly signs: readonly Sign[];
}

const place: ReadonlyMap<string, number> = new Map(signs.map((sign, index) => [sign.id, index]));
const byId: ReadonlyMap<string, Sign> = new Map(signs.map((sign) => [sign.id, sign]));

/**
 * What can be looked for on what is there, group by group. In a dead hive and on stored combs brood signs are not asked:
 * the scale is then the sign.
 */
export function signsAsked(hiveState: HiveState): readonly OrderedGroup[] {
  return signGroups
    .map((group) => ({
      group,
      signs: signs.filter((sign) => sign.group === group && sign.askedIn.includes(hiveState)),
    }))
    .filter((one) => one.signs.length > 0);
}

/** Whether this program knows the sign; an unknown one in the record was written by a newer version. */
export function isSign(id: string): id is SignId {
  return isCatalogued(id);
}

/** Place of a sign in the order of meeting it; unknown signs come last. */
export function signPlace(id: string): number {
  return place.get(id) ?? place.size;
}

/** How much of a sign is recorded when it is seen: cells by comb, slight or marked, or only that it was seen. */
export function measureOf(id: SignId): Sign['measure'] {
  return byId.get(id)?.measure ?? 'none';
}

/** False for the signs of brood in good order: seeing them does not keep anybody from saying "nothing seen". */
export function speaksOfTrouble(id: string): boolean {
  return byId.get(id)?.ofHealthyBrood !== true;
}
