import type { Proposal } from '@combside/record/entry';
import { type CombReadingBody, combReading, mostCellsKept } from '@combside/record/kinds/comb-reading';
import type { PhotographReference } from '@combside/record/kinds/examination';
import type { ColonyState, VisitState } from '@combside/record/states';
import type { CombResult } from '@combside/science/comb/comb-result';
import { readerVersion } from '@combside/science/comb/reading/reader-version';
import { type Act, done, refused } from '../act.ts';
import { isCellClass } from './corrected-reading.ts';
import { encodeCells } from './encode-cells.ts';

/** Longest side of a photograph whose reading is kept, pixels. */
export const longestSideKept = 16_383;

/** A photograph read cell by cell, by the machine alone. */
export interface ReadPhotograph {
  readonly result: CombResult;
  /** Pixels of the photograph as stored. */
  readonly picture: { readonly width: number; readonly height: number };
  /** Corners that a person set before the reading; null or left out when the whole photograph was read. */
  readonly region?: readonly (readonly [number, number])[] | null;
}

/** The machine's part of a kept reading, in the form in which it is kept. */
export type ReadingPart = Pick<CombReadingBody, 'reader' | 'cells'>;

export interface ProposeReading {
  /** What the machine read, or its part as `readingPart` made it: a draft keeps only that. */
  readonly read: ReadPhotograph | { readonly part: ReadingPart };
  readonly photograph: PhotographReference;
  readonly place: CombReadingBody['place'];
  readonly observedAt: string;
  readonly colony: ColonyState;
  /** The visit the photograph belongs to, running or ended. */
  readonly visit: VisitState;
  /** What a person said of single cells; the machine's own class again means "looked at and agreed". */
  readonly corrections?: CombReadingBody['corrections'];
  /** Whether a person accepted the reading; without that it is no evidence. */
  readonly accepted: boolean;
  /** A fresh identifier for the entry, where somebody has to name it. */
  readonly id?: string;
}

/**
 * Proposes the entry that keeps a reading: the machine's cells as they are, and beside them what a person said.
 *
 * Refused when the photograph was not read, when it is too large to be kept, outside a begun visit, for a colony of another
 * apiary or one not in the register, when it was taken before the visit, when a reading of it is kept already, and when a
 * correction names no cell or no class.
 */
export function proposeReading(input: ProposeReading): Act<{ readonly reading: CombReadingBody }> {
  const visit = input.visit.visit.current?.body;
  const colony = input.colony.colony.current?.body;
  if (!visit?.startedAt) return refused('casework.refused.visit-not-started');
  if (!colony) return refused('casework.refused.not-in-register');
  if (colony.apiary !== visit.apiary) return refused('casework.refused.colony-elsewhere');
  if (input.observedAt < visit.startedAt) return refused('casework.refused.time-runs-backward');
  const isKept = input.colony.combReadings.some(
    ({ body }) => body.visit === input.visit.about.id && body.photograph.hash === input.photograph.hash,
  );
  if (isKept) return refused('casework.refused.comb-reading-kept');
  const { read } = input;
  if (!('part' in read) && read.result.verdict !== 'read') return refused('casework.refused.comb-not-read');
  const part = 'part' in read ? read.part : readingPart(read);
  if (!part) return refused('casework.refused.comb-picture-too-large', { side: longestSideKept });
  const corrections = input.corrections ?? [];
  const unknown = firstUnknown(corrections, part.cells.count);
  if (unknown) return unknown;

  const body: CombReadingBody = {
    visit: input.visit.about.id,
    apiary: visit.apiary,
    observedAt: input.observedAt,
    photograph: input.photograph,
    place: input.place,
    ...part,
    corrections: [...corrections],
    accepted: input.accepted,
  };
  const proposal: Proposal<CombReadingBody> = {
    ...(input.id === undefined ? {} : { id: input.id }),
    kind: combReading.kind,
    version: combReading.version,
    about: input.colony.about,
    body,
    replaces: [],
  };
  return { ...done([proposal]), reading: body };
}

/**
 * The part of a kept reading that the machine makes: the reader and its cells.
 *
 * @returns null when the photograph is larger, or holds more cells, than is kept
 */
export function readingPart(read: ReadPhotograph): ReadingPart | null {
  const { result, picture } = read;
  if (Math.max(picture.width, picture.height) > longestSideKept || result.cells.length > mostCellsKept) return null;
  // A cell at the edge may have its middle a little outside the photograph.
  const inside = (at: number, length: number): number => Math.min(Math.max(at, 0), length);
  return {
    reader: {
      version: readerVersion,
      picture: { width: picture.width, height: picture.height },
      pitchPx: result.pitchPx,
      warnings: [...result.reasons],
      region: read.region?.map(([x, y]) => ({ x, y })) ?? null,
      secondLook: (result.reading?.secondLook ?? []).map(({ cell, outlying, why }) => ({ cell, outlying, why })),
    },
    cells: encodeCells(
      result.cells.map((cell) => ({
        ...cell,
        x: inside(cell.x, picture.width),
        y: inside(cell.y, picture.height),
        confidence: inside(cell.confidence, 1),
      })),
    ),
  };
}

/** The first correction that names no cell or no class, as a refusal. */
export function firstUnknown(corrections: CombReadingBody['corrections'], cells: number) {
  for (const one of corrections) {
    if (one.cell >= cells || one.cell < 0) return refused('casework.refused.comb-cell-not-there', { cell: one.cell });
    if (!isCellClass(one.class)) return refused('casework.refused.unknown-word', { word: one.class });
  }
  return null;
}
