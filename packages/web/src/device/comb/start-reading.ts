import { decodePicture } from './decode-picture.ts';
import type { Job, ReadingMessage, ReadingRequest, ReadPhotograph, SetCorners } from './messages.ts';

/** Something done with a photograph beside the page, in a worker of its own. */
export interface Running<Result> {
  /**
   * What came of it; null when it was cancelled.
   *
   * @throws Error when the worker broke, or this browser can decode no picture at all
   */
  readonly done: Promise<Result | null>;
  /** Stops at once; everything held in memory goes with the worker. */
  cancel(): void;
}

export type RunningReading = Running<ReadPhotograph>;

/**
 * Reads a photograph of a comb beside the page, in a worker of its own that ends with the reading.
 *
 * @param progress told which step is done how far, 0 to 1 over the whole
 * @param corners when given, only what lies between them is read
 */
export function startReading(
  photograph: Blob,
  progress: (stage: Extract<ReadingMessage, { tell: 'progress' }>['stage'], done: number) => void,
  corners: SetCorners = null,
): RunningReading {
  return start<ReadPhotograph>(photograph, { job: 'read', corners }, (told, resolve) => {
    if (told.tell === 'progress') progress(told.stage, told.done);
    else if (told.tell === 'done') resolve(told.read);
  });
}

/** Looks for the inner corners of the frame round a comb, as `SetCorners`; `found` is null when there is none to be seen. */
export function startFindingCorners(photograph: Blob): Running<{ readonly found: SetCorners }> {
  return start<{ readonly found: SetCorners }>(photograph, { job: 'find corners' }, (told, resolve) => {
    if (told.tell === 'corners') resolve(told);
  });
}

function start<Result>(
  photograph: Blob,
  job: Job,
  hear: (told: ReadingMessage, resolve: (result: Result) => void) => void,
): Running<Result> {
  const worker = new Worker(new URL('./comb-worker.ts', import.meta.url), { type: 'module' });
  const order = (what: ReadingRequest, moved: Transferable[] = []) => worker.postMessage(what, moved);
  let cancelled = () => {};
  const done = new Promise<Result | null>((resolve, reject) => {
    cancelled = () => resolve(null);
    worker.addEventListener('message', ({ data }: MessageEvent<ReadingMessage>) => {
      if (data.tell === 'failed') reject(new Error(data.why));
      else if (data.tell !== 'cannot decode') hear(data, resolve);
      else {
        // The page does it, which halts the screen for a moment.
        decodePicture(photograph, pageCanvas).then((decoded) => {
          if (!('problem' in decoded)) order({ decoded, ...job }, [decoded.picture.data.buffer]);
          else if (job.job === 'read') {
            hear({ tell: 'done', read: { verdict: 'refused', reasons: [decoded.problem] } }, resolve);
          } else hear({ tell: 'corners', found: null }, resolve);
        }, reject);
      }
    });
    worker.addEventListener('error', (event) => reject(new Error(event.message || 'the comb worker stopped')));
  });
  const end = () => worker.terminate();
  done.then(end, end);
  order({ photograph, ...job });
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
