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
