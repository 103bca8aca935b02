import type { Pack } from '@combside/law/pack';
import { citation, type SourceId } from '@combside/sources/bibliography';
import { type Sentence, saySentence } from '@combside/words/sentence';
import type { Words } from '@combside/words/words';
import type { Diagnosis } from './diagnose-output.ts';

type SpokenRoom = 'reasoning' | 'signs' | 'casework';
type Spoken = Words<SpokenRoom>;

/**
 * The diagnosis as a page of text, in the order of the page on the screen, with every number. Sources are numbered in the
 * order in which they are first named, and listed at the end.
 */
export function diagnosisInWords(found: Diagnosis, pack: Pack, words: Spoken): string {
  const { assessment: whole } = found;
  const named = {
    condition: (id: string) => words.sayOne('signs.condition.*.name', id) ?? id,
    check: (id: string) => words.sayOne('signs.check.*.name', id) ?? id,
    sign: (id: string) => words.sayOne('signs.sign.*.name', id) ?? id,
  };
  const say = (sentence: Sentence<'signs'>) => saySentence<SpokenRoom>(words, sentence, 'UTC');
  // Nothing is certain here, so no number is rounded to none or to all.
  const share = (value: number) =>
    value < 0.0005
      ? words.say('reasoning.share-under', { share: words.share(0.001, 1) })
      : value > 0.9995
        ? words.say('reasoning.share-over', { share: words.share(0.999, 1) })
        : words.share(value, 1);
  const estimate = (point: number, interval: { readonly low: number; readonly high: number }) =>
    words.say('reasoning.interval', { value: share(point), low: share(interval.low), high: share(interval.high) });
  const cited: SourceId[] = [];
  const sources = (ids: readonly SourceId[]) => {
    cited.push(...ids.filter((id) => !cited.includes(id)));
    return ids.length > 0 ? ` [${ids.map((id) => cited.indexOf(id) + 1).join(', ')}]` : '';
  };
  const reasons = (direction: 'for' | 'against') =>
    whole.reasons.reasons
      .filter((one) => one.direction === direction)
      .map(
        (one) =>
          `  ${say(one.sentence)}${sources(one.sources)}${one.expertBand ? ` ${words.say('reasoning.expert-band')}` : ''}`,
      );
  const section = (title: string, lines: readonly string[]) => (lines.length === 0 ? [] : ['', title, ...lines]);

  const lines = [
    words.say('reasoning.command.read-as', { what: found.readAs, pack: `${pack.title}, ${pack.version}` }),
    ...(pack.invented ? [words.say('reasoning.command.invented')] : []),
    ...(found.setAside.length > 0
      ? [words.say('reasoning.command.set-aside', { what: words.list(found.setAside) })]
      : []),
    ...(found.result === null ? [] : [words.sayOne('casework.result.*', found.result) ?? found.result]),
    ...(found.suspicionRule
      ? [words.say('casework.examined.rule-suspicion', { article: found.suspicionRule.article })]
      : []),
    '',
    ...whole.states.map((one) => say(one.sentence)),
    ...whole.cautions.map((one) => `! ${say(one.sentence)}`),
    ...section(
      words.say('reasoning.first'),
      whole.next.first.map((one, i) => `  ${i + 1}. ${say(one.sentence)}`),
    ),
    ...section(words.say('reasoning.order'), [
      ...whole.diseases.map((one, i) => {
        const stages = one.stages
          ? `; ${words.say('reasoning.early')} ${share(one.stages.early.point)}, ${words.say('reasoning.advanced')} ${share(one.stages.advanced.point)}`
          : '';
        const likely = words.say(`signs.likelihood.${one.inWords}`);
        return `  ${String(i + 1).padStart(2)}. ${named.condition(one.disease)}: ${likely}, ${estimate(one.point, one.interval)}${stages}`;
      }),
      `      ${words.say('reasoning.none')}: ${estimate(whole.none.point, whole.none.interval)}`,
      `      ${words.say('reasoning.notifiable')}: ${estimate(whole.notifiable.point, whole.notifiable.interval)}`,
      `  ${words.say('reasoning.expert-bands')}`,
      `  ${words.say('reasoning.numbers-standing', {
        bands: whole.standing.expertBands,
        published: whole.standing.published,
        draws: whole.convergence.draws,
        width: share(whole.convergence.widestEnd),
      })}`,
    ]),
    ...section(words.say('reasoning.for'), reasons('for')),
    ...section(words.say('reasoning.against'), reasons('against')),
    ...section(
      words.say('reasoning.silent'),
      whole.reasons.silent.map((one) => `  ${say(one.sentence)}`),
    ),
    ...section(
      words.say('reasoning.next'),
      whole.next.atHive.map((one, i) => {
        const minutes = words.say('reasoning.next-minutes', { minutes: words.unit(one.cost, 'min') });
        return `  ${i + 1}. ${named.check(one.check)} (${minutes}). ${say(one.how)}${sources(one.sources)}`;
      }),
    ),
    ...section(
      words.say('reasoning.laboratory'),
      whole.next.inLaboratory.map((one, i) => {
        const days = words.say('reasoning.laboratory-days', { days: words.unit(one.cost, 'day', 'long') });
        return `  ${i + 1}. ${named.check(one.check)} (${days}). ${say(one.how)}${sources(one.sources)}`;
      }),
    ),
    ...section(
      words.say('reasoning.advice'),
      whole.advice.map((one) => `  ${say(one.sentence)}${sources(one.sources)}`),
    ),
    ...section(words.say('reasoning.missed'), [
      `  ${say(whole.couldHaveMissed.sentence)}`,
      ...whole.couldHaveMissed.limits.map((limit) => `  - ${words.say(`signs.limit.${limit}`)}`),
      ...whole.couldHaveMissed.rows.map(
        (row) => `  ${words.say('reasoning.cells', { count: row.cells })}: ${estimate(row.chance, row)}`,
      ),
    ]),
    ...section(
      words.say('reasoning.not-looked'),
      whole.notLookedFor.length === 0 ? [] : [`  ${words.list(whole.notLookedFor.map((sign) => named.sign(sign)))}`],
    ),
    ...section(
      words.say('reasoning.onset'),
      whole.timeSinceOnset
        ? [
            `  ${say(whole.timeSinceOnset.sentence)}${sources(whole.timeSinceOnset.sources)}`,
            `  ${words.say('reasoning.onset-window')}`,
          ]
        : [],
    ),
    ...section(
      words.say('reasoning.severity'),
      whole.severity
        ? [
            `  ${words.say('reasoning.severity-line', {
              sum: whole.severity.sum,
              mean: words.number(whole.severity.mean, 2),
              frames: whole.severity.frames.length,
            })} ${words.say('reasoning.severity-scale')}`,
          ]
        : [],
    ),
    '',
    words.say('reasoning.command.advises'),
  ];
  const listed = section(
    words.say('reasoning.source'),
    cited.map((id, at) => `  [${at + 1}] ${citation(id)}`),
  );
  return [...lines, ...listed].join('\n');
}
