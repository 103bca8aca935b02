import type { Person } from '@combside/contract/people';

/** What entities that a record speaks of are called, by identifier. */
export type Names = ReadonlyMap<string, string>;

/** What a person is called; `unknown` where the name did not come along. */
export function nameOf(people: readonly Person[], person: string, unknown: string): string {
  return people.find((one) => one.person === person)?.name ?? unknown;
}
