import type { WriteOptions } from '@combside/record/book/book';
import type { About, Proposal } from '@combside/record/entry';
import { RecordError } from '@combside/record/errors';
import { aboutKey } from '@combside/record/store';
import type { WritingDevice } from '../device-in-hand.tsx';
import { fetchEntriesAbout } from '../sync/fetch-entries.ts';

/**
 * Seals and stores proposals on this device. A desk holds no copy of its district: entries that a proposal names and this
 * device lacks are fetched from the office first.
 *
 * @throws TransportError when they are needed and the office does not answer; what `book.write` throws
 */
export async function writeProposals(
  { book, sync }: WritingDevice,
  proposals: readonly Proposal[],
  options: WriteOptions,
): Promise<void> {
  const fetchWhatIsNamed = async () => {
    for (const some of batches(aboutsOf(proposals))) {
      for (const entries of await Promise.all(some.map(fetchEntriesAbout))) await book.receive(entries);
    }
  };
  const isUnknown = (error: unknown) => error instanceof RecordError && error.code === 'unknown entry';
  try {
    await book.write(proposals, options);
  } catch (error) {
    if (!isUnknown(error)) throw error;
    await fetchWhatIsNamed();
    try {
      await book.write(proposals, options);
    } catch (again) {
      if (!isUnknown(again)) throw again;
      // Entries of a device that this one has not met yet are held back: one exchange brings the devices.
      await sync.run();
      await fetchWhatIsNamed();
      await book.write(proposals, options);
    }
  }
}

/** So many things are asked for at a time. */
const together = 8;

function batches(abouts: readonly About[]): (readonly About[])[] {
  return Array.from({ length: Math.ceil(abouts.length / together) }, (_, n) =>
    abouts.slice(n * together, (n + 1) * together),
  );
}

/** What the proposals change, each once; one that names no entry builds on none. */
function aboutsOf(proposals: readonly Proposal[]): readonly About[] {
  return [...new Map(proposals.map(({ about }) => [aboutKey(about), about])).values()];
}
