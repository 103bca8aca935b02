import type { Pack } from '@combside/law/pack';
import type { Hasher } from '@combside/record/ports';
import type { assessLook } from '@combside/science/diagnosis/assess';
import type { Chance } from '@combside/science/random/seeded';
import type { Ledger } from './ledger.ts';

export interface DemoInput {
  /** The date that counts as today: history runs two years back from it. */
  readonly today: string;
  readonly seed: number;
  readonly pack: Pack;
  readonly hasher: Hasher;
  /** How evidence is weighed; whoever plays more than once may share one `weighingOnce`. */
  readonly weigh?: typeof assessLook;
}

/** What the parts of the demonstration share. */
export interface World extends Required<DemoInput> {
  readonly chance: Chance;
  readonly ledger: Ledger;
  /** Milliseconds of a clock time so many days before today. */
  at(daysAgo: number, hours: number, minutes?: number): number;
}

/** How many there are of each; the size of a small district. */
export const demoSizes = { keepers: 40, apiaries: 60, colonies: 400 } as const;
