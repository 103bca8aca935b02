/**
 * Root of a continuous function that changes sign between `low` and `high`, by halving until the two ends are
 * neighbouring doubles (at most some 1,100 halvings, usually about 55).
 *
 * @throws RangeError when f has the same sign at both ends
 */
export function bisect(low: number, high: number, f: (x: number) => number): number {
  let [a, b] = [low, high];
  const atLow = f(a);
  const atHigh = f(b);
  if (atLow === 0) return a;
  if (atHigh === 0) return b;
  if (atLow > 0 === atHigh > 0) {
    throw new RangeError(`no change of sign between ${low} and ${high}: ${atLow} and ${atHigh}`);
  }
  for (;;) {
    const middle = a + (b - a) / 2;
    if (middle <= a || middle >= b) return middle;
    const value = f(middle);
    if (value === 0) return middle;
    if (value > 0 === atHigh > 0) b = middle;
    else a = middle;
  }
}
