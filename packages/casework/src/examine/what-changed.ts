import type { ExaminationBody } from '@combside/record/kinds/examination';

/** Parts of an examination that are compared as wholes. */
const parts = [
  'claim',
  'hiveState',
  'depth',
  'boxes',
  'beesShaken',
  'light',
  'hold',
  'sealedBroodCombSides',
  'ropeTests',
  'tests',
  'medicines',
  'combChanges',
  'measurements',
  'remarks',
  'photographs',
] as const;
export type ExaminationPart = (typeof parts)[number];

/** One thing that two readings of an examination say differently; null where one of them says nothing of it. */
export type Change =
  | { readonly part: 'sign'; readonly sign: string; readonly before: Looked | null; readonly after: Looked | null }
  | { readonly part: 'find'; readonly find: string; readonly before: Found | null; readonly after: Found | null }
  | {
      readonly [P in ExaminationPart]: {
        readonly part: P;
        readonly before: ExaminationBody[P];
        readonly after: ExaminationBody[P];
      };
    }[ExaminationPart];
type Looked = ExaminationBody['signs'][number];
type Found = ExaminationBody['finds'][number];

/** What a correction changed, part by part, sign by sign; empty when both say the same. */
export function whatChanged(before: ExaminationBody, after: ExaminationBody): Change[] {
  const changes: Change[] = [];
  for (const part of parts) {
    if (!sameWritten(before[part], after[part])) {
      changes.push({ part, before: before[part], after: after[part] } as Change);
    }
  }
  for (const sign of new Set([...before.signs, ...after.signs].map((one) => one.sign))) {
    const was = before.signs.find((one) => one.sign === sign) ?? null;
    const is = after.signs.find((one) => one.sign === sign) ?? null;
    if (!sameWritten(was, is)) changes.push({ part: 'sign', sign, before: was, after: is });
  }
  for (const find of new Set([...before.finds, ...after.finds].map((one) => one.find))) {
    const was = before.finds.find((one) => one.find === find) ?? null;
    const is = after.finds.find((one) => one.find === find) ?? null;
    if (!sameWritten(was, is)) changes.push({ part: 'find', find, before: was, after: is });
  }
  return changes;
}

/** Whether two values written down say the same, whatever the order of their fields. */
export function sameWritten(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => sameWritten((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]))
  );
}
