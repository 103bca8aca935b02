import type { Flow } from '../flow.ts';
import type { Block } from '../paper-definition.ts';

/** A block whose lines are broken and whose heights are known, so that placing it measures nothing again. */
export interface MeasuredBlock {
  readonly kind: Block['kind'];
  /** Of the whole, in points, with the space after it. */
  readonly height: number;
  /** Height without which a heading before it would stand alone at the foot of a page: its beginning, in points. */
  readonly beginning: number;
  /** Places the block where the flow stands; `following` are the blocks after it. */
  readonly place: (flow: Flow, following: readonly MeasuredBlock[]) => void;
}

/** Places blocks one below the other. */
export function placeBlocks(blocks: readonly MeasuredBlock[], flow: Flow): void {
  blocks.forEach((block, index) => {
    block.place(flow, blocks.slice(index + 1));
  });
}
