import { type Change, whatChanged } from '@combside/casework/examine/what-changed';
import type { AssessmentBody } from '@combside/record/kinds/assessment';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { Folded } from '@combside/record/states';
import type { WordPattern } from '@combside/words/rooms';
import type { Words } from '@combside/words/words';
import { sayWord } from './say-sentence.ts';
import { useWords } from './words-context.tsx';

interface CorrectionsShownProps {
  readonly examined: Folded<ExaminationBody>;
  /** Of the colony; those that rest on this examination are looked up. */
  readonly assessments: readonly Folded<AssessmentBody>[];
  readonly nameOf: (person: string) => string;
  readonly timeZone: string;
}

/** Every correction of an examination: who, when, why, and each thing as it read before and as it reads after. */
export function CorrectionsShown({ examined, assessments, nameOf, timeZone }: CorrectionsShownProps) {
  const words = useWords();
  if (examined.corrections.length === 0) return null;
  const results = assessments
    .filter((one) => one.body.examination === examined.written.entry)
    .sort((a, b) => (a.body.statedAt < b.body.statedAt ? -1 : 1))
    .map((one) => one.body.result);
  return (
    <section className="stack close">
      {examined.corrections.map(({ written, reason, body }, place) => {
        const before = examined.corrections[place - 1]?.body ?? examined.original;
        const result = { before: results[place], after: results[place + 1] };
        return (
          <div key={written.entry} className="caution stack close">
            <p>
              {words.say('casework.correction.by', {
                name: nameOf(written.by),
                when: words.dayAndTime(written.at, timeZone),
                reason,
              })}
            </p>
            <ul>
              {result.before !== undefined && result.after !== undefined && result.before !== result.after && (
                <li>
                  {words.say('casework.correction.line', {
                    what: words.say('casework.correction.result'),
                    before: sayWord(words, 'casework.result.*', result.before),
                    after: sayWord(words, 'casework.result.*', result.after),
                  })}
                </li>
              )}
              {whatChanged(before, body).map((change) => (
                <li key={keyOf(change)}>{changeWords(words, change)}</li>
              ))}
            </ul>
          </div>
        );
      })}
      <p className="quiet">{words.say('casework.correction.stands')}</p>
    </section>
  );
}

function keyOf(change: Change): string {
  return change.part === 'sign' ? `sign ${change.sign}` : change.part === 'find' ? `find ${change.find}` : change.part;
}

/** One change in a sentence: what, as it read before, as it reads now. */
function changeWords(words: Words, change: Change): string {
  const line = (what: string, before: string, after: string) =>
    words.say('casework.correction.line', { what, before, after });
  const unsaid = words.say('casework.correction.nothing-said');
  const word = <const Pattern extends string>(pattern: WordPattern<'casework', Pattern>, value: string | null) =>
    value === null ? unsaid : (words.sayOne<Pattern>(pattern, value) ?? value);
  switch (change.part) {
    case 'sign':
      return line(
        sayWord(words, 'signs.sign.*.name', change.sign),
        lookedWords(words, change.before),
        lookedWords(words, change.after),
      );
    case 'find':
      return line(
        sayWord(words, 'casework.find.*', change.find),
        lookedWords(words, change.before),
        lookedWords(words, change.after),
      );
    default:
  }
  const what = words.say(`casework.correction.${change.part}`);
  switch (change.part) {
    case 'claim':
      return line(
        what,
        word('casework.correction.claim.*', change.before),
        word('casework.correction.claim.*', change.after),
      );
    case 'hiveState':
      return line(what, word('casework.hive-state.*', change.before), word('casework.hive-state.*', change.after));
    case 'depth':
      return line(what, word('casework.depth.*', change.before), word('casework.depth.*', change.after));
    case 'light':
      return line(what, word('casework.light.*', change.before), word('casework.light.*', change.after));
    case 'hold':
      return line(what, word('casework.hold.*', change.before), word('casework.hold.*', change.after));
    case 'beesShaken': {
      const shaken = (said: boolean | null) => word('casework.shaken.*', said === null ? null : said ? 'yes' : 'no');
      return line(what, shaken(change.before), shaken(change.after));
    }
    case 'boxes':
      return line(what, boxWords(words, change.before), boxWords(words, change.after));
    case 'sealedBroodCombSides': {
      const sides = (said: number | null) => (said === null ? unsaid : words.number(said, 2));
      return line(what, sides(change.before), sides(change.after));
    }
    case 'medicines':
    case 'combChanges': {
      const answer = (said: ExaminationBody['medicines']) =>
        [word('casework.answer.*', said.asked ? said.answer : 'not asked'), said.lastOn && words.day(said.lastOn)]
          .filter(Boolean)
          .join(', ');
      return line(what, answer(change.before), answer(change.after));
    }
    case 'ropeTests': {
      const threads = (tests: ExaminationBody['ropeTests']) =>
        tests.length === 0
          ? unsaid
          : words.list(
              tests.map(
                (one) => `${words.unit(one.threadMillimetres, 'mm')} (${word('casework.tissue.*', one.tissue)})`,
              ),
            );
      return line(what, threads(change.before), threads(change.after));
    }
    case 'remarks':
      return line(what, change.before ? `“${change.before}”` : unsaid, change.after ? `“${change.after}”` : unsaid);
    case 'photographs':
      return line(what, String(change.before.length), String(change.after.length));
    default:
      return words.say('casework.correction.changed', { what });
  }
}

function lookedWords(
  words: Words,
  looked: {
    outcome: string;
    count?: string | null;
    amount?: string | null;
    places?: ExaminationBody['signs'][number]['places'];
  } | null,
): string {
  if (looked === null) return words.say('casework.outcome.not looked for');
  const affected = looked.places?.map(
    (one) => `${one.box} ${one.frame ?? ''}: ${one.cellsAffected ?? 0}/${one.cellsOpened ?? 0}`,
  );
  return [
    sayWord(words, 'casework.outcome.*', looked.outcome),
    looked.count && sayWord(words, 'casework.count.*', looked.count),
    looked.amount && sayWord(words, 'casework.amount.*', looked.amount),
    affected?.length ? `(${affected.join('; ')})` : null,
  ]
    .filter(Boolean)
    .join(', ');
}

function boxWords(words: Words, boxes: ExaminationBody['boxes']): string {
  return words.list(
    boxes.map((one) =>
      words.say('casework.correction.box', {
        seen: one.framesSeen,
        held: one.framesHeld,
        box: one.box,
        sides: sayWord(words, 'casework.sides.*', one.sides),
      }),
    ),
  );
}
