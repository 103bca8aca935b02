/** One cell of the lattice. Lengths in pixels of the plane it was found in. */
export interface LatticeCell {
  /** Lattice coordinates: the cell is `column` steps along the first vector and `row` along the second. */
  readonly column: number;
  readonly row: number;
  x: number;
  y: number;
  /** Local lattice vectors. */
  ax: number;
  ay: number;
  bx: number;
  by: number;
  /** How well walls are seen here, 0 to 1; 0 when the place was only extrapolated. */
  seen: number;
}

/** Distance between cell centres of the regular lattice with the same area per cell. */
export function pitchOf(cell: { ax: number; ay: number; bx: number; by: number }): number {
  return Math.sqrt(Math.abs(cell.ax * cell.by - cell.ay * cell.bx) / 0.8660254);
}

/** The six steps to the neighbours, in order round the cell. */
export const neighbourSteps: readonly (readonly [number, number])[] = [
  [1, 0],
  [0, 1],
  [-1, 1],
  [-1, 0],
  [0, -1],
  [1, -1],
];

/** One number for a place; places of different pieces are thousands of columns apart. */
export function placeKey(column: number, row: number): number {
  return (column + 4096) * 8192 + row + 4096;
}

/** Middle of the cells' local pitch (side of the regular lattice with the same area per cell); 0 without cells. */
export function middlePitch(cells: readonly LatticeCell[]): number {
  const pitches = cells
    .filter((cell) => cell.seen > 0)
    .map(pitchOf)
    .sort((a, b) => a - b);
  return pitches.length > 0 ? (pitches[pitches.length >> 1] as number) : 0;
}
