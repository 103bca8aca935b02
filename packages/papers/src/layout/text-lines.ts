import type { Run, Text } from './paper-definition.ts';

export type FontName = 'regular' | 'bold' | 'regular fallback' | 'bold fallback';

/** How wide a text is in points, in a font at a size; and whether the first fonts have a letter. */
export interface Letters {
  width(text: string, font: FontName, size: number): number;
  has(codePoint: number): boolean;
}

/** Text in one font on one line, `x` points from the line's start. */
export interface LinePiece {
  readonly text: string;
  readonly font: FontName;
  readonly x: number;
  readonly width: number;
}

export type Line = readonly LinePiece[];

interface Word {
  /** Text in one font each; soft hyphens taken out. */
  readonly pieces: readonly { readonly text: string; readonly font: FontName }[];
  readonly width: number;
  /** What stands before the word when it follows another on a line. */
  readonly space: number;
  /** A hyphen is written when the line ends after this word, since a longer word was parted here. */
  readonly parted: boolean;
}

const softHyphen = '\u00ad';

export function runsOf(text: Text): readonly Run[] {
  return typeof text === 'string' ? [{ text }] : text;
}

/** The text without its weights. */
export function plainOf(text: Text): string {
  return runsOf(text)
    .map((run) => run.text)
    .join('')
    .replaceAll(softHyphen, '');
}

/**
 * Breaks text into lines no wider than `width` points. It breaks at spaces, after hyphens, dashes and slashes between
 * letters, at soft hyphens; a word wider than the line is broken where it must, so nothing ever reaches over the edge.
 */
export function breakIntoLines(text: Text, size: number, width: number, letters: Letters, bold = false): Line[] {
  const lines: LinePiece[][] = [];
  let line: LinePiece[] = [];
  let x = 0;
  let lastParted = false;

  const finish = (endOfParagraph: boolean): void => {
    const last = line.at(-1);
    if (last) {
      // A line that goes on ends in its hyphen, or in a space: who hears the paper would else hear two words as one.
      const end = lastParted ? '-' : endOfParagraph ? '' : ' ';
      const more = end === '-' ? letters.width('-', last.font, size) : 0;
      line[line.length - 1] = { ...last, text: last.text + end, width: last.width + more };
    }
    lines.push(line);
    line = [];
    x = 0;
    lastParted = false;
  };
  const put = (word: Word): void => {
    let at = x === 0 ? 0 : x + word.space;
    word.pieces.forEach((piece, index) => {
      const pieceWidth = letters.width(piece.text, piece.font, size);
      const before = line.at(-1);
      const space = index === 0 && x > 0 && word.space > 0;
      if (before && before.font === piece.font) {
        // What stands in one font is one piece, with its spaces in it.
        const text = `${before.text}${space ? ' ' : ''}${piece.text}`;
        line[line.length - 1] = { ...before, text, width: at + pieceWidth - before.x };
      } else {
        if (before && space) line[line.length - 1] = { ...before, text: `${before.text} ` };
        line.push({ ...piece, x: at, width: pieceWidth });
      }
      at += pieceWidth;
    });
    x = at;
    lastParted = word.parted;
  };

  for (const paragraph of paragraphsOf(text)) {
    for (const word of wordsOf(paragraph, size, letters, bold)) {
      const hyphen = word.parted ? letters.width('-', word.pieces.at(-1)?.font ?? 'regular', size) : 0;
      if (x > 0 && x + word.space + word.width + hyphen > width) finish(false);
      if (word.width + hyphen <= width) put(word);
      else for (const part of cutToFit(word, size, width, letters, () => finish(false))) put(part);
    }
    finish(true);
  }
  return lines;
}

/** Runs parted at line feeds. */
function paragraphsOf(text: Text): Run[][] {
  const paragraphs: Run[][] = [[]];
  for (const run of runsOf(text)) {
    run.text.split('\n').forEach((part, index) => {
      if (index > 0) paragraphs.push([]);
      if (part) paragraphs.at(-1)?.push({ ...run, text: part });
    });
  }
  return paragraphs;
}

function wordsOf(runs: readonly Run[], size: number, letters: Letters, bold: boolean): Word[] {
  const words: Word[] = [];
  // A space between two runs belongs to the following word, and no space joins them into one unbreakable word.
  let spaceBefore = false;
  let pending: { text: string; font: FontName }[] = [];
  let pendingSpace = false;

  const close = (parted: boolean): void => {
    if (pending.length === 0) return;
    const width = pending.reduce((sum, piece) => sum + letters.width(piece.text, piece.font, size), 0);
    const space = pendingSpace ? letters.width(' ', pending[0]?.font ?? 'regular', size) : 0;
    words.push({ pieces: pending, width, space, parted });
    pending = [];
  };

  for (const run of runs) {
    const weight = (run.bold ?? bold) ? 'bold' : 'regular';
    // NBSP is no place to break, so only the plain space parts words.
    for (const token of run.text.split(/( +)/)) {
      if (token === '') continue;
      if (token.startsWith(' ')) {
        close(false);
        spaceBefore = true;
        continue;
      }
      // Numbers and identifiers stay whole: a hyphen in them joins, it does not part.
      const parts = /\d/.test(token) ? token.split(/(?<=\u00ad)/) : token.split(/(?<=[-–—/\u00ad])(?=.)/);
      parts.forEach((part, index) => {
        if (pending.length === 0) {
          pendingSpace = spaceBefore;
          spaceBefore = false;
        }
        const parted = part.endsWith(softHyphen);
        pending.push(...piecesOf(part.replaceAll(softHyphen, ''), weight, letters));
        if (index < parts.length - 1) close(parted);
      });
    }
  }
  close(false);
  return words;
}

/** Parts a text by which font has its letters. */
function piecesOf(text: string, weight: 'regular' | 'bold', letters: Letters): { text: string; font: FontName }[] {
  const pieces: { text: string; font: FontName }[] = [];
  for (const letter of text) {
    const font: FontName = letters.has(letter.codePointAt(0) as number) ? weight : `${weight} fallback`;
    const last = pieces.at(-1);
    if (last && last.font === font) last.text += letter;
    else pieces.push({ text: letter, font });
  }
  return pieces;
}

function* cutToFit(word: Word, size: number, width: number, letters: Letters, finish: () => void): Generator<Word> {
  let pieces: { text: string; font: FontName }[] = [];
  let used = 0;
  for (const { text, font } of word.pieces) {
    for (const letter of text) {
      const letterWidth = letters.width(letter, font, size);
      if (used > 0 && used + letterWidth > width) {
        yield { pieces, width: used, space: 0, parted: false };
        finish();
        pieces = [];
        used = 0;
      }
      const last = pieces.at(-1);
      if (last && last.font === font) last.text += letter;
      else pieces.push({ text: letter, font });
      used += letterWidth;
    }
  }
  const hyphen = word.parted ? letters.width('-', pieces.at(-1)?.font ?? 'regular', size) : 0;
  if (pieces.length > 0) yield { pieces, width: used, space: 0, parted: word.parted && used + hyphen <= width };
}
