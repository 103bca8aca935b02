import { decodePicture } from './decode-picture.ts';
import type { Order, ReadPhotograph, SetCorners, Told } from './messages.ts';

export interface RunningReading {
  /**
   * What came of it; null when it was cancelled.
   *
   * @throws Error when the worker broke, or this browser can decode no picture at all
   */
  readonly done: Promise<ReadPhotograph | null>;
  /** Stops at once; everything the reading held in memory goes with its worker. */
  cancel(): void;
}

/**
 * Reads a photograph of a comb beside the page, in a worker of its own that ends with the reading.
 *
 * @param progress told which step is done how far, 0 to 1 over the whole
 * @param corners when given, only what lies between them is read
 */
export function startReading(
  photograph: Blob,
  progress: (stage: Extract<Told, { tell: 'progress' }>['stage'], done: number) => void,
  corners: SetCorners = null,
): RunningReading {
  const worker = new Worker(new URL('./comb-worker.ts', import.meta.url), { type: 'module' });
  const order = (what: Order, moved: Transferable[] = []) => worker.postMessage(what, moved);
  let cancelled = () => {};
  const done = new Promise<ReadPhotograph | null>((resolve, reject) => {
    cancelled = () => resolve(null);
    worker.addEventListener('message', ({ data }: MessageEvent<Told>) => {
      switch (data.tell) {
        case 'progress':
          progress(data.stage, data.done);
          break;
        case 'done':
          resolve(data.read);
          break;
        case 'failed':
          reject(new Error(data.why));
          break;
        case 'cannot decode':
          // The page does it, which halts the screen for a moment.
          decodePicture(photograph, pageCanvas).then((decoded) => {
            if ('problem' in decoded) resolve({ verdict: 'refused', reasons: [decoded.problem] });
            else order({ decoded, corners }, [decoded.picture.data.buffer]);
          }, reject);
          break;
      }
    });
    worker.addEventListener('error', (event) => reject(new Error(event.message || 'the comb worker stopped')));
  });
  const end = () => worker.terminate();
  done.then(end, end);
  order({ photograph, corners });
  return {
    done,
    cancel() {
      end();
      cancelled();
    },
  };
}

function pageCanvas(width: number, height: number): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  return canvas;
}
