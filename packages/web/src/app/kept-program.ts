/** The program as kept on the device by its service worker. */
export interface KeptProgram {
  /** Looks for a newer program now. */
  look(): void;
  /** Changes to the newer program that waits, and loads the page anew. Does nothing while none waits. */
  take(): void;
}

/**
 * Keeps the program on the device, and tells when a newer one waits.
 *
 * The registration is listened to here and not through a library: the usual one stops listening after the second program
 * found, and a page opened during a visit finds, and turns away, the same one several times before the visit ends.
 *
 * @param waits called each time a newer program has been installed and waits to be taken
 * @returns null where the browser has no service worker, or while developing
 */
export async function keepProgram(waits: () => void): Promise<KeptProgram | null> {
  if (import.meta.env.DEV || !('serviceWorker' in navigator)) return null;
  const registration = await navigator.serviceWorker.register('/sw.js');
  const tell = () => {
    // With no program in charge yet the one that waits is the first, and nothing changes for anybody.
    if (registration.waiting && navigator.serviceWorker.controller) waits();
  };
  const follow = (worker: ServiceWorker | null) => worker?.addEventListener('statechange', tell);
  registration.addEventListener('updatefound', () => follow(registration.installing));
  follow(registration.installing);
  tell();
  return {
    look: () => void registration.update().catch(() => undefined),
    take() {
      if (!registration.waiting) return;
      navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
      registration.waiting.postMessage({ type: 'SKIP_WAITING' });
    },
  };
}
