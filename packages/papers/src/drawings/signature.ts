import { type Drawing, weights } from './drawing.ts';

/**
 * A drawn signature as it was taken: a path in a box of 300 by 100. Only lines are drawn, nothing that the path might
 * otherwise carry.
 *
 * @throws RangeError when the path holds anything but M, L, C, Q, Z and numbers
 */
export function drawSignature(path: string): Drawing {
  if (!/^[MLCQZ0-9 .,e-]*$/.test(path)) {
    throw new RangeError('a signature is a path of M, L, C, Q, Z and numbers; this one holds something else');
  }
  return {
    width: 300,
    height: 100,
    shapes: [{ d: path, stroke: 'ink', fill: 'none', weight: weights.main, role: 'signature' }],
    labels: [],
  };
}
