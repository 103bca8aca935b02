/** What a picture file says of itself before it is decoded. */
export interface PictureHeader {
  /** Pixels as stored, before any turn. */
  readonly width: number;
  readonly height: number;
  /** The turn the file asks viewers to make: EXIF orientation 1 to 8, 1 when it says nothing. */
  readonly orientation: number;
}

/**
 * Reads size and orientation from the first bytes of a JPEG (ITU-T T.81 annex B; Exif 2.3 section 4.5.4) or the size from
 * a PNG (ISO/IEC 15948, IHDR); from memory.
 *
 * @param bytes the beginning of the file; 256 kB hold the header of every camera's picture
 * @returns null for other formats and for what is no picture
 */
export function pictureHeader(bytes: Uint8Array): PictureHeader | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length > 24 && view.getUint32(0) === 0x89504e47) {
    return { width: view.getUint32(16), height: view.getUint32(20), orientation: 1 };
  }
  if (bytes.length < 4 || view.getUint16(0) !== 0xffd8) return null;
  let orientation = 1;
  let at = 2;
  while (at + 9 < bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] as number;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const length = view.getUint16(at + 2);
    if (marker === 0xe1)
      orientation = orientationOf(view, at + 4, Math.min(at + 2 + length, bytes.length)) ?? orientation;
    // Start of frame, whatever the coding; C4, C8 and CC are other tables.
    if (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc) {
      return { height: view.getUint16(at + 5), width: view.getUint16(at + 7), orientation };
    }
    at += 2 + length;
  }
  return null;
}

/** @returns the orientation in one APP1 segment, or null when it holds none */
function orientationOf(view: DataView, from: number, to: number): number | null {
  const tiff = from + 6;
  if (to < tiff + 8 || view.getUint32(from) !== 0x45786966) return null;
  const order = view.getUint16(tiff);
  if (order !== 0x4949 && order !== 0x4d4d) return null;
  const little = order === 0x4949;
  const directory = tiff + view.getUint32(tiff + 4, little);
  if (directory + 2 > to) return null;
  const lines = view.getUint16(directory, little);
  for (let line = 0; line < lines; line++) {
    const at = directory + 2 + 12 * line;
    if (at + 12 > to) return null;
    if (view.getUint16(at, little) === 0x0112) {
      const value = view.getUint16(at + 8, little);
      return value >= 1 && value <= 8 ? value : null;
    }
  }
  return null;
}
