import { readingPart } from '@combside/casework/comb/propose-reading';
import { findFrameCorners } from '@combside/science/comb/frame/frame-corners';
import { GreyPyramid } from '@combside/science/comb/photograph/grey-pyramid';
import { readComb } from '@combside/science/comb/read-comb';
import { type Decoded, decodePicture, mostPixelsRead } from './decode-picture.ts';
import type { Job, ReadingMessage, ReadingRequest, ReadPhotograph, SetCorners } from './messages.ts';
import { toStored, toUpright, uprightSize } from './turn.ts';

const tell = (told: ReadingMessage) => postMessage(told);

/** Reads upright, as a person sees the comb, and gives places as they are stored. */
function read({ picture, turn }: Decoded, corners: SetCorners): ReadPhotograph {
  const upright = uprightSize(turn);
  const across = upright.width / picture.width;
  const down = upright.height / picture.height;
  const region = corners?.map((corner) => {
    const { x, y } = toUpright(turn, corner);
    return [(x + 0.5) / across - 0.5, (y + 0.5) / down - 0.5] as const;
  });
  const result = readComb(picture, region ? { region } : {}, {
    progress: (stage, done) => tell({ tell: 'progress', stage, done }),
  });
  if (result.verdict === 'refused') return { verdict: 'refused', reasons: result.reasons };
  const part = readingPart({
    picture: { width: turn.width, height: turn.height },
    region: corners?.map(({ x, y }) => [x, y] as const) ?? null,
    result: {
      ...result,
      pitchPx: result.pitchPx * Math.sqrt(across * down),
      cells: result.cells.map((cell) => ({
        ...cell,
        ...toStored(turn, { x: (cell.x + 0.5) * across - 0.5, y: (cell.y + 0.5) * down - 0.5 }),
      })),
    },
  });
  return part ? { verdict: 'read', part } : { verdict: 'refused', reasons: ['file-too-large'] };
}

/** The frame's inner corners, in pixels as stored. */
function corners({ picture, turn }: Decoded): SetCorners {
  const upright = uprightSize(turn);
  const across = upright.width / picture.width;
  const down = upright.height / picture.height;
  const found = findFrameCorners(new GreyPyramid(picture));
  return (
    found?.corners.map(([x, y]) => toStored(turn, { x: (x + 0.5) * across - 0.5, y: (y + 0.5) * down - 0.5 })) ?? null
  );
}

function tellOf(decoded: Decoded, job: Job): void {
  if (job.job === 'read') tell({ tell: 'done', read: read(decoded, job.corners) });
  else tell({ tell: 'corners', found: corners(decoded) });
}

/** Lines of wood are looked for in small pictures; so many pixels are more than enough. */
const mostPixelsForCorners = 2_000_000;

async function carryOut(order: ReadingRequest): Promise<void> {
  tell({ tell: 'progress', stage: 'opening', done: 0 });
  if ('decoded' in order) {
    tellOf(order.decoded, order);
    return;
  }
  if (typeof OffscreenCanvas === 'undefined' || typeof createImageBitmap === 'undefined') {
    tell({ tell: 'cannot decode' });
    return;
  }
  const decoded = await decodePicture(
    order.photograph,
    (width, height) => new OffscreenCanvas(width, height),
    order.job === 'read' ? mostPixelsRead : mostPixelsForCorners,
  );
  if (!('problem' in decoded)) tellOf(decoded, order);
  else if (order.job === 'read') tell({ tell: 'done', read: { verdict: 'refused', reasons: [decoded.problem] } });
  else tell({ tell: 'corners', found: null });
}

addEventListener('message', ({ data }: MessageEvent<ReadingRequest>) => {
  carryOut(data).catch((error: unknown) =>
    tell({ tell: 'failed', why: error instanceof Error ? error.message : 'the reading stopped' }),
  );
});
