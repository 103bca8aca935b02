import type { Act, Done, Refused } from '@combside/casework/act';
import type { WriteOptions } from '@combside/record/book/book';
import type { Reader } from '@combside/record/reader';
import { keepFault } from '../../app/faults.ts';
import type { WritingDevice } from '../device-in-hand.tsx';
import type { Settled } from '../drafts/open-draft.ts';
import { failureOf, type WriteFailure } from './failure.ts';
import { writeProposals } from './write-proposals.ts';

/**
 * How a writing stands.
 * - `idle`: nothing asked for yet
 * - `busy`: being done; a second call does nothing
 * - `refused`: casework says why not; nothing was written
 * - `failed`: it could not be done; what was entered stays, and nothing was written
 * - `written`: durable on this device
 * - `sent`: the office has it
 */
export type WritingStatus =
  | { readonly state: 'idle' | 'busy' | 'written' | 'sent'; readonly refusal: null; readonly failure: null }
  | { readonly state: 'refused'; readonly refusal: Refused; readonly failure: null }
  | { readonly state: 'failed'; readonly refusal: null; readonly failure: WriteFailure };

/** The record on this device as an act may ask it. */
export type FreshRecord = Pick<Reader, 'state'>;

/** What goes with a write: drafts that it closes, and who is told of its progress, as `book.write` tells it. */
export interface Alongside extends Omit<WriteOptions, 'closes'> {
  readonly closes?: readonly { settled(): Promise<Settled> }[];
}

/** Thrown by whoever is told of progress, to call the write off: nothing is stored, and nothing has failed. */
export class CalledOff extends Error {}

const plain = (state: 'idle' | 'busy' | 'written' | 'sent'): WritingStatus => ({ state, refusal: null, failure: null });

/** One act at a time on its way into the record. */
export class OneWriteAtATime {
  readonly #listeners = new Set<() => void>();
  #status: WritingStatus = plain('idle');
  #busy = false;
  #stopAwaiting: () => void = () => undefined;

  status = (): WritingStatus => this.#status;

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /**
   * Does an act: waits for the drafts it closes, asks the act, waits for the device, seals and stores what the act
   * proposes together with the end of those drafts. What is refused is refused at once, however long a device takes.
   *
   * @param device the device, once it is open
   * @param act given the record as it stands on the device when it asks; asking waits for the device
   * @returns the act as done, once it is durable; null when it was busy, refused, failed or called off
   */
  async write<Extra>(
    device: () => Promise<WritingDevice>,
    act: (fresh: FreshRecord) => Act<Extra> | Promise<Act<Extra>>,
    { closes = [], ...told }: Alongside = {},
  ): Promise<(Done & Extra) | null> {
    // Before anything waits: a second tap comes before the screen is drawn again.
    if (this.#busy) return null;
    this.#busy = true;
    this.#stopAwaiting();
    this.#tell(plain('busy'));
    try {
      const drafts = await Promise.all(closes.map((draft) => draft.settled()));
      const made = await act({ state: async (about) => (await device()).book.state(about) });
      if (!made.ok) {
        this.#tell({ state: 'refused', refusal: made, failure: null });
        return null;
      }
      const open = await device();
      await writeProposals(open, made.proposals, { ...told, closes: drafts.flatMap(({ keys }) => keys) });
      for (const draft of drafts) draft.written();
      this.#tell(plain('written'));
      this.#awaitOffice(open);
      return made;
    } catch (thrown) {
      if (thrown instanceof CalledOff) {
        this.#tell(plain('idle'));
        return null;
      }
      keepFault(thrown instanceof Error ? thrown : new Error('write failed'), '');
      this.#tell({ state: 'failed', refusal: null, failure: failureOf(thrown) });
      return null;
    } finally {
      this.#busy = false;
    }
  }

  /** Says `sent` once nothing waits on this device any more, counted after the write. */
  #awaitOffice({ sync }: WritingDevice): void {
    let isCounted = false;
    const look = () => {
      if (!isCounted || sync.status().waiting !== 0) return;
      this.#stopAwaiting();
      this.#tell(plain('sent'));
    };
    const stop = sync.subscribe(look);
    this.#stopAwaiting = () => {
      stop();
      isCounted = false;
      this.#stopAwaiting = () => undefined;
    };
    const mine = this.#stopAwaiting;
    void sync.count().then(() => {
      if (this.#stopAwaiting !== mine) return;
      isCounted = true;
      look();
    });
  }

  #tell(status: WritingStatus): void {
    this.#status = status;
    for (const listener of this.#listeners) listener();
  }
}
