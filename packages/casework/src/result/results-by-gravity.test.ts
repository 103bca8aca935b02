import { describe, expect, test } from 'vitest';
import { markOfResult, wordsOfMarks } from './result-mark.ts';
import { gravityOf, resultWords, saysSuspect, suspectWords } from './results-by-gravity.ts';

describe('the word of a result', () => {
  test('has a gravity of its own, the suspicions gravest and nothing seen least', () => {
    expect(resultWords.map(gravityOf)).toEqual([6, 5, 4, 3, 2, 1, 0]);
    expect(gravityOf('suspect')).toBe(6);
    expect(gravityOf('nothing seen with this look')).toBe(0);
    const others = resultWords.filter((one) => !saysSuspect(one));
    expect(Math.min(...suspectWords.map(gravityOf))).toBeGreaterThan(Math.max(...others.map(gravityOf)));
  });

  test('says a suspicion stands in these two, and in no other', () => {
    expect(resultWords.filter(saysSuspect)).toEqual(['suspect', 'remains suspect']);
  });

  test('has a mark, and the mark of a suspicion means one', () => {
    for (const word of resultWords) expect(markOfResult(word) === 'suspect', word).toBe(saysSuspect(word));
    expect(resultWords.map(markOfResult)).toEqual([
      'suspect',
      'suspect',
      'signs seen',
      'masked',
      'too little brood',
      'not opened',
      'nothing seen',
    ]);
    expect(wordsOfMarks).toEqual([
      'suspect',
      'signs seen',
      'masked, no conclusion',
      'too little brood to judge',
      'nothing seen with this look',
    ]);
  });

  test.each([null, '', 'healthy', 'toString', 'not opened'])(
    'that is not there or is newer (%s) says nothing',
    (word) => {
      expect(saysSuspect(word)).toBe(false);
      expect(markOfResult(word)).toBe('not opened');
      expect(gravityOf(word)).toBe(-1);
    },
  );
});
