import { useCallback } from 'react';
import { send } from '../../device/ask/ask.ts';
import type { ShownPhotograph } from '../../device/comb/open-photograph.ts';
import { useShownPhotograph } from '../../ui/comb/use-shown-photograph.ts';

/**
 * Fetches a photograph from the office to draw on it.
 *
 * @param stored its size as the reading knows it
 * @returns null while it is on its way, 'failed' when it did not come
 */
export function useStoredPhotograph(
  hash: string,
  stored: { readonly width: number; readonly height: number },
): ShownPhotograph | 'failed' | null {
  const fetchBytes = useCallback(async () => {
    return (await send(`/api/photographs/${hash}`)).blob();
  }, [hash]);
  return useShownPhotograph(fetchBytes, stored);
}
