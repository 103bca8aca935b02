import { QueryCache, QueryClient } from '@tanstack/react-query';

/** So many answers are kept, besides those in sight. */
const mostAnswers = 40;

const cache = new QueryCache({ onSuccess: forgetOldest });

/**
 * What the office answered in this window: whoever goes back to a page sees at once what stood there, and still sees it while
 * the office is silent. A failure is said at once, and asking again is the person's; the network is never guessed at.
 */
export const keptAnswers = new QueryClient({
  queryCache: cache,
  defaultOptions: {
    queries: {
      retry: false,
      networkMode: 'always',
      refetchOnWindowFocus: false,
      gcTime: Number.POSITIVE_INFINITY,
    },
  },
});

let answeredTo: string | null = null;

/** Keeps answers for this person only: those given to another are forgotten. */
export function keepAnswersFor(person: string): void {
  if (answeredTo !== person) keptAnswers.clear();
  answeredTo = person;
}

/** Forgets the answers that were given longest ago, of those that are neither in sight nor on their way. */
function forgetOldest(): void {
  const idle = cache.getAll().filter((one) => !one.isActive() && one.state.fetchStatus === 'idle');
  idle.sort((a, b) => a.state.dataUpdatedAt - b.state.dataUpdatedAt);
  for (const one of idle.slice(0, Math.max(0, idle.length - mostAnswers))) cache.remove(one);
}
