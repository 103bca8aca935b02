import { describe, expect, test } from 'vitest';
import { type QuestionWords, readVisitQuestion } from './read-visit-question.ts';

const words: QuestionWords = {
  months: ['january', 'february', 'march', 'april', 'may', 'june'],
  today: 'today',
  yesterday: 'yesterday',
  results: [{ word: 'suspect', means: ['suspect', 'remains suspect'] }],
};
// The first of a month, so that yesterday lies in another one.
const now = new Date(2026, 4, 1, 15).toISOString();
const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
const day = (year: number, month: number, date: number) => new Date(year, month - 1, date).toISOString();

describe('a question about visits', () => {
  test.each([
    ['2026-05-03', day(2026, 5, 3), day(2026, 5, 4)],
    ['3.5.2026', day(2026, 5, 3), day(2026, 5, 4)],
    ['31/12/2025', day(2025, 12, 31), day(2026, 1, 1)],
    ['3 May 2026', day(2026, 5, 3), day(2026, 5, 4)],
    ['3. May 2026', day(2026, 5, 3), day(2026, 5, 4)],
    ['May 2026', day(2026, 5, 1), day(2026, 6, 1)],
    ['2026-12', day(2026, 12, 1), day(2027, 1, 1)],
    ['2025', day(2025, 1, 1), day(2026, 1, 1)],
    ['today', day(2026, 5, 1), day(2026, 5, 2)],
    ['yesterday', day(2026, 4, 30), day(2026, 5, 1)],
  ])('names days: %s', (typed, from, to) => {
    expect(readVisitQuestion(typed, words, now, here)).toEqual({ text: '', from, to, results: [] });
  });

  test('keeps the other words, wherever the day and the result stand among them', () => {
    expect(readVisitQuestion('Hazel suspect 3 May 2026 Bank', words, now, here)).toEqual({
      text: 'hazel bank',
      from: day(2026, 5, 3),
      to: day(2026, 5, 4),
      results: ['suspect', 'remains suspect'],
    });
  });

  test.each([
    '31.2.2026',
    '2026-13',
    '2026-02-30',
    '3 May',
    'May',
    'hazel 3',
    '12345',
    '9999-12',
    '31.12.9999',
    '0050-05',
  ])('takes %s for words, since it names no day', (typed) => {
    expect(readVisitQuestion(typed, words, now, here)).toMatchObject({ text: typed.toLowerCase(), from: null });
  });
});
