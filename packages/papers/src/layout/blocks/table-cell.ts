import { type Atom, lineAtom, linesHeight, pictureAtom, pictureHeight } from '../atom.ts';
import type { Cell, PictureCell } from '../paper-definition.ts';
import { type Tag, tag } from '../placed.ts';
import { sizes } from '../sheet.ts';
import { breakIntoLines, type Letters } from '../text-lines.ts';

const size = sizes.body;
const besidePicture = 6;

export interface MeasuredCell {
  readonly height: number;
  /** What stands in the cell, one below the other, marked as belonging to its tag. */
  readonly atoms: (belongs: Tag) => Atom[];
}

/** What stands in a cell `width` points wide; a picture has its text beside it. */
export function measureCell(cell: Cell, width: number, letters: Letters): MeasuredCell {
  if (typeof cell !== 'string' && 'drawing' in cell) return measurePicture(cell, width, letters);
  const lines = breakIntoLines(cell, size, width, letters);
  return {
    height: lines.reduce((sum) => sum + linesHeight(1, size), 0),
    atoms: (belongs) => lines.map((line) => lineAtom(line, size, belongs)),
  };
}

function measurePicture(cell: PictureCell, width: number, letters: Letters): MeasuredCell {
  const pictureHigh = pictureHeight(cell.drawing, cell.width);
  const enterPicture = (belongs: Tag): Atom => {
    const figure = tag('Figure', { alternative: cell.alternative });
    belongs.children.push(figure);
    return pictureAtom(cell.drawing, cell.width, figure);
  };
  if (cell.text === undefined) return { height: pictureHigh, atoms: (belongs) => [enterPicture(belongs)] };

  const indent = cell.width + besidePicture;
  const lines = breakIntoLines(cell.text, size, width - indent, letters);
  const height = Math.max(pictureHigh, linesHeight(lines.length, size));
  return {
    height,
    atoms: (belongs) => {
      const picture = enterPicture(belongs);
      // A tag holds its text and its figure as two children, so the text gets a paragraph of its own.
      const paragraph = tag('P');
      belongs.children.push(paragraph);
      const place: Atom['place'] = (x, top, into) => {
        // The text begins level with the cells beside it; a small mark stands level with its first line.
        picture.place(x, top + Math.max(0, (linesHeight(1, size) - picture.height) / 2), into);
        let at = top;
        for (const line of lines) {
          lineAtom(line, size, paragraph).place(x + indent, at, into);
          at += linesHeight(1, size);
        }
      };
      return [{ height, place }];
    },
  };
}
