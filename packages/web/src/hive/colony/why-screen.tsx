import type { CircumstancesKnown } from '@combside/record/kinds/assessment';
import type { ColonyState } from '@combside/record/states';
import { useReasoning } from '../../ui/reasoning/reasoning.ts';
import { ReasoningPage } from '../../ui/reasoning/reasoning-page.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useHiveDevice } from '../hive-device.tsx';
import { combReadingsSaid } from './comb-readings-said.ts';
import type { ColonyDraftInHand } from './use-colony-draft.ts';

/** Why, in full: the reasons behind the line, and what the inspector may set. */
export function WhyScreen({
  hand,
  colony,
  visit,
  known,
}: {
  readonly hand: ColonyDraftInHand;
  readonly colony: ColonyState;
  readonly visit: string;
  readonly known: CircumstancesKnown | null;
}) {
  const words = useWords();
  const device = useHiveDevice();
  const { draft } = hand;
  const { answer, failed } = useReasoning(
    { ask: 'whole', draft, colony, visit, pack: device.pack, observedAt: device.now(), known },
    JSON.stringify([hand.taps, known, combReadingsSaid(colony)]),
  );
  if (failed) return <p className="caution">{words.say('always.went-wrong')}</p>;
  if (!answer) return <p>{words.say('reasoning.working')}</p>;
  return (
    <ReasoningPage
      whole={answer}
      changes={{
        honeyPositive: draft.honeyPositive,
        onHoney: (found) => hand.tap({ tap: 'spores in honey or bees', found }),
        onPrior: (condition, change) => hand.tap({ tap: 'prior', condition, change }),
      }}
    />
  );
}
