import { dateOf, dayMilliseconds, weekdayOf } from '@combside/calendar/day';
import { dayOf, instantOf } from '@combside/calendar/instant';
import type { ApiaryBody } from '@combside/record/kinds/apiary';
import { handover } from '@combside/record/kinds/handover';
import { note } from '@combside/record/kinds/note';
import type { ColonyState } from '@combside/record/states';
import type { Tap } from '../draft/tap.ts';
import { recordCleanDown } from '../examine/clean-down.ts';
import { closeColony } from '../examine/close-colony.ts';
import { endVisit } from '../examine/end-visit.ts';
import { calmConditions, startVisit } from '../examine/start-visit.ts';
import { walk } from '../examine/walk.ts';
import { planVisit } from '../plan/today.ts';
import { changeApiary } from '../register/apiary.ts';
import { newMovement } from '../register/movement.ts';
import { acceptColonyChange, openProposals } from '../register/settle.ts';
import { standingAt } from '../register/standing-at.ts';
import { makeInspectionRecord } from '../report/make-inspection-record.ts';
import { saysSuspect } from '../result/results-by-gravity.ts';
import { carriedOut } from './carried-out.ts';
import { asInspector, type DemoPerson, demoAuthority, demoTimeZone, inspectors, officeLead } from './people.ts';
import type { DemoRegister } from './register.ts';
import { tapsForSigns } from './seen-signs.ts';
import { type Truth, trueConditions } from './truth.ts';
import type { World } from './world.ts';

/** One thing that happened, so many days before today. */
interface Happening {
  readonly daysAgo: number;
  readonly hour: number;
  play(): Promise<void> | void;
}

interface VisitStory {
  readonly apiary: string;
  readonly daysAgo: number;
  /** Clock hour of arrival. */
  readonly hour: number;
  readonly reason: string;
  /** `part`: three frames of each colony, as in the visit that missed the beginning. */
  readonly look: 'full' | 'part';
  /** A colony in which this inspector suspects foulbrood from the cappings alone. */
  readonly suspects?: string;
}

/** Plays two years of visits, moves and corrections of the register, in the order of time. */
export async function playHistory(world: World, register: DemoRegister, truth: Truth): Promise<void> {
  const happenings = [
    ...visitsOf(world, register).flatMap((story) => [
      planned(world, register, story),
      { daysAgo: story.daysAgo, hour: story.hour, play: () => playVisit(world, register, truth, story) },
    ]),
    ...movesOf(world, register),
    ...tradeOf(world, register, truth),
  ].sort((a, b) => b.daysAgo - a.daysAgo || a.hour - b.hour);
  for (const one of happenings) await one.play();
}

/** The visits that make the story, and the ordinary ones around them. */
function visitsOf(world: World, register: DemoRegister): VisitStory[] {
  const [first, second] = register.source as readonly [string, string];
  const suspectInWrongLead = register.colonies[register.wrongLead]?.[1] as string;
  const [sacbrood, varroa, chalkbrood, bald] = register.lookAlikes as readonly [string, string, string, string];
  const told: Omit<VisitStory, 'look' | 'hour'>[] = [
    { apiary: register.journey, daysAgo: 500, reason: 'routine' },
    { apiary: sacbrood, daysAgo: 130, reason: 'request' },
    { apiary: varroa, daysAgo: 110, reason: 'routine' },
    { apiary: chalkbrood, daysAgo: 380, reason: 'routine' },
    { apiary: bald, daysAgo: 150, reason: 'sale or migration' },
    { apiary: register.wrongLead, daysAgo: 210, reason: 'suspicion reported', suspects: suspectInWrongLead },
    { apiary: second, daysAgo: 60, reason: 'routine' },
    { apiary: first, daysAgo: 50, reason: 'contact' },
  ];
  const stories: Omit<VisitStory, 'hour'>[] = [
    { apiary: first, daysAgo: 600, reason: 'routine', look: 'part' },
    ...told.map((one) => ({ ...one, look: 'full' as const })),
  ];
  const spoken = new Set([...register.source, register.journey, register.wrongLead, ...register.lookAlikes]);
  for (const apiary of register.apiaries) {
    if (spoken.has(apiary)) continue;
    const count = 2 + world.chance.integer(3);
    for (let i = 0; i < count; i++) {
      const look = world.chance.uniform() < 0.15 ? 'part' : 'full';
      stories.push({ apiary, daysAgo: 20 + world.chance.integer(700), reason: 'routine', look });
    }
  }
  return onFreeDays(world, register, stories);
}

/**
 * Puts each visit on a working day in season on which its inspector has the morning or the afternoon free. An apiary
 * already visited that day is not visited again.
 */
