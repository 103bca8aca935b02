import type { About } from '../entry.ts';
import { apiary } from './apiary.ts';
import { assessment } from './assessment.ts';
import { attendance } from './attendance.ts';
import { cleanDown } from './clean-down.ts';
import { clockFlag } from './clock-flag.ts';
import { colony } from './colony.ts';
import { combReading } from './comb-reading.ts';
import { correction } from './correction.ts';
import { countersignature } from './countersignature.ts';
import { device } from './device.ts';
import { erasure } from './erasure.ts';
import { examination } from './examination.ts';
import { handover } from './handover.ts';
import { keeper } from './keeper.ts';
import type { Kind } from './kind.ts';
import { laboratoryLimits } from './laboratory-limits.ts';
import { merge } from './merge.ts';
import { movement } from './movement.ts';
import { note } from './note.ts';
import { photograph } from './photograph.ts';
import { proposedChange } from './proposed-change.ts';
import { reason } from './reason.ts';
import { refusal } from './refusal.ts';
import { resealing } from './resealing.ts';
import { visit } from './visit.ts';

const known: readonly Kind[] = [
  device,
  keeper,
  apiary,
  colony,
  visit,
  movement,
  attendance,
  examination,
  assessment,
  cleanDown,
  handover,
  proposedChange,
  merge,
  reason,
  photograph,
  combReading,
  laboratoryLimits,
  correction,
  note,
  erasure,
  resealing,
  countersignature,
  clockFlag,
  refusal,
] as readonly Kind[];

/** Every kind of entry this program knows, by name. A program that meets another kind keeps it and says so. */
export type Kinds = ReadonlyMap<string, Kind>;

/** Makes a table of kinds and checks it: names are unique, and a kind of version n has n - 1 named steps. */
export function kindTable(list: readonly Kind[]): Kinds {
  const table = new Map<string, Kind>();
  for (const kind of list) {
    if (table.has(kind.kind)) throw new TypeError(`the kind ${kind.kind} is listed twice`);
    if (kind.steps.length !== kind.version - 1) {
      throw new TypeError(
        `the kind ${kind.kind} is at version ${kind.version} but has ${kind.steps.length} steps; add the step that lifts each older version`,
      );
    }
    table.set(kind.kind, kind);
  }
  return table;
}

export const kinds: Kinds = kindTable(known);

/** The kind that an entity type's own register is written in: `apiary` entries describe an apiary, and so on. */
export function mayBeAbout(kind: Kind, about: About): boolean {
  return kind.about === 'any' || (kind.about as readonly string[]).includes(about.type);
}
