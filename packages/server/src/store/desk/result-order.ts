import { type ResultWord, resultWords, suspectWords } from '@combside/casework/result/results-by-gravity';
import { type RawBuilder, sql } from 'kysely';

/** Orders by the word of a result, the gravest first; a word of a newer version comes last. */
export function gravestFirst(column: RawBuilder<unknown>): RawBuilder<unknown> {
  return sql`array_position(${[...resultWords]}::text[], ${column}) nulls last`;
}

/** Whether a result is one of these words, written out: an index on some words serves only a question that names them. */
export function isResult(column: RawBuilder<unknown>, words: readonly ResultWord[]): RawBuilder<unknown> {
  return sql`${column} in (${sql.join(words.map((one) => sql.lit(one)))})`;
}

/** Whether a result says that a suspicion stands. */
export function isSuspect(column: RawBuilder<unknown>): RawBuilder<unknown> {
  return isResult(column, suspectWords);
}
