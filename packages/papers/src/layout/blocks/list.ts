import { lineAtom, linesHeight } from '../atom.ts';
import type { Flow } from '../flow.ts';
import type { List } from '../paper-definition.ts';
import { tag } from '../placed.ts';
import { lineWidth, margins, sizes } from '../sheet.ts';
import { breakIntoLines, type Letters, type Line } from '../text-lines.ts';
import type { MeasuredBlock } from './measured-block.ts';

const indent = 14;
const size = sizes.body;
const betweenItems = 3;
const below = 5;

export function measureList({ items }: List, letters: Letters): MeasuredBlock {
  const dot = breakIntoLines('•', size, indent, letters)[0] ?? [];
  const measured = items.map((item) => breakIntoLines(item, size, lineWidth - indent, letters));
  return {
    kind: 'list',
    height: measured.reduce((sum, lines) => sum + linesHeight(lines.length, size) + betweenItems, 0) + below,
    beginning: linesHeight(measured[0]?.length ?? 0, size),
    place: (flow) => {
      place(measured, dot, flow);
    },
  };
}

function place(items: readonly (readonly Line[])[], dot: Line, flow: Flow): void {
  const list = flow.enter('L');
  for (const lines of items) {
    const label = tag('Lbl');
    const body = tag('LBody');
    const item = tag('LI');
    item.children.push(label, body);
    list.children.push(item);
    flow.makeRoom(linesHeight(Math.min(lines.length, 3), size));
    lines.forEach((line, index) => {
      flow.makeRoom(linesHeight(1, size));
      if (index === 0) lineAtom(dot, size, label).place(margins.left + 2, flow.y, flow.page);
      lineAtom(line, size, body).place(margins.left + indent, flow.y, flow.page);
      flow.y += linesHeight(1, size);
    });
    flow.y += betweenItems;
  }
  flow.y += below;
}
