import type { Act } from '@combside/casework/act';
import { withReason } from '@combside/casework/register/with-reason';
import { type FormEvent, useId, useState } from 'react';
import { newId } from '../../device/keys/new-id.ts';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { Labelled } from './labelled.tsx';
import { sayField } from './say-value.ts';
import type { RecordWriting } from './use-record-writing.ts';

interface ChangeFormProps {
  /** Fields that can be changed here, with how each is typed. */
  readonly fields: readonly { readonly field: string; readonly type: 'text' | 'number' | 'date' | 'tel' | 'email' }[];
  readonly body: object;
  readonly change: (change: Record<string, string | number | null>) => Act;
  readonly writing: RecordWriting;
}

/** A few fields of a record, changed together for one reason. */
export function ChangeForm({ fields, body, change, writing }: ChangeFormProps) {
  const words = useWords();
  const id = useId();
  const [open, setOpen] = useState(false);
  if (!open) {
    return (
      <div>
        <Button onClick={() => setOpen(true)}>{words.say('register.change')}</Button>
      </div>
    );
  }
  const before = body as Record<string, string | number | null>;
  const write = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const typed = new FormData(event.currentTarget);
    const next: Record<string, string | number | null> = {};
    for (const { field, type } of fields) {
      const text = String(typed.get(field) ?? '').trim();
      // A field that stood empty as null stays null; one that holds text is emptied as text.
      if (type === 'number') next[field] = text === '' ? null : Number(text);
      else next[field] = text === '' && (before[field] === null || type === 'date') ? null : text;
    }
    const why = String(typed.get('why') ?? '');
    if (await writing.write(() => withReason(change(next), why, newId))) setOpen(false);
  };
  return (
    <form className="stack close change-form" onSubmit={(event) => void write(event)}>
      {fields.map(({ field, type }) => (
        <Labelled key={field} id={`${id}${field}`} label={sayField(words, field)}>
          <input
            id={`${id}${field}`}
            className="text-input"
            name={field}
            type={type}
            defaultValue={before[field] ?? ''}
            {...(type === 'number' ? { min: 0, step: 1 } : {})}
          />
        </Labelled>
      ))}
      <Labelled id={`${id}why`} label={words.say('register.change.why')}>
        <input id={`${id}why`} className="text-input" name="why" maxLength={1000} />
      </Labelled>
      <div className="buttons">
        <Button look="act" type="submit" disabled={writing.state === 'busy'}>
          {words.say('register.change.do')}
        </Button>
        <Button onClick={() => setOpen(false)}>{words.say('register.change.leave')}</Button>
      </div>
    </form>
  );
}
