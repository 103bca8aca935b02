import type { Words } from '@combside/words/words';

/** A chance in words, to one tenth of a per cent. Nothing here is certain, so none is rounded to nothing or to all. */
export function shareSaid(words: Words, value: number): string {
  if (value < 0.0005) return words.say('reasoning.share-under', { share: words.share(0.001, 1) });
  if (value > 0.9995) return words.say('reasoning.share-over', { share: words.share(0.999, 1) });
  return words.share(value, 1);
}

/** A chance with its interval. */
export function intervalSaid(words: Words, value: number, low: number, high: number): string {
  return words.say('reasoning.interval', {
    value: shareSaid(words, value),
    low: shareSaid(words, low),
    high: shareSaid(words, high),
  });
}
