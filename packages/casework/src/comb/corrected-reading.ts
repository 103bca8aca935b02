import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import { type CellClass, cellClasses, coarseClass } from '@combside/science/comb/cells/cell-classes';
import { agreement, type CombReading, readCells } from '@combside/science/comb/reading/reading';
import { decodeCells, type KeptCell } from './encode-cells.ts';

/** One cell with the machine's word and, where a person said something, the person's. */
export interface CorrectedCell extends KeptCell {
  /** What the machine read; `class` is what stands. */
  readonly machine: CellClass;
  /** True when a person looked at this cell, whether or not it was changed. */
  readonly lookedAt: boolean;
}

export interface CorrectedReading {
  /** In the order of the record: a correction names a cell by its place here. */
  readonly cells: readonly CorrectedCell[];
  /** The figures as the machine read them. */
  readonly machine: CombReading;
  /** The figures with what the person said. */
  readonly reading: CombReading;
  /** Cells whose class the person changed. */
  readonly changed: number;
  /**
   * Cells the person looked at one by one, and on how many of them both agree: `share` 0 to 1, `kappa` beyond chance. Null
   * when nobody looked at a single cell. Somebody who touches only wrong cells makes it small: it is no accuracy.
   */
  readonly agreement: { readonly lookedAt: number; readonly share: number; readonly kappa: number | null } | null;
  /** Corrections in words that this program does not know (written by a newer version); they are left out. */
  readonly setAside: number;
}

const known: ReadonlySet<string> = new Set<string>([...cellClasses, 'not-decided']);

/** True for a word that a correction may use. */
export function isCellClass(word: string): word is CellClass {
  return known.has(word);
}

/**
 * A kept reading as it stands: the machine's cells with a person's corrections over them, the figures of both, and how far
 * they agree. Of two corrections of one cell the later counts.
 *
 * @returns null when the cells were written by a newer version of this program, or cannot be read
 */
export function correctedReading(body: Pick<CombReadingBody, 'cells' | 'corrections'>): CorrectedReading | null {
  let kept: KeptCell[];
  try {
    kept = decodeCells(body.cells);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
  const said = new Map<number, CellClass>();
  let setAside = 0;
  for (const { cell, class: word } of body.corrections) {
    if (cell < kept.length && isCellClass(word)) said.set(cell, word);
    else setAside++;
  }
  const cells = kept.map((cell, n): CorrectedCell => {
    const word = said.get(n);
    const own = { ...cell, machine: cell.class, lookedAt: word !== undefined };
    if (word === undefined || word === cell.class) return own;
    const { stage: _, openWithoutStores: __, likelyBrood: ___, ...rest } = own;
    return { ...rest, class: word, coarse: coarseClass(word) };
  });
  const lookedAt = cells.filter((cell) => cell.lookedAt);
  const both = agreement(lookedAt.map((cell) => ({ machine: cell.machine, person: cell.class })));
  return {
    cells,
    machine: readCells(kept),
    reading: readCells(cells),
    changed: lookedAt.filter((cell) => cell.machine !== cell.class).length,
    agreement: both ? { lookedAt: lookedAt.length, share: both.share, kappa: both.kappa ?? null } : null,
    setAside,
  };
}
