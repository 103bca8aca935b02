import sharp from 'sharp';

/** Longest side of a small photograph, pixels: a list shows it some 300 wide, also on a screen of double density. */
const longestSide = 640;
/** Photographs with more pixels are not shrunk for a list, as they are not read either. */
const mostPixels = 50_000_000;

/**
 * A photograph turned upright and shrunk for a list, as a JPEG. Made anew each time: a camera's JPEG is decoded small, in
 * some hundredths of a second, and the browser keeps it.
 *
 * @returns null where the bytes are no picture that can be shrunk, or are gone
 */
export async function smallPhotograph(path: string): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    const bytes = await sharp(path, { limitInputPixels: mostPixels, pages: 1 })
      .autoOrient()
      .resize(longestSide, longestSide, { fit: 'inside', withoutEnlargement: true })
      .flatten({ background: { r: 128, g: 128, b: 128 } })
      .jpeg({ quality: 72 })
      .toBuffer();
    return new Uint8Array(bytes);
  } catch {
    // Whatever is wrong with the file, it is shown as the whole photograph or read as a comb: there it is said.
    return null;
  }
}
