import type { SourcedValue } from '@combside/sources/sourced-value';
import { combsWereSeen, type Look } from './look.ts';
import { lowerWallShareByHold } from './what-the-hold-shows.ts';

/**
 * What a look can show: frames seen of frames held, cells opened of cells suspicious, and the eye. The combinatorics are
 * exact; the eye is an expert band, since no source gives the chance that an inspector notices a diseased cell.
 */

const share = (low: number, high: number, about: Partial<SourcedValue> = {}): SourcedValue => ({
  value: 1 / (1 + Math.sqrt(((1 - low) / low) * ((1 - high) / high))),
  low,
  high,
  unit: 'probability',
  standing: 'expert band',
  sources: [],
  ...about,
});

/** The eye, band by band. The point value lies in the middle on the log-odds scale. */
export const eyeBands = {
  /** One diseased cell on a shaken comb in good light is noticed. */
  cell: share(0.15, 0.6, {
    sources: ['BB-AFB-4.3.1', 'HOR-HON', 'JER13'],
    doubts:
      'The sources say only that fewer than 10 cells on a frame may pass a cursory look, that 18 of 52 beekeepers had disease they did not know of, and that an epidemic could be modelled only with undetected hives.',
  }),
  /** What is left of it when the bees stay on. */
  beesLeftOn: share(0.1, 0.4, {
    sources: ['NZ-SHAKE'],
    doubts: 'The source says that the chance drops greatly with fewer than 50 cells; by how much is ours.',
  }),
  /** What is left of it when nobody said whether bees were shaken off. */
  shakingNotSaid: share(0.3, 0.9),
  poorLight: share(0.4, 0.9),
  shade: share(0.7, 0.98),
  /** Scale has the colour of old comb, so light matters more. */
  poorLightOnScale: share(0.05, 0.3, { sources: ['QLD-SIGN'], doubts: 'The source says good light is needed.' }),
  shadeOnScale: share(0.3, 0.8, { sources: ['QLD-SIGN'] }),
  lightNotSaid: share(0.7, 0.98),
  lightNotSaidOnScale: share(0.3, 0.9),
  /** Face straight to the viewer: the geometry hides the lower wall, a moving hand shows a little of it. */
  heldFlat: share(0.02, 0.2),
  holdNotSaid: share(0.1, 0.7),
  /** Remains that bees have uncapped, so that they are seen without opening a cell. */
  uncappedByBees: share(0.15, 0.5, { sources: ['BOOKLET', 'FACT-US'] }),
  /** An opened diseased cell is recognised. */
  openedCell: share(0.7, 0.98),
  /** One rope test on moist brown remains threads, where the disease ropes at all. */
  ropeInOneCell: share(0.4, 0.85, { sources: ['NZ-ROPE'] }),
  /** A smell that is there is noticed. */
  nose: share(0.1, 0.4, { sources: ['OSU', 'OWIKI'] }),
  /** Mites, few bees or mummies on the floor are noticed with the hive open. */
  openHive: share(0.6, 0.95),
  /** Mummies before the entrance are noticed from outside. */
  outside: share(0.1, 0.4),
  /** The look as a whole fails, however much there is: tired, hurried, called away. */
  lapse: share(0.005, 0.05),
  /** Frames seen of frames held, when only "part" was said. */
  partNotSaid: share(0.2, 0.6),
} as const satisfies Record<string, SourcedValue>;

/** One value for each band of the eye. */
export type Eye = Readonly<Record<keyof typeof eyeBands, number>>;

/** The eye at its point values. */
export const pointEye: Eye = Object.fromEntries(
  Object.entries(eyeBands).map(([name, value]) => [name, value.value]),
) as unknown as Eye;

/** The place where a thing must be looked for; see the catalogue of signs. */
export type Place = 'hive' | 'comb face' | 'open cells' | 'capped cells' | 'lower wall';

/**
 * Chance that none of `marked` things is among `drawn` taken at random from `all`: C(all - marked, drawn) / C(all, drawn).
 *
 * @throws RangeError unless all three are whole numbers with marked <= all and drawn <= all
 */
export function chanceNoneDrawn(all: number, marked: number, drawn: number): number {
  for (const n of [all, marked, drawn]) {
    if (!Number.isInteger(n) || n < 0) throw new RangeError(`${n} is not a whole number from 0`);
  }
  if (marked > all || drawn > all) {
    throw new RangeError(`cannot mark ${marked} or draw ${drawn} of only ${all}`);
  }
  if (marked + drawn > all) return 0;
  const [few, many] = marked < drawn ? [marked, drawn] : [drawn, marked];
  let chance = 1;
  for (let i = 0; i < few; i++) chance *= (all - many - i) / (all - i);
  return chance;
}

/** C(all, chosen) as a floating number; all is at most some dozens of frames. */
function ways(all: number, chosen: number): number {
  if (chosen < 0 || chosen > all) return 0;
  let product = 1;
  for (let i = 1; i <= chosen; i++) product *= (all - chosen + i) / i;
  return product;
}

/**
 * Chance that at least one diseased frame is among those looked at.
 *
 * @param held brood frames in the hive
 * @param diseased frames with the disease
 * @param seen frames looked at
 * @throws RangeError unless all are whole numbers, diseased and seen at most held
 */
export function chanceFrameSeen(held: number, diseased: number, seen: number): number {
  return 1 - chanceNoneDrawn(held, diseased, seen);
}

