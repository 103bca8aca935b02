import { entriesOfOne } from '@combside/contract/entries-of-one';
import type { Arriving } from '@combside/record/book/book';
import type { About } from '@combside/record/entry';
import { ask } from '../ask/ask.ts';
import { NotAnswered } from '../ask/not-answered.ts';

/**
 * All entries about one thing, from the office; none when the office knows nothing of it.
 *
 * @throws NotAnswered when the office does not answer
 */
export async function fetchEntriesAbout({ type, id }: About): Promise<readonly Arriving[]> {
  try {
    return (await ask(entriesOfOne, `/api/register/entries/${type}/${id}`)).items;
  } catch (error) {
    if (error instanceof NotAnswered && error.outcome === 'not there') return [];
    throw error;
  }
}
