import type { Act, Done } from '@combside/casework/act';
import { asInspector, demoAuthority, demoTimeZone, inspectorOfTheDay } from '@combside/casework/demo/people';
import type { WalkStep } from '@combside/casework/demo/walkthrough';
import { draftFrom } from '@combside/casework/draft/draft-from-taps';
import { beforeOpening, recordCleanDown } from '@combside/casework/examine/clean-down';
import { closeColony } from '@combside/casework/examine/close-colony';
import { endVisit } from '@combside/casework/examine/end-visit';
import { fullClaim } from '@combside/casework/examine/nothing-seen';
import { startVisit } from '@combside/casework/examine/start-visit';
import { walk } from '@combside/casework/examine/walk';
import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { makeInspectionRecord } from '@combside/casework/report/make-inspection-record';
import type { ApiaryState, ColonyState, VisitState } from '@combside/record/states';
import { hasher } from '../node-ports.ts';
import type { Phone } from './phone.ts';
import { demand, type Stage, spoken } from './stage.ts';

/** A visit that stands in the day's list. */
export interface PlannedVisit {
  readonly visit: string;
  readonly apiary: string;
  readonly plannedFor: string;
}

/** The visit, step by step, on the phone's own record. */
export class Journey {
  clock: number;
  readonly #stage: Stage;
  readonly #phone: Phone;
  readonly #visit: string;
  readonly #apiary: string;

  /** @param planned the visit, as it stands in the day's list */
  constructor(stage: Stage, phone: Phone, planned: PlannedVisit) {
    this.#stage = stage;
    this.#phone = phone;
    this.#visit = planned.visit;
    this.#apiary = planned.apiary;
    this.clock = Date.parse(planned.plannedFor);
  }

  async take(step: WalkStep): Promise<void> {
    this.clock += 9 * 60_000;
    this.#phone.setClock(this.clock);
    if (step.step === 'start') await this.#start(step);
    else if (step.step === 'colony') await this.#look(step);
    else if (step.step === 'clean down') await this.#cleanDown(step.after);
    else await this.#end();
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

  async #start(step: Extract<WalkStep, { step: 'start' }>): Promise<void> {
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
    this.#stage.step('demo.started', {
      registered: apiary.apiary.current?.body.coloniesRegistered ?? 0,
      counted: step.coloniesCounted,
    });
    for (const one of done.findings.filter((found) => found.weight === 'warns')) {
      this.#stage.detail(this.#stage.words.say('demo.warning', { text: spoken(this.#stage.words, one) }));
    }
  }

  async #look(step: Extract<WalkStep, { step: 'colony' }>): Promise<void> {
    const { words, step: tell, detail } = this.#stage;
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
    tell('demo.colony', { label: step.label, result: words.say(`casework.result.${assessed.result}`) });
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

  async #cleanDown(after: string | null): Promise<void> {
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
    this.#stage.step('demo.clean-down', { where: after ?? 'exit' });
  }

  async #end(): Promise<void> {
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
    this.#stage.step('demo.ended', {
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
