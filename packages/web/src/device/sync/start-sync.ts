import type { SyncFault } from '@combside/record/sync';
import type { IndexedStore } from '../store/indexed-store.ts';
import type { DeviceDatabase } from '../store/schema.ts';
import type { Turn } from './exchange-loop.ts';
import type { MessageToPage, MessageToWorker } from './messages.ts';

/** Whether what the device holds has reached the office. */
export interface SyncStatus {
  readonly network: boolean;
  readonly sending: boolean;
  /** Entries that wait for a network; null until they have been counted. */
  readonly waiting: number | null;
  /** Entries that the office did not take; they stay here, with the reason. */
  readonly refused: number;
  readonly lastExchangeAt: string | null;
  /** Why the last exchange did not come to its end; null when it did. */
  readonly failure: Turn['failure'];
  /** What a person must look at; also for the fault report, since it holds no personal data. */
  readonly faults: readonly SyncFault[];
}

export interface Sync {
  status(): SyncStatus;
  subscribe(listener: () => void): () => void;
  /** Sends and fetches now, if there is a network. Resolves when that turn has ended. */
  run(): Promise<void>;
  /** Counts anew what waits; the status says it when this returns. */
  count(): Promise<void>;
  /** Tells that something was written: sent soon, several at once. */
  wake(): void;
  stop(): void;
}

const wakeMilliseconds = 700;
/** While entries wait, another try is made so often. */
const retryMilliseconds = 30_000;
/** While somebody looks at the screen, what the office has meanwhile is fetched so often. */
const lookMilliseconds = 60_000;

/**
 * Starts the sync worker and wakes it when the program is opened, becomes visible, comes online, or has written
 * something; and every minute while it is in sight, so that a round planned at the office arrives by itself.
 */
export function startSync(person: string, store: IndexedStore, database: DeviceDatabase): Sync {
  const worker = new Worker(new URL('./sync-worker.ts', import.meta.url), { type: 'module' });
  const listeners = new Set<() => void>();
  const waitingForEnd = new Set<() => void>();
  let status: SyncStatus = {
    network: navigator.onLine,
    sending: false,
    waiting: null,
    refused: 0,
    lastExchangeAt: null,
    failure: null,
    faults: [],
  };
  let timer: ReturnType<typeof setTimeout> | undefined;

  function change(part: Partial<SyncStatus>): void {
    status = { ...status, ...part };
    for (const listener of listeners) listener();
  }

  /** What was written is not counted before it is stored: a count begun earlier says nothing of it. */
  let writes = 0;

  async function count(): Promise<void> {
    const before = writes;
    try {
      const [waiting, refused, last] = await Promise.all([
        store.outboxSize(),
        store.refused(),
        database.get('meta', 'lastExchangeAt'),
      ]);
      if (before !== writes) return await count();
      change({ waiting, refused: refused.length, lastExchangeAt: (last as string | undefined) ?? null });
    } catch {
      // The store was closed while it was asked; there is nobody left to tell.
    }
  }

  function ask(message: MessageToWorker): void {
    worker.postMessage(message);
  }

  function end(): void {
    for (const done of waitingForEnd) done();
    waitingForEnd.clear();
  }

  worker.addEventListener('message', ({ data }: MessageEvent<MessageToPage>) => {
    if (data.told === 'began') change({ sending: true });
    else if (data.told === 'ended') {
      const { failure, faults } = data.turn;
      change({ sending: false, failure, faults, network: failure !== 'no connection' && navigator.onLine });
      void count().then(end);
    } else {
      change({ sending: false, failure: 'program fault' });
      end();
    }
  });
  worker.addEventListener('error', () => {
    change({ sending: false, failure: 'program fault' });
    end();
  });

  function run(): Promise<void> {
    if (!navigator.onLine) {
      change({ network: false });
      return Promise.resolve();
    }
    return new Promise((resolve) => {
      waitingForEnd.add(resolve);
      ask({ ask: 'run', person });
    });
  }

  const whenVisible = () => {
    if (document.visibilityState === 'visible') void run();
  };
  const whenOnline = () => {
    change({ network: true });
    void run();
  };
  const whenOffline = () => change({ network: false });
  const again = setInterval(() => {
    if (document.visibilityState === 'visible' && status.waiting !== 0 && !status.sending) void run();
  }, retryMilliseconds);
  const look = setInterval(() => {
    if (document.visibilityState === 'visible' && navigator.onLine && !status.sending) void run();
  }, lookMilliseconds);
  document.addEventListener('visibilitychange', whenVisible);
  addEventListener('online', whenOnline);
  addEventListener('offline', whenOffline);
  const stopListening = store.onElsewhere(() => void count());
  void count();
  void run();

  return {
    status: () => status,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    run,
    count,
    wake() {
      writes += 1;
      // Until it is counted nobody may say that the office has everything.
      change({ waiting: null });
      void count();
      clearTimeout(timer);
      timer = setTimeout(() => void run(), wakeMilliseconds);
    },
    stop() {
      clearTimeout(timer);
      clearInterval(again);
      clearInterval(look);
      document.removeEventListener('visibilitychange', whenVisible);
      removeEventListener('online', whenOnline);
      removeEventListener('offline', whenOffline);
      stopListening();
      ask({ ask: 'stop' });
      // Time enough to close its database; a worker ended in the middle loses nothing but its turn.
      setTimeout(() => worker.terminate(), 1000);
      end();
    },
  };
}
