import { lineAtom } from '../atom.ts';
import type { Flow } from '../flow.ts';
import type { Heading } from '../paper-definition.ts';
import { lineWidth, sizes } from '../sheet.ts';
import { breakIntoLines, type Letters, type Line } from '../text-lines.ts';
import type { MeasuredBlock } from './measured-block.ts';

const looks = {
  1: { size: sizes.title, above: 0 },
  2: { size: sizes.section, above: 12 },
  3: { size: sizes.part, above: 8 },
} as const;

/** Lines of a heading stand closer than those of a text. */
const high = 1.22;
const below = 4;

export function measureHeading({ level, text }: Heading, letters: Letters): MeasuredBlock {
  const { size, above } = looks[level];
  const lines = breakIntoLines(text, size, lineWidth, letters, true);
  const height = lines.length * size * high + above + below;
  return {
    kind: 'heading',
    height,
    beginning: height,
    place: (flow, following) => {
      place(level, lines, flow, following);
    },
  };
}

/** A heading is never the last thing on a page: it takes a new one with the beginning of what follows it. */
function place(
  level: Heading['level'],
  lines: readonly Line[],
  flow: Flow,
  [after, second]: readonly MeasuredBlock[],
): void {
  const { size, above } = looks[level];
  // A heading followed by a heading asks for what follows both.
  const further = after?.kind === 'heading' ? (second?.beginning ?? 0) : 0;
  flow.makeRoom(above + (lines.length * size * high + below) + (after?.beginning ?? 0) + further);
  flow.space(above);
  const heading = flow.enter(`H${level}`);
  for (const line of lines) flow.put(lineAtom(line, size, heading, { high }));
  flow.y += below;
}
