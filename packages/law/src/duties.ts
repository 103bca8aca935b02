import { millisecondsOf } from '@combside/calendar/instant';
import { later, type Span } from '@combside/calendar/span';
import type { DutyKind, FactKind, Pack, Rule } from './pack.ts';

/** Something that was written down and that the law looks at. `at` is when it happened, not when it was typed. */
export interface Fact {
  readonly fact: FactKind;
  readonly at: string;
  /** The condition or find it is about; null where it is about none (a notice served, a disinfection accepted). */
  readonly condition: string | null;
  readonly apiary: string;
  readonly colony: string | null;
}

/** What the law asks, of whom, by when, and why. */
export interface Duty {
  /** The same for the same rule, place and start, whatever the order of the facts: `rule/apiary/colony/start`. */
  readonly id: string;
  readonly rule: string;
  readonly duty: DutyKind;
  readonly owedBy: Rule['owedBy'];
  readonly condition: string | null;
  readonly apiary: string;
  readonly colony: string | null;
  readonly since: string;
  readonly notBefore: string | null;
  readonly due: string | null;
  readonly promptness: Rule['promptness'];
  /** How often it has been met, of how often it has to be. */
  readonly met: number;
  readonly times: number;
  readonly state: 'open' | 'late' | 'met' | 'ended';
  readonly radiusKilometres: number | null;
  readonly article: string;
  readonly source: string;
  readonly standing: Rule['standing'];
  readonly doubts: string;
}

/**
 * What is owed, given what is known.
 *
 * Facts may come in any order. One duty stands for each rule and place (colony or apiary, as the rule says) from the
 * first fact that starts it until a fact meets or ends it; the same fact later starts it anew. A fact that meets a duty
 * before the earliest time, or sooner after the last than the gap, does not count. A rule known only from memory yields
 * a duty to ask the authority, without a time: no number of it is computed with.
 *
 * @param facts everything written down about the apiaries asked for
 * @param now the instant at which "late" is judged, handed in by the edge
 * @returns what presses first ("at once", or a time nobody is sure of), then by due time, met and ended ones last
 * @throws RangeError when an instant cannot be read
 */
export function duties(facts: readonly Fact[], pack: Pack, now: string): Duty[] {
  const inTime = [...facts].sort((a, b) => millisecondsOf(a.at) - millisecondsOf(b.at) || compare(keyOf(a), keyOf(b)));
  return pack.rules.flatMap((rule) => owedBy(rule, inTime, pack, now)).sort(byUrgency);
}

interface Running {
  since: Fact;
  met: number;
  lastMet: string | null;
  state: 'open' | 'met' | 'ended';
}

function owedBy(rule: Rule, inTime: readonly Fact[], pack: Pack, now: string): Duty[] {
  const running = new Map<string, Running>();
  const all: { place: string; one: Running }[] = [];
  for (const fact of inTime) {
    if (starts(rule, fact, pack)) {
      const place = placeOf(rule, fact);
      const before = running.get(place);
      if (before && before.state === 'open') continue;
      const one: Running = { since: fact, met: 0, lastMet: null, state: 'open' };
      running.set(place, one);
      all.push({ place, one });
      continue;
    }
    const meets = rule.metBy.includes(fact.fact);
    const ends = rule.endedBy.includes(fact.fact);
    if (!meets && !ends) continue;
    for (const one of running.values()) {
      if (one.state !== 'open' || !touches(one.since, fact, rule)) continue;
      if (ends) one.state = 'ended';
      else if (counts(rule, one, fact)) {
        one.met += 1;
        one.lastMet = fact.at;
        if (one.met >= rule.times) one.state = 'met';
      }
    }
  }
  return all.map(({ one }) => dutyOf(rule, one, now));
}

function starts(rule: Rule, fact: Fact, pack: Pack): boolean {
  if (fact.fact !== rule.when.fact) return false;
  if (rule.when.conditions.length > 0) return fact.condition !== null && rule.when.conditions.includes(fact.condition);
  if (fact.condition === null) return true;
  return (
    pack.notifiable.some((one) => one.condition === fact.condition) ||
    pack.notifiableFinds.some((one) => one.find === fact.condition)
  );
}

function placeOf(rule: Rule, fact: Fact): string {
  return rule.scope === 'colony'
    ? `${fact.apiary}/${fact.colony ?? ''}/${fact.condition ?? ''}`
    : `${fact.apiary}//${fact.condition ?? ''}`;
}

/** Whether a later fact is about the place and condition of a running duty. What is said of an apiary holds for its colonies. */
function touches(start: Fact, fact: Fact, rule: Rule): boolean {
  if (fact.apiary !== start.apiary) return false;
  if (fact.condition !== null && start.condition !== null && fact.condition !== start.condition) return false;
  return rule.scope === 'apiary' || fact.colony === null || fact.colony === start.colony;
}

function counts(rule: Rule, one: Running, fact: Fact): boolean {
  const at = millisecondsOf(fact.at);
  if (rule.notBefore && rule.standing !== 'from memory' && at < millisecondsOf(later(one.since.at, rule.notBefore)))
    return false;
  return !(rule.gap && one.lastMet !== null && at < millisecondsOf(later(one.lastMet, rule.gap)));
}

function dutyOf(rule: Rule, one: Running, now: string): Duty {
  const certain = rule.standing !== 'from memory';
  const time = (span: Span | null): string | null => (span && certain ? later(one.since.at, span) : null);
  const due = time(rule.within);
  const afterGap = rule.gap && certain && one.lastMet !== null ? later(one.lastMet, rule.gap) : null;
  const late = one.state === 'open' && due !== null && millisecondsOf(due) < millisecondsOf(now);
  const colony = rule.scope === 'colony' ? one.since.colony : null;
  return {
    id: [rule.id, one.since.apiary, colony ?? '', one.since.condition ?? '', one.since.at].join('/'),
    rule: rule.id,
    duty: certain ? rule.duty : 'ask the authority',
    owedBy: rule.owedBy,
    condition: one.since.condition,
    apiary: one.since.apiary,
    colony,
    since: one.since.at,
    notBefore: afterGap ?? time(rule.notBefore),
    due,
    promptness: certain ? rule.promptness : 'the law names no time',
    met: one.met,
    times: rule.times,
    state: late ? 'late' : one.state,
    radiusKilometres: certain ? rule.radiusKilometres : null,
    article: rule.article,
    source: rule.source,
    standing: rule.standing,
    doubts: rule.doubts,
  };
}

function byUrgency(a: Duty, b: Duty): number {
  return finished(a) - finished(b) || urgency(a) - urgency(b) || compare(a.rule, b.rule) || compare(a.id, b.id);
}

function finished(one: Duty): number {
  return one.state === 'met' || one.state === 'ended' ? 1 : 0;
}

/** Pressing words and times nobody is sure of come first, then by due time, then what runs on. */
function urgency(one: Duty): number {
  if (one.due !== null) return millisecondsOf(one.due);
  const pressing =
    one.promptness === 'at once' || one.promptness === 'without delay' || one.promptness === 'as soon as possible';
  return pressing || one.duty === 'ask the authority' ? -1 : Number.MAX_SAFE_INTEGER;
}

function keyOf(fact: Fact): string {
  return [fact.apiary, fact.colony ?? '', fact.condition ?? '', fact.fact].join('/');
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
