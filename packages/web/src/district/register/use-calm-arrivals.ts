import type { LiveEvent } from '@combside/contract/live';
import { useEffect, useRef } from 'react';
import { useArrivals } from '../use-office.ts';

/** Arrivals that come together are answered together, this many milliseconds after the first of them. */
const together = 1000;

/** Calls back soon after arrivals that matter, once for many: an import brings a hundred thousand of them. */
export function useCalmArrivals(relevant: (event: LiveEvent) => boolean, call: () => void): void {
  const newest = useRef(call);
  newest.current = call;
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useArrivals((event) => {
    if (timer.current !== undefined || !relevant(event)) return;
    timer.current = setTimeout(() => {
      timer.current = undefined;
      newest.current();
    }, together);
  });
  useEffect(() => () => clearTimeout(timer.current), []);
}
