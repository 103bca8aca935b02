import { depths } from '@combside/record/kinds/examination';
import { wilson } from '@combside/science/sampling/interval';
import { saysSuspect } from '../result/results-by-gravity.ts';
import type { ExaminedRow, Registered } from './examined.ts';

/** One number of the programme, with the examinations behind it: every number opens its records. */
export interface Figure {
  /** Which number, in parts: `['prevalence', 'american-foulbrood', 'full']`. */
  readonly id: readonly string[];
  readonly count: number;
  /** What it is out of; null for a plain count. */
  readonly of: number | null;
  /** Ends of the 95 % Wilson interval of the share; null for a plain count or out of nothing. */
  readonly low: number | null;
  readonly high: number | null;
  readonly examinations: readonly string[];
}

const ledBy: Readonly<Record<string, string>> = { 'suspicion reported': 'the keeper', request: 'the keeper' };

/**
 * The programme's figures of a period, after the rules that inspectorates report by. Depths are never mixed in one
 * denominator: each colony and each apiary stands once, under the deepest look of the period, so the classes are disjoint,
 * as Ontario prints brood-nest and top-bar inspections apart, and Maine surveyed and opened (sources: ONT17, MAINE05).
 *
 * - `examinations`, `colonies`, `apiaries` by depth; `inspected`: colonies opened in full or in part
 * - `suspicions` by condition, basis and depth: colonies; `finds`: colonies in which a pest was seen
 * - `prevalence`, `apiary prevalence` by condition and depth; `within` affected apiaries, full looks
 * - `incidence`: colonies suspected in the period out of those registered; `coverage` of register
 * - `yield` by reason: visits with a suspicion out of all; `found by`: colonies suspected, by who started the visit
 * - `month`: colonies opened in full or in part, and suspicions, by month
 *
 * A suspicion is not a confirmed case: the record holds no confirmations yet, so no number here is one.
 *
 * @param rows examinations of the period, in any order
 * @param registered what the register holds on the day of counting
 * @returns the same list for the same rows, whatever their order
 */
