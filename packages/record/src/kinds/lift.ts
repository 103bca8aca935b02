import type { Kind } from './kind.ts';
import type { Kinds } from './registry.ts';

/** A body in the newest version of its kind, or why this program cannot read it. */
export type Lifted =
  | { readonly kind: Kind; readonly body: unknown; readonly fault: null }
  | { readonly fault: 'unknown kind' | 'newer version' }
  | { readonly fault: 'wrong body'; readonly where: string };

/**
 * Reads a body written in some version of a kind: lifts it step by step to the newest version and checks its shape.
 * Anything written by a newer program is not an error: it is kept, and read after the program's update.
 */
export function lift(kinds: Kinds, name: string, version: number, body: unknown): Lifted {
  const kind = kinds.get(name);
  if (kind === undefined) return { fault: 'unknown kind' };
  if (version > kind.version) return { fault: 'newer version' };
  let lifted = body;
  for (const step of kind.steps.slice(version - 1)) {
    try {
      lifted = step.lift(lifted);
    } catch (cause) {
      return { fault: 'wrong body', where: `${name} ${version}, step ${step.name}: ${String(cause)}` };
    }
  }
  const read = kind.body.safeParse(lifted);
  if (read.success) return { kind, body: read.data, fault: null };
  const [first] = read.error.issues;
  return { fault: 'wrong body', where: `${name} ${version}, ${first?.path.join('.') ?? ''}: ${first?.message ?? ''}` };
}
