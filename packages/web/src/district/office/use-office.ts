import type { LiveEvent } from '@combside/contract/live';
import { useCallback, useEffect, useRef, useState } from 'react';

/** What was asked of the office: the newest answer stays in sight while a newer one is on its way, or fails to come. */
export interface Asked<T> {
  readonly answer: T | null;
  /** When the office gave this answer, as an instant; null while there is none. */
  readonly answeredAt: string | null;
  readonly state: 'asking' | 'there' | 'failed' | 'not there' | 'wrong address';
  again(): void;
}

/** However much arrives, a page is asked for again at most so often, in milliseconds: an import brings hundred thousands. */
const calm = 1000;

interface KeptAnswer<T> extends Omit<Asked<T>, 'again'> {
  readonly address: string;
}

/**
 * The last answers, by address, the longest unasked first: whoever goes back to a page sees at once what stood there, and
 * still sees it while the office is silent. They are never older than this window, and one person's only.
 */
const answers = new Map<string, { readonly answer: unknown; readonly answeredAt: string }>();
let answeredTo: string | null = null;

/** So many answers are kept. */
const mostAnswers = 40;

/** Keeps answers for this person only: those given to another are forgotten. */
export function keepAnswersFor(person: string): void {
  if (answeredTo !== person) answers.clear();
  answeredTo = person;
}

function remember(address: string, given: { readonly answer: unknown; readonly answeredAt: string }): void {
  answers.delete(address);
  answers.set(address, given);
  for (const oldest of answers.keys()) {
    if (answers.size <= mostAnswers) break;
    answers.delete(oldest);
  }
}

function lastAnswer<T>(address: string): KeptAnswer<T> {
  const last = answers.get(address);
  return { address, answer: (last?.answer as T) ?? null, answeredAt: last?.answeredAt ?? null, state: 'asking' };
}

/**
 * Asks the office for a page, and again whenever `relevant` says that an arrival touches it: at once for the first, and
 * once more after those that came close behind it.
 */
export function useAsked<T>(address: string, relevant: (event: LiveEvent) => boolean): Asked<T> {
  const [kept, setKept] = useState<KeptAnswer<T>>(() => lastAnswer<T>(address));
  const turn = useRef(0);
  const ask = useCallback(async () => {
    turn.current += 1;
    const mine = turn.current;
    const settle = (state: Asked<T>['state'], answer: T | null = null) => {
      if (state === 'there') remember(address, { answer, answeredAt: new Date().toISOString() });
      else if (state !== 'failed') answers.delete(address);
      if (mine === turn.current) setKept({ ...lastAnswer<T>(address), state });
    };
    try {
      const response = await fetch(address);
      if (response.status === 404 || response.status === 403) settle('not there');
      else if (response.status === 400) settle('wrong address');
      else if (response.ok) settle('there', (await response.json()) as T);
      else settle('failed');
    } catch {
      settle('failed');
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
  const { answer, answeredAt, state } = kept.address === address ? kept : lastAnswer<T>(address);
  return { answer, answeredAt, state, again: () => void ask() };
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