/**
 * Upper bound of the share diseased when none of n randomly opened cells was: the exact 1 - (1 - confidence)^(1/n).
 * The rule of three, 3 / n, is its approximation at 95 %.
 *
 * @param opened cells opened, a whole number from 1
 * @param confidence in (0, 1), 0.95 unless told
 * @throws RangeError when an argument is out of range
 */
export function upperShareWhenNone(opened: number, confidence = 0.95): number {
  if (!Number.isInteger(opened) || opened < 1)
    throw new RangeError(`${opened} cells opened: give a whole number from 1`);
  if (!(confidence > 0 && confidence < 1)) throw new RangeError(`confidence ${confidence} must lie in (0, 1)`);
  return 1 - (1 - confidence) ** (1 / opened);
}

/**
 * On how many brood frames a number of diseased cells lies: our assumption, no source (1 cell on 1 frame, 5 on 2, 50 on
 * 5, 500 on every frame of a ten-frame box).
 */
export function framesWith(cells: number, held: number): number {
  return Math.min(held, Math.max(1, Math.ceil(cells ** 0.4)));
}

/** The share of the brood frames that was looked at, and the frames themselves where they were counted. */
export function framesLookedAt(look: Look, eye: Eye): { share: number; held: number | null; seen: number | null } {
  if (!combsWereSeen(look)) return { share: 0, held: look.framesHeld, seen: 0 };
  const { framesHeld, framesSeen } = look;
  if (framesHeld !== null && framesSeen !== null && framesHeld > 0) {
    return { share: framesSeen / framesHeld, held: framesHeld, seen: framesSeen };
  }
  return { share: look.depth === 'full' ? 1 : eye.partNotSaid, held: null, seen: null };
}

function ofBees(look: Look, eye: Eye): number {
  if (look.beesShaken === null) return eye.shakingNotSaid;
  return look.beesShaken ? 1 : eye.beesLeftOn;
}

function ofLight(look: Look, eye: Eye, onScale: boolean): number {
  switch (look.light) {
    case 'sun over the shoulder':
    case 'torch':
      return 1;
    case 'shade':
      return onScale ? eye.shadeOnScale : eye.shade;
    case 'poor':
      return onScale ? eye.poorLightOnScale : eye.poorLight;
    default:
      return onScale ? eye.lightNotSaidOnScale : eye.lightNotSaid;
  }
}

function shareOpened(look: Look): number {
  const opened = look.cellsOpened ?? 0;
  if (opened === 0) return 0;
  if (look.cellsSuspicious !== null && look.cellsSuspicious > 0) return Math.min(1, opened / look.cellsSuspicious);
  // How many there were to open was not said: opened cells were chosen for their looks, the first ones count most.
  return opened / (opened + 10);
}

/**
 * Chance that one diseased cell on a comb that was lifted out is noticed.
 *
 * @param place where the trouble shows
 */
export function noticeChance(place: Place, look: Look, eye: Eye): number {
  if (place === 'hive' || !combsWereSeen(look)) return 0;
  const side = look.sides === 'one' ? 0.5 : 1;
  const face = eye.cell * ofBees(look, eye) * side;
  switch (place) {
    case 'comb face':
    case 'open cells':
      return face * ofLight(look, eye, false);
    case 'lower wall':
      return face * ofLight(look, eye, true) * lowerWallShareByHold(look.hold, eye);
    case 'capped cells':
      return (
        1 -
        (1 - face * ofLight(look, eye, false) * eye.uncappedByBees) * (1 - shareOpened(look) * eye.openedCell * side)
      );
  }
}

/**
 * How far the sealed brood limits what can be sick and sealed: 1 from four sealed comb sides up, 0 with none. Four sides
 * is our setting; nothing stated counts as enough, and the assessment says that it was not stated.
 */
export function sealedBroodShare(look: Look): number {
  return look.sealedBroodCombSides === null ? 1 : Math.min(1, look.sealedBroodCombSides / 4);
}

/**
 * Chance that a colony with this many diseased cells showed nothing to this look: hypergeometric over the frames, the
 * cells of a frame spread evenly, each cell in sight noticed with the chance above, independently; and the lapse of a
 * whole look, so that no number of cells is certain to be found.
 *
 * @param cells diseased cells in the colony, from 0; may be a fraction (an expected number)
 * @param place where the trouble shows
 * @returns probability in [0, 1]; 1 when the look cannot show it at all
 * @throws RangeError when `cells` is negative or not a number
 */
export function chanceNothingShown(cells: number, place: Place, look: Look, eye: Eye): number {
  if (!(cells >= 0)) throw new RangeError(`${cells} diseased cells: give a number from 0`);
  if (cells === 0) return 1;
  const notice = noticeChance(place, look, eye);
  if (notice === 0) return 1;
  const { share: framesShare, held, seen } = framesLookedAt(look, eye);
  const withLapse = (missed: number): number => eye.lapse + (1 - eye.lapse) * missed;
  if (held === null || seen === null) return withLapse((1 - notice * framesShare) ** cells);
  const diseased = framesWith(cells, held);
  const all = ways(held, seen);
  let missed = 0;
  for (let inSight = 0; inSight <= Math.min(diseased, seen); inSight++) {
    const drawn = (ways(diseased, inSight) * ways(held - diseased, seen - inSight)) / all;
    missed += drawn * (1 - notice) ** ((cells * inSight) / diseased);
  }
  return withLapse(Math.min(1, missed));
}
