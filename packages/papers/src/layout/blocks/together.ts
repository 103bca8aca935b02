import { bottomEdge, margins } from '../sheet.ts';
import { isFigure } from './figure.ts';
import { type MeasuredBlock, placeBlocks } from './measured-block.ts';

/** Blocks that stay on one page when a page can hold them; a figure among them is made smaller first. */
export function measureTogether(blocks: readonly MeasuredBlock[]): MeasuredBlock {
  const height = blocks.reduce((sum, block) => sum + block.height, 0);
  const figure = blocks.find(isFigure);
  return {
    kind: 'together',
    height,
    beginning: Math.min(height, bottomEdge - margins.top - 60),
    place: (flow) => {
      const shrinks = figure && figure.widthFor(flow.left, height - figure.height) < figure.width;
      if (!shrinks && height <= bottomEdge - margins.top) flow.makeRoom(height);
      placeBlocks(blocks, flow);
    },
  };
}
