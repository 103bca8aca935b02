import { type VisitBody, visit } from '@combside/record/kinds/visit';
import type { ApiaryState, ColonyState, VisitState } from '@combside/record/states';
import { type Act, done, type Finding, finding, refused } from '../act.ts';
import { isTouched } from '../draft/draft-from-taps.ts';
import type { Tap } from '../draft/tap.ts';
import { seen } from '../register/seen.ts';
import { cleanDownOwed, cleanDownOwedAtExit } from './clean-down.ts';
import { assessmentAt, examinationAt, walk } from './walk.ts';

type Drafts = Readonly<Record<string, readonly Tap[]>>;

/** A visit with what was walked there. */
export interface WalkedVisit {
  readonly visit: VisitState;
  readonly apiary: ApiaryState;
  readonly colonies: readonly ColonyState[];
  readonly drafts: Drafts;
}

/** Everything that is still open at this visit, so that leaving is never silent. */
export function whatIsOpen({ visit: visitState, apiary, colonies, drafts }: WalkedVisit): Finding[] {
  const id = visitState.about.id;
  const found: Finding[] = [];
  for (const one of walk(apiary, colonies, id, drafts)) {
    const about = { type: 'colony', id: one.colony };
    const colony = colonies.find((candidate) => candidate.about.id === one.colony);
    if (isTouched(drafts[one.colony] ?? [])) {
      found.push(finding('casework.open.draft', 'owed', { colony: one.label }, about));
    } else if (one.word === 'not opened') {
      found.push(finding('casework.open.colony-not-opened', 'owed', { colony: one.label }, about));
    } else if (colony && examinationAt(colony, id) && !assessmentAt(colony, id)) {
      found.push(finding('casework.open.not-assessed', 'owed', { colony: one.label }, about));
    }
  }
  for (const owed of cleanDownOwed(visitState, colonies)) {
    const label = colonies.find((one) => one.about.id === owed.after)?.colony.current?.body.label ?? '';
    const about = owed.after === null ? null : { type: 'colony', id: owed.after };
    found.push(finding('casework.clean-down.owed-before-next', 'owed', { colony: label }, about));
  }
  if (cleanDownOwedAtExit(visitState, colonies)) {
    found.push(finding('casework.clean-down.owed-at-exit', 'owed', {}, visitState.about));
  }
  if (visitState.handovers.length === 0) {
    found.push(finding('casework.open.not-handed-over', 'owed', {}, visitState.about));
  }
  return found;
}

export interface EndVisit extends WalkedVisit {
  readonly endedAt: string;
  /** Why a colony was left unopened, by colony id. */
  readonly leftOpen: Readonly<Record<string, string>>;
}

/**
 * Ends a visit. Drafts have to be closed or taken back first; every colony left unopened needs its reason; a clean-down
 * owed has to be answered ("not done" is an answer). A result not handed over yet does not hold anybody back: it is said.
 */
export function endVisit(input: EndVisit): Act {
  const running = input.visit.visit.current?.body;
  if (!running?.startedAt) return refused('casework.refused.visit-not-started');
  if (running.endedAt !== null) return refused('casework.refused.visit-ended');
  if (running.apiary !== input.apiary.about.id) return refused('casework.refused.visit-elsewhere');
  if (input.endedAt < running.startedAt) return refused('casework.refused.time-runs-backward');
  const walked = walk(input.apiary, input.colonies, input.visit.about.id, input.drafts);
  const drafted = walked.filter((one) => one.word === 'being looked at');
  if (drafted.length > 0) {
    return refused('casework.refused.drafts-open', { colonies: drafted.map((one) => one.label).join(', ') });
  }
  const unopened = walked.filter((one) => one.word === 'not opened');
  const silent = unopened.filter((one) => !input.leftOpen[one.colony]?.trim());
  if (silent.length > 0) {
    return refused('casework.refused.colonies-unopened', {
      count: silent.length,
      colonies: silent.map((one) => one.label).join(', '),
    });
  }
  const owed = cleanDownOwed(input.visit, input.colonies);
  if (owed.length > 0 || cleanDownOwedAtExit(input.visit, input.colonies)) {
    return refused('casework.refused.clean-down-owed');
  }
  const body: VisitBody = {
    ...running,
    endedAt: input.endedAt,
    leftOpen: unopened.map((one) => ({ colony: one.colony, reason: input.leftOpen[one.colony]?.trim() ?? '' })),
  };
  return done(
    [
      {
        kind: visit.kind,
        version: visit.version,
        about: input.visit.about,
        body,
        replaces: seen(input.visit.visit),
      },
    ],
    whatIsOpen(input).filter(
      (one) => one.id === 'casework.open.not-handed-over' || one.id === 'casework.open.not-assessed',
    ),
  );
}
