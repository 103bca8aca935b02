import type { Words } from '@combside/words/words';
import type { Values } from './inputs-in-address.ts';
import { type Answer, fieldWord, type Question } from './question.ts';
import { sayAnswer, sayShown } from './spoken.ts';

/** The record keeps notes of so many characters. */
const longestNote = 5000;

/**
 * An answer as a note that stands by itself: the question, the answer, what was stated and taken, where from, the link.
 * Never longer than the record keeps: then the words are cut before the link, which brings the rest back. A link that
 * would leave the words less than half is left out, and the words say so.
 */
export function noteText(words: Words, question: Question, values: Values, answer: Answer, address: string): string {
  const stated = question.inSight(values as never).flatMap((name) => {
    const field = question.fields[name];
    const value = values[name] ?? null;
    if (!field || value === null || value === '') return [];
    const shown =
      field.kind === 'number'
        ? sayShown(words, field.shown, value as number)
        : field.kind === 'choice'
          ? words.say(fieldWord(question.id, name, String(value)))
          : field.kind === 'day'
            ? words.day(String(value))
            : String(value).replaceAll('\n', '; ');
    return [words.say('questions.note.input', { label: words.say(fieldWord(question.id, name)), value: shown })];
  });
  const link = `\n/district/questions/${question.id}${address ? `?${address}` : ''}`;
  const end = link.length <= longestNote / 2 ? link : `\n${words.say('questions.note.no-link')}`;
  const note = [
    words.say(`questions.${question.id}`),
    ...answer.cautions.map((id) => words.say(`disposal.caution.${id}`)),
    ...answer.said.map((one) => sayAnswer(words, one)),
    '',
    ...stated,
    '',
    ...answer.takes.map((id) => words.say(`questions.${id}`)),
    ...(answer.sources.length > 0 ? [words.say('questions.note.sources', { keys: answer.sources.join(', ') })] : []),
  ].join('\n');
  const room = longestNote - end.length;
  return (note.length <= room ? note : `${note.slice(0, room - 1)}…`) + end;
}
