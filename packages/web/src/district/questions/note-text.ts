import type { Words } from '@combside/words/words';
import { sayId } from '../../ui/say-sentence.ts';
import type { Values } from './inputs-in-address.ts';
import type { Answer, Question } from './question.ts';
import { sayAnswer, sayShown } from './spoken.ts';

/** An answer as a note that stands by itself: the question, the answer, what was stated and taken, where from, the link. */
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
  return [
    sayId(words, `questions.${question.id}`),
    ...answer.cautions.map((id) => sayId(words, `disposal.caution.${id}`)),
    ...answer.said.map((one) => sayAnswer(words, one)),
    '',
    ...stated,
    '',
    ...answer.takes.map((id) => sayId(words, `questions.${id}`)),
    sayId(words, 'questions.note.sources', { keys: answer.sources.join(', ') }),
    `/district/questions/${question.id}${address ? `?${address}` : ''}`,
  ].join('\n');
}
