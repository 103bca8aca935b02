import { useEffect, useId, useState } from 'react';

import { useWords } from '../../ui/words-context.tsx';
import { fits } from './inputs-in-address.ts';
import type { Field } from './question.ts';
import { sayShown } from './spoken.ts';

interface NumberInputProps {
  readonly label: string;
  readonly hint: string | null;
  readonly field: Extract<Field, { kind: 'number' }>;
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
}

/** Digits that a person types and reads, without the noise of binary fractions. */
const tidy = (value: number) => Number(value.toPrecision(12));

/** A number by slider or by typing, the one beside the other; both reach every value by keyboard. */
export function NumberInput({ label, hint, field, value, onChange }: NumberInputProps) {
  const words = useWords();
  const id = useId();
  // Shares are typed as per cent.
  const scale = field.shown === 'share' ? 100 : 1;
  const point = words.language === 'de' ? ',' : '.';
  const asText = (given: number | null) => (given === null ? '' : String(tidy(given * scale)).replace('.', point));
  const [typed, setTyped] = useState(asText(value));
  const read = typed.trim() === '' ? null : tidy(Number(typed.replace(',', '.')) / scale);
  // What was typed stays as typed while it means the value; a slider or a link changes it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a change from outside may replace what is being typed
  useEffect(() => {
    if (value !== null && value !== read) setTyped(asText(value));
  }, [value]);
  const wrong = read !== null && !fits(field, read);
  const top = field.slideTo === null ? null : (field.slideTo ?? field.to);
  const range = { from: words.number(tidy(field.from * scale), 4), to: words.number(tidy(field.to * scale), 4) };
  const unit = words.sayOne('questions.unit.*', field.shown);
  return (
    <div className="stack close">
      <label htmlFor={id}>{label}</label>
      {hint && (
        <p className="quiet" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div className={top === null ? 'number-input alone' : 'number-input'}>
        {top !== null && (
          <input
            type="range"
            className={value === null ? 'unstated' : undefined}
            aria-label={words.say('questions.slider', { label })}
            min={field.from}
            max={top}
            step={field.step}
            value={Math.min(top, value ?? field.from)}
            aria-valuetext={value === null ? words.say('questions.not-stated') : sayShown(words, field.shown, value)}
            onChange={(event) => {
              const next = tidy(Number(event.target.value));
              setTyped(asText(next));
              onChange(next);
            }}
          />
        )}
        <span className="number-box">
          <input
            id={id}
            className="text-input"
            inputMode="decimal"
            autoComplete="off"
            value={typed}
            aria-invalid={wrong || undefined}
            aria-describedby={[hint && `${id}-hint`, wrong && `${id}-wrong`].filter(Boolean).join(' ') || undefined}
            onChange={(event) => {
              const text = event.target.value;
              setTyped(text);
              const next = text.trim() === '' ? null : tidy(Number(text.replace(',', '.')) / scale);
              if (next === null ? field.start === null : fits(field, next)) onChange(next);
            }}
            onBlur={() => {
              // A box left empty or wrong shows again what the answer is made of.
              if (wrong || (read === null && value !== null)) setTyped(asText(value));
            }}
          />
          {unit && <span>{unit}</span>}
        </span>
      </div>
      {wrong && (
        <p className="finding owed" id={`${id}-wrong`} role="alert">
          {words.say(field.step === 1 ? 'questions.range.whole' : 'questions.range', range)}
        </p>
      )}
    </div>
  );
}
