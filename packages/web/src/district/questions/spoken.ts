import type { Words } from '@combside/words/words';
import type { Said, Shown, Spoken } from './question.ts';

/** A share in as many places as it needs, and never rounded up to certainty. */
export function sayShare(words: Words, share: number): string {
  const near = Math.min(share, 1 - share);
  const decimals = near >= 0.095 ? 0 : near >= 0.0095 ? 1 : 2;
  if (share > 0 && share < 0.0001) return words.say('questions.under', { share: words.share(0.0001, 2) });
  if (share < 1 && share > 0.9999) return words.say('questions.over', { share: words.share(0.9999, 2) });
  return words.share(share, decimals);
}

/** A number with what it counts, as tables and sliders show it. */
export function sayShown(words: Words, shown: Shown, value: number): string {
  if (shown === 'share') return sayShare(words, value);
  if (shown === 'count') return words.number(value, 0);
  if (shown === 'number') return words.number(value);
  if (shown === 'month') return words.say('questions.months', { count: value });
  return words.unit(value, shown);
}

/** One sentence of an answer in words. */
export function sayAnswer(words: Words, said: Said): string {
  const values: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(said.values)) values[name] = spoken(words, value);
  return words.say(`questions.${said.id}`, values);
}

function spoken(words: Words, value: Spoken): string | number {
  if (typeof value !== 'object') return value;
  if ('share' in value) return sayShare(words, value.share);
  if ('number' in value) return words.number(value.number, value.decimals);
  if ('day' in value) return words.day(value.day);
  return words.say(`questions.${value.word}`);
}
