import type { CellSectionParameters } from '../cell-section-parameters.ts';
import type { Shape } from '../drawing.ts';
import type { Placement } from '../pen.ts';
import { drawCoiled } from './coiled.ts';
import { drawDry } from './dry.ts';
import { drawEgg } from './egg.ts';
import { drawMummy } from './mummy.ts';
import { drawNectar } from './nectar.ts';
import { drawPollen } from './pollen.ts';
import { drawPupa } from './pupa.ts';
import { drawSac } from './sac.ts';
import { drawSlumped } from './slumped.ts';
import { drawStretched } from './stretched.ts';
import { drawTwisted } from './twisted.ts';

/** What lies in the cell. */
export function drawContent(cell: CellSectionParameters, own: Placement): Shape[] {
  switch (cell.content ?? 'empty') {
    case 'empty':
      return [];
    case 'egg':
      return drawEgg(cell, own);
    case 'coiled':
      return drawCoiled(cell, own);
    case 'twisted':
      return drawTwisted(cell, own);
    case 'stretched':
      return drawStretched(cell, own);
    case 'slumped':
      return drawSlumped(cell, own);
    case 'pupa':
      return drawPupa(cell, own);
    case 'mummy':
      return drawMummy(cell, own);
    case 'sac':
      return drawSac(cell, own);
    case 'dry':
      return drawDry(cell, own);
    case 'pollen':
      return drawPollen(own);
    case 'nectar':
      return drawNectar(own);
  }
}
