import type { About, Entry } from '../entry.ts';
import type { AssessmentBody } from '../kinds/assessment.ts';
import type { CorrectionBody } from '../kinds/correction.ts';
import { lift } from '../kinds/lift.ts';
import type { Kinds } from '../kinds/registry.ts';
import { placingOf } from '../placing.ts';
import { aboutKey } from '../store.ts';
import type { Surroundings } from './author.ts';
import { entitiesNamed, findingKinds, type Statement } from './entities-named.ts';
import type { PushProgress } from './push-progress.ts';
import type { ScopeGrowth } from './scope-growth.ts';

/** What stands at the office around an entry: all that its author's rights are judged by. */
export async function surroundingsOf(entry: Entry, progress: PushProgress, kinds: Kinds): Promise<Surroundings> {
  const { growth } = progress;
  const { about } = entry.envelope;
  const { statement, judged } = await statementOf(entry, progress, kinds);
  // The record reads a correction as a word on the register of its entity, whatever it says that it corrects.
  const followers = placingOf(entry, kinds).follows.map(({ child }) => child);
  const named = [...followers, ...(statement === null ? [] : entitiesNamed(statement))].filter(
    (one) => aboutKey(one) !== aboutKey(about),
  );
  await growth.load(named);
  const visited = statement?.kind === 'visit' ? await progress.about(about) : [];
  return {
    statement,
    before: await growth.scopesOf(about),
    after: await growth.scopesWith(entry),
    named: await Promise.all(named.map((one) => growth.scopesOf(one))),
    agree: statement === null || !findingKinds.includes(statement.kind) || (await meet([about, ...named], growth)),
    judged: [...judged, ...visited.filter(({ envelope }) => envelope.kind === 'visit')],
  };
}

/** What the entry says, and the entries that it speaks over: the one corrected, the examination assessed. */
async function statementOf(
  { envelope, body }: Entry,
  progress: PushProgress,
  kinds: Kinds,
): Promise<{ readonly statement: Statement | null; readonly judged: readonly Entry[] }> {
  const { about } = envelope;
  const read = lift(kinds, envelope.kind, envelope.version, body);
  if (read.fault !== null) return { statement: null, judged: [] };
  if (read.kind.fold.as !== 'correction') {
    const statement = { kind: envelope.kind, about, body: read.body };
    const examination =
      envelope.kind === 'assessment' ? await progress.find((read.body as AssessmentBody).examination) : undefined;
    return { statement, judged: examination === undefined ? [] : [examination] };
  }
  const said = read.body as CorrectionBody;
  const corrected = await progress.find(said.corrects);
  const judged = corrected === undefined ? [] : [corrected];
  const kind = corrected?.envelope.kind ?? about.type;
  const saidThere = lift(kinds, kind, said.version, said.body);
  return { statement: saidThere.fault === null ? { kind, about, body: saidThere.body } : null, judged };
}

/** Whether there is an apiary at which all of these stand or ever stood; what is not known to stand anywhere is let pass. */
async function meet(entities: readonly About[], growth: ScopeGrowth): Promise<boolean> {
  const stands = await Promise.all(entities.map((one) => (one.type === 'apiary' ? [one.id] : apiariesOf(one, growth))));
  const [first, ...others] = stands.filter((sites) => sites.length > 0);
  return first === undefined || first.some((site) => others.every((sites) => sites.includes(site)));
}

async function apiariesOf(about: About, growth: ScopeGrowth): Promise<string[]> {
  const parents = await growth.parentsOf(about);
  return parents.filter(({ type }) => type === 'apiary').map(({ id }) => id);
}
