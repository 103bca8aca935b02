import { mkdtemp, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { dayOf, instantOf } from '@combside/calendar/instant';
import type { Act, Done } from '@combside/casework/act';
import { dutiesOwed } from '@combside/casework/assess/duties-owed';
import {
  asInspector,
  demoAuthority,
  demoDistrict,
  demoTimeZone,
  inspectorOfTheDay,
  officeLead,
} from '@combside/casework/demo/people';
import { type WalkStep, walkthrough } from '@combside/casework/demo/walkthrough';
import { draftFrom } from '@combside/casework/draft/draft-from-taps';
import { fullClaim } from '@combside/casework/examine/claim';
import { beforeOpening, recordCleanDown } from '@combside/casework/examine/clean-down';
import { closeColony } from '@combside/casework/examine/close-colony';
import { endVisit } from '@combside/casework/examine/end-visit';
import { startVisit } from '@combside/casework/examine/start-visit';
import { walk } from '@combside/casework/examine/walk';
import { visitsToMake } from '@combside/casework/plan/today';
import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { makeInspectionRecord } from '@combside/casework/report/make-inspection-record';
import { saysSuspect } from '@combside/casework/result/result-words';
import { visitPage } from '@combside/contract/visit-page';
import { loadPack } from '@combside/law/load-pack';
import { inspectionPdf } from '@combside/papers/inspection/inspection-pdf';
import { readPaperFonts } from '@combside/papers/layout/node-fonts';
import type { Book } from '@combside/record/book/book';
import { openBook } from '@combside/record/book/open-book';
import { verifyChain } from '@combside/record/chain';
import { memoryDeviceStore } from '@combside/record/memory-store';
import type { ApiaryState, ColonyState, VisitState } from '@combside/record/states';
import type { DeviceStore } from '@combside/record/store';
import { exchange } from '@combside/record/sync';
import type { Transport } from '@combside/record/transport';
import { type RunningServer, startServer } from '@combside/server/start';
import { chooseLanguage } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import type { WordId } from '@combside/words/rooms';
import { type Sentence, saySentence } from '@combside/words/sentence';
import type { Words } from '@combside/words/words';
import type { Streams } from './calc.ts';
import { chance, hasher, keysInMemory, verifier } from './node-ports.ts';
import { signInAt } from './office-over-http.ts';

export const usage = `combside demo [--language en|de] [--paper FILE]

Plays the main journey of the invented district for real: an office on a database of its own, a phone, a visit of six
colonies without signal, the written result as PDF, and the office reading what the phone sent. Leaves with 0 only when
every step truly worked.`;

type SaidRoom = 'demo' | 'casework' | 'signs' | 'papers';
type Said = Words<SaidRoom>;

/** What the steps share. */
interface Stage {
  readonly words: Said;
  readonly out: (line: string) => void;
  /** Folder of the office's database; gone at the end. */
  readonly folder: string;
  readonly paper: string;
  readonly server: RunningServer;
}

/** Runs `combside demo`. @returns the exit code */
export async function demo(args: readonly string[], streams: Streams): Promise<number> {
  let asked: { language?: string; paper?: string; help?: boolean };
  try {
    asked = parseArgs({
      args: [...args],
      options: { language: { type: 'string' }, paper: { type: 'string' }, help: { type: 'boolean' } },
    }).values;
  } catch (error) {
    streams.err(`${(error as Error).message}\n\n${usage}`);
    return 2;
  }
  if (asked.help) {
    streams.out(usage);
    return 0;
  }
  const words = await loadWords(chooseLanguage([asked.language ?? 'en']), ['demo', 'casework', 'signs', 'papers']);
  const folder = await mkdtemp(join(tmpdir(), 'combside-demo-'));
  const paper = asked.paper ?? join(tmpdir(), 'combside-demo-result.pdf');
  let server: RunningServer | null = null;
  try {
    streams.out(words.say('demo.title'));
    server = await startServer({ data: join(folder, 'data'), port: 0 });
    await play({ words, out: streams.out, folder, paper, server });
    streams.out(words.say('demo.all-worked'));
    return 0;
  } catch (error) {
    streams.err(words.say('demo.failed', { reason: (error as Error).message }));
    return 1;
  } finally {
    await server?.stop();
    await rm(folder, { recursive: true, force: true });
  }
}

async function play(stage: Stage): Promise<void> {
  const { words, server } = stage;
  let number = 0;
  const step = (id: WordId<'demo'>, values: Record<string, string | number> = {}): void => {
    number += 1;
    stage.out(words.say('demo.step', { number, what: words.say(id, values) }));
  };
  // Set in under its step: the blanks belong to the terminal, not to the words.
  const detail = (text: string): void => stage.out(`   ${text}`);

  step('demo.server', { address: server.address });
  const entries = await server.plantDemo();
  demand('entries planted', entries > 0, true);
  detail(words.say('demo.planted', { entries, accounts: server.demo.accounts.length }));

  const phone = await openPhone(stage);
  const first = await phone.meetOffice();
  const apiaries = await phone.book.summaries('apiary');
  demand('faults of the first exchange', first.faults.length, 0);
  demand('district confirmed by the office', first.confirmed.includes(`district/${demoDistrict}`), true);
  step('demo.phone', { name: inspectorOfTheDay.name, fetched: first.fetched, apiaries: apiaries.length });

  const today = await phone.today();
  const [next] = today;
  if (!next?.plannedFor) throw new Error('nothing is planned for today');
  step('demo.today', {
    visits: today.length,
    apiary: next.name,
    time: words.clockTime(next.plannedFor, demoTimeZone),
    reason: words.sayOne('casework.visit-reason.*', next.reason) ?? next.reason,
  });

  step('demo.signal-lost');
  phone.cutOff();
  const before = (await phone.store.outbox(1000)).length;
  const journey = new Journey(stage, phone, next.visit, next.apiary, Date.parse(next.plannedFor));
  for (const one of walkthrough) await journey.take(one, step, detail);

  const record = await journey.result();
  const pdf = await inspectionPdf(record, words, await readPaperFonts());
  await writeFile(stage.paper, pdf);
  const { size } = await stat(stage.paper);
  demand('bytes of the PDF', size, pdf.length);
  demand('beginning of the PDF', Buffer.from(pdf.subarray(0, 5)).toString('latin1'), '%PDF-');
  step('demo.paper', { bytes: size, path: stage.paper });
  detail(words.say('demo.fingerprint', { hash: record.proof.contentHash }));
  for (const one of record.nextSteps) detail(spoken(words, one));
  for (const one of dutiesOwed(await journey.colonies(), phone.pack, new Date(journey.clock).toISOString())) {
    detail(
      words.say('demo.duty', {
        duty: words.say(`casework.duty.${one.duty}`),
        owedBy: words.say(`casework.owed-by.${one.owedBy}`),
        when: one.due
          ? words.say('casework.duty.due', { due: words.dayAndTime(one.due, demoTimeZone) })
          : words.say(`casework.promptness.${one.promptness ?? 'the law names no time'}`),
        article: one.article,
      }),
    );
  }

  const waiting = (await phone.store.outbox(1000)).length;
  step('demo.sealed', { entries: waiting - before, waiting });
  demand('entries sealed', waiting > before, true);
  const { device } = await phone.book.identity();
  const chain = await phone.store.chain(device, 1, 100_000);
  const faults = await verifyChain({ hasher, verifier }, chain, { erased: new Set(), office: null });
  demand('faults of the chain', faults.length, 0);
  detail(words.say('demo.chain', { faults: faults.length }));

  const sent = await phone.meetOffice();
  demand('entries refused', sent.refused.length, 0);
  demand('entries still waiting', sent.waiting, 0);
  demand('faults of the exchange', sent.faults.length, 0);
  demand('entries sent', sent.sent, waiting);
  step('demo.signal-found', { sent: sent.sent, refused: sent.refused.length, waiting: sent.waiting });

  await officeReads(stage, next.visit, record, step);
}

/** A phone in memory, signed in as the inspector of the day. */
async function openPhone({ server }: Stage) {
  const store: DeviceStore = memoryDeviceStore();
  let clock = Date.now();
  const book: Book = await openBook(
    { store, hasher, keys: keysInMemory(), verifier, clock: { now: () => clock }, chance },
    { person: inspectorOfTheDay.id, deviceName: 'phone of the demonstration' },
  );
  const account = accountOf(server, inspectorOfTheDay.id);
  const transport = await signInAt(server.address, account, server.demo.password);
  let connected = true;
  return {
    store,
    book,
    pack: await loadPack('quillmoor'),
    cutOff: () => {
      connected = false;
    },
    setClock: (to: number) => {
      clock = to;
    },
    /** Exchanges everything with the office; a phone that was cut off finds its network again here. */
    meetOffice: async () => {
      connected = true;
      return exchange({ book, store, transport: guarded(() => connected, transport), hasher, verifier });
    },
    today: async () => {
      const day = dayOf(instantOf(clock));
      const visits = await book.states('visit', { inspector: inspectorOfTheDay.id });
      const places = await Promise.all(
        visits.map((one) => book.state({ type: 'apiary', id: one.visit.current?.body.apiary ?? '' })),
      );
      const edges = { start: `${day}T00:00:00.000Z`, end: `${day}T23:59:59.999Z` };
      const lines = visitsToMake(
        visits,
        places.filter((one) => one !== null),
        inspectorOfTheDay.id,
        edges,
      );
      return lines.filter((one) => one.state === 'today');
    },
  };
}

type Phone = Awaited<ReturnType<typeof openPhone>>;

/** Refuses to speak while there is no network, so that a step that needs one without saying so fails. */
function guarded(connected: () => boolean, transport: Transport): Transport {
  const through = (): Transport => {
    if (!connected()) throw new Error('a step reached for the network while the phone was cut off');
    return transport;
  };
  return {
    greet: async () => through().greet(),
    push: async (entries) => through().push(entries),
    pull: async (scope, after, limit) => through().pull(scope, after, limit),
    checkpoint: async (scope, position) => through().checkpoint(scope, position),
  };
}

type Head = (id: WordId<'demo'>, values?: Record<string, string | number>) => void;
type Detail = (text: string) => void;

/** The visit, step by step, on the phone's own record. */
class Journey {
  clock: number;
  readonly #stage: Stage;
  readonly #phone: Phone;
  readonly #visit: string;
  readonly #apiary: string;

  constructor(stage: Stage, phone: Phone, visit: string, apiary: string, from: number) {
    this.#stage = stage;
    this.#phone = phone;
    this.#visit = visit;
    this.#apiary = apiary;
    this.clock = from;
  }

  async take(step: WalkStep, head: Head, detail: Detail): Promise<void> {
    this.clock += 9 * 60_000;
    this.#phone.setClock(this.clock);
    if (step.step === 'start') await this.#start(step, head, detail);
    else if (step.step === 'colony') await this.#look(step, head, detail);
    else if (step.step === 'clean down') await this.#cleanDown(step.after, head);
    else await this.#end(head);
  }

  async colonies(): Promise<ColonyState[]> {
    return this.#phone.book.states('colony', { apiary: this.#apiary });
  }

  async result(): Promise<InspectionRecord> {
    const apiary = await this.#site();
    const keeper = apiary.apiary.current?.body.keeper ?? null;
    const record = await makeInspectionRecord(
      {
        visit: await this.#running(),
        apiary,
        keeper: keeper === null ? null : await this.#phone.book.state({ type: 'keeper', id: keeper }),
        colonies: await this.colonies(),
        pack: this.#phone.pack,
        inspector: asInspector(inspectorOfTheDay),
        authority: demoAuthority,
        timeZone: demoTimeZone,
      },
      hasher,
    );
    if ('reason' in record) throw new Error(spoken(this.#stage.words, { id: record.reason, values: record.values }));
    return record;
  }

  async #start(step: Extract<WalkStep, { step: 'start' }>, head: Head, detail: Detail): Promise<void> {
    const planned = await this.#running();
    const apiary = await this.#site();
    const done = await this.#write(
      startVisit({
        visit: this.#visit,
        planned,
        apiary,
        colonies: await this.colonies(),
        inspector: inspectorOfTheDay.id,
        reason: planned.visit.current?.body.reason ?? 'routine',
        power: 'consent',
        startedAt: this.#now(),
        conditions: step.conditions,
        answers: step.answers,
        people: [],
        coloniesCounted: step.coloniesCounted,
      }),
    );
    head('demo.started', {
      registered: apiary.apiary.current?.body.coloniesRegistered ?? 0,
      counted: step.coloniesCounted,
    });
    for (const one of done.findings.filter((found) => found.weight === 'warns')) {
      detail(this.#stage.words.say('demo.warning', { text: spoken(this.#stage.words, one) }));
    }
  }

  async #look(step: Extract<WalkStep, { step: 'colony' }>, head: Head, detail: Detail): Promise<void> {
    const { words } = this.#stage;
    const { book, pack } = this.#phone;
    const colonies = await this.colonies();
    const colony = this.#labelled(colonies, step.label);
    const visit = await this.#running();
    const owed = beforeOpening(visit, colonies, colony.about.id);
    const claim = fullClaim(draftFrom(step.taps, colony));
    const done = await this.#write(
      closeColony({
        taps: step.taps,
        colony,
        visit,
        pack,
        closing: step.closing,
        suspected: step.suspected,
        observedAt: this.#now(),
        examinationId: book.newId(),
      }),
    );
    const { assessed } = done;
    head('demo.colony', { label: step.label, result: words.say(`casework.result.${assessed.result}`) });
    for (const one of owed.filter((found) => found.weight !== 'tells')) {
      detail(words.say('demo.owed', { text: spoken(words, one) }));
    }
    if (step.closing === 'nothing seen' && claim.ok) {
      detail(words.say(claim.sentence, claim.values));
    }
    detail(words.say('demo.reasoning', { text: spoken(words, assessed.reasoning.line) }));
    if (step.closing === 'signs seen') {
      const first = assessed.reasoning.diseases
        .slice(0, 3)
        .map(
          (one) =>
            `${words.say(`signs.condition.${one.disease}.name`)} (${words.say(`signs.likelihood.${one.inWords}`)})`,
        );
      detail(words.say('demo.order', { conditions: first.join(', ') }));
      const onset = assessed.reasoning.timeSinceOnset;
      if (onset) detail(spoken(words, onset.sentence));
    } else detail(spoken(words, assessed.reasoning.couldHaveMissed.sentence));
    if (assessed.suspicion) {
      const { basis, rule } = assessed.suspicion;
      const article = rule?.article ?? '';
      detail(words.say('demo.basis', { basis: basis === 'inspector' ? 'inspector' : 'rule', article }));
    }
    // What was sealed is what the phone now reads back.
    const kept = (await book.state({ type: 'colony', id: colony.about.id }))?.assessments ?? [];
    const readBack = kept.find((one) => one.body.visit === this.#visit)?.body.result;
    demand(`result of colony ${step.label} on the phone`, readBack, assessed.result);
  }

  async #cleanDown(after: string | null, head: Head): Promise<void> {
    const colonies = await this.colonies();
    await this.#write(
      recordCleanDown({
        visit: await this.#running(),
        colonies,
        after: after === null ? null : this.#labelled(colonies, after).about.id,
        doneAt: this.#now(),
        gloves: 'changed',
        tool: 'flamed',
        phone: 'wiped',
        wentOnAfterWarning: false,
        remarks: '',
      }),
    );
    head('demo.clean-down', { where: after ?? 'exit' });
  }

  async #end(head: Head): Promise<void> {
    const apiary = await this.#site();
    const colonies = await this.colonies();
    const done = await this.#write(
      endVisit({
        visit: await this.#running(),
        apiary,
        colonies,
        drafts: {},
        endedAt: this.#now(),
        leftOpen: {},
      }),
    );
    const walked = walk(apiary, colonies, this.#visit);
    head('demo.ended', {
      opened: walked.filter((one) => one.word !== 'not opened').length,
      count: walked.length,
      open: done.findings.length,
    });
    const body = (await this.#running()).visit.current?.body;
    demand('end of the visit on the phone', body?.endedAt, this.#now());
  }

  /** Seals what an act proposes; a refusal ends the demonstration with its reason. */
  async #write<Extra>(act: Act<Extra>): Promise<Done & Extra> {
    if (!act.ok) throw new Error(spoken(this.#stage.words, { id: act.reason, values: act.values }));
    await this.#phone.book.write(act.proposals);
    return act;
  }

  async #running(): Promise<VisitState> {
    const state = await this.#phone.book.state({ type: 'visit', id: this.#visit });
    if (!state) throw new Error(`the phone has no visit ${this.#visit}`);
    return state;
  }

  async #site(): Promise<ApiaryState> {
    const state = await this.#phone.book.state({ type: 'apiary', id: this.#apiary });
    if (!state) throw new Error(`the phone has no apiary ${this.#apiary}`);
    return state;
  }

  #labelled(colonies: readonly ColonyState[], label: string): ColonyState {
    const colony = colonies.find((one) => one.colony.current?.body.label === label);
    if (!colony) throw new Error(`the apiary has no colony ${label}`);
    return colony;
  }

  #now(): string {
    return new Date(this.clock).toISOString();
  }
}

