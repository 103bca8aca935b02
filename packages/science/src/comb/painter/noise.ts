/** A fixed pseudo-random number from 0 to 1 for a place on a whole-number grid. */
export function placeNoise(x: number, y: number, salt: number): number {
  let h = Math.imul(x | 0, 0x27d4eb2d) ^ Math.imul(y | 0, 0x165667b1) ^ Math.imul(salt | 0, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}

/** Smooth noise from 0 to 1, about one hill per unit. */
export function smoothNoise(x: number, y: number, salt: number): number {
  const x0 = Math.floor(x);
  const y0 = Math.floor(y);
  const fx = x - x0;
  const fy = y - y0;
  const sx = fx * fx * (3 - 2 * fx);
  const sy = fy * fy * (3 - 2 * fy);
  const top = placeNoise(x0, y0, salt) * (1 - sx) + placeNoise(x0 + 1, y0, salt) * sx;
  const bottom = placeNoise(x0, y0 + 1, salt) * (1 - sx) + placeNoise(x0 + 1, y0 + 1, salt) * sx;
  return top * (1 - sy) + bottom * sy;
}
