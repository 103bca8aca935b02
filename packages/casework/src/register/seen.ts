import type { Register } from '@combside/record/states';

/**
 * The entries whose values somebody saw when changing a register: what stood there, and what contested it. They go into
 * `replaces`, so that only changes that did not see each other are concurrent.
 */
export function seen(register: Register<unknown>): string[] {
  const ids = register.contested.map((one) => one.written.entry);
  return register.current ? [register.current.written.entry, ...ids] : ids;
}
