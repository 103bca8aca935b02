import { dayOn, daysLater } from '@combside/calendar/day';
import { monthsLater } from '@combside/calendar/months-later';
import type { ResultWord } from '@combside/casework/result/results-by-gravity';
import { dayInZone, startOfDay } from '../../app/day-in-zone.ts';

/** What was typed into the search, as a question about visits. */
export interface VisitQuestion {
  /** What is neither a day nor a result: words of the apiary or the inspector. */
  readonly text: string;
  /** From this instant on, and before that one; null where no day was named. */
  readonly from: string | null;
  readonly to: string | null;
  /** Any of these results; empty where none was named. */
  readonly results: readonly string[];
}

/** The words by which days and results are named in the language of the screen, all in lower case. */
export interface QuestionWords {
  readonly months: readonly string[];
  readonly today: string;
  readonly yesterday: string;
  /** The one word that stands for results of casework. */
  readonly results: readonly { readonly word: string; readonly means: readonly ResultWord[] }[];
}

/** Days, and how many words named them. */
interface Named {
  readonly span: Span;
  readonly tokens: number;
}

/** From the start of a day to the start of another. */
interface Span {
  readonly from: string;
  readonly to: string;
}

/**
 * Reads a day, a month or a year, and results, out of what was typed; the rest stays text. Days are those of the
 * reader's time zone: `2026-05-03`, `3.5.2026`, `3 May 2026`, `May 2026`, `2026`, today, yesterday.
 *
 * @param now the instant of asking, for "today"
 * @param timeZone IANA name
 */
export function readVisitQuestion(typed: string, words: QuestionWords, now: string, timeZone: string): VisitQuestion {
  const today = dayInZone(now, timeZone);
  const tokens = typed.trim().toLowerCase().split(/\s+/).filter(Boolean);
  const rest: string[] = [];
  const results: string[] = [];
  let span: Span | null = null;
  for (let at = 0; at < tokens.length; ) {
    const named: Named | null = span === null ? spanAt(tokens, at, words, today) : null;
    const token = tokens[at] ?? '';
    const result = words.results.find(({ word }) => word === token);
    if (named) {
      span = named.span;
      at += named.tokens;
      continue;
    }
    if (result) results.push(...result.means);
    else rest.push(token);
    at += 1;
  }
  return {
    text: rest.join(' '),
    from: span && startOfDay(span.from, timeZone),
    to: span && startOfDay(span.to, timeZone),
    results,
  };
}

/** The days named by the tokens from a place on, and how many tokens name them; null where none do. */
function spanAt(tokens: readonly string[], at: number, words: QuestionWords, today: string): Named | null {
  const [one = '', two = '', three = ''] = tokens.slice(at, at + 3);
  const found = (span: Span | null, count: number) => span && { span, tokens: count };
  if (one === words.today) return found(wholeDay(today), 1);
  if (one === words.yesterday) return found(wholeDay(daysLater(today, -1)), 1);
  const ordered = /^(\d{4})-(\d{2})(?:-(\d{2}))?$/.exec(one);
  if (ordered) {
    const [, y, m, d] = ordered;
    return found(d === undefined ? months(Number(y), Number(m)) : days(Number(y), Number(m), Number(d)), 1);
  }
  const dotted = /^(\d{1,2})[./](\d{1,2})[./](\d{4})$/.exec(one);
  if (dotted) return found(days(Number(dotted[3]), Number(dotted[2]), Number(dotted[1])), 1);
  const inMonth = (name: string) => words.months.indexOf(name) + 1;
  const isYear = (text: string) => /^(19|20)\d{2}$/.test(text);
  if (/^\d{1,2}\.?$/.test(one) && inMonth(two) > 0 && isYear(three)) {
    return found(days(Number(three), inMonth(two), Number.parseInt(one, 10)), 3);
  }
  if (inMonth(one) > 0 && isYear(two)) return found(months(Number(two), inMonth(one)), 2);
  if (isYear(one)) return found(months(Number(one), 1, 12), 1);
  return null;
}

/** A span of whole months from the first of one; null where the calendar has no such month. Months count from 1. */
function months(year: number, month: number, count = 1): Span | null {
  const from = inReach(year) ? dayOn(year, month, 1) : null;
  return from === null ? null : { from, to: monthsLater(from, count) };
}

/** One day; null where the calendar has no such day. */
function days(year: number, month: number, day: number): Span | null {
  const found = inReach(year) ? dayOn(year, month, day) : null;
  return found === null ? null : wholeDay(found);
}

function wholeDay(day: string): Span {
  return { from: day, to: daysLater(day, 1) };
}

/** Years of which visits may be asked; the day after the last is in the calendar too. */
function inReach(year: number): boolean {
  return year >= 1000 && year < 9999;
}
