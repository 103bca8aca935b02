import { useEffect, useRef } from 'react';
import { useLocation } from 'wouter';

export interface InnerView {
  /** Goes one step in: what the system calls back leads out again. */
  open(view: string): void;
  /** Goes back out, the way the system's back does. */
  close(): void;
}

/**
 * The way into a part of a screen and back out, for parts that have an address below the screen's own. What the screen has
 * in hand stays, since it is the same screen.
 *
 * @param here address of the screen
 * @param view the part that is shown; null for the screen itself
 */
export function useInnerView(here: string, view: string | null): InnerView {
  const [, go] = useLocation();
  const leaving = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each view that is reached may be left again
  useEffect(() => {
    leaving.current = false;
  }, [view]);
  return {
    open: (next) => go(`${here}/${next}`, { state: { within: here } }),
    close() {
      // A second press must not go back twice: the first one is still on its way.
      if (leaving.current || view === null) return;
      leaving.current = true;
      const from = (history.state as { readonly within?: unknown } | null)?.within;
      if (from === here) history.back();
      else go(here, { replace: true });
    },
  };
}
