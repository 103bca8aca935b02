import type { CautionId } from '@combside/science/disposal/cautions';
import type { SourceId } from '@combside/sources/bibliography';
import type { WordId } from '@combside/words/rooms';

/** A word of the questions, by its id without the name of the room. */
export type QuestionWord =
  WordId<'questions'> extends infer Id ? (Id extends `questions.${infer Rest}` ? Rest : never) : never;

/** What may follow in the ids that begin so: `WordUnder<'this-season.row'>`. */
export type WordUnder<Start extends string> = QuestionWord extends infer Word
  ? Word extends `${Start}.${infer Rest}`
    ? Rest
    : never
  : never;

type Dashed<Text extends string> = Text extends `${infer First} ${infer Rest}` ? `${First}-${Dashed<Rest>}` : Text;

/** A word of science as it stands in an id: "too many to count" is `too-many-to-count`. */
export function dashed<const Text extends string>(text: Text): Dashed<Text> {
  return text.replaceAll(' ', '-') as Dashed<Text>;
}

/** How a number is shown: shares are fractions inside and per cent on the screen. */
export type Shown = 'count' | 'share' | 'number' | 'cm' | 'm' | 'kg' | 'l' | 'min' | '°C' | 'hour' | 'month';

/** What a person may state. `start` null: nobody published a figure, or it is a fact of the place, so it is asked for. */
export type Field =
  | {
      readonly kind: 'number';
      readonly shown: Shown;
      readonly from: number;
      readonly to: number;
      readonly step: number;
      /** Where the slider ends, when the box takes more; null for no slider. */
      readonly slideTo?: number | null;
      readonly start: number | null;
      /** May stay unstated. */
      readonly optional?: true;
    }
  | { readonly kind: 'choice'; readonly options: readonly string[]; readonly start: string | null }
  | { readonly kind: 'text' | 'lines' | 'day'; readonly start: string };

export type Fields = Readonly<Record<string, Field>>;

/** What was stated, by field: null where nothing was. */
export type Stated<F extends Fields> = {
  readonly [Name in keyof F]: F[Name] extends { readonly kind: 'number'; readonly start: infer S }
    ? S extends number
      ? number
      : number | null
    : F[Name] extends { readonly kind: 'choice'; readonly options: readonly (infer O)[]; readonly start: infer S }
      ? S extends string
        ? O
        : O | null
      : string;
};

/** A value to be put into a sentence, with the way it is said. */
export type Spoken =
  | string
  | number
  | { readonly share: number }
  | { readonly number: number; readonly decimals: number }
  | { readonly day: string }
  | { readonly word: QuestionWord };

/** One sentence: an id of words and its values. */
export interface Said {
  readonly id: QuestionWord;
  readonly values: Readonly<Record<string, Spoken>>;
}

export const say = (id: QuestionWord, values: Said['values'] = {}): Said => ({ id, values });

export interface Axis {
  /** Id of its label. */
  readonly label: QuestionWord;
  readonly shown: Shown;
}

/** The one small plot beside an answer. */
export type Figure =
  | {
      readonly kind: 'curve';
      readonly x: Axis;
      readonly y: Axis;
      /** In order of x; y null where there is no such value. */
      readonly points: readonly (readonly [number, number | null])[];
      /** The answer on the curve. */
      readonly marked: readonly [number, number] | null;
      /** A level across, such as what is aimed at. */
      readonly level?: number;
    }
  | {
      readonly kind: 'bands';
      readonly x: Axis;
      readonly from: number | null;
      readonly to: number | null;
      readonly scale?: 'logarithmic from zero';
      readonly rows: readonly {
        readonly label: Said;
        readonly low: number;
        readonly value: number | null;
        /** Null: open at that end. */
        readonly high: number | null;
      }[];
    };

/** What a question comes to. */
export interface Answer {
  /** Said before anything else. */
  readonly cautions: readonly CautionId[];
  /** The answer: the first sentence is the answer itself. Empty while something is still asked for. */
  readonly said: readonly Said[];
  /** Fields that must be stated first. */
  readonly asks: readonly string[];
  /** Why these inputs give no answer, in place of one. */
  readonly refuses: Said | null;
  readonly figure: Figure | null;
  /** Ids of what is taken for granted. */
  readonly takes: readonly QuestionWord[];
  readonly sources: readonly SourceId[];
}

const nothing: Answer = { cautions: [], said: [], asks: [], refuses: null, figure: null, takes: [], sources: [] };

/** An answer of these parts. */
export const answered = (parts: Partial<Answer>): Answer => ({ ...nothing, ...parts });

/** One question of the office. Pure: the same inputs give the same answer, on every desk and tomorrow. */
export interface Question {
  readonly id: QuestionWord;
  readonly fields: Fields;
  /** Fields in sight, given what was stated so far. */
  readonly inSight: (stated: never) => readonly string[];
  /** Whether the answer takes long enough to wait for a button. */
  readonly slow: (stated: never) => boolean;
  readonly answer: (stated: never) => Answer;
}

/** Every field, and every choice of one, has a word under the id of its question; a field without one does not compile. */
type Worded<Id extends QuestionWord, F extends Fields> = {
  readonly [Name in keyof F & string]: `${Id}.${Name}` extends QuestionWord
    ? F[Name] extends { readonly options: readonly (infer Option extends string)[] }
      ? `${Id}.${Name}.${Option}` extends QuestionWord
        ? unknown
        : never
      : unknown
    : never;
};

/** The id of a field's label, or of one of its choices: `question` has held it to the catalogue. */
export function fieldWord(question: QuestionWord, field: string, option?: string): WordId<'questions'> {
  return `questions.${question}.${field}${option === undefined ? '' : `.${option}`}` as WordId<'questions'>;
}

/** Holds fields, words and answer of one question to the same types. */
export function question<const Id extends QuestionWord, const F extends Fields>(one: {
  readonly id: Id;
  readonly fields: F & Worded<Id, F>;
  readonly inSight?: (stated: Stated<F>) => readonly (keyof F & string)[];
  readonly slow?: (stated: Stated<F>) => boolean;
  readonly answer: (stated: Stated<F>) => Answer;
}): Question {
  return { inSight: () => Object.keys(one.fields), slow: () => false, ...one } as unknown as Question;
}

/** The names of those not stated. */
export function unstated(values: Readonly<Record<string, number | string | null>>): string[] {
  return Object.entries(values)
    .filter(([, value]) => value === null || value === '')
    .map(([name]) => name);
}
