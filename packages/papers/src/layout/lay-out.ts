import { lineAtom } from './atom.ts';
import { measureBlock } from './blocks/measure-block.ts';
import { placeBlocks } from './blocks/measured-block.ts';
import { Flow } from './flow.ts';
import type { PaperDefinition } from './paper-definition.ts';
import type { LaidOut, Placed } from './placed.ts';
import { lineWidth, margins, page, sizes } from './sheet.ts';
import { breakIntoLines, type Letters, type Line } from './text-lines.ts';

/**
 * Finds the place of everything on A4 pages, from top to bottom. Every block is measured first, once; then each is
 * placed, and takes a new page when it does not fit in what is left. Nothing is moved later.
 */
export function layOut(paper: PaperDefinition, letters: Letters): LaidOut {
  const blocks = paper.blocks.map((block) => measureBlock(block, letters));
  const flow = new Flow();
  placeBlocks(blocks, flow);
  if (flow.pages.length > 1 && flow.atTop) flow.pages.pop();
  placeHeadersAndFooters(paper, flow.pages, letters);
  return { pages: flow.pages, structure: flow.structure };
}

/** What stands on every page and is no part of the reading. */
function placeHeadersAndFooters(paper: PaperDefinition, pages: readonly Placed[][], letters: Letters): void {
  const size = sizes.small;
  const lineOf = (text: string): Line => breakIntoLines(text, size, lineWidth, letters)[0] ?? [];
  const put = (line: Line, x: number, top: number, into: Placed[]): void => {
    lineAtom(line, size, null, { faint: true }).place(x, top, into);
  };
  const footer = lineOf(paper.footer);
  const header = lineOf(paper.header);
  const foot = page.height - margins.bottom + 22;
  const rightEdge = page.width - margins.right;
  pages.forEach((placed, index) => {
    placed.push({ kind: 'rule', x1: margins.left, y1: foot - 5, x2: rightEdge, y2: foot - 5, weight: 0.4 });
    put(footer, margins.left, foot, placed);
    const number = lineOf(paper.pageOf(index + 1, pages.length));
    const last = number.at(-1);
    put(number, rightEdge - (last ? last.x + last.width : 0), foot, placed);
    if (index > 0) put(header, margins.left, margins.top - 26, placed);
  });
}
