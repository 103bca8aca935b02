/** Nodes and weights of a quadrature rule on [0, 1]. */
export interface QuadratureRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/**
 * Gauss-Legendre rule with n nodes on [0, 1]: exact for polynomials up to degree 2n - 1. Nodes are the roots of the
 * Legendre polynomial, found by Newton's method from their asymptotic places.
 */
export function gaussLegendre(n: number): QuadratureRule {
  const nodes = new Float64Array(n);
  const weights = new Float64Array(n);
  for (let i = 0; i < Math.ceil(n / 2); i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 0;
    for (let step = 0; step < 100; step++) {
      let [before, value] = [0, 1];
      for (let k = 1; k <= n; k++) {
        [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
      }
      slope = (n * (x * value - before)) / (x * x - 1);
      const move = value / slope;
      x -= move;
      if (Math.abs(move) < 1e-16) break;
    }
    const weight = 1 / ((1 - x * x) * slope * slope);
    nodes[i] = (1 - x) / 2;
    nodes[n - 1 - i] = (1 + x) / 2;
    weights[i] = weight;
    weights[n - 1 - i] = weight;
  }
  return { nodes, weights };
}
