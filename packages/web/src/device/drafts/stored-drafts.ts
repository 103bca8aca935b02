import type { DeviceStore } from '@combside/record/store';

/** Drafts on this device: what was tapped or typed and is not sealed yet. Values are anything JSON can say. */
export interface Drafts {
  /** Null when there is none. */
  load(key: string): Promise<unknown>;
  /** Drafts whose key begins with `prefix`, by the rest of their key. */
  all(prefix: string): Promise<Record<string, unknown>>;
  /**
   * Changes one draft, from what stands there to what shall stand there (null for none), in one stroke over all tabs;
   * strictly durable when it returns.
   *
   * @param alongside further drafts stored in the same stroke, by key
   */
  change(
    key: string,
    become: (value: unknown) => unknown,
    alongside?: Readonly<Record<string, unknown>>,
  ): Promise<void>;
  remove(key: string): Promise<void>;
  /** Calls back when another tab changed drafts, with their keys. @returns the way to stop it */
  onElsewhere(listener: (keys: readonly string[]) => void): () => void;
}

/**
 * The drafts of a store.
 *
 * @param onElsewhere how one hears of other tabs; a store that only one program holds hears of nobody
 */
export function storedDrafts(
  store: Pick<DeviceStore, 'draft' | 'drafts' | 'changeDraft' | 'commit'>,
  onElsewhere: Drafts['onElsewhere'] = () => () => undefined,
): Drafts {
  const now = () => new Date().toISOString();
  return {
    load: async (key) => (await store.draft(key))?.value ?? null,
    async all(prefix) {
      const found = await store.drafts(prefix);
      return Object.fromEntries(found.map(({ key, value }) => [key.slice(prefix.length), value]));
    },
    change(key, become, alongside = {}) {
      const savedAt = now();
      const beside = Object.entries(alongside).map(([name, value]) => ({ key: name, value, savedAt }));
      return store.changeDraft({ key, savedAt, become }, beside);
    },
    remove: (key) => store.commit({ removeDrafts: [key] }),
    onElsewhere,
  };
}
