import type { EntriesOfOne } from '@combside/contract/register';
import type { Arriving } from '@combside/record/book/book';
import type { About } from '@combside/record/entry';
import { TransportError } from '@combside/record/transport';

/**
 * All entries about one thing, from the office; none when the office knows nothing of it.
 *
 * @throws TransportError when the office does not answer
 */
export async function fetchEntriesAbout({ type, id }: About): Promise<readonly Arriving[]> {
  const path = `/api/register/entries/${type}/${id}`;
  let answer: Response;
  try {
    answer = await fetch(path);
  } catch (cause) {
    throw new TransportError('no connection', path, cause);
  }
  if (answer.status === 404) return [];
  if (!answer.ok) throw new TransportError('office fault', `${path}: ${answer.status}`);
  return ((await answer.json()) as EntriesOfOne).items;
}
