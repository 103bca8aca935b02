/** What a cell can be read as. */
export const cellClasses = [
  'sealed-worker-brood',
  'sealed-drone-brood',
  'sealed-honey',
  'open-empty',
  'egg-or-larva',
  'nectar',
  'pollen',
  'hidden',
] as const;

/** A class the reader can decide on. */
export type DecidedClass = (typeof cellClasses)[number];

/** A decided class, or none. */
export type CellClass = DecidedClass | 'not-decided';

/** The coarse groups that can still be told apart in small pictures. */
export type CoarseClass = 'sealed' | 'open' | 'hidden' | 'not-decided';

/** The coarse group of a class. */
export function coarseClass(of: CellClass): CoarseClass {
  switch (of) {
    case 'sealed-worker-brood':
    case 'sealed-drone-brood':
    case 'sealed-honey':
      return 'sealed';
    case 'open-empty':
    case 'egg-or-larva':
    case 'nectar':
    case 'pollen':
      return 'open';
    case 'hidden':
      return 'hidden';
    case 'not-decided':
      return 'not-decided';
  }
}
