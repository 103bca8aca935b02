const nextStepNames = [
  'close-hive',
  'specimen',
  'move-nothing',
  'reported',
  'not-confirmed',
  'dead-hive',
  'stored-combs',
  'not-opened',
  'signs-seen',
  'too-little-brood',
  'masked',
  'find',
  'nothing-seen',
  'keep-looking',
  'tools',
  'law-first',
] as const;

/** What can come next, for the keeper. */
export type NextStep = (typeof nextStepNames)[number];

export type NextStepId = `casework.next.${NextStep}`;

/** Ids of every sentence that can come next, so that no catalogue misses one. */
export const nextStepIds: readonly NextStepId[] = nextStepNames.map((id) => `casework.next.${id}` as const);
