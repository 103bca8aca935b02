/** Whole numbers from one to another, both included: all of them, or about so many, denser where the numbers are small. */
export function spreadOver(from: number, to: number, many: number): number[] {
  if (to - from < many) return Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const ratio = (to - from + 1) ** (1 / (many - 1));
  const found = new Set(Array.from({ length: many }, (_, i) => from - 1 + Math.round(ratio ** i)));
  return [...found.add(to)].filter((value) => value >= from && value <= to).sort((a, b) => a - b);
}
