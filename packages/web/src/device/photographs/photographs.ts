import { toHex } from '@combside/record/bytes';
import type { PhotographReference } from '@combside/record/kinds/examination';
import { webHasher } from '../keys/web-ports.ts';
import type { DeviceDatabase } from '../store/schema.ts';

/** Photographs on the device: original bytes under their own SHA-256, until and after the office has them. */
export interface Photographs {
  /** Durable when it returns. The same bytes are kept once. */
  keep(file: Blob, takenAt: string): Promise<PhotographReference>;
  open(hash: string): Promise<Blob | null>;
  /** Hashes of photographs the office does not have yet, oldest first, at most `limit`. */
  waiting(limit: number): Promise<string[]>;
  /** Where the upload of this photograph was begun at the office, or null. */
  uploadOf(hash: string): Promise<string | null>;
  /** Notes where its upload was begun, so that it can be resumed after the program was closed. */
  noteUpload(hash: string, address: string): Promise<void>;
  /** Notes that the office has it. The bytes stay on the device. */
  noteSent(hash: string, at: string): Promise<void>;
}

export function keptPhotographs(database: DeviceDatabase): Photographs {
  return {
    async keep(file, takenAt) {
      const bytes = new Uint8Array(await file.arrayBuffer());
      if (bytes.length === 0) throw new RangeError('a photograph without bytes; take it again');
      const hash = toHex(await webHasher.sha256(bytes));
      const reference = { hash, mediaType: file.type || 'image/jpeg', bytes: bytes.length, takenAt, caption: '' };
      const transaction = database.transaction('photographs', 'readwrite', { durability: 'strict' });
      if ((await transaction.store.getKey(hash)) === undefined) {
        // The bytes themselves, not the file: a file on the phone's disk may change or go.
        const blob = new Blob([bytes], { type: reference.mediaType });
        await transaction.store.put({
          hash,
          mediaType: reference.mediaType,
          bytes: bytes.length,
          takenAt,
          blob,
          sentAt: null,
          waiting: 1,
        });
      }
      await transaction.done;
      return reference;
    },
    async open(hash) {
      return (await database.get('photographs', hash))?.blob ?? null;
    },
    async waiting(limit) {
      return database.getAllKeysFromIndex('photographs', 'waiting', 1, limit);
    },
    async uploadOf(hash) {
      return (await database.get('photographs', hash))?.upload ?? null;
    },
    async noteUpload(hash, address) {
      const transaction = database.transaction('photographs', 'readwrite');
      const record = await transaction.store.get(hash);
      if (record !== undefined) await transaction.store.put({ ...record, upload: address });
      await transaction.done;
    },
    async noteSent(hash, at) {
      const transaction = database.transaction('photographs', 'readwrite');
      const record = await transaction.store.get(hash);
      if (record !== undefined) {
        const { waiting: _waiting, upload: _upload, ...rest } = record;
        await transaction.store.put({ ...rest, sentAt: at });
      }
      await transaction.done;
    },
  };
}
