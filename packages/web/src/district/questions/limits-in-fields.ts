import type { LaboratoryLimitsBody } from '@combside/record/kinds/laboratory-limits';
import { readClasses } from './asked/limits-of-laboratory.ts';
import type { Value, Values } from './inputs-in-address.ts';

/** A statement of limits as the fields of the question hold it. */
export function fieldsOf(limits: LaboratoryLimitsBody): Record<string, Value> {
  const { laboratory, method, material, unit, statedOn, source, countable } = limits;
  return {
    laboratory,
    method,
    material,
    unit,
    statedOn,
    source,
    classes: limits.classes.map((one) => `${one.from} ${one.name}`).join('\n'),
    countLowest: countable?.lowest ?? null,
    countHighest: countable?.highest ?? null,
  };
}

/** The statement that the fields hold; null while one of them is empty or the classes cannot be read. */
export function limitsIn(values: Values): LaboratoryLimitsBody | null {
  const text = (name: string) => String(values[name] ?? '').trim();
  const classes = readClasses(text('classes'));
  const unit = text('unit');
  const [laboratory, method, material] = [text('laboratory'), text('method'), text('material')];
  const [statedOn, source] = [text('statedOn'), text('source')];
  if (classes === null || !laboratory || !method || !material || !statedOn || !source) return null;
  if (unit !== 'g' && unit !== 'bee' && unit !== 'ml') return null;
  const [lowest, highest] = [values.countLowest ?? null, values.countHighest ?? null];
  const countable =
    typeof lowest === 'number' && typeof highest === 'number' && highest > 0 ? { lowest, highest } : null;
  return { laboratory, method, material, unit, statedOn, source, classes, countable };
}
