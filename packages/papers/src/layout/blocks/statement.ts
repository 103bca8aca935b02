import { lineAtom, linesHeight, pictureAtom } from '../atom.ts';
import type { Flow } from '../flow.ts';
import type { Statement } from '../paper-definition.ts';
import { lineWidth, margins, page, sizes } from '../sheet.ts';
import { breakIntoLines, type Letters, type Line } from '../text-lines.ts';
import type { MeasuredBlock } from './measured-block.ts';

const markWidth = 34;
const inset = { side: 12, top: 11 } as const;
const below = 10;

/** The first line is what is to be read first, and large. */
const sizeOf = (index: number): number => (index === 0 ? sizes.large : sizes.body);
const indentOf = (statement: Statement): number => (statement.mark ? markWidth + 12 : 0);

export function measureStatement(statement: Statement, letters: Letters): MeasuredBlock {
  const width = lineWidth - 2 * inset.side - indentOf(statement);
  const said = statement.lines.map((text, index) => breakIntoLines(text, sizeOf(index), width, letters, index === 0));
  const high = said.reduce((sum, lines, index) => sum + linesHeight(lines.length, sizeOf(index)) + 2, 0);
  const frameHeight = Math.max(high, statement.mark ? markWidth : 0) + 2 * inset.top;
  return {
    kind: 'statement',
    height: frameHeight + below,
    beginning: frameHeight + below,
    place: (flow) => {
      place(statement, said, frameHeight, flow);
    },
  };
}

function place(statement: Statement, said: readonly (readonly Line[])[], frameHeight: number, flow: Flow): void {
  flow.makeRoom(frameHeight);
  const top = flow.y;
  drawFrame(top, frameHeight, flow);
  if (statement.mark) {
    const figure = flow.enter('Figure', { alternative: statement.alternative });
    pictureAtom(statement.mark, markWidth, figure).place(margins.left + inset.side, top + inset.top, flow.page);
  }
  flow.y = top + inset.top;
  said.forEach((lines, index) => {
    const paragraph = flow.enter('P');
    for (const line of lines) {
      const atom = lineAtom(line, sizeOf(index), paragraph);
      atom.place(margins.left + inset.side + indentOf(statement), flow.y, flow.page);
      flow.y += atom.height;
    }
    flow.y += 2;
  });
  flow.y = top + frameHeight + below;
}

function drawFrame(top: number, height: number, flow: Flow): void {
  const corners = [
    [margins.left, top],
    [page.width - margins.right, top],
    [page.width - margins.right, top + height],
    [margins.left, top + height],
    [margins.left, top],
  ] as const;
  for (const [index, [x2, y2]] of corners.slice(1).entries()) {
    const [x1, y1] = corners[index] as (typeof corners)[number];
    flow.page.push({ kind: 'rule', x1, y1, x2, y2, weight: 1.2 });
  }
}
