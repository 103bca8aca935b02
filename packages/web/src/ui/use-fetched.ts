import { useEffect, useState } from 'react';

/**
 * A part of the program that is fetched when it is first needed, such as a plot with its library.
 *
 * @param load called once
 * @returns null while it is on its way
 */
export function useFetched<Part>(load: () => Promise<Part>): Part | 'failed' | null {
  const [kept, setKept] = useState<{ readonly part: Part } | 'failed' | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: fetched once, however often the function is made anew
  useEffect(() => {
    let left = false;
    load().then(
      (part) => {
        if (!left) setKept({ part });
      },
      () => {
        if (!left) setKept('failed');
      },
    );
    return () => {
      left = true;
    };
  }, []);
  return kept === null || kept === 'failed' ? kept : kept.part;
}