function onFreeDays(world: World, register: DemoRegister, stories: readonly Omit<VisitStory, 'hour'>[]): VisitStory[] {
  const taken = new Map<string, string[]>();
  return stories.flatMap((story) => {
    const inspector = inspectorOf(register, story.apiary).id;
    for (let daysAgo = workingDayInSeason(world, story.daysAgo); ; daysAgo = workingDayInSeason(world, daysAgo + 1)) {
      const that = `${inspector} ${daysAgo}`;
      const made = taken.get(that) ?? [];
      if (made.includes(story.apiary)) return [];
      if (made.length >= 2) continue;
      taken.set(that, [...made, story.apiary]);
      return [{ ...story, daysAgo, hour: made.length === 0 ? 9 : 14 }];
    }
  });
}

/** The nearest earlier working day from April to October. */
function workingDayInSeason(world: World, daysAgo: number): number {
  for (let back = daysAgo; ; back++) {
    const day = dayOf(instantOf(world.at(back, 12)));
    const { month } = dateOf(day);
    if (month >= 4 && month <= 10 && weekdayOf(day) <= 5) return back;
  }
}

function inspectorOf(register: DemoRegister, apiary: string): DemoPerson {
  return inspectors[register.apiaries.indexOf(apiary) % inspectors.length] as DemoPerson;
}

const plans = new WeakMap<VisitStory, string>();

function planned(world: World, register: DemoRegister, story: VisitStory): Happening {
  const daysAgo = story.daysAgo + 7;
  return {
    daysAgo,
    hour: 8,
    play() {
      const at = world.at(daysAgo, 8);
      const visit = world.ledger.newId(at);
      plans.set(story, visit);
      const act = planVisit({
        visit,
        planned: null,
        apiary: world.ledger.apiary(story.apiary),
        inspector: inspectorOf(register, story.apiary).id,
        reason: story.reason,
        plannedFor: instantOf(world.at(story.daysAgo, story.hour)),
      });
      world.ledger.write({ author: officeLead.id, device: officeLead.device.id, at }, carriedOut(act).proposals);
    },
  };
}

async function playVisit(world: World, register: DemoRegister, truth: Truth, story: VisitStory): Promise<void> {
  const { ledger, chance } = world;
  const inspector = inspectorOf(register, story.apiary);
  const visit = plans.get(story) as string;
  let clock = world.at(story.daysAgo, story.hour, 5 + chance.integer(20));
  const pen = () => ({ author: inspector.id, device: inspector.device.id, at: clock });
  const apiary = () => ledger.apiary(story.apiary);
  const colonies = () => standingAt(story.apiary, ledger.coloniesOf(story.apiary));
  const keeper = apiary().apiary.current?.body.keeper ?? null;
  const keeperName = keeper === null ? null : (ledger.keeper(keeper).keeper.current?.body.name ?? null);
  const present = keeperName !== null && chance.uniform() < 0.7;
  const started = startVisit({
    visit,
    planned: ledger.visit(visit),
    apiary: apiary(),
    colonies: colonies(),
    inspector: inspector.id,
    reason: story.reason,
    power: keeperName === null ? 'owner not found' : present ? 'consent' : 'power of entry',
    startedAt: instantOf(clock),
    conditions: { ...calmConditions, temperatureCelsius: 13 + chance.integer(14) },
    answers: {},
    people: present && keeperName !== null ? [{ name: keeperName, role: 'keeper' }] : [],
    coloniesCounted: chance.uniform() < 0.08 ? colonies().length + 1 : colonies().length,
  });
  ledger.write(pen(), carriedOut(started).proposals);

  const walked = walk(apiary(), colonies(), visit);
  // Eleven or more: at least half are opened, unless something was seen (a protocol's rule [PROT-US]).
  const skips = walked.length > 10 && story.look === 'full' && story.reason === 'routine';
  const leftOpen: Record<string, string> = {};
  for (const [place, one] of walked.entries()) {
    if (skips && place % 2 === 1) {
      leftOpen[one.colony] = 'every second colony opened';
      continue;
    }
    clock += (8 + chance.integer(8)) * 60_000;
    const colony = ledger.colony(one.colony);
    const look = lookAt(world, truth, story, colony);
    const closed = carriedOut(
      closeColony({
        taps: look.taps,
        colony,
        visit: ledger.visit(visit),
        pack: world.pack,
        closing: look.closing,
        suspected: look.suspected,
        observedAt: instantOf(clock),
        examinationId: ledger.newId(clock),
        weigh: world.weigh,
      }),
    );
    ledger.write(pen(), closed.proposals);
    if (saysSuspect(closed.assessed.result)) {
      clock += 6 * 60_000;
      cleanDown(world, visit, story.apiary, one.colony, pen());
    }
  }
  if (
    colonies().some((one) => one.assessments.some((made) => made.body.visit === visit && saysSuspect(made.body.result)))
  ) {
    clock += 5 * 60_000;
    cleanDown(world, visit, story.apiary, null, pen());
  }
  clock += 10 * 60_000;
  const ended = endVisit({
    visit: ledger.visit(visit),
    apiary: apiary(),
    colonies: colonies(),
    drafts: {},
    endedAt: instantOf(clock),
    leftOpen,
  });
  ledger.write(pen(), carriedOut(ended).proposals);
  if (present && keeperName !== null) await handOver(world, visit, story.apiary, inspector, keeperName, pen());
  acceptDeadHives(world, story, clock + dayMilliseconds);
}

