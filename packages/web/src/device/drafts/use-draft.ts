import { useEffect, useState, useSyncExternalStore } from 'react';
import { keepFault } from '../../app/faults.ts';
import { useDevice } from '../device-in-hand.tsx';
import { type DraftKind, type DraftShown, OpenDraft, type Settled, type TakeStep } from './open-draft.ts';

/** A draft in the hand of one screen. */
export interface DraftInHand<T> extends DraftShown<T> {
  /** What is in hand at this moment, newer than what was drawn last. */
  now(): T;
  /** Takes one step, shown at once and stored. @param alongside further drafts stored in the same stroke, by key */
  change(take: TakeStep<T>, alongside?: Readonly<Record<string, unknown>>): void;
  /** Forgets all of it. */
  forget(): void;
  /** Waits until every step is stored and takes in what other tabs stored: see `OpenDraft`. */
  settled(): Promise<Settled>;
}

const nobody = () => () => undefined;
const nothing = () => null;

/**
 * The one way to keep what is half said, on phone and desk.
 *
 * @param kind read when the key is new; its functions must not depend on what is drawn
 * @param companions keys of drafts that are closed with this one
 * @returns undefined while it is being read
 */
export function useDraft<T>(kind: DraftKind<T>, companions: readonly string[] = []): DraftInHand<T> | undefined {
  const { device, state } = useDevice();
  const [open, setOpen] = useState<{ readonly key: string; readonly draft: OpenDraft<T> } | null>(null);
  const nowhere = device === null && state !== 'opening';
  const { key } = kind;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says which draft; the rest is made anew at every drawing
  useEffect(() => {
    // Once said, it stays in hand also when the store goes away.
    if (device === null && (!nowhere || open?.key === key)) return;
    let left = false;
    let mine: OpenDraft<T> | null = null;
    OpenDraft.open(device?.drafts ?? null, kind, companions).then(
      (draft) => {
        mine = draft;
        if (left) draft.leave();
        else setOpen({ key, draft });
      },
      (failure: unknown) => {
        keepFault(failure instanceof Error ? failure : new Error('draft not read'), '');
      },
    );
    return () => {
      left = true;
      mine?.leave();
    };
  }, [device, nowhere, key]);
  const draft = open?.key === key ? open.draft : null;
  const shown = useSyncExternalStore<DraftShown<T> | null>(draft?.subscribe ?? nobody, draft?.now ?? nothing);
  if (draft === null || shown === null) return undefined;
  return {
    ...shown,
    saving: nowhere ? 'nowhere' : shown.saving,
    now: () => draft.now().value,
    change: (take, alongside) => draft.change(take, alongside),
    forget: () => draft.forget(),
    settled: () => draft.settled(),
  };
}
