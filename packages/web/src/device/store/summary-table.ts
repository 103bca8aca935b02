import { aboutKey } from '@combside/record/store';
import {
  type FoldedType,
  groupFiltered,
  groupsOf,
  type Summary,
  type SummaryByType,
  type SummaryFilter,
} from '@combside/record/summary';

/**
 * All summaries in memory, by type and by group: tens of thousands of short rows, so that a list answers at once. The
 * database holds the same in packs and single rows; this is filled from there when it is opened.
 */
export class SummaryTable {
  readonly #byType = new Map<string, Map<string, Summary>>();
  readonly #groups = new Map<string, Set<string>>();

  get size(): number {
    let size = 0;
    for (const rows of this.#byType.values()) size += rows.size;
    return size;
  }

  put(row: Summary): void {
    const key = aboutKey(row.about);
    this.drop(row.about.type, key);
    let rows = this.#byType.get(row.about.type);
    if (rows === undefined) {
      rows = new Map();
      this.#byType.set(row.about.type, rows);
    }
    rows.set(key, row);
    for (const group of groupsOf(row)) {
      const members = this.#groups.get(group);
      if (members === undefined) this.#groups.set(group, new Set([key]));
      else members.add(key);
    }
  }

  drop(type: string, key: string): void {
    const before = this.#byType.get(type)?.get(key);
    if (before === undefined) return;
    for (const group of groupsOf(before)) this.#groups.get(group)?.delete(key);
    this.#byType.get(type)?.delete(key);
  }

  clear(): void {
    this.#byType.clear();
    this.#groups.clear();
  }

  ofType<T extends FoldedType>(type: T, where?: SummaryFilter): SummaryByType[T][] {
    const rows = this.#byType.get(type);
    if (rows === undefined) return [];
    if (where === undefined) return [...rows.values()] as SummaryByType[T][];
    const found: SummaryByType[T][] = [];
    for (const key of this.#groups.get(groupFiltered(type, where)) ?? []) {
      const row = rows.get(key);
      if (row !== undefined) found.push(row as SummaryByType[T]);
    }
    return found;
  }

  *all(): Generator<Summary> {
    for (const rows of this.#byType.values()) yield* rows.values();
  }
}
