import type { Pack } from '@combside/law/pack';
import { canonicalBytes } from '@combside/record/canonical';
import type { Hasher } from '@combside/record/ports';
import type { ApiaryState, ColonyState, KeeperState, VisitState } from '@combside/record/states';
import { type Refused, refused } from '../act.ts';
import type { Tap } from '../draft/tap.ts';
import { whatIsOpen } from '../examine/end-visit.ts';
import { assessmentAt, examinationAt, type WalkedColony, walk } from '../examine/walk.ts';
import { type ResultWord, resultWords, saysSuspect } from '../result/results-by-gravity.ts';
import type { ColonyRecord, InspectionRecord, Sentence, Signature } from './inspection-record.ts';
import { issueOf } from './issue.ts';
import { nextSteps } from './next-steps.ts';

export interface RecordInput {
  readonly visit: VisitState;
  readonly apiary: ApiaryState;
  readonly keeper: KeeperState | null;
  readonly colonies: readonly ColonyState[];
  readonly drafts?: Readonly<Record<string, readonly Tap[]>>;
  readonly pack: Pack;
  readonly inspector: InspectionRecord['inspector'];
  /** The authority in whose name the visit is made, as it writes itself. */
  readonly authority: string;
  /** IANA time zone of the site. */
  readonly timeZone: string;
  readonly remarks?: string;
  /** The inspector's own signature; the receiver's come from the handovers. */
  readonly inspectorSignature?: Signature;
}

/**
 * The written result of one visit from what was recorded. It holds no probability and nothing about another keeper: only
 * this apiary's entries go into it.
 *
 * @param hasher for the fingerprint of the content
 * @returns the record, or why there is none yet
 */
export async function makeInspectionRecord(input: RecordInput, hasher: Hasher): Promise<InspectionRecord | Refused> {
  const visit = input.visit.visit.current;
  const apiary = input.apiary.apiary.current;
  if (!visit?.body.startedAt) return refused('casework.refused.visit-not-started');
  if (!apiary) return refused('casework.refused.not-in-register');
  if (visit.body.apiary !== input.apiary.about.id) return refused('casework.refused.visit-elsewhere');
  const id = input.visit.about.id;
  const drafts = input.drafts ?? {};
  const walked = walk(input.apiary, input.colonies, id, drafts);
  const keeper = input.keeper?.keeper.current?.body ?? null;
  const colonies = walked.map((one) => colonyRecord(one, input, visit.body.leftOpen));
  const unsigned = {
    invented: input.pack.invented,
    district: apiary.body.district,
    authority: input.authority,
    apiary: {
      id: input.apiary.about.id,
      name: apiary.body.name,
      addressWords: apiary.body.addressWords,
      position: apiary.body.position
        ? {
            latitude: apiary.body.position.latitude,
            longitude: apiary.body.position.longitude,
            uncertaintyMetres: apiary.body.position.uncertaintyMetres,
          }
        : null,
    },
    keeper: keeper ? { name: keeper.name, number: keeper.number } : null,
    inspector: input.inspector,
    visit: {
      id,
      startedAt: visit.body.startedAt,
      endedAt: visit.body.endedAt,
      timeZone: input.timeZone,
      reason: visit.body.reason,
      power: visit.body.power,
      present: input.visit.attendance.current?.body.people ?? [],
      temperatureCelsius: visit.body.temperatureCelsius,
      warnings: visit.body.warnings.map((one) => ({
        warning: { id: warnedId(one.warning), values: {} },
        answer: one.answer,
      })),
      coloniesCounted: visit.body.coloniesCounted,
    },
    colonies,
    plan: apiary.body.plan
      ? { hives: apiary.body.plan.hives, gate: apiary.body.plan.gate, track: apiary.body.plan.track }
      : null,
    // Specimens have no entry of their own yet in this version of the record.
    specimens: [],
    cleanDowns: input.visit.cleanDowns.map(({ body }) => ({
      doneAt: body.doneAt,
      gloves: body.gloves,
      tool: body.tool,
      phone: body.phone,
      after: body.after === null ? null : labelOf(input.colonies, body.after),
    })),
    remarks: input.remarks ?? '',
    stillOpen: whatIsOpen({ ...input, drafts })
      .filter((one) => one.id !== 'casework.open.not-handed-over')
      .map((one): Sentence => ({ id: one.id, values: one.values })),
    nextSteps: nextSteps({ walked, colonies: input.colonies, visit: id, pack: input.pack }),
  };
  const entries = entriesBehind(input, id);
  const contentHash = hexadecimal(await hasher.sha256(canonicalBytes({ ...asHashed(unsigned), proof: { entries } })));
  const issue = issueOf(input.visit, input.colonies, contentHash);
  // Who signed the issue that this one replaces has not signed this one.
  const received = input.visit.handovers.filter(
    ({ body }) => issue.handedOver && body.handedOverAt > (issue.replaces ?? ''),
  );
  return {
    ...unsigned,
    issue,
    proof: { entries, contentHash },
    signatures: [
      ...(input.inspectorSignature ? [input.inspectorSignature] : []),
      ...received.map(
        ({ body }): Signature => ({
          as: 'receiver',
          name: body.receiver,
          at: body.handedOverAt,
          path: body.signaturePath,
          how: body.how,
        }),
      ),
    ],
  };
}

