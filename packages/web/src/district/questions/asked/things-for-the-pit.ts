import type { Pieces } from '@combside/science/disposal/pit';

/**
 * Reads further things for the pit, one a line: how many, then length, width and height in cm, such as "6 50 40 24" or
 * "6 x 50 x 40 x 24". Nothing stated is nothing further.
 *
 * @returns null when a line reads otherwise
 */
export function readPieces(lines: string): Pieces[] | null {
  const pieces: Pieces[] = [];
  for (const line of lines
    .split('\n')
    .map((one) => one.trim())
    .filter(Boolean)) {
    const parts = line
      .split(/[\s;x×]+/)
      .map((part) => (/^\d{1,5}(?:[.,]\d+)?$/.test(part) ? Number(part.replace(',', '.')) : 0));
    const [count, length, width, height, ...more] = parts as [number, number, number, number, ...number[]];
    if (more.length > 0 || !Number.isInteger(count) || ![count, length, width, height].every((one) => one > 0)) {
      return null;
    }
    pieces.push({ count, lengthCentimetres: length, widthCentimetres: width, heightCentimetres: height });
  }
  return pieces;
}
