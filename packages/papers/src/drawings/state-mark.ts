import { type Drawing, type Shape, type Wash, weights } from './drawing.ts';
import { Pen } from './pen.ts';

/**
 * The state of a colony after a look, as a shape in ink outline. The first five are the marks of the house; masked
 * and too little brood are unfinished looks, so they are unfinished outlines. None of them is green.
 */
export const colonyStates = [
  'not opened',
  'nothing seen',
  'signs seen',
  'suspect',
  'confirmed',
  'masked',
  'too little brood',
] as const;

export type ColonyState = (typeof colonyStates)[number];

const size = 24;

/** The mark of a state on a plate of 24 by 24. */
export function drawStateMark(state: ColonyState): Drawing {
  return { width: size, height: size, shapes: stateMarkShapes(state, 2, 2, size - 4), labels: [] };
}

/** The shapes of a mark as a square of side `edge` with its upper left corner at (x, y), to stand on a plan. */
export function stateMarkShapes(state: ColonyState, x: number, y: number, edge: number): Shape[] {
  const at = (share: number) => share * edge;
  const outline = (fill: Wash, dash?: readonly number[]): Shape => ({
    d: new Pen().box(x, y, edge, edge).d,
    stroke: 'ink',
    fill,
    weight: weights.main,
    role: 'outline',
    ...(dash ? { dash } : {}),
  });
  const line = (d: string): Shape => ({ d, stroke: 'ink', fill: 'none', weight: weights.main, role: 'mark' });

  switch (state) {
    case 'not opened':
      return [outline('paper')];
    case 'nothing seen':
      return [outline('paper'), line(new Pen().move(x + at(0.2), y + at(0.5)).line([x + at(0.8), y + at(0.5)]).d)];
    case 'signs seen':
      return [
        outline('paper'),
        {
          d: new Pen().ellipse(x + at(0.5), y + at(0.5), at(0.24)).d,
          stroke: 'ink',
          fill: 'signs seen',
          weight: weights.inner,
          role: 'mark',
        },
      ];
    case 'suspect':
      // A notch cut into the upper edge, filled.
      return [
        outline('paper'),
        {
          d: new Pen()
            .move(x, y)
            .line([x + at(0.5), y + at(0.72)], [x + edge, y])
            .close().d,
          stroke: 'ink',
          fill: 'suspect',
          weight: weights.main,
          role: 'mark',
        },
      ];
    case 'confirmed':
      return [outline('ink')];
    case 'masked':
      return [
        outline('paper'),
        line(
          new Pen()
            .move(x, y + at(0.5))
            .line([x + at(0.5), y])
            .move(x, y + edge)
            .line([x + edge, y])
            .move(x + at(0.5), y + edge)
            .line([x + edge, y + at(0.5)]).d,
        ),
      ];
    case 'too little brood':
      return [
        outline('paper', [2.5, 3]),
        line(new Pen().move(x + at(0.38), y + at(0.5)).line([x + at(0.62), y + at(0.5)]).d),
      ];
  }
}
