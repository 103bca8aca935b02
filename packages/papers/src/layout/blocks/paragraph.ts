import { lineAtom, linesHeight } from '../atom.ts';
import type { Flow } from '../flow.ts';
import type { Paragraph } from '../paper-definition.ts';
import { leading, lineWidth, sizes } from '../sheet.ts';
import { breakIntoLines, type Letters, type Line } from '../text-lines.ts';
import type { MeasuredBlock } from './measured-block.ts';

const below = 6;

/** Up to so many lines are not parted. */
const whole = 4;

export function measureParagraph(paragraph: Paragraph, letters: Letters): MeasuredBlock {
  const size = sizes[paragraph.size ?? 'body'];
  const lines = breakIntoLines(paragraph.text, size, lineWidth, letters);
  return {
    kind: 'paragraph',
    height: linesHeight(lines.length, size) + below,
    // A heading before lines that are not parted needs them all.
    beginning: size * leading * (lines.length <= whole ? lines.length : 3),
    place: (flow) => {
      place(lines, size, flow);
    },
  };
}

function place(lines: readonly Line[], size: number, flow: Flow): void {
  const paragraph = flow.enter('P');
  // Two lines at least stay together at either end of a page.
  const fits = Math.floor(flow.left / (size * leading));
  const torn = fits < lines.length && (fits < 2 || lines.length - fits < 2);
  if (torn && lines.length <= whole && !flow.atTop) flow.newPage();
  for (const line of lines) flow.put(lineAtom(line, size, paragraph));
  flow.y += below;
}
