import type { ConditionId } from '@combside/science/signs/catalogue';

/**
 * What is really so in the invented district, by colony and time. The record knows only what inspectors saw; tests ask
 * both. Dates are days before the demo's own today.
 */
export interface TrueCondition {
  readonly colony: string;
  readonly condition: Exclude<ConditionId, 'healthy'>;
  /** Days before today on which it began, and on which it ended (0: it goes on). */
  readonly began: number;
  readonly ended: number;
}

/** A colony that is dead, or combs that stand stored, from a day on. */
export interface TrueHiveState {
  readonly colony: string;
  readonly state: 'dead' | 'stored combs';
  readonly since: number;
}

/** How American foulbrood really travelled, oldest first. */
export interface TrueSpread {
  readonly from: string;
  readonly to: string;
  readonly by: 'moved colony' | 'sold nuclei' | 'robbing';
  readonly day: number;
}

export interface Truth {
  readonly conditions: readonly TrueCondition[];
  readonly hiveStates: readonly TrueHiveState[];
  /** Apiaries of the smouldering outbreak, in the order in which they were reached. */
  readonly outbreak: readonly string[];
  readonly spread: readonly TrueSpread[];
  /** The apiary where a suspicion was stated and no foulbrood was. */
  readonly wrongLead: string;
  /** Apiaries whose brood looks like foulbrood and is not, with what it is. */
  readonly lookAlikes: readonly { readonly apiary: string; readonly condition: Exclude<ConditionId, 'healthy'> }[];
  /** The six colonies of the main journey, by label. */
  readonly journey: {
    readonly apiary: string;
    readonly colonies: Readonly<Record<string, string>>;
    readonly suspect: string;
    readonly dead: string;
  };
}

/** What is really wrong with a colony on a day. */
export function trueConditions(truth: Truth, colony: string, day: number): TrueCondition['condition'][] {
  return truth.conditions
    .filter((one) => one.colony === colony && one.began >= day && one.ended <= day)
    .map((one) => one.condition);
}