/** What the inspector does at one colony: from the truth of that day, through the look that was taken. */
function lookAt(
  world: World,
  truth: Truth,
  story: VisitStory,
  colony: ColonyState,
): { taps: readonly Tap[]; closing: 'nothing seen' | 'nothing seen with less' | 'signs seen'; suspected: string[] } {
  const { chance } = world;
  const box = colony.colony.current?.body.broodBoxes[0]?.box ?? 'lower';
  const conditions = trueConditions(truth, colony.about.id, story.daysAgo);
  const gone = truth.hiveStates.find((one) => one.colony === colony.about.id && one.since >= story.daysAgo);
  if (gone) {
    const everFoul = truth.conditions.some(
      (one) => one.colony === colony.about.id && one.condition === 'american-foulbrood.advanced',
    );
    const state: Tap = { tap: 'hive state', state: gone.state };
    if (!everFoul) return { taps: [state], closing: 'nothing seen', suspected: [] };
    return {
      taps: [
        state,
        { tap: 'everything looked at' },
        { tap: 'sign', sign: 'scale.hard_lower', outcome: 'seen' },
        { tap: 'sign count', sign: 'scale.hard_lower', count: 'over 100' },
      ],
      closing: 'signs seen',
      suspected: [],
    };
  }
  if (story.suspects === colony.about.id) {
    // The wrong lead: dark sunken cappings over mite-damaged brood, suspected from the cappings alone.
    return {
      taps: [
        { tap: 'everything looked at' },
        { tap: 'sign', sign: 'cap.sunken', outcome: 'seen' },
        { tap: 'sign count', sign: 'cap.sunken', count: '11-100' },
        { tap: 'sign', sign: 'cap.dark_greasy', outcome: 'seen' },
        { tap: 'sign', sign: 'mites', outcome: 'seen' },
        { tap: 'sign amount', sign: 'mites', amount: 'marked' },
      ],
      closing: 'signs seen',
      suspected: ['american-foulbrood'],
    };
  }
  const held = colony.colony.current?.body.broodBoxes ?? [];
  const part = story.look === 'part';
  const look: Tap[] = part
    ? [
        { tap: 'bees shaken', shaken: false },
        ...held.flatMap((one): Tap[] => [
          { tap: 'frames seen', box: one.box, frames: Math.min(3, one.frames) },
          { tap: 'sides', box: one.box, sides: 'both' },
        ]),
      ]
    : [{ tap: 'everything looked at' }, { tap: 'light', light: 'sun over the shoulder' }];
  const frames = held.reduce((sum, one) => sum + one.frames, 0);
  const share = part ? held.reduce((sum, one) => sum + Math.min(3, one.frames), 0) / frames : 1;
  const signs = tapsForSigns(conditions, box, share, chance);
  const medicine: Tap[] =
    chance.uniform() < 0.02
      ? [
          {
            tap: 'medicines',
            answer: {
              asked: true,
              answer: 'yes',
              lastOn: dayOf(instantOf(world.at(story.daysAgo + 20, 12))),
              what: '',
            },
          },
        ]
      : [];
  if (signs.some((one) => one.tap === 'sign' && one.outcome === 'seen')) {
    return { taps: [...look, ...signs, ...medicine], closing: 'signs seen', suspected: [] };
  }
  if (part) return { taps: [...look, ...medicine], closing: 'nothing seen with less', suspected: [] };
  return { taps: medicine, closing: 'nothing seen', suspected: [] };
}

function cleanDown(
  world: World,
  visit: string,
  apiary: string,
  after: string | null,
  pen: { readonly author: string; readonly device: string; readonly at: number },
): void {
  const act = recordCleanDown({
    visit: world.ledger.visit(visit),
    colonies: world.ledger.coloniesOf(apiary),
    after,
    doneAt: instantOf(pen.at),
    gloves: 'changed',
    tool: 'flamed',
    phone: 'wiped',
    wentOnAfterWarning: false,
    remarks: '',
  });
  world.ledger.write(pen, carriedOut(act).proposals);
}

