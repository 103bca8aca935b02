import { useId } from 'react';
import { Button } from './button.tsx';

interface StepperProps {
  readonly label: string;
  readonly value: number | null;
  readonly from: number;
  readonly to: number;
  readonly step?: number;
  /** Two more keys that count in larger steps, for numbers that run into the hundreds. */
  readonly stride?: number;
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
  stride,
  unstated,
  less,
  more,
  format = String,
  start = from,
  onChange,
}: StepperProps) {
  const id = useId();
  const set = (next: number) => onChange(Math.min(to, Math.max(from, next)));
  const key = (by: number, text: string, name: string) => (
    <Button
      aria-label={`${label}: ${name}`}
      disabled={value !== null && (by < 0 ? value <= from : value >= to)}
      onClick={() => set(value === null ? start : value + by)}
    >
      {text}
    </Button>
  );
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset draws a border and legend this control does not want
    <div className="stack close" role="group" aria-labelledby={id}>
      <span id={id}>{label}</span>
      <div className={stride ? 'stepper strides' : 'stepper'}>
        {stride && key(-stride, `−${stride}`, `${less} ${stride}`)}
        {key(-step, `−${stepWords(step)}`, less)}
        <output aria-live="polite" className={value === null ? 'unstated' : undefined}>
          {value === null ? unstated : format(value)}
        </output>
        {key(step, `+${stepWords(step)}`, more)}
        {stride && key(stride, `+${stride}`, `${more} ${stride}`)}
      </div>
    </div>
  );
}

/** How far a key goes, where that is not one by one. */
function stepWords(step: number): string {
  if (step === 1) return '';
  return step === 0.25 ? '¼' : String(step);
}
