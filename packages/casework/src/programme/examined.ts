/** One examination as figures count it. */
export interface ExaminedRow {
  readonly examination: string;
  readonly colony: string;
  readonly apiary: string;
  readonly visit: string;
  /** Day of the look, YYYY-MM-DD. */
  readonly on: string;
  /** `full`, `part`, `tops`, `outside`, `laboratory only`, or a word of a newer version. */
  readonly depth: string;
  /** Why the visit was made; null while its entry has not arrived. */
  readonly reason: string | null;
  /** The word last stated about it; null where none was. */
  readonly result: string | null;
  readonly suspected: readonly string[];
  readonly basis: string | null;
  /** Beetle, mites and the like that were seen. */
  readonly finds: readonly string[];
}

/** What the register holds on the day of counting. */
export interface Registered {
  readonly keepers: number;
  readonly apiaries: number;
  readonly colonies: number;
  /** Keeper of each apiary that was inspected, where one is known. */
  readonly keeperOf: ReadonlyMap<string, string>;
}
