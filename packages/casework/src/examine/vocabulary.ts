import { figureOf, type TestId, testIds } from '@combside/science/diagnosis/test-figures';
import type { SourceId } from '@combside/sources/bibliography';
import type { SourcedValue } from '@combside/sources/sourced-value';

/** A frame as the trade knows it. Areas are of one comb side, in square centimetres, inside the wood. */
export interface HiveType {
  readonly id: string;
  /** Brood frames a box of this type usually holds; a hint when a colony is new, never a fact about one. */
  readonly usualFrames: number;
  /** Outside size of the frame, millimetres; null where no source was seen. */
  readonly frameMillimetres: {
    readonly width: number;
    readonly height: number;
    readonly sources: readonly SourceId[];
  } | null;
  readonly combSideArea: SourcedValue | null;
}

const area = (
  value: number,
  standing: SourcedValue['standing'],
  sources: readonly SourceId[],
  doubts?: string,
): SourcedValue => ({ value, unit: 'cm2', standing, sources, ...(doubts ? { doubts } : {}) });

/**
 * Hive types and their brood frames. Frame lists vary by maker: an inspector may enter inside width and height instead.
 * The usual number of frames is common practice, no source, except where a source counts a hive by it.
 */
export const hiveTypes: readonly HiveType[] = [
  {
    id: 'langstroth-deep',
    usualFrames: 10,
    frameMillimetres: { width: 483, height: 232, sources: ['FRM-LS'] },
    combSideArea: area(871, 'published', ['GRADE'], 'ten frames hold 2,700 square inches on both sides'),
  },
  {
    id: 'langstroth-medium',
    usualFrames: 10,
    frameMillimetres: { width: 483, height: 159, sources: ['FRM-LS'] },
    combSideArea: null,
  },
  {
    id: 'langstroth-shallow',
    usualFrames: 10,
    frameMillimetres: { width: 483, height: 137, sources: ['FRM-LS'] },
    combSideArea: null,
  },
  {
    id: 'national-brood',
    usualFrames: 11,
    frameMillimetres: { width: 356, height: 216, sources: ['FRM-UK'] },
    combSideArea: area(625, 'arithmetic', ['BBKA-CELL'], '5,000 cells a frame at 8 cells per cm2 on both sides'),
  },
  {
    id: 'national-14x12',
    usualFrames: 11,
    frameMillimetres: { width: 356, height: 305, sources: ['FRM-UK'] },
    combSideArea: area(910, 'arithmetic', ['BBKA-CELL'], '7,300 cells a frame at 8 cells per cm2 on both sides'),
  },
  {
    id: 'commercial',
    usualFrames: 11,
    frameMillimetres: null,
    combSideArea: area(800, 'arithmetic', ['BBKA-CELL'], '6,420 cells a frame at 8 cells per cm2 on both sides'),
  },
  {
    id: 'dadant-british-list',
    usualFrames: 11,
    frameMillimetres: null,
    combSideArea: area(966, 'arithmetic', ['BBKA-CELL'], '7,730 cells a frame at 8 cells per cm2 on both sides'),
  },
  { id: 'dadant-blatt', usualFrames: 12, frameMillimetres: null, combSideArea: area(1130, 'from memory', []) },
  { id: 'zander', usualFrames: 10, frameMillimetres: null, combSideArea: area(840, 'from memory', []) },
  { id: 'deutsch-normal', usualFrames: 10, frameMillimetres: null, combSideArea: area(800, 'from memory', []) },
  { id: 'other', usualFrames: 10, frameMillimetres: null, combSideArea: null },
];

/** @returns the hive type of this id, or null when this program does not know it (written by a newer version) */
export function hiveType(id: string): HiveType | null {
  return hiveTypes.find((one) => one.id === id) ?? null;
}

/** Why a visit is made. Common practice, no source. */
export const visitReasons = [
  'routine',
  'suspicion reported',
  'contact',
  'zone',
  'look again',
  'sale or migration',
  'request',
  'unregistered site',
] as const;
export type VisitReason = (typeof visitReasons)[number];

/** By what right the inspector stands at the hives; the local law says which exist. */
export const powers = ['consent', 'power of entry', 'order', 'owner not found'] as const;
export type Power = (typeof powers)[number];

/** Who may be present. */
export const roles = [
  'keeper',
  'deputy of the keeper',
  'inspector',
  'veterinarian',
  'land owner',
  'witness',
  'police',
] as const;
export type Role = (typeof roles)[number];

/** Found at the same opening, recorded with or without a suspicion. Some start duties of a pack, none has a posterior. */
export const finds = [
  'small-hive-beetle',
  'small-hive-beetle-larvae',
  'tropilaelaps',
  'varroa',
  'wax-moth',
  'bee-louse',
  'asian-hornet',
] as const;
export type Find = (typeof finds)[number];

/** What may be measured at a hive, each in one unit. */
export const measurements = {
  'sealed brood': { unit: 'comb sides', low: 0, high: 60 },
  'open brood': { unit: 'comb sides', low: 0, high: 60 },
  eggs: { unit: 'comb sides', low: 0, high: 60 },
  bees: { unit: 'comb sides', low: 0, high: 120 },
  'spaces between combs occupied': { unit: 'spaces', low: 0, high: 60 },
  'mites on a sample': { unit: 'mites per 100 bees', low: 0, high: 200 },
  'mites fallen': { unit: 'mites a day', low: 0, high: 2000 },
  'hive weight': { unit: 'kg', low: 0, high: 250 },
  'inside width of the frame': { unit: 'mm', low: 50, high: 700 },
  'inside height of the frame': { unit: 'mm', low: 50, high: 500 },
} as const;
export type Measurement = keyof typeof measurements;

/** How deep a look was, from the most to the least. */
export const depths = ['full', 'part', 'tops', 'outside', 'laboratory only'] as const;
export type Depth = (typeof depths)[number];

/** The word on a result. Never "healthy", never "clear": a look cannot show it. */
export const resultWords = [
  'nothing seen with this look',
  'signs seen',
  'suspect',
  'remains suspect',
  'masked, no conclusion',
  'too little brood to judge',
  'not judged',
] as const;
export type ResultWord = (typeof resultWords)[number];

/** The tests that are read at the hive itself; the laboratory's come back as entries of the laboratory. */
export const testsAtTheHive: readonly TestId[] = testIds.filter((id) => figureOf(id).place === 'hive');
