import { calculation } from '../distributions/calculation.ts';
import {
  acceptFields,
  acceptList,
  acceptNonNegative,
  acceptPositive,
  acceptWord,
  DomainError,
  isUnknown,
} from '../distributions/domain.ts';
import { type LoadUnit, loadUnits } from './plate-count.ts';

/** One of a laboratory's own classes: loads from `from` on, up to the next class. */
export interface LoadClass {
  /** The laboratory's own word for it. */
  name: string;
  /** Smallest load in the class, 0 or more, in the limits' unit. */
  from: number;
}

/** A laboratory's limits as it states them. Stored as given, dated and sourced; none is built in. */
export interface LaboratoryLimits {
  laboratory: string;
  method: string;
  /** What was tested, in the laboratory's words: "brood-nest honey", "adult bees". */
  material: string;
  unit: LoadUnit;
  /** Day on which the laboratory stated them, YYYY-MM-DD. */
  statedOn: string;
  /** Where that is written. */
  source: string;
  /** The first class starts at 0; each next one higher. */
  classes: readonly LoadClass[];
}

/** A reported load beside the limits it is read with. */
export interface LoadMeaning {
  /** `no limits stored` when the laboratory's own are not known: then there is only the number. */
  readonly outcome: 'classed' | 'class not certain' | 'no limits stored';
  /** The class of the load, in the laboratory's word; null without limits. */
  readonly className: string | null;
  /** Every class the interval reaches into, lowest first. */
  readonly possibleClasses: readonly string[];
  /** Where the limits come from: laboratory, day, source; null without limits. */
  readonly limitsFrom: string | null;
}

/**
 * What does this laboratory number mean, by the limits of the laboratory that reported it?
 *
 * Never by other limits: no single count marks clinical disease (40 colonies over a season [STE20]), no limits for spores
 * per bee or per gram could be confirmed, and honey, bees and debris are not converted into one another. When the
 * interval of the load reaches into several classes, all are named. A class is the laboratory's; it neither proves nor
 * excludes disease.
 *
 * @param inputs.load reported load, 0 or more
 * @param inputs.lower lower end of its interval, or null when not known
 * @param inputs.upper upper end, or null
 * @param inputs.unit of the load
 * @param inputs.material as the report names it
 * @param inputs.method as the report names it
 * @param inputs.limits the reporting laboratory's limits, or null when none are stored
 * @throws DomainError when the unit, material or method of load and limits differ, or the limits are incomplete
 * Source: [STE20]; practice of keeping each laboratory's own limits: no limit is published that could be confirmed
 */
export function meaningOfLoad(inputs: {
  load: number;
  lower: number | null;
  upper: number | null;
  unit: LoadUnit;
  material: string;
  method: string;
  limits: LaboratoryLimits | null;
}): LoadMeaning {
  const load = acceptNonNegative('load', inputs.load);
  const lower = isUnknown(inputs.lower) ? load : acceptNonNegative('lower', inputs.lower);
  const upper = isUnknown(inputs.upper) ? load : acceptNonNegative('upper', inputs.upper);
  if (lower > load || upper < load)
    throw new DomainError('lower and upper', `around the load (${load})`, [lower, upper]);
  const unit = acceptWord('unit', inputs.unit, loadUnits);
  const material = acceptText('material', inputs.material);
  const method = acceptText('method', inputs.method);
  if (isUnknown(inputs.limits)) {
    return { outcome: 'no limits stored', className: null, possibleClasses: [], limitsFrom: null };
  }
  const limits = acceptLimits(inputs.limits);
  if (limits.unit !== unit) throw new DomainError('unit', `that of the limits ("${limits.unit}")`, unit);
  if (limits.material !== material)
    throw new DomainError('material', `that of the limits ("${limits.material}")`, material);
  if (limits.method !== method) throw new DomainError('method', `that of the limits ("${limits.method}")`, method);
  const classOf = (value: number) => limits.classes.findLastIndex((c) => value >= c.from);
  const possibleClasses = limits.classes.slice(classOf(lower), classOf(upper) + 1).map((c) => c.name);
  return {
    outcome: possibleClasses.length === 1 ? 'classed' : 'class not certain',
    className: limits.classes[classOf(load)]?.name ?? null,
    possibleClasses,
    limitsFrom: `${limits.laboratory}, stated ${limits.statedOn}: ${limits.source}`,
  };
}

export const meaningOfLoadCalculation = calculation({
  name: 'meaningOfLoad',
  room: 'laboratory',
  line: 'a load read by the limits of the laboratory that reported it',
  inputs: {
    load: 'reported load, 0 or more',
    lower: 'lower end of its interval, or null',
    upper: 'upper end, or null',
    unit: '"g", "bee" or "ml"',
    material: 'as the report names it',
    method: 'as the report names it',
    limits: 'null, or {laboratory, method, material, unit, statedOn (YYYY-MM-DD), source, classes: [{name, from}]}',
  },
  formula: 'highest class whose lower limit the load reaches; every class the interval reaches into',
  sources: ['STE20'],
  call: meaningOfLoad,
  steps: (_, r) => [
    r.limitsFrom === null
      ? 'no limits of this laboratory are stored, and there are no others'
      : `limits of ${r.limitsFrom}`,
    `${r.outcome}: ${r.possibleClasses.join(', ') || 'no class'}`,
    'no single count marks or excludes disease',
  ],
});

/** Accepts a laboratory's limits for storing. @throws DomainError naming what is missing or out of order */
export function acceptLimits(given: unknown): LaboratoryLimits {
  const fields = acceptFields('limits', given);
  const classes = acceptList('limits.classes', fields.classes, (name, value) => {
    const one = acceptFields(name, value);
    return { name: acceptText(`${name}.name`, one.name), from: acceptNonNegative(`${name}.from`, one.from) };
  });
  classes.forEach(({ from }, i) => {
    if (i === 0 && from !== 0)
      throw new DomainError('limits.classes[0].from', '0, so that every load has a class', from);
    if (i > 0) acceptPositive(`limits.classes[${i}].from above the class before`, from - (classes[i - 1]?.from ?? 0));
  });
  const statedOn = acceptText('limits.statedOn', fields.statedOn);
  if (!/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(statedOn)) {
    throw new DomainError('limits.statedOn', 'a day as YYYY-MM-DD', statedOn);
  }
  return {
    laboratory: acceptText('limits.laboratory', fields.laboratory),
    method: acceptText('limits.method', fields.method),
    material: acceptText('limits.material', fields.material),
    unit: acceptWord('limits.unit', fields.unit, loadUnits),
    statedOn,
    source: acceptText('limits.source', fields.source),
    classes,
  };
}

function acceptText(field: string, given: unknown): string {
  if (typeof given !== 'string' || given.trim() === '') throw new DomainError(field, 'a text that is not empty', given);
  return given;
}
