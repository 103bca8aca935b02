/** Where a cell must be, from the cells placed round it. */
import { type LatticeCell, placeKey } from './lattice-cell.ts';
import { solveEquations } from './linear-equations.ts';

/**
 * Predicts a cell from its placed neighbours: weighted least squares for place and lattice vectors, the vectors held
 * near those of `from` when neighbours are few.
 */
export function affineFit(
  cells: ReadonlyMap<number, LatticeCell>,
  column: number,
  row: number,
  from: LatticeCell,
): { x: number; y: number; ax: number; ay: number; bx: number; by: number } {
  // Unknown: centre c and corrections to the vectors. Residual of neighbour k: p_k - (c + a dc + b dr).
  let sw = 0;
  let sc = 0;
  let sr = 0;
  let scc = 0;
  let scr = 0;
  let srr = 0;
  let tx = 0;
  let ty = 0;
  let tcx = 0;
  let tcy = 0;
  let trx = 0;
  let tryy = 0;
  for (let dr = -3; dr <= 3; dr++) {
    for (let dc = Math.max(-3, -3 - dr); dc <= Math.min(3, 3 - dr); dc++) {
      const cell = cells.get(placeKey(column + dc, row + dr));
      if (!cell) continue;
      const distance = (Math.abs(dc) + Math.abs(dr) + Math.abs(dc + dr)) / 2;
      const w = (0.03 + cell.seen) * (distance <= 1 ? 1 : distance <= 2 ? 0.5 : 0.22);
      const rx = cell.x - (from.ax * dc + from.bx * dr);
      const ry = cell.y - (from.ay * dc + from.by * dr);
      sw += w;
      sc += w * dc;
      sr += w * dr;
      scc += w * dc * dc;
      scr += w * dc * dr;
      srr += w * dr * dr;
      tx += w * rx;
      ty += w * ry;
      tcx += w * dc * rx;
      tcy += w * dc * ry;
      trx += w * dr * rx;
      tryy += w * dr * ry;
    }
  }
  // Corrections to the vectors are pulled to zero (ridge): with one neighbour the prediction is simply a step.
  const ridge = 0.9;
  const mc = sc / sw;
  const mr = sr / sw;
  const vcc = scc - sw * mc * mc + ridge;
  const vcr = scr - sw * mc * mr + ridge * 0.5;
  const vrr = srr - sw * mr * mr + ridge;
  const det = vcc * vrr - vcr * vcr;
  const ux = tcx - mc * tx;
  const uy = tcy - mc * ty;
  const vx = trx - mr * tx;
  const vy = tryy - mr * ty;
  const dax = (ux * vrr - vx * vcr) / det;
  const day = (uy * vrr - vy * vcr) / det;
  const dbx = (vx * vcc - ux * vcr) / det;
  const dby = (vy * vcc - uy * vcr) / det;
  return {
    x: tx / sw - dax * mc - dbx * mr,
    y: ty / sw - day * mc - dby * mr,
    ax: from.ax + dax,
    ay: from.ay + day,
    bx: from.bx + dbx,
    by: from.by + dby,
  };
}

/** Kept between fits, so that thousands of them leave nothing behind to be collected. */
const fit = {
  normal: new Float64Array(36),
  tx: new Float64Array(6),
  ty: new Float64Array(6),
  basis: new Float64Array(6),
};

/**
 * Predicts an unseen cell from seen ones up to six steps away on several sides: a curved (quadratic) fit, so that a gap
 * under a bee is bridged from both of its shores. Undefined when too few are seen or they lie on one side only.
 */
export function wideFit(
  cells: ReadonlyMap<number, LatticeCell>,
  cell: LatticeCell,
): { x: number; y: number; ax: number; ay: number; bx: number; by: number } | undefined {
  const { normal, tx, ty, basis } = fit;
  normal.fill(0);
  tx.fill(0);
  ty.fill(0);
  let count = 0;
  let sideC = 0;
  let sideR = 0;
  for (let dr = -6; dr <= 6; dr++) {
    for (let dc = Math.max(-6, -6 - dr); dc <= Math.min(6, 6 - dr); dc++) {
      const near = cells.get(placeKey(cell.column + dc, cell.row + dr));
      if (!near || near.seen <= 0) continue;
      const d2 = dc * dc + dc * dr + dr * dr;
      const w = near.seen / (1 + d2 / 6);
      count++;
      const length = Math.sqrt(d2) + 1e-9;
      sideC += dc / length;
      sideR += dr / length;
      basis[0] = 1;
      basis[1] = dc;
      basis[2] = dr;
      basis[3] = dc * dc;
      basis[4] = dc * dr;
      basis[5] = dr * dr;
      const px = near.x - cell.x;
      const py = near.y - cell.y;
      for (let i = 0; i < 6; i++) {
        const wi = w * (basis[i] as number);
        for (let j = 0; j < 6; j++) normal[i * 6 + j] = (normal[i * 6 + j] as number) + wi * (basis[j] as number);
        tx[i] = (tx[i] as number) + wi * px;
        ty[i] = (ty[i] as number) + wi * py;
      }
    }
  }
  if (count < 10 || Math.hypot(sideC, sideR) / count > 0.75) return undefined;
  // Curvature is held down: combs bend gently.
  for (let i = 3; i < 6; i++) normal[i * 7] = (normal[i * 7] as number) + 6;
  const x = solveEquations(normal, tx);
  const y = solveEquations(normal, ty);
  if (!x || !y) return undefined;
  return {
    x: cell.x + (x[0] as number),
    y: cell.y + (y[0] as number),
    ax: x[1] as number,
    ay: y[1] as number,
    bx: x[2] as number,
    by: y[2] as number,
  };
}
