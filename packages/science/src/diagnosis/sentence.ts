import type { DiseaseId, SignId } from '../signs/catalogue.ts';
import type { CheckId } from './checks.ts';
import type { FirstStep } from './first-steps.ts';
import type { StateId } from './states.ts';

/** What may be named in a sentence, by kind. */
interface Names {
  readonly condition: DiseaseId;
  readonly sign: SignId;
  readonly check: CheckId;
}

type NameOf<Kind extends keyof Names> = { readonly [K in Kind]: `signs.${K}.${Names[K]}.name` }[Kind];

/** The id of a word that stands in a sentence. */
export type WordToName =
  | NameOf<keyof Names>
  | `signs.first.${FirstStep}`
  | `signs.state-name.${StateId}`
  | 'signs.rope-test-made'
  | 'signs.pattern-measured';

/** A word to be put into a sentence by its id, or a number, or text as it stands. */
export type SentenceValue = string | number | { readonly word: WordToName };

/** A sentence as science hands it out: the id of a message in the catalogue of words, and what is put into it. */
export interface Sentence<Id extends string> {
  readonly id: `signs.${Id}`;
  readonly values: Readonly<Record<string, SentenceValue>>;
}

/** A sentence by the last part of its id. */
export function sentence<const Id extends string>(
  id: Id,
  values: Readonly<Record<string, SentenceValue>> = {},
): Sentence<Id> {
  return { id: `signs.${id}`, values };
}

/** The name of a disease, a sign, a check or a test, as a word. */
export function name<Kind extends keyof Names>(kind: Kind, id: Names[Kind]): { readonly word: NameOf<Kind> } {
  return { word: `signs.${kind}.${id}.name` as NameOf<Kind> };
}
