import type { ApiaryBody } from '@combside/record/kinds/apiary';
import type { KeeperBody } from '@combside/record/kinds/keeper';

/** One record of the register as it stands, small enough to hold a whole district of them. */
export interface StandingRow<Body> {
  readonly id: string;
  /** Entries whose values stand there; more than one while they contest each other. */
  readonly standing: readonly string[];
  /** The record of which this one is read as part, or null. */
  readonly mergedInto: string | null;
  /** Records that were looked at and found to be different ones. */
  readonly notTheSame: readonly string[];
  readonly body: Body;
}

export type KeeperStanding = StandingRow<KeeperBody>;
export type ApiaryStanding = StandingRow<ApiaryBody>;

/** The register of a district, or of several. */
export interface RegisterRowsHeld {
  readonly keepers: readonly KeeperStanding[];
  readonly apiaries: readonly ApiaryStanding[];
}
