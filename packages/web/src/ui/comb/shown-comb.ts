import type { CorrectedCell } from '@combside/casework/comb/corrected-reading';
import { useMemo } from 'react';
import { type CellOutlines, cellOutlines, type OverlayPaths, overlayPaths, type PlacedCell } from './cell-outlines.ts';

/** The photograph to draw on: an address this page may show, and the size of the upright picture. */
export interface PictureShown {
  readonly address: string;
  readonly width: number;
  readonly height: number;
}

/** A comb ready to be drawn: cells in the upright picture, their outlines, and the paths of the overlay. */
export interface CombShown {
  readonly picture: PictureShown;
  readonly cells: readonly PlacedCell[];
  readonly outlines: CellOutlines;
  readonly paths: OverlayPaths;
  /** Distance of neighbouring cells, pixels. */
  readonly pitch: number;
  /** Corners that a person set before the reading; null when the whole picture was read. */
  readonly region: readonly Place[] | null;
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * @param cells as the record holds them, in pixels as stored
 * @param reader what the reading says of itself: the distance of the cells, and corners in pixels as stored
 * @param upright brings a pixel as stored into the upright picture
 */
export function useCombShown(
  picture: PictureShown,
  cells: readonly CorrectedCell[],
  reader: { readonly pitchPx: number; readonly region: readonly Place[] | null },
  upright: (at: Place) => Place,
): CombShown {
  const { pitchPx: pitch, region: stored } = reader;
  // Pixels are counted from 0 at their middle; a drawing counts from their corner.
  const region = useMemo(
    () => stored?.map((corner) => upright(corner)).map(({ x, y }) => ({ x: x + 0.5, y: y + 0.5 })) ?? null,
    [stored, upright],
  );
  const placed = useMemo(
    () =>
      cells.map((cell): PlacedCell => {
        const { x, y } = upright(cell);
        return { column: cell.column, row: cell.row, class: cell.class, x: x + 0.5, y: y + 0.5 };
      }),
    [cells, upright],
  );
  const outlines = useMemo(() => cellOutlines(placed, pitch), [placed, pitch]);
  const paths = useMemo(() => overlayPaths(placed, outlines), [placed, outlines]);
  return useMemo(
    () => ({ picture, cells: placed, outlines, paths, pitch, region }),
    [picture, placed, outlines, paths, pitch, region],
  );
}
