import { useEffect, useState } from 'react';
import { openPhotograph, type ShownPhotograph } from '../../device/comb/open-photograph.ts';

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
  const [shown, setShown] = useState<ShownPhotograph | 'failed' | null>(null);
  const { width, height } = stored;
  useEffect(() => {
    let left = false;
    let opened: ShownPhotograph | null = null;
    const open = async () => {
      const answer = await fetch(`/api/photographs/${hash}`);
      if (!answer.ok) throw new Error(`photograph ${hash}: ${answer.status}`);
      const photograph = await openPhotograph(await answer.blob(), { width, height });
      if (left) photograph.close();
      else {
        opened = photograph;
        setShown(photograph);
      }
    };
    open().catch(() => {
      if (!left) setShown('failed');
    });
    return () => {
      left = true;
      opened?.close();
    };
  }, [hash, width, height]);
  return shown;
}
