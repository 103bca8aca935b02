import type { LiveEvent } from '@combside/contract/live';
import { useEffect, useRef, useState } from 'react';
import { useArrivals } from './arrivals.ts';
import { Calmly } from './calmly.ts';
import { keptAnswers } from './kept-answers.ts';

/** However much arrives, a page is asked for again at most so often, in milliseconds: an import brings hundred thousands. */
export const restBetweenAskings = 1000;

/** Has a question asked again when an arrival touches it. */
export function useAskedAgain(queryKey: readonly string[], relevant: (event: LiveEvent) => boolean): void {
  const newest = useRef(queryKey);
  newest.current = queryKey;
  const [calmly] = useState(
    () =>
      new Calmly(
        restBetweenAskings,
        () => void keptAnswers.invalidateQueries({ queryKey: newest.current, exact: true }),
      ),
  );
  useEffect(() => () => calmly.stop(), [calmly]);
  useArrivals((event) => {
    if (relevant(event)) calmly.act();
  });
}
