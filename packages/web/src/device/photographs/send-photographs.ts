import { photographsHeld } from '@combside/contract/photograph';
import { TransportError } from '@combside/record/transport';
import { ask } from '../ask/ask.ts';
import type { Photographs } from './photographs.ts';

/** One request sends at most so many bytes, so that a cut costs little. */
const chunkBytes = 1024 * 1024;

/**
 * Sends waiting photographs one after the other, each resumed where it was cut. The office checks the bytes against
 * their hash before it counts them as held.
 *
 * @param stopped asked before each photograph
 * @returns how many the office now has that it had not
 * @throws TransportError `no connection` or `office fault`; what was sent stands
 */
export async function sendPhotographs(photographs: Photographs, stopped: () => boolean): Promise<number> {
  let sent = 0;
  for (;;) {
    const waiting = await photographs.waiting(100);
    if (waiting.length === 0) return sent;
    const held = await heldAtOffice(waiting);
    for (const hash of waiting) {
      if (stopped()) return sent;
      if (!held.has(hash)) {
        const blob = await photographs.open(hash);
        if (blob !== null) await upload(photographs, hash, blob);
        sent++;
      }
      await photographs.noteSent(hash, new Date().toISOString());
    }
  }
}

async function heldAtOffice(hashes: readonly string[]): Promise<Set<string>> {
  return new Set((await ask(photographsHeld, '/api/photographs/held', { message: { hashes } })).held);
}

/** Fetched when there is something to send: the first opening of the hive does without it. */
async function uploader() {
  try {
    return (await import('tus-js-client')).Upload;
  } catch (cause) {
    throw new TransportError('no connection', 'the part of the program that sends photographs', cause);
  }
}

async function upload(photographs: Photographs, hash: string, blob: Blob): Promise<void> {
  const begun = await photographs.uploadOf(hash);
  const Upload = await uploader();
  await new Promise<void>((resolve, reject) => {
    const sending = new Upload(blob, {
      endpoint: '/api/uploads',
      uploadUrl: begun,
      chunkSize: chunkBytes,
      metadata: { hash, mediaType: blob.type },
      // The next exchange tries again; trying here as well would only hold it up.
      retryDelays: null,
      // Its address is kept with the photograph: a worker has no other memory.
      storeFingerprintForResuming: false,
      onUploadUrlAvailable: () => {
        if (sending.url !== null) void photographs.noteUpload(hash, sending.url);
      },
      onSuccess: () => resolve(),
      onError: (cause) => reject(new TransportError('no connection', `upload: ${cause.message}`, cause)),
    });
    sending.start();
  });
}