/** The office lead opens the visit over the wire; it must hold what the phone handed over on paper. */
async function officeReads(stage: Stage, visit: string, record: InspectionRecord, step: Head): Promise<void> {
  const { server } = stage;
  const office = await signInAt(server.address, accountOf(server, officeLead.id), server.demo.password);
  const page = await office.page(`/api/visits/${visit}`, visitPage);
  demand('end of the visit at the office', page.visit.visit.current?.body.endedAt, record.visit.endedAt);
  const examinations = page.colonies.flatMap((one) => one.examinations);
  const opened = record.colonies.filter((one) => one.look !== null);
  demand('examinations at the office', examinations.length, opened.length);
  for (const one of opened) {
    const seen = page.colonies.find((candidate) => candidate.colony === one.id);
    const result = seen?.assessments.find((made) => made.body.visit === visit)?.body.result;
    demand(`result of colony ${one.label} at the office`, result, one.result);
  }
  const suspects = page.colonies.filter((one) => one.assessments.some((made) => saysSuspect(made.body.result)));
  step('demo.office', { name: officeLead.name, examinations: examinations.length, suspects: suspects.length });
}

function accountOf(server: RunningServer, person: string): string {
  const account = server.demo.accounts.find((one) => one.person === person);
  if (!account) throw new Error(`the demo has no account for ${person}`);
  return account.email;
}

/** A sentence of the reasoning, of an act or of a paper. */
function spoken(words: Said, sentence: Sentence<'signs' | 'casework'>): string {
  return saySentence<SaidRoom>(words, sentence, demoTimeZone);
}

/** Ends the demonstration when something is not as it has to be. */
function demand<Value>(what: string, found: Value, expected: Value): void {
  if (!Object.is(found, expected)) {
    throw new Error(`${what}: expected ${JSON.stringify(expected)}, found ${JSON.stringify(found)}`);
  }
}
