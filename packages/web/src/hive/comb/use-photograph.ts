import type { Tap } from '@combside/casework/draft/tap';
import type { PhotographReference } from '@combside/record/kinds/examination';
import type { ColonyState } from '@combside/record/states';
import { useEffect, useState } from 'react';
import { correctionKey, draftKey } from '../colony/use-colony-draft.ts';
import { useHiveDevice } from '../hive-device.tsx';

/** The bytes of a photograph on this device: undefined while they are read, null when they are not here. */
export function usePhotographBytes(hash: string): Blob | null | undefined {
  const device = useHiveDevice();
  const [bytes, setBytes] = useState<Blob | null | undefined>();
  useEffect(() => {
    let left = false;
    void device.photographs.open(hash).then((blob) => {
      if (!left) setBytes(blob);
    });
    return () => {
      left = true;
    };
  }, [device, hash]);
  return bytes;
}

/** What is known of a photograph of this colony at this visit: taken just now, or sealed already; null when unknown. */
export function usePhotographReference(
  visit: string,
  colony: ColonyState,
  hash: string,
): PhotographReference | null | undefined {
  const device = useHiveDevice();
  const [inDraft, setInDraft] = useState<PhotographReference | null | undefined>();
  const id = colony.about.id;
  useEffect(() => {
    let left = false;
    void Promise.all([draftKey(visit, id), correctionKey(visit, id)].map(device.drafts.load)).then((stored) => {
      const taps = stored.flatMap((one) => (one as readonly Tap[] | null) ?? []);
      const found = taps.find((one) => one.tap === 'photograph' && one.photograph.hash === hash);
      if (!left) setInDraft(found?.tap === 'photograph' ? found.photograph : null);
    });
    return () => {
      left = true;
    };
  }, [device, visit, id, hash]);
  const sealed = colony.examinations
    .filter((one) => one.body.visit === visit)
    .flatMap((one) => one.body.photographs)
    .find((one) => one.hash === hash);
  return sealed ?? inDraft;
}
