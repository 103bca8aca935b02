/**
 * The catalogue: what may be wrong with brood, and what an inspector may see of it.
 *
 * The signs and conditions are those of the trade's differential lists; how often each condition shows each sign stands
 * in `links.ts`, how a sign is drawn in `drawing.ts`.
 */

/** A disease or disorder of brood. Several may be present at once. Foulbrood is written as the trade writes it. */
export const diseases = [
  'american-foulbrood',
  'european-foulbrood',
  'chalkbrood',
  'sacbrood',
  'varroa-damage',
  'chilled-or-starved',
  'stonebrood',
  'queen-failure',
  'bald-brood',
  'half-moon',
] as const;
export type DiseaseId = (typeof diseases)[number];

/** The two stages of American foulbrood: they exclude one another. The other conditions are there or not. */
export const foulbroodStages = ['early', 'advanced'] as const;
export type FoulbroodStage = (typeof foulbroodStages)[number];

/** A column of the differential table: a colony with nothing wrong, or a condition (American foulbrood by stage). */
export const conditions = [
  'healthy',
  'american-foulbrood.early',
  'american-foulbrood.advanced',
  'european-foulbrood',
  'chalkbrood',
  'sacbrood',
  'varroa-damage',
  'chilled-or-starved',
  'stonebrood',
  'queen-failure',
  'bald-brood',
  'half-moon',
] as const;
export type ConditionId = (typeof conditions)[number];

/** Groups in the order in which signs meet the inspector. */
export const signGroups = [
  'outside-and-opening',
  'pattern',
  'cappings',
  'contents',
  'lower-wall',
  'hive-floor',
] as const;
export type SignGroup = (typeof signGroups)[number];

/**
 * What an inspector must have done before "not seen" can mean anything.
 * - `hive`: opened the hive (or looked at its floor and entrance)
 * - `comb face`: looked at the face of brood combs
 * - `open cells`: looked into open cells
 * - `capped cells`: opened capped cells, or looked into cells the bees had opened
 * - `lower wall`: looked along the lower cell wall, top bar toward the viewer, in good light
 */
export type SignPlace = 'hive' | 'comb face' | 'open cells' | 'capped cells' | 'lower wall';

/**
 * How much of a sign is recorded when it is seen.
 * - `cells`: by comb, 1-10, 11-100 or more than 100 cells
 * - `degree`: slight or marked
 * - `none`: seen or not
 */
export type SignMeasure = 'cells' | 'degree' | 'none';

/** The state of what stands on the stand. A dead hive and stored combs are searched for scale, not for brood signs. */
export type HiveState = 'living' | 'dead' | 'stored combs';

export interface Sign {
  readonly id: SignId;
  readonly group: SignGroup;
  readonly place: SignPlace;
  readonly measure: SignMeasure;
  /** True for what brood without disease shows; each condition takes its share away instead of adding to it. */
  readonly ofHealthyBrood: boolean;
  /** In which state of the hive the sign is asked for. */
  readonly askedIn: readonly HiveState[];
}

const living = ['living'] as const;
const always = ['living', 'dead', 'stored combs'] as const;
const housed = ['living', 'dead'] as const;

type Row = readonly [
  group: SignGroup,
  place: SignPlace,
  measure: SignMeasure,
  askedIn: readonly HiveState[],
  ofHealthyBrood?: true,
];

