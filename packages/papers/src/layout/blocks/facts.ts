import { lineAtom, linesHeight } from '../atom.ts';
import type { Flow } from '../flow.ts';
import type { Facts } from '../paper-definition.ts';
import { tag } from '../placed.ts';
import { bottomEdge, lineWidth, margins, sizes } from '../sheet.ts';
import { breakIntoLines, type Letters, type Line } from '../text-lines.ts';
import type { MeasuredBlock } from './measured-block.ts';

const nameWidth = lineWidth * 0.32;
const size = sizes.body;
const below = 6;

interface MeasuredFact {
  readonly names: readonly Line[];
  readonly values: readonly Line[];
  /** In lines, of the longer of the two. */
  readonly lines: number;
  readonly height: number;
}

export function measureFacts({ facts }: Facts, letters: Letters): MeasuredBlock {
  const measured = facts.map(({ name, value }): MeasuredFact => {
    const names = breakIntoLines(name, size, nameWidth - 10, letters);
    const values = breakIntoLines(value, size, lineWidth - nameWidth, letters);
    const lines = Math.max(names.length, values.length);
    return { names, values, lines, height: linesHeight(lines, size) + 2 };
  });
  const heightOf = (some: readonly MeasuredFact[]): number => some.reduce((sum, fact) => sum + fact.height, 0);
  return {
    kind: 'facts',
    height: heightOf(measured) + below,
    beginning: heightOf(measured.slice(0, 2)),
    place: (flow) => {
      place(measured, flow);
    },
  };
}

function place(facts: readonly MeasuredFact[], flow: Flow): void {
  const table = flow.enter('Table');
  for (const fact of facts) {
    const name = tag('TH', { scope: 'Row' });
    const value = tag('TD');
    const row = tag('TR');
    row.children.push(name, value);
    table.children.push(row);
    // A short fact stays whole; a long one, such as remarks, goes on over the page line by line.
    if (fact.height < (bottomEdge - margins.top) / 3) flow.makeRoom(fact.height);
    for (let at = 0; at < fact.lines; at += 1) {
      flow.makeRoom(linesHeight(1, size));
      const [nameLine, valueLine] = [fact.names[at], fact.values[at]];
      if (nameLine) lineAtom(nameLine, size, name, { faint: true }).place(margins.left, flow.y, flow.page);
      if (valueLine) lineAtom(valueLine, size, value).place(margins.left + nameWidth, flow.y, flow.page);
      flow.y += linesHeight(1, size);
    }
    flow.y += 2;
  }
  flow.y += below;
}
