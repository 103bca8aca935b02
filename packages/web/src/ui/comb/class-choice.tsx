import type { CellClass } from '@combside/science/comb/cells/cell-classes';
import { useId } from 'react';
import { Button } from '../button.tsx';
import { useWords } from '../words-context.tsx';
import { classesInOrder, Swatch } from './hatching.tsx';

interface ClassChoiceProps {
  /** What stands now. */
  readonly chosen: CellClass;
  readonly machine: CellClass;
  /** With the digit of each class, where there are keys. */
  readonly digits: boolean;
  readonly onChoose: (of: CellClass) => void;
}

/** What a cell holds, by large keys that show the hatching of each class. Choosing what the machine read says: agreed. */
export function ClassChoice({ chosen, machine, digits, onChoose }: ClassChoiceProps) {
  const words = useWords();
  const id = useId();
  return (
    <div className="stack close">
      <span id={id}>{words.say('comb.screen.cell.ask')}</span>
      <div className="comb-classes" role="radiogroup" aria-labelledby={id}>
        {classesInOrder.map((of, n) => (
          <Button key={of} role="radio" aria-checked={chosen === of} onClick={() => onChoose(of)}>
            <Swatch id={id} of={of} />
            <span>
              {digits && <kbd>{n + 1}</kbd>} {words.say(`comb.class.${of}`)}
              {machine === of && <span className="as-read"> {words.say('comb.screen.cell.as-read')}</span>}
            </span>
          </Button>
        ))}
      </div>
    </div>
  );
}