export function programmeFigures(rows: readonly ExaminedRow[], registered: Registered): Figure[] {
  const sorted = [...rows].sort((a, b) => compare(a.on, b.on) || compare(a.examination, b.examination));
  const figures: Figure[] = [];
  // Coverage is a count of everything there is: an interval around it would mean nothing.
  const add = (id: readonly string[], behind: readonly ExaminedRow[], count: number, of: number | null = null) => {
    const sampled = id[0] !== 'coverage' && of !== null && of > 0;
    const share = sampled ? wilson({ positives: count, tested: of, confidence: 0.95 }) : null;
    figures.push({
      id,
      count,
      of,
      low: share?.lower ?? null,
      high: share?.upper ?? null,
      examinations: behind.map((row) => row.examination),
    });
  };
  const colonies = (some: readonly ExaminedRow[]) => distinct(some, (row) => row.colony);
  const apiaries = (some: readonly ExaminedRow[]) => distinct(some, (row) => row.apiary);
  const suspect = sorted.filter((row) => saysSuspect(row.result));
  const conditions = [...new Set(suspect.flatMap(suspectedIn))].sort();
  const colonyDepth = deepest(sorted, (row) => row.colony);
  const apiaryDepth = deepest(sorted, (row) => row.apiary);
  const known = [...new Set([...depths, ...sorted.map((row) => row.depth).sort()])];
  const seen = known.filter((depth) => sorted.some((row) => row.depth === depth));

  for (const depth of seen) {
    const here = sorted.filter((row) => row.depth === depth);
    const classed = sorted.filter((row) => colonyDepth.get(row.colony) === depth);
    const sites = sorted.filter((row) => apiaryDepth.get(row.apiary) === depth);
    add(['examinations', depth], here, here.length);
    add(['colonies', depth], classed, colonies(classed).size);
    add(['apiaries', depth], sites, apiaries(sites).size);
  }
  const opened = sorted.filter((row) => row.depth === 'full' || row.depth === 'part');
  add(['inspected'], opened, colonies(opened).size);

  for (const condition of conditions) {
    const all = suspect.filter((row) => suspectedIn(row).includes(condition));
    for (const basis of [...new Set(all.map((row) => row.basis ?? 'not known'))].sort()) {
      for (const depth of seen) {
        const some = all.filter((row) => (row.basis ?? 'not known') === basis && row.depth === depth);
        if (some.length > 0) add(['suspicions', condition, basis, depth], some, colonies(some).size);
      }
    }
    for (const depth of seen) {
      const classed = sorted.filter((row) => colonyDepth.get(row.colony) === depth);
      const ill = all.filter((row) => colonyDepth.get(row.colony) === depth);
      if (classed.length > 0) add(['prevalence', condition, depth], ill, colonies(ill).size, colonies(classed).size);
      const sites = sorted.filter((row) => apiaryDepth.get(row.apiary) === depth);
      const illSites = all.filter((row) => apiaryDepth.get(row.apiary) === depth);
      if (sites.length > 0) {
        add(['apiary prevalence', condition, depth], illSites, apiaries(illSites).size, apiaries(sites).size);
      }
    }
    const affected = apiaries(all);
    const within = sorted.filter((row) => affected.has(row.apiary) && colonyDepth.get(row.colony) === 'full');
    const illWithin = all.filter((row) => colonyDepth.get(row.colony) === 'full');
    if (within.length > 0) add(['within', condition], illWithin, colonies(illWithin).size, colonies(within).size);
    // A register that counts fewer than were found is wrong; then there is no share to give.
    const ill = colonies(all).size;
    add(['incidence', condition], all, ill, registered.colonies >= ill ? registered.colonies : null);
  }
  for (const find of [...new Set(sorted.flatMap((row) => row.finds))].sort()) {
    const some = sorted.filter((row) => row.finds.includes(find));
    add(['finds', find], some, colonies(some).size);
  }

  const keepers = new Set([...apiaries(opened)].flatMap((one) => registered.keeperOf.get(one) ?? []));
  for (const [what, count, of] of [
    ['keepers', keepers.size, registered.keepers],
    ['apiaries', apiaries(opened).size, registered.apiaries],
    ['colonies', colonies(opened).size, registered.colonies],
  ] as const) {
    add(['coverage', what], opened, count, of >= count ? of : null);
  }

  const visitsOf = (some: readonly ExaminedRow[]) => distinct(some, (row) => row.visit).size;
  for (const reason of [...new Set(sorted.map((row) => row.reason ?? 'not known'))].sort()) {
    const made = sorted.filter((row) => (row.reason ?? 'not known') === reason);
    const positive = suspect.filter((row) => (row.reason ?? 'not known') === reason);
    add(['yield', reason], positive, visitsOf(positive), visitsOf(made));
    add(['yield colonies', reason], positive, colonies(positive).size, colonies(made).size);
  }
  const first = firstStated(suspect);
  for (const by of ['an inspector', 'the keeper', 'a laboratory']) {
    const some = first.filter((row) => startedBy(row) === by);
    add(['found by', by], some, some.length, first.length);
  }
  for (const month of [...new Set(sorted.map((row) => row.on.slice(0, 7)))]) {
    const then = opened.filter((row) => row.on.startsWith(month));
    add(['month', 'opened', month], then, colonies(then).size);
    const ill = suspect.filter((row) => row.on.startsWith(month));
    add(['month', 'suspect', month], ill, colonies(ill).size);
  }
  return figures;
}

/** A suspicion that remains names no condition anew; it is counted under the word that no condition was named. */
function suspectedIn(row: ExaminedRow): readonly string[] {
  return row.suspected.length > 0 ? row.suspected : ['not named'];
}

function startedBy(row: ExaminedRow): string {
  if (row.depth === 'laboratory only') return 'a laboratory';
  return ledBy[row.reason ?? ''] ?? 'an inspector';
}

/** The first look that stated a suspicion, for each colony. */
function firstStated(suspect: readonly ExaminedRow[]): ExaminedRow[] {
  const first = new Map<string, ExaminedRow>();
  for (const row of suspect) if (!first.has(row.colony)) first.set(row.colony, row);
  return [...first.values()];
}

/** The deepest look at each thing; a depth of a newer version counts as the shallowest. */
function deepest(rows: readonly ExaminedRow[], keyOf: (row: ExaminedRow) => string): Map<string, string> {
  const rank = (depth: string) => {
    const place = (depths as readonly string[]).indexOf(depth);
    return place < 0 ? depths.length : place;
  };
  const found = new Map<string, string>();
  for (const row of rows) {
    const before = found.get(keyOf(row));
    if (before === undefined || rank(row.depth) < rank(before)) found.set(keyOf(row), row.depth);
  }
  return found;
}

function distinct(rows: readonly ExaminedRow[], keyOf: (row: ExaminedRow) => string): Set<string> {
  return new Set(rows.map(keyOf));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
