import type { Drawing } from '../drawings/drawing.ts';
import type { Placed, Tag } from './placed.ts';
import { leading } from './sheet.ts';
import type { Line } from './text-lines.ts';

/** The smallest thing that is never parted: it takes up height, in points, and knows how to place itself. */
export interface Atom {
  readonly height: number;
  readonly place: (x: number, top: number, into: Placed[]) => void;
}

/** Height of one or more lines of letters of a size, in points. */
export const linesHeight = (count: number, size: number): number => count * size * leading;

/** How a line differs from an ordinary one. */
interface LineLook {
  readonly faint?: boolean;
  /** Height of the line for each point of its letters. */
  readonly high?: number;
}

/**
 * One line of text.
 *
 * @param size height of the letters in points
 * @param belongs the tag it is marked with; null for what belongs to the page and not to the paper
 */
export function lineAtom(
  line: Line,
  size: number,
  belongs: Tag | null,
  { faint = false, high = leading }: LineLook = {},
): Atom {
  return {
    height: size * high,
    place: (x, top, into) => {
      // Letters stand so that the space of the line is shared above and below: ascender .95, descender .29 of Atkinson.
      const baseline = top + (size * high) / 2 + size * 0.33;
      for (const piece of line) {
        into.push({
          kind: 'text',
          text: piece.text,
          font: piece.font,
          size,
          x: x + piece.x,
          baseline,
          width: piece.width,
          faint,
          tag: belongs,
        });
      }
    },
  };
}

/** Height of a drawing at a width, both in points. */
export const pictureHeight = (drawing: Drawing, width: number): number => (width * drawing.height) / drawing.width;

/** One drawing, `width` points wide. */
export function pictureAtom(drawing: Drawing, width: number, belongs: Tag): Atom {
  const height = pictureHeight(drawing, width);
  return {
    height,
    place: (x, top, into) => {
      into.push({ kind: 'drawing', drawing, x, y: top, width, height, tag: belongs });
    },
  };
}

/** How many atoms from the first on fit into a height. */
export function howMany(atoms: readonly Atom[], room: number): number {
  let used = 0;
  let count = 0;
  for (const atom of atoms) {
    used += atom.height;
    if (used > room + 0.01) break;
    count += 1;
  }
  return count;
}
