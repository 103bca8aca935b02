import { useEffect, useState } from 'react';
import { openPhotograph, type ShownPhotograph } from '../../device/comb/open-photograph.ts';

/**
 * A photograph to draw on.
 *
 * @param fetchBytes brings its bytes; the same function as long as it is the same photograph. Null when there are none here
 * @param stored its size as the reading knows it; null before it was read
 * @returns null while it is on its way, 'failed' when it did not come or is no picture
 */
export function useShownPhotograph(
  fetchBytes: (() => Promise<Blob>) | null,
  stored: { readonly width: number; readonly height: number } | null,
): ShownPhotograph | 'failed' | null {
  const [shown, setShown] = useState<ShownPhotograph | 'failed' | null>(null);
  const width = stored?.width;
  const height = stored?.height;
  useEffect(() => {
    if (!fetchBytes) return;
    let left = false;
    let opened: ShownPhotograph | null = null;
    const open = async () => {
      const size = width === undefined || height === undefined ? null : { width, height };
      const photograph = await openPhotograph(await fetchBytes(), size);
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
      setShown(null);
      opened?.close();
    };
  }, [fetchBytes, width, height]);
  return shown;
}
