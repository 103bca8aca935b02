/** A word to be put into a sentence by its id, or a number, or text as it stands. */
export type SentenceValue = string | number | { readonly word: string };

/** A sentence as science hands it out: the id of a message in the catalogue of words, and what is put into it. */
export interface Sentence {
  readonly id: string;
  readonly values: Readonly<Record<string, SentenceValue>>;
}

/** A sentence by the last part of its id. */
export function sentence(id: string, values: Readonly<Record<string, SentenceValue>> = {}): Sentence {
  return { id: `signs.${id}`, values };
}

/** The name of a disease, a sign, a check or a test, as a word. */
export function name(kind: 'condition' | 'sign' | 'check', id: string): { readonly word: string } {
  return { word: `signs.${kind}.${id}.name` };
}
