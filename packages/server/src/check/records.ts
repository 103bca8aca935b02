import type { OfficeKey, StoredEntry } from '@combside/record/store';
import type { Checkpoint } from '@combside/record/transport';

/** A whole record to be checked or handed over: the server's own database, or an export file. */
export interface WholeRecord {
  /** The office whose chain it is. */
  readonly office: OfficeKey;
  /** Chains, one at a time: every entry of a device in order, refused ones included. */
  readonly chains: () => AsyncIterable<readonly StoredEntry[]>;
  /** The office's signed word on the whole record, the newest there is. */
  readonly checkpoint: () => Promise<Checkpoint | null>;
}
