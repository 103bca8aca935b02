import { fromBase64Url, toBase64Url } from '@combside/record/bytes';
import { mostCellsKept } from '@combside/record/kinds/comb-reading';
import { type CellClass, coarseClass } from '@combside/science/comb/cells/cell-classes';
import type { ReadCell } from '@combside/science/comb/reading/reading';

/**
 * Cells of a comb as they are kept in the record: 12 bytes a cell, little-endian - column (int32), row (int16), x and y in
 * quarter pixels (uint16 each), what was read (uint8, a place in `kinds` below), confidence in 255ths (uint8).
 */

/** A cell as it comes back: everything the figures of a reading need, and where to draw it. */
export interface KeptCell extends ReadCell {
  /** Middle of the mouth, pixels of the photograph as stored, to a quarter. */
  readonly x: number;
  readonly y: number;
  /** 0 to 1, to one part in 255. */
  readonly confidence: number;
}

const bytesPerCell = 12;

interface KindOfCell {
  readonly class: CellClass;
  readonly coarse: ReadCell['coarse'];
  readonly stage?: 'egg' | 'larva';
  readonly openWithoutStores?: true;
  readonly likelyBrood?: true;
}

const decided = (of: CellClass): KindOfCell => ({ class: of, coarse: coarseClass(of) });

/**
 * What one byte says was read. **Frozen**: lines are only ever added at the end, since records hold their places. Beside
 * the classes stand their refinements, so that the figures come out the same after a cell was kept as before.
 */
const kinds: readonly KindOfCell[] = [
  decided('sealed-worker-brood'),
  decided('sealed-drone-brood'),
  decided('sealed-honey'),
  decided('open-empty'),
  decided('egg-or-larva'),
  decided('nectar'),
  decided('pollen'),
  decided('hidden'),
  decided('not-decided'),
  { ...decided('egg-or-larva'), stage: 'egg' },
  { ...decided('egg-or-larva'), stage: 'larva' },
  { class: 'not-decided', coarse: 'sealed' },
  { class: 'not-decided', coarse: 'open' },
  { class: 'not-decided', coarse: 'open', openWithoutStores: true },
  { class: 'not-decided', coarse: 'hidden' },
  { class: 'not-decided', coarse: 'sealed', likelyBrood: true },
];

function kindOf(cell: ReadCell): number {
  const isUndecided = cell.class === 'not-decided';
  return kinds.findIndex(
    (one) =>
      one.class === cell.class &&
      one.coarse === (isUndecided ? cell.coarse : one.coarse) &&
      one.stage === (cell.class === 'egg-or-larva' ? cell.stage : undefined) &&
      (one.openWithoutStores ?? false) ===
        (isUndecided && cell.coarse === 'open' ? (cell.openWithoutStores ?? false) : false) &&
      (one.likelyBrood ?? false) === (isUndecided && cell.coarse === 'sealed' ? (cell.likelyBrood ?? false) : false),
  );
}

/**
 * Encodes cells for the record.
 *
 * @param cells at most 20,000; x and y from 0 to 16383.75 pixels, confidence 0 to 1, column and row whole numbers
 * @throws RangeError when a cell does not fit, naming it
 */
export function encodeCells(cells: readonly KeptCell[]): { readonly count: number; readonly packed: string } {
  if (cells.length > mostCellsKept) {
    throw new RangeError(`${cells.length} cells are more than the ${mostCellsKept} that are kept of one photograph`);
  }
  const bytes = new Uint8Array(cells.length * bytesPerCell);
  const view = new DataView(bytes.buffer);
  cells.forEach((cell, n) => {
    const at = n * bytesPerCell;
    const fits =
      isWhole(cell.column, -(2 ** 31), 2 ** 31 - 1) &&
      isWhole(cell.row, -(2 ** 15), 2 ** 15 - 1) &&
      isWhole(Math.round(cell.x * 4), 0, 65_535) &&
      isWhole(Math.round(cell.y * 4), 0, 65_535) &&
      cell.confidence >= 0 &&
      cell.confidence <= 1;
    const kind = kindOf(cell);
    if (!fits || kind < 0) {
      throw new RangeError(
        `cell ${n} cannot be kept: column ${cell.column}, row ${cell.row}, x ${cell.x}, y ${cell.y}, confidence ${cell.confidence}, class ${cell.class}`,
      );
    }
    view.setInt32(at, cell.column, true);
    view.setInt16(at + 4, cell.row, true);
    view.setUint16(at + 6, Math.round(cell.x * 4), true);
    view.setUint16(at + 8, Math.round(cell.y * 4), true);
    view.setUint8(at + 10, kind);
    view.setUint8(at + 11, Math.round(cell.confidence * 255));
  });
  return { count: cells.length, packed: toBase64Url(bytes) };
}

/**
 * The cells of a record.
 *
 * @throws RangeError when the bytes are not what `encodeCells` makes, or hold what a newer version of this program wrote
 */
export function decodeCells(kept: { readonly count: number; readonly packed: string }): KeptCell[] {
  let bytes: Uint8Array<ArrayBuffer>;
  try {
    bytes = fromBase64Url(kept.packed);
  } catch (cause) {
    throw new RangeError('the cells of this comb reading are not readable base64url', { cause });
  }
  if (bytes.length !== kept.count * bytesPerCell) {
    throw new RangeError(`${kept.count} cells need ${kept.count * bytesPerCell} bytes, not ${bytes.length}`);
  }
  const view = new DataView(bytes.buffer);
  return Array.from({ length: kept.count }, (_, n) => {
    const at = n * bytesPerCell;
    const kind = kinds[view.getUint8(at + 10)];
    if (!kind) {
      throw new RangeError(`cell ${n} holds what a newer version of this program wrote (${view.getUint8(at + 10)})`);
    }
    return {
      column: view.getInt32(at, true),
      row: view.getInt16(at + 4, true),
      x: view.getUint16(at + 6, true) / 4,
      y: view.getUint16(at + 8, true) / 4,
      confidence: view.getUint8(at + 11) / 255,
      ...kind,
    };
  });
}

function isWhole(value: number, low: number, high: number): boolean {
  return Number.isInteger(value) && value >= low && value <= high;
}
