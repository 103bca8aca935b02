import type { Proposal } from '@combside/record/entry';
import { type CombReadingBody, combReading } from '@combside/record/kinds/comb-reading';
import { type CorrectionBody, correction } from '@combside/record/kinds/correction';
import type { ColonyState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';
import { firstUnknown } from './propose-reading.ts';

export interface ReplaceReading {
  readonly colony: ColonyState;
  /** Entry of the reading that is corrected. */
  readonly corrects: string;
  /** Why, in words. */
  readonly reason: string;
  readonly correctedAt: string;
  /** What is to read otherwise; what is left out stays. The machine's cells are not open to correction. */
  readonly corrections?: CombReadingBody['corrections'];
  readonly place?: CombReadingBody['place'];
  readonly accepted?: boolean;
}

/**
 * Corrects a kept reading: cells, the place on the comb, or whether it is accepted. The earlier entries stay and are
 * shown. Anybody may, since the photograph is there to be looked at again; a reason is asked.
 *
 * Refused without a reason, when the colony has no such reading, when a correction names no cell or no class, and when
 * nothing was changed.
 */
export function replaceReading(input: ReplaceReading): Act<{ readonly reading: CombReadingBody }> {
  const reason = input.reason.trim();
  const kept = input.colony.combReadings.find((one) => one.written.entry === input.corrects);
  if (!kept) return refused('casework.refused.no-such-line');
  if (reason === '') return refused('casework.refused.reason-missing');
  if (reason.length > 500) {
    return refused('casework.refused.number-out-of-range', { what: 'characters', low: 1, high: 500 });
  }
  if (input.correctedAt < kept.body.observedAt) return refused('casework.refused.time-runs-backward');
  const corrections = input.corrections ?? kept.body.corrections;
  const unknown = input.corrections ? firstUnknown(input.corrections, kept.body.cells.count) : null;
  if (unknown) return unknown;
  const body: CombReadingBody = {
    ...kept.body,
    place: input.place ?? kept.body.place,
    corrections: [...corrections],
    accepted: input.accepted ?? kept.body.accepted,
  };
  if (JSON.stringify(said(body)) === JSON.stringify(said(kept.body))) {
    return refused('casework.refused.nothing-changed');
  }
  const proposal: Proposal<CorrectionBody> = {
    kind: correction.kind,
    version: correction.version,
    about: input.colony.about,
    body: { corrects: input.corrects, reason, version: combReading.version, body },
    replaces: kept.corrections.map((one) => one.written.entry),
  };
  return { ...done([proposal]), reading: body };
}

/** What a person said, in one order, so that equal words compare equal. */
function said({ corrections, place, accepted }: CombReadingBody): unknown {
  const byCell = new Map(corrections.map((one) => [one.cell, one.class]));
  return [[...byCell].sort(([a], [b]) => a - b), place.box, place.frame, place.side, accepted];
}