/** The short form for a visit without a printer: the same words, large on the screen, signed there. */
export interface ShortForm {
  readonly apiary: string;
  readonly colonies: readonly { readonly label: string; readonly result: ColonyRecord['result'] }[];
  readonly nextSteps: readonly Sentence[];
  readonly contentHash: string;
}

/** The short form of a record: the same results and the same next steps, under the same fingerprint. */
export function shortForm(record: InspectionRecord): ShortForm {
  return {
    apiary: record.apiary.name,
    colonies: record.colonies.map((one) => ({ label: one.label, result: one.result })),
    nextSteps: record.nextSteps,
    contentHash: record.proof.contentHash,
  };
}

function colonyRecord(
  walked: WalkedColony,
  input: RecordInput,
  leftOpen: readonly { readonly colony: string; readonly reason: string }[],
): ColonyRecord {
  const colony = input.colonies.find((one) => one.about.id === walked.colony);
  const visit = input.visit.about.id;
  const examined = colony ? (examinationAt(colony, visit)?.body ?? null) : null;
  const made = colony ? (assessmentAt(colony, visit)?.body ?? null) : null;
  const result = examined === null ? 'not opened' : asResult(made?.result);
  return {
    id: walked.colony,
    label: walked.label,
    hiveState: walked.hiveState,
    result,
    suspected: saysSuspect(result) ? (made?.suspected ?? []) : [],
    whyNotOpened: leftOpen.find((one) => one.colony === walked.colony)?.reason ?? '',
    observedAt: examined?.observedAt ?? null,
    look: examined
      ? {
          depth: examined.depth,
          boxes: examined.boxes,
          beesShaken: examined.beesShaken,
          light: examined.light,
          hold: examined.hold,
          sealedBroodCombSides: examined.sealedBroodCombSides,
        }
      : null,
    signs: examined?.signs ?? [],
    ropeTests: examined?.ropeTests ?? [],
    finds: examined?.finds ?? [],
    medicines: examined?.medicines ?? null,
    combChanges: examined?.combChanges ?? null,
    remarks: examined?.remarks ?? '',
    photographs: examined?.photographs ?? [],
  };
}

function asResult(word: string | undefined): ResultWord {
  return resultWords.find((one) => one === word) ?? 'not judged';
}

/** Ids of the entries that the result rests on: this visit's own, the place and its colonies as they were read. */
function entriesBehind(input: RecordInput, visit: string): string[] {
  const ids = [
    ...input.visit.visit.history.map((one) => one.written.entry),
    ...input.visit.attendance.history.map((one) => one.written.entry),
    ...input.visit.cleanDowns.map((one) => one.written.entry),
    ...(input.apiary.apiary.current ? [input.apiary.apiary.current.written.entry] : []),
    ...input.colonies.flatMap((colony) => [
      ...(examinationAt(colony, visit) ? [examinationAt(colony, visit)?.written.entry ?? ''] : []),
      ...(assessmentAt(colony, visit) ? [assessmentAt(colony, visit)?.written.entry ?? ''] : []),
    ]),
  ];
  return [...new Set(ids)].sort();
}

/**
 * The record as its content hash has always taken it: days and moments as plain text. What was handed over before values
 * said what they are keeps its hash, and is not called out of date for it.
 */
function asHashed<R extends Pick<InspectionRecord, 'stillOpen' | 'nextSteps'>>(record: R) {
  const plain = (one: Sentence) => ({
    id: one.id,
    values: Object.fromEntries(
      Object.entries(one.values).map(([name, value]) => [
        name,
        typeof value !== 'object' ? value : 'day' in value ? value.day : value.moment,
      ]),
    ),
  });
  return { ...record, stillOpen: record.stillOpen.map(plain), nextSteps: record.nextSteps.map(plain) };
}

/** On paper a warning is named, without the limit it was shown with: `casework.warned.cold`. */
function warnedId(warning: string): `casework.warned.${string}` {
  return `casework.warned.${warning.replace('casework.warning.', '')}`;
}

function labelOf(colonies: readonly ColonyState[], id: string): string {
  return colonies.find((one) => one.about.id === id)?.colony.current?.body.label ?? '';
}

function hexadecimal(bytes: Uint8Array): string {
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