async function handOver(
  world: World,
  visit: string,
  apiary: string,
  inspector: DemoPerson,
  receiver: string,
  pen: { readonly author: string; readonly device: string; readonly at: number },
): Promise<void> {
  const { ledger } = world;
  const keeper = ledger.apiary(apiary).apiary.current?.body.keeper ?? null;
  const record = await makeInspectionRecord(
    {
      visit: ledger.visit(visit),
      apiary: ledger.apiary(apiary),
      keeper: keeper === null ? null : ledger.keeper(keeper),
      colonies: ledger.coloniesOf(apiary),
      pack: world.pack,
      inspector: asInspector(inspector),
      authority: demoAuthority,
      timeZone: demoTimeZone,
    },
    world.hasher,
  );
  if ('reason' in record) throw new RangeError(`the demonstration has no result to hand over: ${record.reason}`);
  ledger.write(pen, [
    {
      kind: handover.kind,
      version: handover.version,
      about: { type: 'visit', id: visit },
      body: {
        handedOverAt: instantOf(pen.at),
        how: 'paper shared',
        receiver,
        signaturePath: '',
        contentHash: record.proof.contentHash,
      },
      replaces: [],
    },
  ]);
}

/** The office follows what inspectors found: a dead hive becomes a dead hive in the register. */
function acceptDeadHives(world: World, story: VisitStory, at: number): void {
  const { ledger } = world;
  for (const colony of ledger.coloniesOf(story.apiary)) {
    for (const proposal of openProposals(colony)) {
      const act = acceptColonyChange(ledger.colony(colony.about.id), proposal, ledger.coloniesOf(story.apiary));
      ledger.write({ author: officeLead.id, device: officeLead.device.id, at }, carriedOut(act).proposals);
    }
  }
}

/** The migratory keeper moves six apiaries out in spring and home in autumn, and says so. */
function movesOf(world: World, register: DemoRegister): Happening[] {
  return register.migratory.flatMap((apiary, index) =>
    [640, 500, 275, 135].map(
      (daysAgo, leg): Happening => ({
        daysAgo: daysAgo - index,
        hour: 7,
        play() {
          const state = world.ledger.apiary(apiary);
          const position = state.apiary.current?.body.position ?? null;
          if (position === null) return;
          const out = leg % 2 === 0 ? 1 : -1;
          const moved: ApiaryBody['position'] = {
            ...position,
            latitude: Math.round((position.latitude + out * 0.05) * 1e5) / 1e5,
            how: 'told by the keeper',
            uncertaintyMetres: 100,
          };
          const pen = {
            author: officeLead.id,
            device: officeLead.device.id,
            at: world.at(daysAgo - index, 7),
          };
          world.ledger.write(pen, carriedOut(changeApiary(state, { position: moved })).proposals);
        },
      }),
    ),
  );
}

/** What the office has been told of trade: one colony moved between a keeper's own apiaries, and nuclei sold. */
function tradeOf(world: World, register: DemoRegister, truth: Truth): Happening[] {
  const [first] = register.source as readonly [string, string];
  const told = truth.spread
    .filter((one) => one.from !== one.to)
    .map(
      (one): Happening => ({
        daysAgo: one.day - 1,
        hour: 10,
        play() {
          const at = world.at(one.day - 1, 10);
          const on = (daysAgo: number) => dayOf(instantOf(world.at(daysAgo, 12)));
          const moved = one.by === 'moved colony';
          const act = newMovement(
            world.ledger.newId(at),
            {
              from: one.from,
              to: one.to,
              what: moved ? 'colonies' : 'nuclei',
              quantity: moved ? 1 : 2,
              colonies: [],
              how: moved ? 'moved' : 'sold',
              earliest: on(one.day + 2),
              latest: on(one.day),
              knownBy: 'told by the keeper',
              happened: true,
            },
            { from: world.ledger.apiary(one.from), to: world.ledger.apiary(one.to) },
          );
          const pen = { author: officeLead.id, device: officeLead.device.id, at };
          world.ledger.write(pen, carriedOut(act).proposals);
        },
      }),
    );
  const asked: Happening = {
    daysAgo: 48,
    hour: 10,
    play() {
      const pen = { author: officeLead.id, device: officeLead.device.id, at: world.at(48, 10) };
      const text = 'Invented example: the keeper says that nuclei were sold last year, buyers to be asked.';
      const about = { type: 'apiary', id: first };
      world.ledger.write(pen, [{ kind: note.kind, version: note.version, about, body: { text }, replaces: [] }]);
    },
  };
  return [...told, asked];
}
