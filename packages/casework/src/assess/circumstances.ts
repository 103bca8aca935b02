import { dayOf, daysBetween } from '@combside/calendar/instant';
import type { CircumstancesKnown } from '@combside/record/kinds/assessment';
import type { MovementBody } from '@combside/record/kinds/movement';
import type { ApiarySummary, ColonySummary, MovementSummary } from '@combside/record/summary';
import type { DiseaseId } from '@combside/science/signs/catalogue';
import type { ExaminationDraft } from '../draft/examination-draft.ts';
import { saysSuspect } from '../result/results-by-gravity.ts';

/** The short rows this device or the office holds: lists, never the log. */
export interface KnownRows {
  readonly colonies: readonly ColonySummary[];
  readonly apiaries: readonly ApiarySummary[];
  readonly movements: readonly MovementSummary[];
}

/** Fewer colonies looked at in a season than this are no count: half a case among five would say 8 %. A setting of ours. */
export const leastForACount = 30;

/**
 * For how many days before a suspicion was stated a movement from or to that apiary counts as contact. A setting; common
 * practice, no source. What the comb says of the time since onset may lengthen it, never shorten it.
 */
export const contactWindowDays = 730;

const bearsDisease: ReadonlySet<string> = new Set<MovementBody['what']>([
  'colonies',
  'nuclei',
  'swarms',
  'package bees',
  'combs',
  'empty hives',
  'equipment',
]);

const disease: DiseaseId = 'american-foulbrood';

/**
 * What is known before a hive is opened, from the short rows of the record. A case here is a suspicion that stands,
 * confirmed or not: the record holds no laboratory answers yet, and each line says so. Honey and bees are therefore
 * "not known" until the inspector says. Only notifiable conditions are counted: others are seen without being stated.
 *
 * The colony itself is left out of every count: what was seen in it before enters by its own earlier looks.
 *
 * @param observedAt the look; what was examined after it does not count
 */
export function circumstancesFrom(
  of: {
    readonly colony: string;
    readonly apiary: string;
    readonly observedAt: string;
    readonly notifiable: readonly DiseaseId[];
  },
  rows: KnownRows,
): CircumstancesKnown {
  const site = rows.apiaries.find((one) => one.about.id === of.apiary);
  const districtOf = new Map(rows.apiaries.map((one) => [one.about.id, one.district]));
  const keeperOf = new Map(rows.apiaries.map((one) => [one.about.id, one.keeper]));
  const others = rows.colonies.filter(
    (one) => one.about.id !== of.colony && one.lastExaminedAt !== null && one.lastExaminedAt < of.observedAt,
  );
  const cases = others.filter((one) => isCase(one, disease));
  const atApiary = cases.some((one) => one.apiary === of.apiary);
  const keeper = site?.keeper ?? null;
  const atOperation =
    keeper !== null && cases.some((one) => one.apiary !== null && keeperOf.get(one.apiary) === keeper);
  return {
    district: site?.district
      ? countsOf(
          others.filter((one) => one.apiary !== null && districtOf.get(one.apiary) === site.district),
          of,
        )
      : [],
    earlierCaseAtApiary: atApiary,
    contactOfCase: touches(of, cases, rows.movements),
    honeyPositive: null,
    exposure: atApiary ? 'apiary affected' : atOperation ? 'operation affected' : 'not known',
  };
}

/** Nothing known: what the reasoning takes when nobody could look it up. */
export const nothingLookedUp: CircumstancesKnown = {
  district: [],
  earlierCaseAtApiary: null,
  contactOfCase: null,
  honeyPositive: null,
  exposure: 'not known',
};

/**
 * What is known with what the inspector was told at the hive: an answer of the laboratory on honey or bees of this
 * operation. Spores found there mean that they must be expected in the colony too.
 */
export function withWhatWasSaid(
  known: CircumstancesKnown | null,
  draft: Pick<ExaminationDraft, 'honeyPositive'>,
): CircumstancesKnown | null {
  if (draft.honeyPositive === null) return known;
  const before = known ?? nothingLookedUp;
  return {
    ...before,
    honeyPositive: draft.honeyPositive,
    exposure: draft.honeyPositive && before.exposure === 'not known' ? 'operation affected' : before.exposure,
  };
}

function isCase(colony: ColonySummary, condition: string): boolean {
  return saysSuspect(colony.lastResult) && colony.suspected.includes(condition);
}

/**
 * By season, which is the calendar year: this one and the one before, each only when enough was looked at. A colony counts
 * once, in the year of its newest look, since that is what its short row tells.
 */
function countsOf(
  colonies: readonly ColonySummary[],
  of: { readonly observedAt: string; readonly notifiable: readonly DiseaseId[] },
): CircumstancesKnown['district'] {
  const thisYear = Number(of.observedAt.slice(0, 4));
  return [thisYear, thisYear - 1].flatMap((year) => {
    const looked = colonies.filter(
      (one) => one.lastExaminedAt?.startsWith(`${year}-`) && one.lastClaim !== null && one.lastClaim !== 'not judged',
    );
    if (looked.length < leastForACount) return [];
    return of.notifiable.map((condition) => ({
      condition,
      confirmed: looked.filter((one) => isCase(one, condition)).length,
      examined: looked.length,
      about: String(year),
    }));
  });
}

/** Whether something that can carry disease went between this apiary and one where a suspicion stands. */
function touches(
  of: { readonly apiary: string; readonly observedAt: string },
  cases: readonly ColonySummary[],
  movements: readonly MovementSummary[],
): boolean {
  const statedAt = new Map<string, string>();
  for (const one of cases) {
    if (one.apiary === null || one.apiary === of.apiary || one.lastExaminedAt === null) continue;
    const before = statedAt.get(one.apiary);
    if (before === undefined || one.lastExaminedAt < before) statedAt.set(one.apiary, one.lastExaminedAt);
  }
  if (statedAt.size === 0) return false;
  return movements.some((one) => {
    if (one.happened === false || one.latest === null || one.what === null || !bearsDisease.has(one.what)) return false;
    if (one.latest > dayOf(of.observedAt)) return false;
    const other = one.from === of.apiary ? one.to : one.to === of.apiary ? one.from : null;
    const since = other === null ? undefined : statedAt.get(other);
    return since !== undefined && daysBetween(one.latest, since) <= contactWindowDays;
  });
}
