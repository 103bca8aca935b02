/**
 * Reads one photograph after another in a thread of its own, so that no request waits for it. Told the path of a stored
 * photograph, answers with the machine's part of a reading, or why there is none.
 */
import { readFile } from 'node:fs/promises';
import { parentPort } from 'node:worker_threads';
import { type ReadingPart, readingPart } from '@combside/casework/comb/propose-reading';
import { readComb } from '@combside/science/comb/read-comb';
import sharp from 'sharp';

/** What the thread is asked. */
export interface PhotographToRead {
  readonly path: string;
}

/** What it answers. */
export type PhotographRead =
  | { readonly state: 'read'; readonly part: ReadingPart; readonly reasons: readonly string[] }
  | { readonly state: 'refused'; readonly reasons: readonly string[] };

/** Pixels beyond which a photograph is refused before it is decoded: 50 million, some 150 MB of colours. */
const mostPixels = 50_000_000;

sharp.cache(false);
sharp.concurrency(1);

async function read({ path }: PhotographToRead): Promise<PhotographRead> {
  const bytes = await readFile(path);
  const about = await sharp(bytes, { limitInputPixels: false })
    .metadata()
    .catch(() => null);
  if (!about?.width || !about.height) return { state: 'refused', reasons: ['not-a-picture'] };
  if (about.width * about.height > mostPixels) return { state: 'refused', reasons: ['file-too-large'] };
  // As stored: not turned, so that x and y are pixels of the file.
  const decoded = await sharp(bytes, { failOn: 'error', pages: 1 })
    .flatten({ background: { r: 128, g: 128, b: 128 } })
    .toColourspace('srgb')
    .removeAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true })
    .catch(() => null);
  if (decoded?.info.channels !== 3) return { state: 'refused', reasons: ['damaged'] };
  const { width, height } = decoded.info;
  const result = readComb({ width, height, data: decoded.data });
  if (result.verdict === 'refused') return { state: 'refused', reasons: result.reasons };
  const part = readingPart({ result, picture: { width, height } });
  return part ? { state: 'read', part, reasons: result.reasons } : { state: 'refused', reasons: ['file-too-large'] };
}

parentPort?.on('message', (asked: PhotographToRead) => {
  read(asked).then(
    (answer) => parentPort?.postMessage(answer),
    // An error ends the thread: whoever waits hears of it, and a fresh thread reads the next photograph.
    (error: unknown) => {
      throw error;
    },
  );
});
