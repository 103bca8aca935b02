import { dayMilliseconds } from '@combside/calendar/day';
import { millisecondsAt, readClock } from '../clock.ts';
import type { About, Proposal } from '../entry.ts';
import type { StoredEntry } from '../store.ts';

/**
 * What the office writes, in its own chain, about an entry it has just received: a refusal; or else a countersignature
 * for the first entry of a device, and a clock flag for an entry more than 24 hours ahead.
 *
 * @param now the office's clock, in milliseconds since 1970
 */
export function remarksOnEntry(kept: StoredEntry, now: number): Proposal[] {
  if (kept.refused !== null) return [refusal(kept, kept.refused)];
  const ahead = millisecondsAhead(kept, now);
  return [
    ...(kept.entry.envelope.kind === 'device' ? [countersignature(kept)] : []),
    ...(ahead > dayMilliseconds ? [clockFlag(kept, ahead)] : []),
  ];
}

function refusal(kept: StoredEntry, reason: string): Proposal {
  const { id, seq } = kept.entry.envelope;
  const body = { entry: id, seq, envelopeHash: kept.hash, reason };
  return { kind: 'refusal', version: 1, about: deviceOf(kept), replaces: [], body };
}

function countersignature(kept: StoredEntry): Proposal {
  const body = { entry: kept.entry.envelope.id, envelopeHash: kept.hash };
  return { kind: 'countersignature', version: 1, about: deviceOf(kept), replaces: [], body };
}

function clockFlag({ entry: { envelope } }: StoredEntry, ahead: number): Proposal {
  const body = { entry: envelope.id, aheadMilliseconds: ahead };
  return { kind: 'clock-flag', version: 1, about: envelope.about, replaces: [], body };
}

/** By how much the later of an entry's two clocks is ahead of the office's. */
function millisecondsAhead({ entry: { envelope } }: StoredEntry, now: number): number {
  return Math.max(readClock(envelope.clock).milliseconds, millisecondsAt(envelope.at)) - now;
}

function deviceOf({ entry: { envelope } }: StoredEntry): About {
  return { type: 'device', id: envelope.device };
}
