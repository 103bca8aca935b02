import type { SourcedValue } from '@combside/sources/sourced-value';

/*
 * The constants for measuring a colony, each with its standing. None is a default: the inspector, or the agency, chooses
 * one and the choice is shown with the answer.
 */

/** Bees on comb. "Side" is one face of one comb. */
export const beesOnComb = {
  /** Bees on one square decimetre of a side fully covered (Liebefeld method). */
  perSquareDecimetreCovered: {
    value: 127.5,
    low: 125,
    high: 130,
    unit: 'bees per dm² of one side',
    standing: 'from memory',
    sources: ['IMD'],
    doubts: 'The course was seen in its opening only; the figure itself is remembered.',
  },
  /** Bees on both sides of a deep Langstroth comb fully covered. */
  perDeepCombCovered: {
    value: 2430,
    unit: 'bees per comb, both sides',
    standing: 'from memory',
    sources: ['BURG85'],
    doubts: 'The opening of the paper shows earlier figures of 1,900 (single layer) and 1,400.',
  },
  /** Average over combs in use, not fully covered ones. */
  perCombInUseBritish: {
    value: 1100,
    unit: 'bees per comb in use',
    standing: 'published',
    sources: ['SIM69'],
    sampleSize: 23,
    population: 'colonies, combs in use',
  },
  perCombInUseLangstroth: {
    value: 1400,
    unit: 'bees per comb in use',
    standing: 'published',
    sources: ['SIM69'],
    sampleSize: 23,
    population: 'colonies, combs in use',
  },
  /** Error of judging an area by eye; more when bees are flying. */
  errorByEye: { value: 0.15, unit: 'share', standing: 'from memory', sources: ['BB-STR-4.2'] },
} as const satisfies Record<string, SourcedValue>;

/** Cells on comb. */
export const cellsOnComb = {
  workerPerSquareCentimetreSide: {
    value: 4,
    low: 3.8,
    high: 4.4,
    unit: 'cells per cm² of one side',
    standing: 'arithmetic',
    sources: ['CELLRACE'],
    doubts: 'From cell widths 5.13 to 5.5 mm; about 800 (760 to 875) per dm² of both sides is printed.',
  },
  workerPerSquareInchSideGrading: {
    value: 23.6,
    unit: 'cells per in² of one side',
    standing: 'published',
    sources: ['GRADE'],
  },
  workerPerSquareInchSideField: {
    value: 25,
    unit: 'cells per in² of one side',
    standing: 'published',
    sources: ['CHESH'],
  },
  dronePerSquareCentimetreSide: {
    value: 2.8,
    low: 2.65,
    high: 3,
    unit: 'cells per cm² of one side',
    standing: 'from memory',
    sources: ['CELLRACE'],
    doubts: 'From a remembered cell width of 6.2 to 6.6 mm.',
  },
} as const satisfies Record<string, SourcedValue>;

/** One kind of frame: comb area of one side, and cells of both sides as a list prints them (null when none does). */
export interface FrameKind {
  readonly sideArea: SourcedValue;
  readonly cellsBothSides: SourcedValue | null;
}

const area = (value: number, standing: SourcedValue['standing'], sources: SourcedValue['sources']): SourcedValue => ({
  value,
  unit: 'cm² of one side',
  standing,
  sources,
});

const cells = (value: number, sources: SourcedValue['sources']): SourcedValue => ({
  value,
  unit: 'cells per frame, both sides',
  standing: 'published',
  sources,
});

/**
 * Frames. Lists vary by maker, so the inspector may give inside width and height instead: area = width * height.
 * The list's WBC figure (45,000 for ten National-size frames) contradicts its National figure and is left out.
 */
export const frameKinds = {
  'Langstroth deep': {
    sideArea: area(871, 'published', ['GRADE', 'FRM-LS']),
    cellsBothSides: cells(6100, ['BBKA-CELL']),
  },
  'British National': {
    sideArea: area(625, 'arithmetic', ['BBKA-CELL', 'FRM-UK']),
    cellsBothSides: cells(5000, ['BBKA-CELL']),
  },
  'National 14 x 12': {
    sideArea: area(910, 'arithmetic', ['BBKA-CELL', 'FRM-UK']),
    cellsBothSides: cells(7300, ['BBKA-CELL']),
  },
  Commercial: { sideArea: area(800, 'arithmetic', ['BBKA-CELL']), cellsBothSides: cells(6420, ['BBKA-CELL']) },
  'Dadant (British list)': {
    sideArea: area(966, 'arithmetic', ['BBKA-CELL']),
    cellsBothSides: cells(7730, ['BBKA-CELL']),
  },
  'Dadant-Blatt': { sideArea: area(1130, 'from memory', []), cellsBothSides: null },
  Zander: { sideArea: area(840, 'from memory', []), cellsBothSides: null },
  'Deutsch Normal': { sideArea: area(800, 'from memory', []), cellsBothSides: null },
} as const satisfies Record<string, FrameKind>;
