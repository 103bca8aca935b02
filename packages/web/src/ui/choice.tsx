import { useId } from 'react';
import { Button } from './button.tsx';

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  /** Null when nothing was chosen yet: a choice about what was seen is never prefilled. */
  readonly chosen: Value | null;
  readonly onChoose: (value: Value) => void;
}

/** One of a few, all in sight, each big enough for a glove. */
export function Choice<Value extends string>({ label, options, chosen, onChoose }: ChoiceProps<Value>) {
  const id = useId();
  return (
    <div className="stack close">
      <span id={id}>{label}</span>
      <div className={options.length > 3 ? 'choices many' : 'choices'} role="radiogroup" aria-labelledby={id}>
        {options.map((option) => (
          <Button
            key={option.value}
            role="radio"
            aria-checked={chosen === option.value}
            onClick={() => onChoose(option.value)}
          >
            {option.label}
          </Button>
        ))}
      </div>
    </div>
  );
}
