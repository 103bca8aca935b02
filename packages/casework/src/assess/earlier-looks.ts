import type { ColonyState } from '@combside/record/states';

/**
 * The colony without this look and later ones, which are no evidence for it. Suspicions stay, whenever they were stated.
 *
 * @param entry the examination's own entry; null while it is not sealed
 */
export function withoutLaterLooks(colony: ColonyState, entry: string | null, observedAt: string): ColonyState {
  const examinations = colony.examinations.filter(
    (one) => one.written.entry !== entry && one.body.observedAt <= observedAt,
  );
  return { ...colony, examinations };
}
