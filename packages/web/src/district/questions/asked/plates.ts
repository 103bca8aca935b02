import type { Plate } from '@combside/science/laboratory/plate-count';

/**
 * Reads plates as typed, one a line: how far it was diluted, the millilitres spread on it, the colonies counted. A
 * dilution is written as 0.01, 1:100, 1/100 or 10^-2; colonies too many to count as "-".
 *
 * @returns null when a line reads otherwise, or says what cannot be (more than undiluted, no volume)
 */
export function readPlates(lines: string): Plate[] | null {
  const plates: Plate[] = [];
  for (const line of lines
    .split('\n')
    .map((one) => one.trim())
    .filter(Boolean)) {
    const [first, second, third, ...more] = line.split(/[\s;]+/);
    if (!first || !second || !third || more.length > 0) return null;
    const dilution = readDilution(first);
    const millilitres = readNumber(second);
    const colonies = /^[-–—]$/.test(third) ? null : /^\d{1,5}$/.test(third) ? Number(third) : undefined;
    if (dilution === null || millilitres === null || colonies === undefined) return null;
    if (!(dilution > 0 && dilution <= 1) || !(millilitres > 0) || (colonies ?? 0) > 10_000) return null;
    plates.push({ dilution, millilitres, colonies });
  }
  return plates.length === 0 ? null : plates;
}

function readNumber(text: string): number | null {
  return /^\d+(?:[.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : null;
}

function readDilution(text: string): number | null {
  const parts = /^1[:/](\d+)$/.exec(text);
  if (parts) return 1 / Number(parts[1]);
  const power = /^10\^-(\d{1,2})$/.exec(text);
  if (power) return 10 ** -Number(power[1]);
  return readNumber(text);
}
