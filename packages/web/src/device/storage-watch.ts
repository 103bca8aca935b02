/** What the device promises about its store. */
export interface StorageStatus {
  /** The browser promised not to clear the store when space runs short. */
  readonly kept: boolean;
  /** Share of the quota in use, 0 to 1; null when the browser does not say. */
  readonly used: number | null;
}

/** From this share of the quota on, people are warned. */
export const warnFrom = 0.7;

export interface StorageWatch {
  status(): StorageStatus;
  subscribe(listener: () => void): () => void;
  /** Asks the browser again, for example after photographs were taken. */
  look(): Promise<void>;
}

/**
 * Asks the browser to keep the store, and watches how full it is. A refusal is not an error: it is shown, and the
 * browser is asked again each time, because it changes its mind when the program is installed.
 */
export function watchStorage(storage: StorageManager | undefined = navigator.storage): StorageWatch {
  let status: StorageStatus = { kept: false, used: null };
  const listeners = new Set<() => void>();
  return {
    status: () => status,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    async look() {
      const kept = (await storage?.persisted?.()) || (await storage?.persist?.()) || false;
      const { usage, quota } = (await storage?.estimate?.()) ?? {};
      const used = usage === undefined || !quota ? null : usage / quota;
      // People are told of percents; a change below that is none.
      if (kept === status.kept && Math.round((used ?? -1) * 100) === Math.round((status.used ?? -1) * 100)) return;
      status = { kept, used };
      for (const listener of listeners) listener();
    },
  };
}
