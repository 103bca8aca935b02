import type { CellDrawing } from '@combside/science/signs/drawing';
import { drawCombSection } from './cell-section.ts';
import type { CellSectionParameters, CombSectionParameters } from './cell-section-parameters.ts';
import type { Drawing } from './drawing.ts';

/** The drawing of a sign, from what the catalogue of signs says about it. */
export function drawSign(sign: CellDrawing): Drawing {
  return drawCombSection(sectionOf(sign));
}

function sectionOf(sign: CellDrawing): CombSectionParameters {
  if (sign.scene === 'comb') return { cells: rowOf(sign) };
  if (sign.hive === 'few bees') return { cells: [{ content: 'coiled' }, { content: 'coiled' }], bees: 'few' };
  if (sign.hive === 'mummies on the floor') {
    return { cells: [{ content: 'mummy', colour: brood(sign) }], floor: 'mummies' };
  }
  const cell = cellOf(sign);
  if (sign.smell === 'none') return { cells: [cell] };
  return { cells: [cell], smell: sign.smell === 'any' ? 'other' : sign.smell };
}

/** A pattern is a row of cells one above the other: what differs between neighbours is the sign. */
function rowOf(sign: CellDrawing): CellSectionParameters[] {
  const capped: CellSectionParameters = { capping: 'domed', content: 'stretched' };
  switch (sign.patch) {
    case 'none':
      return [cellOf(sign)];
    case 'compact':
      return [capped, capped, capped];
    case 'spotty':
      return [capped, {}, { content: 'egg' }];
    case 'block dead':
      return [
        { content: 'coiled', colour: brood(sign) },
        { content: 'stretched', colour: brood(sign) },
        { content: 'pupa', colour: brood(sign), capping: 'domed' },
      ];
    case 'line open': {
      const opened: CellSectionParameters = { content: 'pupa', raisedRim: true, ...(sign.moth ? { moth: true } : {}) };
      return sign.moth ? [opened, opened] : [opened, opened, opened];
    }
    case 'one left behind':
      return [
        { content: 'egg' },
        { capping: 'sunken', cappingDark: true, content: 'slumped', colour: 'brown' },
        { content: 'egg' },
      ];
    case 'scattered domes':
      return [capped, { capping: 'drone dome', content: 'pupa' }, capped];
  }
}

function cellOf(sign: CellDrawing): CellSectionParameters {
  const severalEggs = sign.content === 'several eggs';
  const content = severalEggs ? 'egg' : sign.content === 'fluffy' ? 'stretched' : sign.content;
  const capped = sign.capping !== 'none' && sign.capping !== 'torn' && sign.capping !== 'raised rim';
  return {
    capping: sign.capping === 'raised rim' ? 'none' : sign.capping,
    raisedRim: sign.capping === 'raised rim',
    cappingDark: capped && (sign.moist || sign.capping === 'perforated'),
    content,
    colour: brood(sign),
    scale: sign.scale,
    tongue: sign.tongue,
    headRaised: sign.headUp,
    tracheae: sign.tracheae,
    fluff: sign.content === 'fluffy',
    powder: sign.content === 'mummy' && sign.colour === 'grey',
    shiny: sign.shiny,
    watery: sign.moist && sign.thread > 0 && sign.thread < 10,
    mites: sign.mites,
    moth: sign.moth,
    eggs: severalEggs ? 4 : 1,
    ...(sign.thread > 0 ? { threadMillimetres: sign.thread } : {}),
  };
}

function brood(sign: CellDrawing): NonNullable<CellSectionParameters['colour']> {
  return sign.colour === 'none' ? 'pearl' : sign.colour;
}
