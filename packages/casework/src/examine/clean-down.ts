import { type CleanDownBody, cleanDown } from '@combside/record/kinds/clean-down';
import type { ColonyState, VisitState } from '@combside/record/states';
import { type Act, done, type Finding, finding, refused } from '../act.ts';
import { suspectAtVisit } from '../result/earlier-suspicion.ts';
import { saysSuspect } from '../result/results-by-gravity.ts';

/** A clean-down that is owed: after which suspect colony, or at the exit. */
export interface OwedCleanDown {
  readonly where: 'before the next colony' | 'at the exit';
  readonly after: string | null;
}

/**
 * What is owed before the next colony is opened: after each colony under suspicion at this visit, one answered
 * clean-down, done after the suspicion was stated.
 */
export function cleanDownOwed(visit: VisitState, colonies: readonly ColonyState[]): OwedCleanDown[] {
  return colonies
    .filter((colony) => {
      const stated = lastSuspicion(colony, visit.about.id);
      if (stated === null) return false;
      return !visit.cleanDowns.some((one) => one.body.after === colony.about.id && one.body.doneAt >= stated);
    })
    .map((colony) => ({ where: 'before the next colony', after: colony.about.id }));
}

/** What is owed before leaving: one clean-down at the exit, after the last examination, when a suspicion was stated here. */
export function cleanDownOwedAtExit(visit: VisitState, colonies: readonly ColonyState[]): OwedCleanDown | null {
  if (!colonies.some((one) => suspectAtVisit(one, visit.about.id))) return null;
  const opened = colonies
    .flatMap((one) => one.examinations)
    .filter((one) => one.body.visit === visit.about.id)
    .map((one) => one.body.observedAt);
  const last = opened.sort().at(-1) ?? '';
  const done = visit.cleanDowns.some((one) => one.body.after === null && one.body.doneAt >= last);
  return done ? null : { where: 'at the exit', after: null };
}

/**
 * What to say before a colony is opened: the clean-down still owed, and the warning when going on from a suspect colony
 * to one that nobody suspects. Washing soda cleans but does not kill foulbrood spores [APNOTES], and it says so.
 */
export function beforeOpening(visit: VisitState, colonies: readonly ColonyState[], next: string): Finding[] {
  const found = cleanDownOwed(visit, colonies)
    .filter((one) => one.after !== next)
    .map((one) =>
      finding(
        'casework.clean-down.owed-before-next',
        'owed',
        { colony: labelOf(colonies, one.after) },
        one.after === null ? null : { type: 'colony', id: one.after },
      ),
    );
  const going = colonies.find((one) => one.about.id === next);
  const suspects = colonies.filter((one) => one.about.id !== next && suspectAtVisit(one, visit.about.id));
  const unsuspected = going !== undefined && !everSuspect(going);
  if (suspects.length > 0 && unsuspected) {
    found.push(
      finding(
        'casework.clean-down.suspect-to-unsuspected',
        'warns',
        { from: suspects.map((one) => labelOf(colonies, one.about.id)).join(', '), to: labelOf(colonies, next) },
        going.about,
      ),
    );
  }
  if (found.length > 0) found.push(finding('casework.clean-down.soda', 'tells'));
  return found;
}

/** What was answered; each of the three has to be. */
export interface CleanDownAnswer {
  readonly visit: VisitState;
  readonly colonies: readonly ColonyState[];
  /** The suspect colony after which it was done; null at the exit. */
  readonly after: string | null;
  readonly doneAt: string;
  readonly gloves: CleanDownBody['gloves'] | null;
  readonly tool: CleanDownBody['tool'] | null;
  readonly phone: CleanDownBody['phone'] | null;
  readonly wentOnAfterWarning: boolean;
  readonly remarks: string;
}

/** Writes a clean-down down. "Not done" is an answer too, and is said again as a warning. */
export function recordCleanDown(input: CleanDownAnswer): Act {
  const running = input.visit.visit.current?.body;
  if (!running?.startedAt) return refused('casework.refused.visit-not-started');
  if (running.endedAt !== null) return refused('casework.refused.visit-ended');
  const { gloves, tool, phone } = input;
  if (gloves === null || tool === null || phone === null) {
    const missing = gloves === null ? 'gloves' : tool === null ? 'tool' : 'phone';
    return refused('casework.refused.answer-missing', { question: missing });
  }
  if (input.after !== null) {
    const colony = input.colonies.find((one) => one.about.id === input.after);
    if (!colony || !suspectAtVisit(colony, input.visit.about.id)) {
      return refused('casework.refused.no-suspicion-before');
    }
  }
  if (input.doneAt < running.startedAt) return refused('casework.refused.time-runs-backward');
  const body: CleanDownBody = {
    after: input.after,
    doneAt: input.doneAt,
    gloves,
    tool,
    phone,
    wentOnAfterWarning: input.wentOnAfterWarning,
    remarks: input.remarks,
  };
  const left = gloves === 'not changed' || tool === 'not done' || phone === 'not wiped';
  return done(
    [{ kind: cleanDown.kind, version: cleanDown.version, about: input.visit.about, body, replaces: [] }],
    left ? [finding('casework.clean-down.not-done', 'warns', {}, input.visit.about)] : [],
  );
}

function lastSuspicion(colony: ColonyState, visit: string): string | null {
  const stated = colony.assessments
    .filter((one) => one.body.visit === visit && saysSuspect(one.body.result))
    .map((one) => one.body.statedAt);
  return stated.sort().at(-1) ?? null;
}

function everSuspect(colony: ColonyState): boolean {
  return colony.assessments.some((one) => saysSuspect(one.body.result));
}

function labelOf(colonies: readonly ColonyState[], id: string | null): string {
  return colonies.find((one) => one.about.id === id)?.colony.current?.body.label ?? '';
}
