import { chanceFromLooks } from '@combside/casework/plan/colonies-to-open';
import { usualPlanning } from '@combside/casework/plan/planning-settings';
import type { ColonyState } from '@combside/record/states';
import { useWords } from '../../ui/words-context.tsx';

interface ChanceSoFarProps {
  readonly colonies: readonly ColonyState[];
  readonly visit: string;
}

/**
 * What the looks of this visit could find so far: the chance that one diseased colony would have been seen. One tap
 * deep, since a number reads as a judgement.
 */
export default function ChanceSoFar({ colonies, visit }: ChanceSoFarProps) {
  const words = useWords();
  const standing = colonies.filter((one) => one.colony.current?.body.hiveState !== 'gone');
  const looks = standing.flatMap((one) => {
    const body = one.examinations.find((examination) => examination.body.visit === visit)?.body;
    if (!body) return [];
    // A look from above or outside sees no brood comb.
    const into = body.depth === 'full' || body.depth === 'part';
    const sum = (of: 'framesSeen' | 'framesHeld') => body.boxes.reduce((total, box) => total + box[of], 0);
    return [{ framesSeen: into ? sum('framesSeen') : 0, framesHeld: sum('framesHeld') }];
  });
  const sensitivity = usualPlanning.lookSensitivity.value;
  const chance = looks.length === 0 ? null : chanceFromLooks(standing.length, looks, sensitivity);
  if (chance === null) return null;
  return (
    <details>
      <summary>{words.say('hive.visit.chance')}</summary>
      <p>
        {words.say('casework.chance.so-far', { chance: words.share(chance, 0) })}
        {', '}
        {words.say('casework.chance.so-far.doubt', { sensitivity: words.share(sensitivity, 0) })}
      </p>
    </details>
  );
}
