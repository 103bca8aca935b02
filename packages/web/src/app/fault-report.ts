import { keptFaults } from './faults.ts';

/**
 * What may leave the device when something failed: versions, sizes, states and places in our own code. No names, no
 * positions, no words anybody typed, no identifier of a person, apiary or colony.
 */
export interface FaultReport {
  readonly made: string;
  readonly browser: string;
  readonly screen: string;
  readonly language: string;
  readonly online: boolean;
  readonly storage: {
    readonly kept: boolean | null;
    readonly usedBytes: number | null;
    readonly quotaBytes: number | null;
  };
  readonly databases: readonly { readonly version: number | null }[];
  readonly faults: ReturnType<typeof keptFaults>;
}

/** Gathers the fault report. */
export async function faultReport(): Promise<FaultReport> {
  const estimate = await navigator.storage?.estimate?.();
  const databases = (await indexedDB.databases?.()) ?? [];
  return {
    made: new Date().toISOString(),
    browser: navigator.userAgent,
    screen: `${innerWidth} x ${innerHeight} at ${devicePixelRatio}`,
    language: document.documentElement.lang,
    online: navigator.onLine,
    storage: {
      kept: (await navigator.storage?.persisted?.()) ?? null,
      usedBytes: estimate?.usage ?? null,
      quotaBytes: estimate?.quota ?? null,
    },
    // A store's name holds the person's id, so only its version is told.
    databases: databases.map((one) => ({ version: one.version ?? null })),
    faults: keptFaults(),
  };
}

/** Saves the fault report as a file, for the person to look at and hand on. */
export async function saveFaultReport(): Promise<void> {
  const text = JSON.stringify(await faultReport(), null, 2);
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = 'combside-fault-report.json';
  link.click();
  URL.revokeObjectURL(link.href);
}
