import { lineAtom, linesHeight, pictureAtom, pictureHeight } from '../atom.ts';
import type { Flow } from '../flow.ts';
import type { Figure } from '../paper-definition.ts';
import { tag } from '../placed.ts';
import { lineWidth, sizes } from '../sheet.ts';
import { breakIntoLines, type Letters, type Line } from '../text-lines.ts';
import type { MeasuredBlock } from './measured-block.ts';

/** A figure is made smaller, down to this share of its width, before a page is left half empty. */
const smallest = 2 / 3;
const below = 10;

export interface MeasuredFigure extends MeasuredBlock {
  readonly kind: 'figure';
  /** As defined, in points. */
  readonly width: number;
  /** Width at which the figure and `above` points of other things fit into `room`; its own when even the smallest does not. */
  readonly widthFor: (room: number, above?: number) => number;
}

export function measureFigure(figure: Figure, letters: Letters): MeasuredFigure {
  const { drawing, width } = figure;
  const caption = figure.caption ? breakIntoLines(figure.caption, sizes.small, lineWidth, letters) : [];
  const heightAt = (wide: number): number =>
    caption.reduce((sum) => sum + linesHeight(1, sizes.small), pictureHeight(drawing, wide)) + below;
  const height = heightAt(width);
  const widthFor = (room: number, above = 0): number => {
    const excess = height + above - room;
    if (excess <= 0) return width;
    // Half a point more, so that rounding does not push it over after all.
    const smaller = width - ((excess + 0.5) * drawing.width) / drawing.height;
    return smaller >= width * smallest ? smaller : width;
  };
  return {
    kind: 'figure',
    height,
    beginning: heightAt(width * smallest),
    width,
    widthFor,
    place: (flow) => {
      const fitting = widthFor(flow.left);
      flow.makeRoom(heightAt(fitting));
      place(figure, fitting, caption, flow);
    },
  };
}

export const isFigure = (block: MeasuredBlock): block is MeasuredFigure => block.kind === 'figure';

function place(figure: Figure, width: number, caption: readonly Line[], flow: Flow): void {
  const own = flow.enter('Figure', { alternative: figure.alternative });
  const words = tag('Caption');
  if (caption.length > 0) own.children.push(words);
  flow.put(pictureAtom(figure.drawing, width, own));
  for (const line of caption) flow.put(lineAtom(line, sizes.small, words, { faint: true }));
  flow.y += below;
}
