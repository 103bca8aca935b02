import { Button } from '../../ui/button.tsx';

interface SeveralProps {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: readonly string[]) => void;
}

/** Any number of a few: each key goes down and comes up again. */
export function Several({ label, options, chosen, onChange }: SeveralProps) {
  return (
    <fieldset className="several">
      <legend>{label}</legend>
      <div className={options.length > 3 ? 'choices many' : 'choices'}>
        {options.map(({ value, label: text }) => {
          const pressed = chosen.includes(value);
          return (
            <Button
              key={value}
              aria-pressed={pressed}
              onClick={() => onChange(pressed ? chosen.filter((one) => one !== value) : [...chosen, value])}
            >
              {text}
            </Button>
          );
        })}
      </div>
    </fieldset>
  );
}