const rows = {
  'odour.glue': ['outside-and-opening', 'hive', 'degree', living],
  'odour.sour': ['outside-and-opening', 'hive', 'degree', living],
  'odour.any': ['outside-and-opening', 'hive', 'degree', living],
  few_adults: ['outside-and-opening', 'hive', 'degree', living],
  mites: ['outside-and-opening', 'hive', 'degree', living],
  'pattern.compact': ['pattern', 'comb face', 'none', living, true],
  'pattern.spotty': ['pattern', 'comb face', 'degree', living],
  'age.all_together': ['pattern', 'comb face', 'degree', living],
  'cap.sunken': ['cappings', 'comb face', 'cells', living],
  'cap.dark_greasy': ['cappings', 'comb face', 'cells', living],
  'cap.perforated': ['cappings', 'comb face', 'cells', living],
  'cap.flattened': ['cappings', 'comb face', 'cells', living],
  'cap.late_unemerged': ['cappings', 'comb face', 'cells', living],
  'cap.line_open': ['cappings', 'comb face', 'cells', living],
  'cap.domed': ['cappings', 'comb face', 'cells', living],
  'col.pearl': ['contents', 'open cells', 'none', living, true],
  'col.offwhite_yellow': ['contents', 'open cells', 'cells', living],
  'col.coffee': ['contents', 'capped cells', 'cells', living],
  'col.grey_black_shiny': ['contents', 'open cells', 'cells', living],
  'age.coiled': ['contents', 'open cells', 'cells', living],
  'age.twisted': ['contents', 'open cells', 'cells', living],
  'age.prepupa': ['contents', 'capped cells', 'cells', living],
  'age.pupa': ['contents', 'capped cells', 'cells', living],
  'post.head_up': ['contents', 'capped cells', 'cells', living],
  'post.melted': ['contents', 'capped cells', 'cells', living],
  'con.tracheae': ['contents', 'open cells', 'cells', living],
  'con.watery': ['contents', 'capped cells', 'cells', living],
  'con.ropy': ['contents', 'capped cells', 'cells', living],
  'con.sac': ['contents', 'capped cells', 'cells', living],
  'con.fluff': ['contents', 'capped cells', 'cells', living],
  'con.mummy_loose': ['contents', 'open cells', 'cells', always],
  'con.mummy_stone': ['contents', 'capped cells', 'cells', always],
  'con.dry_unfed': ['contents', 'open cells', 'cells', living],
  tongue: ['contents', 'capped cells', 'cells', always],
  'eggs.multi': ['contents', 'open cells', 'cells', living],
  moth: ['contents', 'comb face', 'degree', always],
  'scale.hard_lower': ['lower-wall', 'lower wall', 'cells', always],
  'scale.rubbery': ['lower-wall', 'lower wall', 'cells', always],
  'scale.mouth': ['lower-wall', 'open cells', 'cells', always],
  'scale.gondola': ['lower-wall', 'lower wall', 'cells', always],
  'floor.mummies': ['hive-floor', 'hive', 'degree', housed],
} as const satisfies Record<string, Row>;

/** The 41 signs by id, as the differential table names them. */
export type SignId = keyof typeof rows;

/** The 41 signs, in the order in which they meet the inspector. */
export const signs: readonly Sign[] = (Object.entries(rows) as [SignId, Row][]).map(
  ([id, [group, place, measure, askedIn, ofHealthyBrood]]) => ({
    id,
    group,
    place,
    measure,
    askedIn,
    ofHealthyBrood: ofHealthyBrood === true,
  }),
);

const byId = new Map<string, Sign>(signs.map((sign) => [sign.id, sign]));

/** True when the catalogue of this version knows the id; an id written by a newer version is unknown, not wrong. */
export function isSign(id: string): id is SignId {
  return byId.has(id);
}

/**
 * One sign.
 *
 * @throws RangeError when the catalogue has no such sign
 */
export function signOf(id: string): Sign {
  const sign = byId.get(id);
  if (!sign) throw new RangeError(`no sign "${id}" in the catalogue; known signs stand in signs/catalogue.ts`);
  return sign;
}

/** The signs of one group, in order. */
export function signsIn(group: SignGroup): Sign[] {
  return signs.filter((sign) => sign.group === group);
}

/** The disease a column of the table belongs to; null for the healthy colony. */
export function diseaseOf(condition: ConditionId): DiseaseId | null {
  if (condition === 'healthy') return null;
  if (condition === 'american-foulbrood.early' || condition === 'american-foulbrood.advanced')
    return 'american-foulbrood';
  return condition;
}
