import type { Act } from '@combside/casework/act';
import { type HistoryEvent, historyOf } from '@combside/casework/register/history';
import { takeApart } from '@combside/casework/register/merge';
import {
  acceptApiaryChange,
  acceptColonyChange,
  openProposals,
  rejectChange,
  settleContested,
} from '@combside/casework/register/settle';
import { withReason } from '@combside/casework/register/with-reason';
import type { Person } from '@combside/contract/people';
import type { ApiaryState, ColonyState, KeeperState, MovementState, StateBase } from '@combside/record/states';
import { type FormEvent, type ReactNode, useId, useState } from 'react';
import { Link } from 'wouter';
import { newId } from '../../device/keys/new-id.ts';
import { Button } from '../../ui/button.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { deskTimeZone } from '../time-zone.ts';
import { sayField, sayValue } from './say-value.ts';
import type { RecordWriting } from './use-record-writing.ts';

export type Names = ReadonlyMap<string, string>;

/** Values that did not see each other, side by side, until somebody says which stands. */
export function Contested({
  state,
  people,
  names,
  writing,
}: {
  readonly state: ApiaryState | ColonyState | KeeperState | MovementState;
  readonly people: readonly Person[];
  readonly names: Names;
  readonly writing: RecordWriting;
}) {
  const words = useWords();
  const register =
    'apiary' in state
      ? state.apiary
      : 'colony' in state
        ? state.colony
        : 'movement' in state
          ? state.movement
          : state.keeper;
  if (register.contested.length === 0) return null;
  const values = [...(register.current ? [register.current] : []), ...register.contested];
  const bodies = values.map(({ body }) => body as Record<string, unknown>);
  const fields = Object.keys(bodies[0] ?? {}).filter(
    (field) => new Set(bodies.map((body) => JSON.stringify(body[field]))).size > 1,
  );
  return (
    <section className="caution stack close" aria-labelledby="contested-title">
      <h3 id="contested-title">{words.say('register.contested')}</h3>
      <div className="side-by-side">
        {values.map(({ written, body }, index) => (
          <div key={written.entry} className="stack close">
            <p className="quiet">
              {words.say('register.history.by', {
                name: nameOf(people, written.by, words.say('always.not-known')),
                when: words.dayAndTime(written.at, deskTimeZone),
              })}
              {index === 0 && ` · ${words.say('register.contested.now')}`}
            </p>
            <dl className="fields">
              {fields.map((field) => (
                <div key={field}>
                  <dt>{sayField(words, field)}</dt>
                  <dd>{sayValue(words, field, (body as Record<string, unknown>)[field], names)}</dd>
                </div>
              ))}
            </dl>
            <Button
              disabled={writing.state === 'busy'}
              onClick={() => void writing.write(() => settleContested(state, written.entry))}
            >
              {words.say('register.contested.choose')}
            </Button>
          </div>
        ))}
      </div>
    </section>
  );
}

/** Changes that inspectors proposed and nobody answered. */
export function Proposed({
  state,
  colonies,
  people,
  names,
  writing,
}: {
  readonly state: ApiaryState | ColonyState;
  readonly colonies: readonly ColonyState[];
  readonly people: readonly Person[];
  readonly names: Names;
  readonly writing: RecordWriting;
}) {
  const words = useWords();
  const open = openProposals(state);
  if (open.length === 0) return null;
  return (
    <section className="caution stack close" aria-label={words.say('register.history.proposed')}>
      {open.map((one) => {
        const { field, from, to, reason } = one.body;
        const said = {
          field: sayField(words, field),
          from: sayValue(words, field, from, names),
          to: sayValue(words, field, to, names),
        };
        const accept = (): Act =>
          'apiary' in state ? acceptApiaryChange(state, one) : acceptColonyChange(state, one, colonies);
        return (
          <div key={one.written.entry} className="stack close">
            <p>
              <strong>{words.say('register.proposed', said)}</strong>
            </p>
            <p className="quiet">
              {words.say('register.proposed.by', {
                name: nameOf(people, one.written.by, words.say('always.not-known')),
                when: words.dayAndTime(one.written.at, deskTimeZone),
                why: reason,
              })}
            </p>
            <div className="buttons">
              <Button
                disabled={writing.state === 'busy'}
                onClick={() => void writing.write(() => withReason(accept(), reason, newId))}
              >
                {words.say('register.proposed.accept', said)}
              </Button>
              <Button
                disabled={writing.state === 'busy'}
                onClick={() => {
                  const why = words.say('register.proposed.rejected', said);
                  void writing.write(() => withReason(rejectChange(state, one), why, newId));
                }}
              >
                {words.say('register.proposed.reject', said)}
              </Button>
            </div>
          </div>
        );
      })}
    </section>
  );
}

