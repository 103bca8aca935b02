import { withReason } from '@combside/casework/register/with-reason';
import { apiaryPage } from '@combside/contract/apiary-page';
import { movementBody } from '@combside/record/kinds/movement';
import type { MovementState } from '@combside/record/states';
import { type FormEvent, useId, useState } from 'react';
import { dayInZone } from '../../app/day-in-zone.ts';
import { newId } from '../../device/keys/new-id.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteStatus } from '../../ui/write-status.tsx';
import { useAsked } from '../office/use-asked.ts';
import { Labelled, Why } from './labelled.tsx';
import { actOf, bodyOf, draftOf, type Missing, type MovementDraft } from './movement-draft.ts';
import { MovementEnd } from './movement-end.tsx';
import type { RecordWriting } from './use-record-writing.ts';

export interface OwnApiary {
  readonly apiary: string;
  readonly name: string;
}

interface MovementFormProps {
  readonly writing: RecordWriting;
  /** The apiaries from whose record it is told: one, or all of a keeper. Never empty. */
  readonly own: readonly OwnApiary[];
  /** The one colony that went, where it is told from a colony's record. */
  readonly colony: string | null;
  /** The movement that is changed; null for a new one. */
  readonly written: MovementState | null;
  readonly nameOf: (apiary: string) => string;
  readonly onDone: () => void;
}

const { what, how, knownBy } = movementBody.shape;
/** `imported` is said by an import, never by a person. */
const sayers = knownBy.options.filter((one) => one !== 'imported');

/** Enters or changes a movement: what went, from where to where, on which day, how many, and who says so. */
export function MovementForm({ writing, own, colony, written, nameOf, onDone }: MovementFormProps) {
  const words = useWords();
  const id = useId();
  const [draft, setDraft] = useState<MovementDraft>(() => firstDraft(own, colony, written, nameOf));
  const [whom, setWhom] = useState('');
  const [why, setWhy] = useState('');
  const [missing, setMissing] = useState<readonly Missing[]>([]);
  const change = (part: Partial<MovementDraft>) => setDraft((before) => ({ ...before, ...part }));
  const name = own.find(({ apiary }) => apiary === draft.here)?.name ?? nameOf(draft.here);
  const mayNameColonies = colony === null && written === null && draft.way === 'away' && draft.what === 'colonies';
  const isBusy = writing.state === 'busy';
  const whereLabel = draft.way === 'away' ? 'register.movement.where-to' : 'register.movement.where-from';

  const write = async (event: FormEvent) => {
    event.preventDefault();
    if (isBusy) return;
    const body = bodyOf(draft);
    setMissing('from' in body ? [] : body);
    if (!('from' in body)) return;
    const said = [draft.other === 'outside' ? whom.trim() : '', why.trim()].filter(Boolean).join('. ');
    const act = async () =>
      withReason(await actOf(body, written, dayInZone(new Date().toISOString(), timeZoneHere)), said, newId);
    if (await writing.write(act)) onDone();
  };

  return (
    <form className="stack change-form" aria-labelledby={`${id}title`} onSubmit={(event) => void write(event)}>
      <h4 id={`${id}title`} className="change-title">
        {words.say(written ? 'register.movement.change' : 'register.movement.record')}
      </h4>
      {own.length > 1 && !written && (
        <Labelled id={`${id}own`} label={words.say('register.movement.which')}>
          <select
            id={`${id}own`}
            className="text-input"
            value={draft.here}
            onChange={(event) => change({ here: event.currentTarget.value, named: [] })}
          >
            {own.map((one) => (
              <option key={one.apiary} value={one.apiary}>
                {one.name}
              </option>
            ))}
          </select>
        </Labelled>
      )}
      {colony === null && (
        <Choice
          label={words.say('register.movement.way')}
          options={[
            { value: 'away', label: words.say('register.movement.away', { name }) },
            { value: 'here', label: words.say('register.movement.here', { name }) },
          ]}
          chosen={draft.way}
          onChoose={(way) => change({ way })}
        />
      )}
      <MovementEnd
        label={words.say(whereLabel)}
        chosen={draft.other}
        except={draft.here}
        onChoose={(other) => change({ other })}
      />
      {draft.other === 'outside' && (
        <Labelled id={`${id}whom`} label={words.say('register.movement.whom')}>
          <input
            id={`${id}whom`}
            className="text-input"
            value={whom}
            maxLength={300}
            onChange={(event) => setWhom(event.currentTarget.value)}
          />
        </Labelled>
      )}
      {colony === null && <WhatWent draft={draft} onChange={change} />}
      {mayNameColonies && (
        <NamedColonies apiary={draft.here} named={draft.named} onNamed={(named) => change({ named })} />
      )}
      {colony !== null && <p className="quiet">{words.say('register.movement.named.about')}</p>}
      <Labelled id={`${id}how`} label={words.say('register.movement.how')}>
        <select
          id={`${id}how`}
          className="text-input"
          value={draft.how}
          onChange={(event) => change({ how: event.currentTarget.value as MovementDraft['how'] })}
        >
          {how.options.map((one) => (
            <option key={one} value={one}>
              {words.say(`register.movement.how.${one}`)}
            </option>
          ))}
        </select>
      </Labelled>
      <OnWhichDays draft={draft} onChange={change} />
      <WhoSays draft={draft} onChange={change} />
      <Why id={`${id}why`} why={why} most={600} onWhy={setWhy} />
      {missing.length > 0 && (
        <p className="caution" role="alert">
          {words.say('register.movement.missing', { fields: missing.map((one) => words.say(one)).join(' · ') })}
        </p>
      )}
      <WriteStatus writing={writing} />
      <div className="buttons">
        <Button look="act" type="submit" disabled={isBusy}>
          {words.say(written ? 'register.change.do' : 'register.movement.do')}
        </Button>
        <Button onClick={onDone}>{words.say(written ? 'register.change.leave' : 'register.movement.leave')}</Button>
      </div>
    </form>
  );
}

