import { useId } from 'react';

import { useWords } from '../../ui/words-context.tsx';
import type { Value } from './inputs-in-address.ts';
import { NumberInput } from './number-input.tsx';
import { type Field, fieldWord, type QuestionWord } from './question.ts';

interface FieldInputProps {
  readonly question: QuestionWord;
  readonly name: string;
  readonly field: Field;
  readonly value: Value;
  readonly onChange: (value: Value) => void;
}

/** One input of a question, in plain words, with the control that suits it. */
export function FieldInput({ question, name, field, value, onChange }: FieldInputProps) {
  const words = useWords();
  const id = useId();
  const label = words.say(fieldWord(question, name));
  const hint = words.sayOne('questions.*.hint', `${question}.${name}`);
  if (field.kind === 'number') {
    return <NumberInput label={label} hint={hint} field={field} value={value as number | null} onChange={onChange} />;
  }
  if (field.kind === 'choice') {
    return (
      <fieldset className="several stack close">
        <legend>{label}</legend>
        {hint && <p className="quiet">{hint}</p>}
        {field.options.map((option) => (
          <label className="one-of" key={option}>
            <input type="radio" name={id} checked={value === option} onChange={() => onChange(option)} />
            {words.say(fieldWord(question, name, option))}
          </label>
        ))}
      </fieldset>
    );
  }
  const shared = {
    id,
    className: 'text-input',
    value: String(value ?? ''),
    'aria-describedby': hint ? `${id}-hint` : undefined,
  };
  return (
    <div className="stack close">
      <label htmlFor={id}>{label}</label>
      {hint && (
        <p className="quiet" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {field.kind === 'lines' ? (
        <textarea {...shared} rows={4} maxLength={2000} onChange={(event) => onChange(event.target.value)} />
      ) : (
        <input
          {...shared}
          type={field.kind === 'day' ? 'date' : 'text'}
          maxLength={200}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </div>
  );
}
