/** Room for the largest set solved here, eight equations: fits are made by the thousand. */
const room = new Float64Array(64);

/**
 * Solves as many linear equations as there are unknowns, at most eight, by elimination with pivoting.
 *
 * @param matrix row by row; both arguments are left as they are
 * @returns undefined when the equations do not determine the answer
 */
export function solveEquations(matrix: Float64Array, right: Float64Array): Float64Array | undefined {
  const n = right.length;
  const a = room;
  a.set(matrix);
  const x = Float64Array.from(right);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let r = k + 1; r < n; r++) {
      if (Math.abs(a[r * n + k] as number) > Math.abs(a[pivot * n + k] as number)) pivot = r;
    }
    const p = a[pivot * n + k] as number;
    if (!(Math.abs(p) >= 1e-9)) return undefined;
    if (pivot !== k) {
      for (let c = 0; c < n; c++) {
        const t = a[k * n + c] as number;
        a[k * n + c] = a[pivot * n + c] as number;
        a[pivot * n + c] = t;
      }
      const t = x[k] as number;
      x[k] = x[pivot] as number;
      x[pivot] = t;
    }
    for (let r = k + 1; r < n; r++) {
      const f = (a[r * n + k] as number) / p;
      if (f === 0) continue;
      for (let c = k; c < n; c++) a[r * n + c] = (a[r * n + c] as number) - f * (a[k * n + c] as number);
      x[r] = (x[r] as number) - f * (x[k] as number);
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let s = x[k] as number;
    for (let c = k + 1; c < n; c++) s -= (a[k * n + c] as number) * (x[c] as number);
    x[k] = s / (a[k * n + k] as number);
  }
  return x;
}
