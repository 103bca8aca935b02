import { DomainError } from '@combside/science/distributions/domain';
import { type LaboratoryLimits, type LoadClass, meaningOfLoad } from '@combside/science/laboratory/laboratory-limits';
import type { LoadUnit } from '@combside/science/laboratory/plate-count';
import { type Figure, type Said, say, unstated } from '../question.ts';

/** What was stated of a laboratory's own limits, as the fields hold it. */
export interface StatedLimits {
  readonly laboratory: string;
  readonly method: string;
  readonly material: string;
  readonly statedOn: string;
  readonly source: string;
  readonly classes: string;
}

/** A load with the ends of its interval, as far as they are known. */
export interface LoadRead {
  readonly load: number;
  readonly lower: number | null;
  readonly upper: number | null;
  readonly unit: LoadUnit;
}

type Row = Extract<Figure, { kind: 'bands' }>['rows'][number];

/** What the limits make of a load: sentences and rows of the figure, or what is missing, or why they cannot be read. */
export type ByLimits =
  | { readonly said: readonly Said[]; readonly rows: readonly Row[] }
  | { readonly asks: readonly string[] }
  | { readonly refuses: Said };

/**
 * Reads a load by the limits stated. Nothing said of limits: then there are none. Half of them: the rest is asked for,
 * never filled in.
 *
 * @param whenNone said in place of a class where no limits are stated
 */
export function byLimits(read: LoadRead, stated: StatedLimits, whenNone: readonly Said[]): ByLimits {
  const { laboratory, statedOn, source, method, material } = stated;
  const stored = { laboratory, statedOn, source, classes: stated.classes };
  const missing = unstated(stored);
  if (missing.length === Object.keys(stored).length) return { said: whenNone, rows: [] };
  const asks = [...unstated({ material, method }), ...missing];
  if (asks.length > 0) return { asks };
  const classes = readClasses(stated.classes);
  const refuses = say('laboratory-number.refuses.classes');
  if (classes === null) return { refuses };
  const { load, lower, upper, unit } = read;
  const limits: LaboratoryLimits = { laboratory, method, material, statedOn, source, unit, classes };
  const values = { load: loadSaid(load), unit: { word: `laboratory-number.unit.${unit}` as const }, laboratory };
  try {
    const found = meaningOfLoad({ load, lower, upper, unit, material, method, limits });
    return {
      said: [
        found.outcome === 'classed'
          ? say('laboratory-number.says.classed', { ...values, name: found.className ?? '' })
          : say('laboratory-number.says.not-certain', { ...values, names: found.possibleClasses.join(', ') }),
        say('laboratory-number.says.from', { laboratory, day: { day: statedOn }, source }),
      ],
      rows: classes.map((one, i) => ({
        label: say('laboratory-number.row.class', { name: one.name }),
        low: one.from,
        value: null,
        high: classes[i + 1]?.from ?? null,
      })),
    };
  } catch (failure) {
    if (!(failure instanceof DomainError)) throw failure;
    return { refuses };
  }
}

/** A load in as many places as it is worth. */
export const loadSaid = (load: number) => ({ number: load, decimals: load >= 100 ? 0 : 2 });

/** One class a line: the smallest load in it, then its name. Null when a line reads otherwise. */
export function readClasses(lines: string): LoadClass[] | null {
  const classes: LoadClass[] = [];
  for (const line of lines
    .split('\n')
    .map((one) => one.trim())
    .filter(Boolean)) {
    const parts = /^(\d+(?:[.,]\d+)?)\s+(\S.*)$/.exec(line);
    if (!parts) return null;
    const [, from, name] = parts as unknown as [string, string, string];
    classes.push({ from: Number(from.replace(',', '.')), name });
  }
  return classes.length === 0 ? null : classes;
}
