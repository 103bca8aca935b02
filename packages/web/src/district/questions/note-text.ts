import type { Words } from '@combside/words/words';
import { sayId } from '../../ui/say-sentence.ts';
import type { Values } from './inputs-in-address.ts';
import type { Answer, Question } from './question.ts';
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
    const word = `questions.${question.id}.${name}`;
    const shown =
      field.kind === 'number'
        ? sayShown(words, field.shown, value as number)
        : field.kind === 'choice'
          ? sayId(words, `${word}.${value}`)
          : field.kind === 'day'
            ? words.day(String(value))
            : String(value).replaceAll('\n', '; ');
    return [sayId(words, 'questions.note.input', { label: sayId(words, word), value: shown })];
  });
  const link = `\n/district/questions/${question.id}${address ? `?${address}` : ''}`;
  const end = link.length <= longestNote / 2 ? link : `\n${sayId(words, 'questions.note.no-link')}`;
  const note = [
    sayId(words, `questions.${question.id}`),
    ...answer.cautions.map((id) => sayId(words, `disposal.caution.${id}`)),
    ...answer.said.map((one) => sayAnswer(words, one)),
    '',
    ...stated,
    '',
    ...answer.takes.map((id) => sayId(words, `questions.${id}`)),
    ...(answer.sources.length > 0 ? [sayId(words, 'questions.note.sources', { keys: answer.sources.join(', ') })] : []),
  ].join('\n');
  const room = longestNote - end.length;
  return (note.length <= room ? note : `${note.slice(0, room - 1)}…`) + end;
}
