import type { Kind } from '@combside/record/kinds/kind';

/** Names of the top-level fields in which two bodies differ, by value, in alphabetical order. */
export function changedFields(before: object, after: object): string[] {
  const left = before as Record<string, unknown>;
  const right = after as Record<string, unknown>;
  return [...new Set([...Object.keys(left), ...Object.keys(right)])]
    .filter((field) => !sameValue(left[field], right[field]))
    .sort();
}

/** Where a body first breaks the shape of its kind, as a path such as `position.latitude`; null when it fits. */
export function firstFault(shape: Kind['body'], body: unknown): string | null {
  const read = shape.safeParse(body);
  if (read.success) return null;
  return read.error.issues[0]?.path.join('.') || 'body';
}

function sameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  return changedFields(a, b).length === 0;
}
