import { cellDates } from '../brood/cell-dates.ts';
import { cellsFromCount, cellsPerArea } from '../brood/cells-per-area.ts';
import { broodBalance, eggsPerDay } from '../brood/development-calendar.ts';
import { releaseThisSeason } from '../brood/release-this-season.ts';
import { beesOnCombs, broodCells } from '../brood/strength.ts';
import { earliestSigns } from '../diagnosis/earliest-sign.ts';
import { type Calculation, calculation, shown as n } from './calculation.ts';

const room = 'colony';
const error = 'relative error of judging by eye, 0 to 1';

const day = 'calendar day, YYYY-MM-DD';
const span = ({ earliest, latest }: { earliest: string; latest: string }) => `${earliest} to ${latest}`;

/** Every calculation on the strength and the calendar of a colony, by name. */
export const ofColony: Readonly<Record<string, Calculation>> = {
  beesOnCombs: calculation({
    room,
    line: 'bees from comb sides covered',
    inputs: {
      sides: 'list of {squareCentimetres, covered (share 0 to 1)}, one per side of a comb',
      beesPerSquareDecimetre: 'bees on 1 dm² of a side fully covered, above 0',
      errorByEye: error,
    },
    formula: 'sum(area * covered) * bees per area',
    sources: ['BB-STR-4.2', 'IMD'],
    call: beesOnCombs,
    steps: (i, r) => [
      `${i.sides.length} sides, ${n(r.coveredSquareDecimetres)} dm² covered, times ${n(i.beesPerSquareDecimetre)}`,
      `${n(r.bees.value)} bees (${n(r.bees.low)} to ${n(r.bees.high)})`,
    ],
  }),
  broodCells: calculation({
    room,
    line: 'eggs, larvae and capped cells from comb area',
    inputs: {
      sides: 'list of {squareCentimetres, eggs, larvae, capped (shares 0 to 1)}',
      cellsPerSquareCentimetre: 'cells on 1 cm² of a side, above 0',
      errorByEye: error,
    },
    formula: 'sum(area * share) * cells per area, per stage',
    sources: ['BB-STR-4.2'],
    call: broodCells,
    steps: (_, r) => [
      `eggs ${n(r.eggs.value)}, larvae ${n(r.larvae.value)}, capped ${n(r.capped.value)}`,
      `together ${n(r.all.value)} (${n(r.all.low)} to ${n(r.all.high)})`,
    ],
  }),
  cellsPerArea: calculation({
    room,
    line: 'cells per area from the width of a cell',
    inputs: { widthMillimetres: 'flat to flat, above 0' },
    formula: '1/(sqrt(3)/2 d^2)',
    sources: ['CELLRACE'],
    call: cellsPerArea,
    steps: (i, r) => [
      `${n(i.widthMillimetres)} mm: ${n(r.perSquareCentimetreSide)} per cm² of one side, ${n(r.perSquareDecimetreBothSides)} per dm² of both`,
    ],
  }),
  cellsFromCount: calculation({
    room,
    line: 'cells on both sides per dm² from a count along ten centimetres',
    inputs: { cellsInTenCentimetres: 'above 0' },
    formula: '4/sqrt(3) n^2',
    sources: ['BETTS38'],
    call: cellsFromCount,
    steps: (i, r) => [`2.309 * ${n(i.cellsInTenCentimetres)}^2 = ${n(r.perSquareDecimetreBothSides)}`],
  }),
  eggsPerDay: calculation({
    room,
    line: 'eggs laid a day, from capped worker cells with steady laying',
    inputs: { cappedCells: 'capped worker cells, 0 or more' },
    formula: 'capped / 12',
    sources: ['DEV-CASTE'],
    call: (i: { cappedCells: number }) => ({ eggsPerDay: eggsPerDay(i.cappedCells) }),
    steps: (i, r) => [`${n(i.cappedCells)} / 12 = ${n(r.eggsPerDay)}`],
  }),
  broodBalance: calculation({
    room,
    line: 'eggs : larvae : capped against 1 : 2 : 4 of steady laying',
    inputs: { egg: 'cells with eggs, 0 or more', larva: 'cells with open larvae', capped: 'capped cells' },
    formula: 'each step within 25 % of twofold is steady',
    sources: ['RATIO'],
    call: (i: { egg: number; larva: number; capped: number }) => ({ balance: broodBalance(i) }),
    steps: (i, r) => [`${n(i.egg)} : ${n(i.larva)} : ${n(i.capped)} is ${r.balance} (a suggestion, not a finding)`],
  }),
  cellDates: calculation({
    room,
    line: 'when a cell was laid, is capped and emerges, from the stage seen in it',
    inputs: {
      caste: '"worker", "drone" or "queen"',
      stage:
        '"egg", "open larva" or "capped"; in worker cells also "coiled larva", "stretched larva", "prepupa", "pupa"',
      seenOn: day,
    },
    formula: 'laid = seen - age of the stage; each event = laid + its day; outward to whole days',
    sources: ['DEV-CASTE', 'NZ-DEV'],
    call: cellDates,
    steps: (i, r) => [
      `${i.stage} in a ${i.caste} cell on ${i.seenOn}: laid ${span(r.laid)}`,
      `hatches ${span(r.hatches)}, capped ${span(r.capped)}, emerges ${span(r.emerges)}`,
    ],
  }),
  earliestSigns: calculation({
    room,
    line: 'earliest signs of American foulbrood after an exposure; never a last day',
    inputs: { exposedOn: day },
    formula: 'dead brood + 5 to 8 days; scale + 35 to 42; first remains rope until + 19 to 36',
    sources: ['GEN05', 'BOOKLET', 'MAAREC-SCALE', 'NSW-209'],
    call: earliestSigns,
    steps: (i, r) => [
      `exposed on ${i.exposedOn}: first dead brood ${span(r.deadBrood)}`,
      `larvae infected that day all dead ${span(r.firstLarvaeAllDead)}, remains rope until ${span(r.firstRemainsRopeUntil)}`,
      `first complete scale ${span(r.scale)}; no upper end`,
    ],
  }),
  releaseThisSeason: calculation({
    room,
    line: "whether the looks the law asks for fall into this season's brood",
    inputs: {
      countedFrom: `${day}, from which the law counts`,
      firstLookAfterDays: 'whole, by the law',
      looks: 'looks without signs the law asks for, whole, 1 to 20',
      daysBetweenLooks: 'whole, by the law',
      lastEggsOn: `${day}, or null (no published figure: state it from the colony at hand)`,
      firstEggsOn: `${day} of next season, or null`,
    },
    formula: 'last open brood = last eggs + 9, last capped + 21; a look without brood waits for first eggs + 9',
    sources: ['NZ-DEV'],
    call: releaseThisSeason,
    steps: (_, r) => [
      `last open brood ${r.lastOpenBrood ?? 'not known'}, last capped ${r.lastCappedBrood ?? 'not known'}`,
      ...r.looks.map((look, k) => `look ${k + 1}: ${look.earliest ?? 'waits for brood'}, ${look.brood}`),
      `not before ${r.notBefore ?? 'brood returns'}; the authority releases, not the calendar`,
    ],
  }),
};
