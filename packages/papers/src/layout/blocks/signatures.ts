import { lineAtom, linesHeight, pictureAtom } from '../atom.ts';
import type { Flow } from '../flow.ts';
import type { SignatureLines } from '../paper-definition.ts';
import { lineWidth, margins, sizes } from '../sheet.ts';
import { breakIntoLines, type Letters, type Line } from '../text-lines.ts';
import type { MeasuredBlock } from './measured-block.ts';

const gap = 24;
const size = sizes.small;
const high = 104;
const below = 6;

/** From the top of the block, in points: the drawn signature, the line it stands on, the words under the line. */
const down = { drawing: 14, line: 68, words: 71 } as const;

interface MeasuredSignature {
  readonly signature: SignatureLines['lines'][number];
  readonly title: Line | undefined;
  readonly under: readonly Line[];
}

export function measureSignatures({ lines }: SignatureLines, letters: Letters): MeasuredBlock {
  const width = (lineWidth - gap * (lines.length - 1)) / Math.max(1, lines.length);
  const measured = lines.map(
    (signature): MeasuredSignature => ({
      signature,
      title: breakIntoLines(signature.title, size, width, letters, true)[0],
      under: breakIntoLines(signature.below, size, width, letters),
    }),
  );
  return {
    kind: 'signatures',
    height: high + below,
    beginning: high + below,
    place: (flow) => {
      flow.makeRoom(high);
      measured.forEach((one, index) => {
        place(one, margins.left + index * (width + gap), width, flow);
      });
      flow.y = flow.y + high + below;
    },
  };
}

function place({ signature, title, under }: MeasuredSignature, x: number, width: number, flow: Flow): void {
  const top = flow.y;
  const above = flow.enter('P');
  if (title) lineAtom(title, size, above).place(x, top, flow.page);
  if (signature.drawing) {
    const figure = flow.enter('Figure', { alternative: signature.alternative });
    pictureAtom(signature.drawing, Math.min(150, width), figure).place(x, top + down.drawing, flow.page);
  }
  flow.page.push({ kind: 'rule', x1: x, y1: top + down.line, x2: x + width, y2: top + down.line, weight: 0.8 });
  const words = flow.enter('P');
  let at = top + down.words;
  for (const line of under) {
    lineAtom(line, size, words).place(x, at, flow.page);
    at += linesHeight(1, size);
  }
}
