import type { LiveEvent } from '@combside/contract/live';
import { useCallback, useEffect, useRef, useState } from 'react';

/** What was asked of the office: the newest answer stays in sight while a newer one is on its way, or fails to come. */
export interface Asked<T> {
  readonly answer: T | null;
  readonly state: 'asking' | 'there' | 'failed' | 'not there';
  again(): void;
}

/** However much arrives, a page is asked for again at most so often, in milliseconds: an import brings hundred thousands. */
const calm = 1000;

/**
 * Asks the office for a page, and again whenever `relevant` says that an arrival touches it: at once for the first, and
 * once more after those that came close behind it.
 */
export function useAsked<T>(address: string, relevant: (event: LiveEvent) => boolean): Asked<T> {
  const [kept, setKept] = useState<{ address: string; answer: T | null; state: Asked<T>['state'] }>({
    address,
    answer: null,
    state: 'asking',
  });
  const turn = useRef(0);
  const ask = useCallback(async () => {
    turn.current += 1;
    const mine = turn.current;
    const settle = (answer: T | null, state: Asked<T>['state']) => {
      if (mine !== turn.current) return;
      setKept((before) => ({
        address,
        answer: state === 'failed' && before.address === address ? before.answer : answer,
        state,
      }));
    };
    try {
      const response = await fetch(address);
      if (response.status === 404 || response.status === 403) settle(null, 'not there');
      else if (response.ok) settle((await response.json()) as T, 'there');
      else settle(null, 'failed');
    } catch {
      settle(null, 'failed');
    }
  }, [address]);

  useEffect(() => void ask(), [ask]);
  const resting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const missed = useRef(false);
  const newest = useRef(ask);
  newest.current = ask;
  useEffect(() => () => clearTimeout(resting.current), []);
  const askAndRest = () => {
    missed.current = false;
    void newest.current();
    resting.current = setTimeout(() => {
      resting.current = undefined;
      if (missed.current) askAndRest();
    }, calm);
  };
  useArrivals((event) => {
    if (!relevant(event)) return;
    if (resting.current === undefined) askAndRest();
    else missed.current = true;
  });
  const current = kept.address === address ? kept : { answer: null, state: 'asking' as const };
  return { ...current, again: () => void ask() };
}

const listeners = new Set<(event: LiveEvent) => void>();
const watchers = new Set<(live: boolean) => void>();
let stream: EventSource | undefined;
let live = false;

function tell(next: boolean): void {
  live = next;
  for (const watcher of watchers) watcher(next);
}

function open(): void {
  if (stream) return;
  stream = new EventSource('/api/live');
  stream.addEventListener('open', () => tell(true));
  // The browser tries again by itself and says from where, so nothing is missed.
  stream.addEventListener('error', () => tell(false));
  stream.addEventListener('entry', (message) => {
    const event = JSON.parse((message as MessageEvent<string>).data) as LiveEvent;
    for (const listener of listeners) listener(event);
  });
}

function closeWhenUnheard(): void {
  if (listeners.size > 0 || watchers.size > 0) return;
  stream?.close();
  stream = undefined;
}

/** Calls back for every entry that arrives at the office, one stream for the whole page. */
export function useArrivals(listener: (event: LiveEvent) => void): void {
  const newest = useRef(listener);
  newest.current = listener;
  useEffect(() => {
    const call = (event: LiveEvent) => newest.current(event);
    listeners.add(call);
    open();
    return () => {
      listeners.delete(call);
      closeWhenUnheard();
    };
  }, []);
}

/** Whether arrivals are being heard right now. */
export function useIsLive(): boolean {
  const [now, setNow] = useState(live);
  useEffect(() => {
    watchers.add(setNow);
    open();
    return () => {
      watchers.delete(setNow);
      closeWhenUnheard();
    };
  }, []);
  return now;
}