/** Every change with who, when and why, newest first. */
export function History({
  state,
  people,
  names,
  untitled = false,
}: {
  readonly state: StateBase;
  readonly people: readonly Person[];
  readonly names: Names;
  /** Whether the heading stands elsewhere already. */
  readonly untitled?: boolean;
}) {
  const words = useWords();
  const changes = (event: HistoryEvent) => event.what === 'changed' || event.what === 'contested';
  const Part = untitled ? 'div' : 'section';
  return (
    <Part className="stack close" {...(untitled ? {} : { 'aria-labelledby': 'history-title' })}>
      {!untitled && <h3 id="history-title">{words.say('register.history')}</h3>}
      <ol className="rows history">
        {historyOf(state).map((event) => (
          <li key={`${event.written.entry} ${event.what}`} className="stack close">
            <p>
              <strong>{sayWord(words, 'register.history.*', event.what)}</strong>{' '}
              <span className="quiet">
                {words.say('register.history.by', {
                  name: nameOf(people, event.written.by, words.say('always.not-known')),
                  when: words.dayAndTime(event.written.at, deskTimeZone),
                })}
              </span>
            </p>
            {event.fields.map(({ field, from, to }) => (
              <p key={field}>
                {words.say('register.change-from-to', {
                  field: sayField(words, field),
                  from: sayValue(words, field, from, names),
                  to: sayValue(words, field, to, names),
                })}
              </p>
            ))}
            {event.why !== null ? (
              <p>{event.what === 'noted' ? event.why : words.say('register.history.why', { why: event.why })}</p>
            ) : (
              changes(event) && <p className="quiet">{words.say('register.history.no-why')}</p>
            )}
          </li>
        ))}
      </ol>
    </Part>
  );
}

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

/** Why something is changed; it stays with the change. @param most characters */
export function Why({
  id,
  why,
  most,
  onWhy,
}: {
  readonly id: string;
  readonly why: string;
  readonly most: number;
  readonly onWhy: (why: string) => void;
}) {
  const words = useWords();
  return (
    <Labelled id={id} label={words.say('register.change.why')}>
      <input
        id={id}
        className="text-input"
        value={why}
        maxLength={most}
        onChange={(event) => onWhy(event.currentTarget.value)}
      />
    </Labelled>
  );
}

export function Labelled({
  id,
  label,
  children,
}: {
  readonly id: string;
  readonly label: string;
  readonly children: ReactNode;
}) {
  return (
    <div className="labelled">
      <label htmlFor={id}>{label}</label>
      {children}
    </div>
  );
}

export function nameOf(people: readonly Person[], person: string, unknown: string): string {
  return people.find((one) => one.person === person)?.name ?? unknown;
}

/** Says that the record is read as part of another, and takes that back, with the reason. */
export function MergedInto({
  state,
  into,
  writing,
}: {
  readonly state: KeeperState | ApiaryState;
  /** Where the record that is kept is shown. */
  readonly into: string;
  readonly writing: RecordWriting;
}) {
  const words = useWords();
  const id = useId();
  const [reason, setReason] = useState('');
  return (
    <section className="caution stack close" aria-label={words.say('register.merged-into')}>
      <p>{words.say('register.merged-into')}</p>
      <div>
        <Link className="button" href={into}>
          {words.say('register.merged-into.open')}
        </Link>
      </div>
      <Why id={id} why={reason} most={500} onWhy={setReason} />
      <div>
        <Button disabled={writing.state === 'busy'} onClick={() => void writing.write(() => takeApart(state, reason))}>
          {words.say('register.take-apart')}
        </Button>
      </div>
    </section>
  );
}