interface AskedOfMovement {
  readonly draft: MovementDraft;
  readonly onChange: (part: Partial<MovementDraft>) => void;
}

/** What went, and how many. */
function WhatWent({ draft, onChange }: AskedOfMovement) {
  const words = useWords();
  const id = useId();
  return (
    <div className="pair">
      <Labelled id={`${id}what`} label={words.say('register.movement.what')}>
        <select
          id={`${id}what`}
          className="text-input"
          value={draft.what}
          onChange={(event) => onChange({ what: event.currentTarget.value as MovementDraft['what'] })}
        >
          {what.options.map((one) => (
            <option key={one} value={one}>
              {words.say(`register.what.${one}`)}
            </option>
          ))}
        </select>
      </Labelled>
      <Labelled id={`${id}quantity`} label={words.say('register.movement.how-many')}>
        <input
          id={`${id}quantity`}
          className="text-input"
          type="number"
          min={1}
          max={100_000}
          step={1}
          value={draft.quantity}
          onChange={(event) => onChange({ quantity: event.currentTarget.value })}
        />
      </Labelled>
    </div>
  );
}

/** The day, or the first and last it can have been. */
function OnWhichDays({ draft, onChange }: AskedOfMovement) {
  const words = useWords();
  const id = useId();
  return (
    <>
      <div className="pair">
        {!draft.isExact && (
          <Labelled id={`${id}first`} label={words.say('register.movement.first')}>
            <input
              id={`${id}first`}
              className="text-input"
              type="date"
              value={draft.first}
              onChange={(event) => onChange({ first: event.currentTarget.value })}
            />
          </Labelled>
        )}
        <Labelled
          id={`${id}last`}
          label={words.say(draft.isExact ? 'register.movement.day' : 'register.movement.last')}
        >
          <input
            id={`${id}last`}
            className="text-input"
            type="date"
            value={draft.last}
            onChange={(event) => onChange({ last: event.currentTarget.value })}
          />
        </Labelled>
      </div>
      <label className="take">
        <input
          type="checkbox"
          checked={!draft.isExact}
          onChange={(event) => onChange({ isExact: !event.currentTarget.checked })}
        />{' '}
        {words.say('register.movement.not-exact')}
      </label>
    </>
  );
}

/** By whom the office knows of it. */
function WhoSays({ draft, onChange }: AskedOfMovement) {
  const words = useWords();
  const id = useId();
  return (
    <Labelled id={`${id}says`} label={words.say('register.movement.who-says')}>
      <select
        id={`${id}says`}
        className="text-input"
        value={draft.knownBy}
        onChange={(event) => onChange({ knownBy: event.currentTarget.value as MovementDraft['knownBy'] })}
      >
        {draft.knownBy === '' && <option value="">{words.say('register.movement.choose')}</option>}
        {draft.knownBy === 'imported' && <option value="imported">{words.say('register.known-by.imported')}</option>}
        {sayers.map((one) => (
          <option key={one} value={one}>
            {words.say(`register.known-by.${one}`)}
          </option>
        ))}
      </select>
    </Labelled>
  );
}

/** The colonies that the register knows one by one there; those that went can be ticked. */
function NamedColonies({
  apiary,
  named,
  onNamed,
}: {
  readonly apiary: string;
  readonly named: readonly string[];
  readonly onNamed: (named: readonly string[]) => void;
}) {
  const words = useWords();
  const { answer } = useAsked(apiaryPage, `/api/apiaries/${apiary}`, () => false);
  const colonies = answer?.colonies.filter(({ hiveState }) => hiveState !== 'gone') ?? [];
  if (colonies.length === 0) return null;
  return (
    <fieldset className="stack close">
      <legend>{words.say('register.movement.named')}</legend>
      <ul className="colony-ticks">
        {colonies.map(({ colony, label }) => (
          <li key={colony}>
            <label>
              <input
                type="checkbox"
                checked={named.includes(colony)}
                onChange={(event) =>
                  onNamed(event.currentTarget.checked ? [...named, colony] : named.filter((one) => one !== colony))
                }
              />{' '}
              {label}
            </label>
          </li>
        ))}
      </ul>
      <p className="quiet">{words.say('register.movement.named.about')}</p>
    </fieldset>
  );
}

function firstDraft(
  own: readonly OwnApiary[],
  colony: string | null,
  written: MovementState | null,
  nameOf: (apiary: string) => string,
): MovementDraft {
  const body = written?.movement.current?.body;
  if (body) {
    const near = own.find(({ apiary }) => apiary === body.from) ?? own.find(({ apiary }) => apiary === body.to);
    return draftOf(body, near?.apiary ?? body.from ?? body.to ?? '', nameOf);
  }
  return {
    here: own[0]?.apiary ?? '',
    way: 'away',
    other: null,
    what: 'colonies',
    quantity: colony === null ? '' : '1',
    named: colony === null ? [] : [colony],
    how: 'moved',
    isExact: true,
    first: '',
    last: '',
    knownBy: '',
  };
}
