/** Takes away what is not held by seen cells, and lays the rest on the gentle bend of a comb. */
import { type LatticeCell, neighbourSteps, placeKey } from './lattice-cell.ts';
import { solveEquations } from './linear-equations.ts';

/**
 * Takes away what is not held by seen cells: lone seen cells, and extrapolated ones that do not lie among seen cells on
 * several sides.
 */
export function prune(cells: LatticeCell[], inPicture: (x: number, y: number) => boolean): LatticeCell[] {
  const byKey = new Map(cells.map((cell) => [placeKey(cell.column, cell.row), cell]));
  for (;;) {
    const before = byKey.size;
    for (const cell of [...byKey.values()]) {
      let seenAround = 0;
      let outside = 0;
      const sides = new Set<number>();
      neighbourSteps.forEach(([dc, dr], side) => {
        const near = byKey.get(placeKey(cell.column + dc, cell.row + dr));
        if (near && near.seen > 0) seenAround++;
        if (!inPicture(cell.x + dc * cell.ax + dr * cell.bx, cell.y + dc * cell.ay + dr * cell.by)) outside++;
        for (let k = 1; k <= 4; k++) {
          const along = byKey.get(placeKey(cell.column + k * dc, cell.row + k * dr));
          if (along && along.seen > 0) {
            sides.add(side);
            break;
          }
        }
      });
      // A place at the edge of the picture cannot have cells on all sides; one at the edge of the comb must have been seen.
      const held =
        cell.seen > 0
          ? seenAround >= 2 && sides.size >= 2
          : seenAround >= 3 || sides.size >= 4 || (outside > 0 && seenAround >= 1 && sides.size + outside >= 5);
      if (!held) byKey.delete(placeKey(cell.column, cell.row));
    }
    if (byKey.size === before) break;
  }
  return [...byKey.values()];
}

/** Moves every cell part of the way to where a curved (quadratic) fit of its neighbourhood puts it; less when well seen. */
export function smooth(cells: LatticeCell[]): LatticeCell[] {
  const byKey = new Map(cells.map((cell) => [placeKey(cell.column, cell.row), cell]));
  // Unknowns: 1, dc, dr, dc^2, dc dr, dr^2.
  const normal = new Float64Array(36);
  const tx = new Float64Array(6);
  const ty = new Float64Array(6);
  const basis = new Float64Array(6);
  return cells.map((cell) => {
    normal.fill(0);
    tx.fill(0);
    ty.fill(0);
    let count = 0;
    for (let dr = -3; dr <= 3; dr++) {
      for (let dc = Math.max(-3, -3 - dr); dc <= Math.min(3, 3 - dr); dc++) {
        const near = byKey.get(placeKey(cell.column + dc, cell.row + dr));
        if (!near) continue;
        const w = near.seen > 0 ? near.seen : 0.02;
        if (near.seen > 0) count++;
        basis[0] = 1;
        basis[1] = dc;
        basis[2] = dr;
        basis[3] = dc * dc;
        basis[4] = dc * dr;
        basis[5] = dr * dr;
        for (let i = 0; i < 6; i++) {
          const wi = w * (basis[i] as number);
          for (let j = 0; j < 6; j++) normal[i * 6 + j] = (normal[i * 6 + j] as number) + wi * (basis[j] as number);
          tx[i] = (tx[i] as number) + wi * near.x;
          ty[i] = (ty[i] as number) + wi * near.y;
        }
      }
    }
    if (count < 9) return cell;
    for (let i = 3; i < 6; i++) normal[i * 7] = (normal[i * 7] as number) + 1.5;
    const px = solveEquations(normal, tx);
    const py = solveEquations(normal, ty);
    if (!px || !py) return cell;
    const trust = cell.seen / (cell.seen + 0.45);
    return {
      ...cell,
      x: cell.x * trust + (px[0] as number) * (1 - trust),
      y: cell.y * trust + (py[0] as number) * (1 - trust),
      ax: px[1] as number,
      ay: py[1] as number,
      bx: px[2] as number,
      by: py[2] as number,
    };
  });
}
