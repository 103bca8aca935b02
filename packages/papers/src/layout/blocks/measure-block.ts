import type { Block } from '../paper-definition.ts';
import type { Letters } from '../text-lines.ts';
import { measureFacts } from './facts.ts';
import { measureFigure } from './figure.ts';
import { measureHeading } from './heading.ts';
import { measureList } from './list.ts';
import type { MeasuredBlock } from './measured-block.ts';
import { measureParagraph } from './paragraph.ts';
import { measureSignatures } from './signatures.ts';
import { measureStatement } from './statement.ts';
import { measureTable } from './table.ts';
import { measureTogether } from './together.ts';

/** Breaks a block into lines and finds its heights, once. */
export function measureBlock(block: Block, letters: Letters): MeasuredBlock {
  switch (block.kind) {
    case 'heading':
      return measureHeading(block, letters);
    case 'paragraph':
      return measureParagraph(block, letters);
    case 'facts':
      return measureFacts(block, letters);
    case 'table':
      return measureTable(block, letters);
    case 'figure':
      return measureFigure(block, letters);
    case 'list':
      return measureList(block, letters);
    case 'statement':
      return measureStatement(block, letters);
    case 'signatures':
      return measureSignatures(block, letters);
    case 'together':
      return measureTogether(block.blocks.map((inner) => measureBlock(inner, letters)));
  }
}
