import type { Picture } from '@combside/science/comb/photograph/picture';
import { pictureHeader } from './picture-header.ts';
import { type Turn, uprightSize } from './turn.ts';

/** Why a file could not be decoded (words: `comb.reason.<id>`). */
export type DecodeProblem = 'not-a-picture' | 'damaged' | 'file-too-large' | 'picture-too-small';

export interface Decoded {
  /** RGB, upright, transparency laid on grey; shrunk when the file has more pixels than were asked for. */
  readonly picture: Picture;
  readonly turn: Turn;
}

/** Larger photographs are shrunk to this many pixels while they are decoded, so that a phone's memory holds. */
export const mostPixelsRead = 12_600_000;
/** A browser decodes the whole file first, four bytes a pixel: beyond this a phone ends the page. */
const mostPixelsDecoded = 100_000_000;
const headerBytes = 256 * 1024;
const stripRows = 256;

type Canvas = OffscreenCanvas | HTMLCanvasElement;

/**
 * Decodes a photograph upright. It is copied strip by strip, so that beside the browser's own bitmap only the pixels that
 * are read stand in memory.
 *
 * @param makeCanvas a canvas of this size: off the screen in a worker, an element on a page
 * @param mostPixels larger photographs are shrunk to so many while they are decoded
 * @returns the pixels, or what is wrong with the file
 */
export async function decodePicture(
  photograph: Blob,
  makeCanvas: (width: number, height: number) => Canvas,
  mostPixels = mostPixelsRead,
): Promise<Decoded | { readonly problem: DecodeProblem }> {
  const header = pictureHeader(new Uint8Array(await photograph.slice(0, headerBytes).arrayBuffer()));
  if (header && header.width * header.height > mostPixelsDecoded) return { problem: 'file-too-large' };
  const shrunk = header ? Math.min(1, Math.sqrt(mostPixels / (header.width * header.height))) : 1;
  let bitmap: ImageBitmap;
  try {
    const upright = header && uprightSize(header);
    bitmap = await createImageBitmap(
      photograph,
      upright && shrunk < 1
        ? {
            resizeWidth: Math.floor(upright.width * shrunk),
            resizeHeight: Math.floor(upright.height * shrunk),
            resizeQuality: 'high',
          }
        : {},
    );
  } catch {
    return { problem: header ? 'damaged' : 'not-a-picture' };
  }
  try {
    const { width, height } = bitmap;
    if (width * height > mostPixelsDecoded) return { problem: 'file-too-large' };
    if (Math.min(width, height) < 8) return { problem: 'picture-too-small' };
    const data = new Uint8Array(width * height * 3);
    const canvas = makeCanvas(width, Math.min(stripRows, height));
    const drawing = canvas.getContext('2d', { willReadFrequently: true }) as
      | OffscreenCanvasRenderingContext2D
      | CanvasRenderingContext2D
      | null;
    if (!drawing) return { problem: 'file-too-large' };
    drawing.fillStyle = 'rgb(128 128 128)';
    for (let top = 0; top < height; top += stripRows) {
      const rows = Math.min(stripRows, height - top);
      drawing.fillRect(0, 0, width, rows);
      drawing.drawImage(bitmap, 0, top, width, rows, 0, 0, width, rows);
      const strip = drawing.getImageData(0, 0, width, rows).data;
      for (let s = 0, t = top * width * 3; s < strip.length; s += 4, t += 3) {
        data[t] = strip[s] as number;
        data[t + 1] = strip[s + 1] as number;
        data[t + 2] = strip[s + 2] as number;
      }
    }
    // Formats whose header is not read here are taken as they are shown.
    const turn: Turn = header ?? { orientation: 1, width, height };
    return { picture: { width, height, data }, turn };
  } finally {
    bitmap.close();
  }
}
