import type { ColonyState } from '@combside/record/states';
import type { MeasuredPattern } from '@combside/science/diagnosis/measured-pattern';
import { hiveType } from '../register/hive-types.ts';
import { samePlace } from './compare-readings.ts';
import { correctedReading } from './corrected-reading.ts';
import { solidnessError } from './reader-error.ts';

/** What accepted readings of one visit offer to the reasoning. */
export interface ReadingEvidence {
  /** Solidness of all sides together; null where none has a figure. */
  readonly pattern: MeasuredPattern | null;
  /** What each side that counts shows. */
  readonly sides: readonly {
    readonly box: string;
    readonly frame: number | null;
    readonly side: 'a' | 'b' | null;
    /** Sealed brood as a share of a full side of this hive type; null where the size of the side is not known. */
    readonly sealedShare: number | null;
    /** The same, at the least that the size of cells allows. */
    readonly sealedShareAtLeast: number | null;
  }[];
  /** The entries of the readings that count, for the assessment that rests on them. */
  readonly readings: readonly string[];
}

/** Readings of which more could not be read do not count. A setting of ours. */
const mostUnread = 0.5;

/**
 * Real combs are read less well than painted ones, and nobody has measured by how much: for evidence the error is taken
 * this many times as large. A setting of ours.
 */
export const realOverPainted = 2;

/**
 * The readings of one visit that count as evidence: accepted by a person, readable, at least half of the cells read; of
 * several readings of one comb side, the newest. Sides are added up, since they show one colony.
 *
 * @param visit the visit whose examination is weighed
 */
export function readingEvidence(colony: ColonyState, visit: string): ReadingEvidence {
  const area = hiveType(colony.colony.current?.body.hiveType ?? '')?.combSideArea?.value ?? null;
  const places: ReadingEvidence['sides'][number][] = [];
  const readings: string[] = [];
  let sealed = 0;
  let missed = 0;
  let unread = 0;
  let patterned = 0;
  for (const { body, written } of colony.combReadings) {
    if (!body.accepted || body.visit !== visit) continue;
    if (places.some((place) => samePlace(place, body.place))) continue;
    const reading = correctedReading(body)?.reading;
    if (!reading || reading.unread > mostUnread) continue;
    readings.push(written.entry);
    const { squareCentimetres, low } = reading.areas.sealedBrood;
    places.push({
      ...body.place,
      sealedShare: area === null ? null : Math.min(1, squareCentimetres / area),
      sealedShareAtLeast: area === null ? null : Math.min(1, low / area),
    });
    if (!reading.solidness) continue;
    sealed += reading.solidness.sealed;
    missed += reading.solidness.missed;
    unread = Math.max(unread, reading.unread);
    patterned++;
  }
  const pattern =
    patterned === 0
      ? null
      : {
          solidness: sealed / (sealed + missed),
          standardError: Math.min(1, realOverPainted * solidnessError(sealed, missed, unread)),
          sides: patterned,
        };
  return { pattern, sides: places, readings };
}

/** From so much sealed brood, in comb sides, more makes no difference to the reasoning (`brood/what-a-look-shows.ts`). */
const enoughSealedBrood = 4;

/**
 * Sealed brood in comb sides as the photographs show it, for an examination in which nobody stated it.
 *
 * A few sides are only the least there is, so their sum stands for the colony in two cases: when every side that was
 * lifted is among them, or when they alone show as much as makes a difference.
 *
 * @param sidesLifted comb sides looked at in the examination
 * @returns null where the photographs do not say
 */
export function sealedSidesMeasured(evidence: ReadingEvidence, sidesLifted: number): number | null {
  const { sides } = evidence;
  const sum = (shares: readonly (number | null)[]): number | null =>
    shares.reduce<number | null>((total, share) => (total === null || share === null ? null : total + share), 0);
  if (sides.length === 0) return null;
  const known = sides.filter((one) => one.frame !== null && one.side !== null).length;
  if (known === sides.length && sidesLifted > 0 && known >= sidesLifted)
    return sum(sides.map((one) => one.sealedShare));
  const least = sum(
    sides.filter((one) => one.frame !== null && one.side !== null).map((one) => one.sealedShareAtLeast),
  );
  return least !== null && least >= enoughSealedBrood ? least : null;
}
