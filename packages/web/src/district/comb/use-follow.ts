import { useEffect, useRef } from 'react';

/** A reading takes some seconds: so often it is asked for, in milliseconds. It is no entry, so no arrival tells of it. */
const often = 2000;

/** Asks again and again while the machine has something to do. */
export function useFollow(isOpen: boolean, again: () => void): void {
  const newest = useRef(again);
  newest.current = again;
  useEffect(() => {
    if (!isOpen) return;
    const timer = setInterval(() => newest.current(), often);
    return () => clearInterval(timer);
  }, [isOpen]);
}
