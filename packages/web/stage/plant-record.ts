import { instantOf, millisecondsOf } from '@combside/calendar/instant';
import { carriedOut } from '@combside/casework/demo/carried-out';
import { type DemoDistrict, demoDistrictFrom } from '@combside/casework/demo/district';
import { inspectorOfTheDay } from '@combside/casework/demo/people';
import { sealDistrict } from '@combside/casework/demo/seal-district';
import { type WalkStep, walkthrough } from '@combside/casework/demo/walkthrough';
import { recordCleanDown } from '@combside/casework/examine/clean-down';
import { closeColony } from '@combside/casework/examine/close-colony';
import { startVisit } from '@combside/casework/examine/start-visit';
import { loadPack } from '@combside/law/load-pack';
import type { Pack } from '@combside/law/pack';
import { linkOf } from '@combside/record/chain';
import type { Entry } from '@combside/record/entry';
import { kinds } from '@combside/record/kinds/registry';
import { folded } from '@combside/record/reader';
import { aboutKey, type FoldedState, type StoredEntry } from '@combside/record/store';
import type { Summary } from '@combside/record/summary';
import type { TestProject } from 'vitest/node';
import { webChance, webHasher } from '../src/device/keys/web-ports.ts';
import { firstInstant, stageDay } from './day.ts';
import { keysInMemory } from './keys-in-memory.ts';

interface VisitPlanted {
  readonly visit: string;
  readonly apiary: string;
  /** Of the apiary. */
  readonly name: string;
}

/** What the phone on the stage holds, and where in it the tests find what they show. */
export interface PlantedRecord {
  readonly entries: readonly StoredEntry[];
  readonly states: readonly FoldedState[];
  /** Where the visit of the day runs: some colonies closed, one of them suspect, others not opened yet. */
  readonly running: VisitPlanted & { readonly colonies: Readonly<Record<string, string>> };
  /** A visit of the day that nobody has begun. */
  readonly planned: VisitPlanted;
}

declare module 'vitest' {
  interface ProvidedContext {
    readonly record: PlantedRecord;
  }
}

/** The same every time, and that of the journeys: one story to know. */
const demoSeed = 20_260_601;

/** Before the first screen: plays the invented district once for all of them, and the morning of its main journey. */
export default async function plantRecord(project: TestProject): Promise<void> {
  const pack = await loadPack('quillmoor');
  const district = await demoDistrictFrom({ today: stageDay, seed: demoSeed, pack, hasher: webHasher });
  const [visit, plannedVisit] = district.planned;
  if (visit === undefined || plannedVisit === undefined)
    throw new Error('the story plans less than two visits for today');
  const { apiary } = district.truth.journey;
  playMorning(district, visit, pack);
  const sealed = await sealDistrict(
    { sown: [...district.ledger.sown].sort((a, b) => a.at - b.at) },
    { hasher: webHasher, keys: keysInMemory(), chance: webChance },
  );
  const planted = (id: string): VisitPlanted => {
    const at = apiaryOf(district, id);
    return { visit: id, apiary: at, name: district.ledger.apiary(at).apiary.current?.body.name ?? '' };
  };
  const round = new Set(district.planned.map((one) => apiaryOf(district, one)));
  const held = await heldOnThePhone(sealed, round);
  project.provide('record', {
    ...held,
    running: {
      ...planted(visit),
      colonies: Object.fromEntries(
        district.ledger.coloniesOf(apiary).map((one) => [one.colony.current?.body.label ?? '', one.about.id]),
      ),
    },
    planned: planted(plannedVisit),
  });
}

function apiaryOf({ ledger }: DemoDistrict, visit: string): string {
  return ledger.visit(visit).visit.current?.body.apiary ?? '';
}

/** The walk of the main journey up to its suspect colony, which is closed and not cleaned down after. */
function playMorning(district: DemoDistrict, visit: string, pack: Pack): void {
  const { ledger } = district;
  const apiary = apiaryOf(district, visit);
  let at = millisecondsOf(firstInstant) - 90 * 60_000;
  const untilSuspect = walkthrough.findIndex((step) => step.step === 'clean down');
  for (const step of walkthrough.slice(0, untilSuspect)) {
    at += 9 * 60_000;
    const pen = { author: inspectorOfTheDay.id, device: inspectorOfTheDay.device.id, at };
    ledger.write(pen, actOf(step, instantOf(at)));
  }

  function actOf(step: WalkStep, now: string) {
    const colonies = ledger.coloniesOf(apiary);
    const running = ledger.visit(visit);
    const labelled = (label: string) => {
      const found = colonies.find((one) => one.colony.current?.body.label === label);
      if (!found) throw new Error(`no colony ${label} at the apiary of the journey`);
      return found;
    };
    switch (step.step) {
      case 'start':
        return carriedOut(
          startVisit({
            visit,
            planned: running,
            apiary: ledger.apiary(apiary),
            colonies,
            inspector: inspectorOfTheDay.id,
            reason: running.visit.current?.body.reason ?? 'routine',
            power: 'consent',
            startedAt: now,
            conditions: step.conditions,
            answers: step.answers,
            people: [],
            coloniesCounted: step.coloniesCounted,
          }),
        ).proposals;
      case 'colony':
        return carriedOut(
          closeColony({
            taps: step.taps,
            colony: labelled(step.label),
            visit: running,
            pack,
            closing: step.closing,
            suspected: step.suspected,
            observedAt: now,
            examinationId: ledger.newId(millisecondsOf(now)),
          }),
        ).proposals;
      case 'clean down':
        return carriedOut(
          recordCleanDown({
            visit: running,
            colonies,
            after: step.after === null ? null : labelled(step.after).about.id,
            doneAt: now,
            gloves: 'changed',
            tool: 'flamed',
            phone: 'wiped',
            wentOnAfterWarning: false,
            remarks: '',
          }),
        ).proposals;
      case 'end':
        throw new Error('the morning ends before the visit does');
    }
  }
}

/**
 * Entries as the store keeps them, all received by the office, with the states that they fold to: keepers, people and
 * devices, and of the apiaries those of the day's round, as a phone holds them that was granted no more.
 */
async function heldOnThePhone(
  sealed: readonly Entry[],
  round: ReadonlySet<string>,
): Promise<Pick<PlantedRecord, 'entries' | 'states'>> {
  const byAbout = new Map<string, Entry[]>();
  for (const entry of sealed) {
    const key = aboutKey(entry.envelope.about);
    const list = byAbout.get(key) ?? [];
    list.push(entry);
    byAbout.set(key, list);
  }
  const entries: StoredEntry[] = [];
  const states: FoldedState[] = [];
  for (const written of byAbout.values()) {
    const about = written[0]?.envelope.about;
    if (!about) continue;
    const state = folded(about, written, kinds);
    if (!standsIn(round, state.summary)) continue;
    states.push(state);
    for (const entry of written) {
      const { envelope } = entry;
      entries.push({ entry, hash: await linkOf(webHasher, envelope), receivedAt: envelope.at, refused: null });
    }
  }
  return { entries, states };
}

/** Whether something is about an apiary of the round, or about no apiary at all. */
function standsIn(round: ReadonlySet<string>, summary: Summary): boolean {
  if (summary.about.type === 'apiary') return round.has(summary.about.id);
  const { apiary, from, to } = summary as { readonly [field in 'apiary' | 'from' | 'to']?: string | null };
  const places = [apiary, from, to].filter((place) => typeof place === 'string');
  return places.length === 0 || places.some((place) => round.has(place));
}
