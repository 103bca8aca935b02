import type { WalkedColony } from '@combside/casework/examine/walk';
import { markOfResult } from '@combside/casework/result/result-mark';
import { drawApiaryPlan } from '@combside/papers/drawings/apiary-plan';
import type { ApiaryBody } from '@combside/record/kinds/apiary';
import { Drawn } from '../../ui/drawn.tsx';
import { useWords } from '../../ui/words-context.tsx';

interface PlanOfApiaryProps {
  readonly plan: NonNullable<ApiaryBody['plan']>;
  readonly walked: readonly WalkedColony[];
  readonly onOpen: (colony: string) => void;
}

/** The site as a surveyor would sketch it; a touch opens the hive it falls on. The walking order says the same in words. */
export function PlanOfApiary({ plan, walked, onOpen }: PlanOfApiaryProps) {
  const words = useWords();
  const placed = walked.flatMap((one) =>
    one.at ? [{ id: one.colony, label: one.label, at: one.at, state: markOfResult(one.word) }] : [],
  );
  if (placed.length === 0) return null;
  const drawing = drawApiaryPlan({
    hives: placed,
    gate: plan.gate,
    track: plan.track,
    walk: plan.walk,
    scaleText: (metres) => words.unit(metres, 'm'),
    largestMark: 30,
  });
  return (
    <>
      <div className="apiary-plan">
        <Drawn drawing={drawing} width={360} name={words.say('hive.visit.plan')} />
        {drawing.places.map((place) => {
          const one = walked.find((candidate) => candidate.colony === place.id);
          if (!one) return null;
          return (
            <button
              type="button"
              key={place.id}
              className="hive-place"
              style={{ left: `${(100 * place.x) / drawing.width}%`, top: `${(100 * place.y) / drawing.height}%` }}
              aria-label={words.say('hive.visit.state', {
                label: one.label,
                state: words.say(`casework.walk.${one.word}`),
              })}
              onClick={() => onOpen(one.colony)}
            />
          );
        })}
      </div>
      {placed.length < walked.length && (
        <ul className="rows">
          {walked
            .filter((one) => !one.at)
            .map((one) => (
              <li key={one.colony}>
                <button type="button" className="colony-row" onClick={() => onOpen(one.colony)}>
                  {words.say('hive.visit.state', { label: one.label, state: words.say(`casework.walk.${one.word}`) })}
                </button>
              </li>
            ))}
        </ul>
      )}
    </>
  );
}
