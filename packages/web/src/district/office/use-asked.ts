import type { LiveEvent } from '@combside/contract/live';
import { useQuery } from '@tanstack/react-query';
import type { Schema } from '../../device/ask/ask.ts';
import { keptAnswers } from './kept-answers.ts';
import { type Query, queryOf, said } from './query.ts';
import { useAskedAgain } from './use-asked-again.ts';

/**
 * Asks the office for a page, and again whenever `relevant` says that an arrival touches it.
 *
 * @param schema of the answer, from the contract
 * @param address path and query, such as `/api/owed`
 */
export function useAsked<Answer>(
  schema: Schema<Answer>,
  address: string,
  relevant: (event: LiveEvent) => boolean,
): Query<Answer> {
  const queryKey = [address];
  const standing = useQuery({ queryKey, queryFn: () => said(schema, address) }, keptAnswers);
  useAskedAgain(queryKey, relevant);
  return queryOf(standing, standing.data);
}
