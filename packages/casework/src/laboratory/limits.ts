import { correction } from '@combside/record/kinds/correction';
import {
  type LaboratoryLimitsBody,
  laboratoryLimits,
  laboratoryLimitsBody,
} from '@combside/record/kinds/laboratory-limits';
import type { Folded, LaboratoryState } from '@combside/record/states';
import { DomainError } from '@combside/science/distributions/domain';
import { acceptLimits, type LaboratoryLimits } from '@combside/science/laboratory/laboratory-limits';
import { type Act, done, refused } from '../act.ts';

/** A statement of limits that stands in the record, and the laboratory it is about. */
export interface StandingLimits {
  readonly laboratory: string;
  readonly limits: Folded<LaboratoryLimitsBody>;
}

/** Every statement of every laboratory, those of one laboratory together, the newest first. */
export function standingLimits(laboratories: readonly Pick<LaboratoryState, 'about' | 'limits'>[]): StandingLimits[] {
  return laboratories.flatMap(({ about, limits }) => limits.map((one) => ({ laboratory: about.id, limits: one })));
}

/** Whether two statements are about the same thing on the same day: then one of them can only correct the other. */
export function sameStatement(a: LaboratoryLimitsBody, b: LaboratoryLimitsBody): boolean {
  return (
    sameName(a.laboratory, b.laboratory) &&
    sameName(a.method, b.method) &&
    sameName(a.material, b.material) &&
    a.unit === b.unit &&
    a.statedOn === b.statedOn
  );
}

const plain = (text: string) => text.trim().replace(/\s+/g, ' ').toLowerCase();
const sameName = (a: string, b: string) => plain(a) === plain(b);

/**
 * Writes down the limits a laboratory stated. A laboratory known by that name keeps its identity, so that its
 * statements stand together; a later statement never replaces an earlier one.
 *
 * Refused when the limits are not whole (see science/laboratory), and when the same was stated for that day already.
 *
 * @param input.newLaboratory identity for a laboratory that nobody named before
 */
export function stateLimits(input: {
  readonly limits: LaboratoryLimitsBody;
  readonly standing: readonly StandingLimits[];
  readonly newLaboratory: string;
}): Act {
  const body = whole(input.limits);
  if (body === null) return refused('casework.refused.shape');
  if (input.standing.some((one) => sameStatement(one.limits.body, body))) {
    return refused('casework.refused.limits-stated-already');
  }
  const known = input.standing.find((one) => sameName(one.limits.body.laboratory, body.laboratory));
  const about = { type: 'laboratory', id: known?.laboratory ?? input.newLaboratory } as const;
  return done([{ kind: laboratoryLimits.kind, version: laboratoryLimits.version, about, body, replaces: [] }]);
}

/**
 * Corrects what was written down wrongly, with the reason. What was first written stays beside it.
 *
 * Refused without a reason, when nothing was changed, and when the limits are not whole.
 */
export function correctLimits(input: {
  readonly wrong: StandingLimits;
  readonly limits: LaboratoryLimitsBody;
  readonly reason: string;
}): Act {
  const { wrong } = input;
  const reason = input.reason.trim();
  const body = whole(input.limits);
  if (body === null) return refused('casework.refused.shape');
  if (reason === '') return refused('casework.refused.reason-missing');
  if (reason.length > 500) {
    return refused('casework.refused.number-out-of-range', { what: 'characters', low: 1, high: 500 });
  }
  if (sameLimits(body, wrong.limits.body)) return refused('casework.refused.nothing-changed');
  return done([
    {
      kind: correction.kind,
      version: correction.version,
      about: { type: 'laboratory', id: wrong.laboratory },
      body: { corrects: wrong.limits.written.entry, reason, version: laboratoryLimits.version, body },
      replaces: [],
    },
  ]);
}

/** Whether two statements say the same, word for word and number for number. */
export function sameLimits(a: LaboratoryLimitsBody, b: LaboratoryLimitsBody): boolean {
  const told = (one: LaboratoryLimitsBody) =>
    JSON.stringify([
      one.laboratory,
      one.method,
      one.material,
      one.unit,
      one.statedOn,
      one.source,
      one.classes.map(({ name, from }) => [name, from]),
      one.countable && [one.countable.lowest, one.countable.highest],
    ]);
  return told(a) === told(b);
}

/** The limits as the record takes them, when they are whole by the rules of the science too; else null. */
function whole(given: LaboratoryLimitsBody): LaboratoryLimitsBody | null {
  const read = laboratoryLimitsBody.safeParse({
    ...given,
    laboratory: given.laboratory.trim(),
    method: given.method.trim(),
    material: given.material.trim(),
    source: given.source.trim(),
  });
  if (!read.success) return null;
  if (read.data.countable && read.data.countable.lowest > read.data.countable.highest) return null;
  try {
    acceptLimits(read.data satisfies LaboratoryLimits);
    return read.data;
  } catch (failure) {
    if (failure instanceof DomainError) return null;
    throw failure;
  }
}
