import { type LiveEvent, liveEvent } from '@combside/contract/live';
import { useEffect, useRef, useState } from 'react';
import { keepFault } from '../../app/faults.ts';

const listeners = new Set<(event: LiveEvent) => void>();
const watchers = new Set<(live: boolean) => void>();
let stream: EventSource | undefined;
let live = false;

function tell(next: boolean): void {
  live = next;
  for (const watcher of watchers) watcher(next);
}

function hear(text: string): void {
  let event: LiveEvent;
  try {
    event = liveEvent.parse(JSON.parse(text));
  } catch {
    // What cannot be understood cannot be told apart: it touches nothing here, and the fault says that it came.
    keepFault(new Error('an arrival was not understood'), '');
    return;
  }
  for (const listener of listeners) listener(event);
}

function open(): void {
  if (stream) return;
  stream = new EventSource('/api/live');
  stream.addEventListener('open', () => tell(true));
  // The browser tries again by itself and says from where, so nothing is missed.
  stream.addEventListener('error', () => tell(false));
  stream.addEventListener('entry', (message) => hear((message as MessageEvent<string>).data));
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
