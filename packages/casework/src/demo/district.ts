import { dayMilliseconds } from '@combside/calendar/day';
import { dayOf, millisecondsOf } from '@combside/calendar/instant';
import { assessLook } from '@combside/science/diagnosis/assess';
import { seeded } from '@combside/science/random/seeded';
import { hideTruth } from './hidden-truth.ts';
import { playHistory } from './history.ts';
import { type Ledger, newLedger, type Sown } from './ledger.ts';
import { planToday } from './plan-today.ts';
import { type DemoRegister, enterRegister } from './register.ts';
import type { Truth } from './truth.ts';
import type { DemoInput, World } from './world.ts';

/** The invented district, ready to be sealed, and what is really so in it. */
export interface DemoDistrict {
  /** In the order of their clocks. */
  readonly sown: readonly Sown[];
  readonly truth: Truth;
  /** Visits planned for today for the inspector of the day; the first is the main journey. */
  readonly planned: readonly string[];
  /** The ledger in which it was played: its states are what the record will say. */
  readonly ledger: Ledger;
}

/**
 * Plays two years in the invented district by the acts of casework themselves: register, planned visits, examinations
 * drawn from the hidden truth, clean-downs, results handed over. One outbreak smoulders, other brood troubles look like
 * it, one suspicion was a wrong lead. The same seed, date and pack give the same district.
 */
export async function demoDistrictFrom(input: DemoInput): Promise<DemoDistrict> {
  const midnight = millisecondsOf(dayOf(input.today));
  const ledger = newLedger(seeded(input.seed + 1));
  const world: World = {
    ...input,
    chance: seeded(input.seed),
    ledger,
    at: (daysAgo, hours, minutes = 0) => midnight - daysAgo * dayMilliseconds + hours * 3_600_000 + minutes * 60_000,
    weigh: input.weigh ?? weighingOnce(),
  };
  const register: DemoRegister = enterRegister(world);
  const truth = hideTruth(world, register);
  await playHistory(world, register, truth);
  const planned = planToday(world, register, truth);
  // The office answers some visits a day later, while other visits went on: the order of clocks is the order to seal in.
  const sown = ledger.sown.map((one, index) => ({ one, index }));
  sown.sort((a, b) => a.one.at - b.one.at || a.index - b.index);
  return { sown: sown.map(({ one }) => one), truth, planned, ledger };
}

/** Weighs equal evidence once: thousands of looks without a sign come down to some dozens of different ones. */
export function weighingOnce(): typeof assessLook {
  const answers = new Map<string, ReturnType<typeof assessLook>>();
  return (evidence, settings) => {
    const key = JSON.stringify([evidence, settings]);
    const known = answers.get(key);
    if (known) return known;
    const answer = assessLook(evidence, settings);
    answers.set(key, answer);
    return answer;
  };
}
