const store = 'combside-flags';
const name = '/visit-open';
const listeners = new Set<(open: boolean) => void>();

/**
 * Tells the service worker whether a visit is open on this device: while one is, no new version is installed
 * (`public/hold-during-visit.js`).
 */
export async function flagOpenVisit(open: boolean): Promise<void> {
  if ('caches' in globalThis) {
    const flags = await caches.open(store);
    if (open) await flags.put(name, new Response('open'));
    else await flags.delete(name);
  }
  // Only now: whoever asks for the new version again would be turned away as long as the flag stands.
  for (const listener of listeners) listener(open);
}

/** Whether a visit is open, as last told. */
export async function isVisitOpen(): Promise<boolean> {
  return 'caches' in globalThis && (await (await caches.open(store)).match(name)) !== undefined;
}

export function onVisitFlag(listener: (open: boolean) => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
