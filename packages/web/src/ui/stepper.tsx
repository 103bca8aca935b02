import { useId } from 'react';
import { Button } from './button.tsx';

interface StepperProps {
  readonly label: string;
  readonly value: number | null;
  readonly from: number;
  readonly to: number;
  readonly step?: number;
  /** What stands there before anything was stated. */
  readonly unstated: string;
  readonly less: string;
  readonly more: string;
  readonly format?: (value: number) => string;
  /** Where the first press starts when nothing was stated. */
  readonly start?: number;
  readonly onChange: (value: number) => void;
}

/** A number by two large keys: no keyboard, no drag. */
export function Stepper({
  label,
  value,
  from,
  to,
  step = 1,
  unstated,
  less,
  more,
  format = String,
  start = from,
  onChange,
}: StepperProps) {
  const id = useId();
  const set = (next: number) => onChange(Math.min(to, Math.max(from, next)));
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset draws a border and legend this control does not want
    <div className="stack close" role="group" aria-labelledby={id}>
      <span id={id}>{label}</span>
      <div className="stepper">
        <Button
          aria-label={`${label}: ${less}`}
          disabled={value !== null && value <= from}
          onClick={() => set(value === null ? start : value - step)}
        >
          −
        </Button>
        <output aria-live="polite">{value === null ? unstated : format(value)}</output>
        <Button
          aria-label={`${label}: ${more}`}
          disabled={value !== null && value >= to}
          onClick={() => set(value === null ? start : value + step)}
        >
          +
        </Button>
      </div>
    </div>
  );
}
