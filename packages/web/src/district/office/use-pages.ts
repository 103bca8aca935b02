import type { LiveEvent } from '@combside/contract/live';
import { useInfiniteQuery } from '@tanstack/react-query';
import type { Schema } from '../../device/ask/ask.ts';
import { keptAnswers } from './kept-answers.ts';
import { type Query, queryOf, type Said, said } from './query.ts';
import { useAskedAgain } from './use-asked-again.ts';

/** A list that grows by pages: what there is of it so far, and how to have more. */
export interface Pages<Page> extends Query<readonly Page[]> {
  /** Asks for the next page; null after the last. */
  readonly more: (() => void) | null;
}

/**
 * Asks the office for a list page by page: the first at once, each next one when somebody asks for more. Whenever `relevant`
 * says that an arrival touches it, all that is in sight is asked for again.
 *
 * @param address with a query; `after` is added for each next page
 */
export function usePages<Page extends { readonly next: string | null }>(
  schema: Schema<Page>,
  address: string,
  relevant: (event: LiveEvent) => boolean,
): Pages<Page> {
  const queryKey = [address, 'pages'];
  const standing = useInfiniteQuery(
    {
      queryKey,
      queryFn: ({ pageParam: after }) =>
        said(schema, after === null ? address : `${address}&after=${encodeURIComponent(after)}`),
      initialPageParam: null as string | null,
      getNextPageParam: ({ answer }) => answer?.next,
    },
    keptAnswers,
  );
  useAskedAgain(queryKey, relevant);
  return {
    ...queryOf(standing, standing.data && joined(standing.data.pages)),
    more: standing.hasNextPage ? () => void standing.fetchNextPage() : null,
  };
}

/** What was said of the first page speaks for the list; a later one that is gone ends it. */
function joined<Page>(pages: readonly Said<Page>[]): Said<readonly Page[]> | undefined {
  const [first] = pages;
  if (first?.state !== 'there') return first;
  return { state: 'there', answer: pages.flatMap(({ answer }) => (answer === null ? [] : [answer])) };
}
