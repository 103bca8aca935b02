import type { Language } from './language.ts';
import { loadCatalogue, type Room } from './rooms.ts';
import { createWords, type OnMissing, type Words } from './words.ts';

/**
 * Fetches the words of one language for the rooms asked for, and nothing else.
 *
 * @example const words = await loadWords('de', ['always', 'signs']);
 */
export async function loadWords<const R extends Room>(
  language: Language,
  rooms: readonly R[],
  onMissing: OnMissing = 'throw',
): Promise<Words<R>> {
  const catalogues = await Promise.all(rooms.map((room) => loadCatalogue(language, room)));
  return createWords<R>(language, catalogues, onMissing);
}
