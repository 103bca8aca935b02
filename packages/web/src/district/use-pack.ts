import { loadPack } from '@combside/law/load-pack';
import type { Pack } from '@combside/law/pack';
import { useEffect, useState } from 'react';

/** A rule pack by its id; null until it is loaded, and where this version has none of that name. */
export function usePack(id: string): Pack | null {
  const [pack, setPack] = useState<Pack | null>(null);
  useEffect(() => {
    let left = false;
    setPack(null);
    loadPack(id).then(
      (found) => !left && setPack(found),
      () => undefined,
    );
    return () => {
      left = true;
    };
  }, [id]);
  return pack;
}
