import { acceptNumber, DomainError } from '../distributions/domain.ts';

/*
 * Many figures of this room were never published: pit size, fuel, time. They have no default. Whoever asks must choose
 * one, or be told it by the authority, and the error says so.
 */

/** Accepts a figure above 0 for which no published value exists. @throws DomainError that asks for one */
export function acceptChosen(field: string, given: unknown): number {
  return acceptNumber(
    field,
    given,
    'a number above 0, chosen by you or ordered by the authority (no published figure exists)',
    (v) => v > 0,
  );
}

/** Refuses to go on while bees live. @throws DomainError */
export function acceptBeesDead(given: unknown): void {
  if (given !== true) {
    throw new DomainError('beesDead', 'true: bees are killed before hives are burned, treated or irradiated', given);
  }
}

/** Refuses until something was done that the method needs first. @throws DomainError */
export function acceptDone(field: string, given: unknown, why: string): void {
  if (given !== true) throw new DomainError(field, `true: ${why}`, given);
}
