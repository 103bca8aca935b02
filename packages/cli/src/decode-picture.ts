/** Turns the bytes of a picture file into the pixels the comb room reads. The only place that knows file formats. */
import type { Picture } from '@combside/science/comb/photograph/picture';
import sharp, { type Metadata, type Sharp } from 'sharp';

/** Why a file could not be decoded (words: `comb.reason.<id>`). */
export type DecodeProblem = 'not-a-picture' | 'damaged' | 'file-too-large' | 'picture-too-small';

export interface Decoded {
  /** RGB as stored in the file: not turned, transparency laid on grey, 16 bits brought to 8, CMYK to sRGB. */
  readonly picture: Picture;
  /** The turn the file asks viewers to make (EXIF orientation 1 to 8; 1 when it says nothing). */
  readonly orientation: number;
  /** Frames or pages in the file; only the first is read. */
  readonly frames: number;
}

/** A picture decoded to RGB takes three bytes per pixel; beyond this a small machine runs out of memory. */
const mostPixels = 100_000_000;
const formats = new Set(['jpeg', 'png', 'webp', 'tiff', 'gif', 'avif', 'heif']);

// Each photograph is read once; holding decoded ones back would only cost memory.
sharp.cache(false);

/** @returns the pixels, or what is wrong with the file; never throws on bad bytes */
export async function decodePicture(bytes: Uint8Array): Promise<Decoded | { readonly problem: DecodeProblem }> {
  const open = (): Sharp => sharp(bytes, { failOn: 'error', limitInputPixels: false, pages: 1, animated: false });
  let about: Metadata;
  try {
    about = await sharp(bytes, { failOn: 'error', limitInputPixels: false }).metadata();
  } catch {
    return { problem: 'not-a-picture' };
  }
  if (!about.format || !formats.has(about.format)) return { problem: 'not-a-picture' };
  const { width, height } = about;
  if (!width || !height) return { problem: 'damaged' };
  if (width * height > mostPixels) return { problem: 'file-too-large' };
  if (Math.min(width, height) < 8) return { problem: 'picture-too-small' };
  try {
    const { data, info } = await open()
      .flatten({ background: { r: 128, g: 128, b: 128 } })
      .toColourspace('srgb')
      .removeAlpha()
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    if (info.channels !== 3 || data.length !== info.width * info.height * 3) return { problem: 'damaged' };
    return {
      picture: { width: info.width, height: info.height, data },
      orientation: about.orientation ?? 1,
      frames: about.pages ?? 1,
    };
  } catch {
    return { problem: 'damaged' };
  }
}
