import type { LaidOut, Tag } from './placed.ts';

/** Everything that can be read on the pages in order, one line for each tag, without the page's own header and footer. */
export function readingText(laid: LaidOut): string {
  let text = '';
  let before: Tag | null = null;
  for (const one of laid.pages.flat()) {
    if (one.kind !== 'text' || one.tag === null) continue;
    if (before !== null && one.tag !== before) text += '\n';
    text += one.text;
    before = one.tag;
  }
  return text;
}
