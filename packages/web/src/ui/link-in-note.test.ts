import { expect, test } from 'vitest';
import { linkInNote } from './link-in-note.ts';

test('the address at the end of a kept answer becomes its link', () => {
  expect(linkInNote('Open 26 of 40.\n\n/district/questions/how-many-to-open?colonies=40&sensitivity=0.8')).toEqual({
    words: 'Open 26 of 40.',
    question: '/district/questions/how-many-to-open?colonies=40&sensitivity=0.8',
  });
  expect(linkInNote('a\n/district/questions/burn-and-bury').question).toBe('/district/questions/burn-and-bury');
});

test('nothing else in free words becomes a link', () => {
  for (const text of [
    'gate code asked for, see https://elsewhere.example/district/questions/burn-and-bury',
    '/district/questions/burn-and-bury\nand more words',
    'x\n/district/questions/../../front',
    'x\n//elsewhere.example/district/questions/burn-and-bury',
    'x\n/district/questions/burn-and-bury?a=<b>',
    'x\njavascript:/district/questions/burn-and-bury',
    '',
  ]) {
    expect(linkInNote(text), text).toEqual({ words: text, question: null });
  }
});
