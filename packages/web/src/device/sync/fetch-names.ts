import { people } from '@combside/contract/people';
import { ask } from '../ask/ask.ts';
import type { DeviceDatabase } from '../store/schema.ts';

/**
 * Fetches the names of the people who work in the districts granted here, so that what they wrote is named without a
 * network too. A missing answer leaves the names that are kept: names are a comfort, and hold nothing up.
 */
export async function fetchNames(database: DeviceDatabase): Promise<void> {
  try {
    const { people: found } = await ask(people, '/api/people');
    await database.put('meta', Object.fromEntries(found.map(({ person, name }) => [person, name])), 'names');
  } catch {
    // The next exchange that brings something asks again.
  }
}

/** Names by person, as far as this device was told them. */
export async function keptNames(database: DeviceDatabase): Promise<Readonly<Record<string, string>>> {
  return ((await database.get('meta', 'names')) as Record<string, string> | undefined) ?? {};
}
