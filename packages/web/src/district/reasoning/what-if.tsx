import { type ExaminationBody, holds, outcomes, type SignLooked } from '@combside/record/kinds/examination';
import { signs } from '@combside/science/signs/catalogue';
import { useId, useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';

/** A copy of an examination with other answers. It lives on this page only: nothing of it is proposed or written. */
export interface Copy {
  readonly body: ExaminationBody;
  /** Which answers are other than recorded. */
  readonly changed: readonly string[];
}

interface WhatIfProps {
  readonly recorded: ExaminationBody;
  readonly copy: Copy | null;
  readonly onCopy: (copy: Copy | null) => void;
  /** Conditions in order as recorded, and with the copy once it is reckoned. */
  readonly before: readonly string[];
  readonly after: readonly string[] | null;
}

const answers = [...outcomes, 'not looked for'] as const;

/** What the same look would say with another answer. */
export function WhatIf({ recorded, copy, onCopy, before, after }: WhatIfProps) {
  const words = useWords();
  const names = (ids: readonly string[]) =>
    words.list(ids.slice(0, 3).map((id) => sayWord(words, 'signs.condition.*.name', id)));
  if (!copy) {
    return (
      <p>
        <Button onClick={() => onCopy({ body: recorded, changed: [] })}>{words.say('reasoning.what-if.open')}</Button>
      </p>
    );
  }
  const change = (what: string, body: ExaminationBody) => {
    const changed = copy.changed.includes(what) ? copy.changed : [...copy.changed, what];
    onCopy({ body, changed });
  };
  return (
    <section className="what-if stack close" aria-label={words.say('reasoning.what-if')}>
      <h3>{words.say('reasoning.what-if')}</h3>
      <p>
        <strong>{words.say('reasoning.what-if.banner')}</strong>{' '}
        {words.say('reasoning.what-if.changed', { count: copy.changed.length })}
      </p>
      <ChangeSign body={copy.body} onChange={(sign, body) => change(`sign ${sign}`, body)} />
      <ChangeLook body={copy.body} onChange={change} />
      {after && copy.changed.length > 0 && (
        <p role="status">{words.say('reasoning.what-if.differs', { after: names(after), before: names(before) })}</p>
      )}
      <p>
        <Button onClick={() => onCopy(null)}>{words.say('reasoning.what-if.close')}</Button>
      </p>
    </section>
  );
}

function ChangeSign({
  body,
  onChange,
}: {
  readonly body: ExaminationBody;
  readonly onChange: (sign: string, body: ExaminationBody) => void;
}) {
  const words = useWords();
  const id = useId();
  const asked = signs.filter((sign) => sign.askedIn.includes(body.hiveState));
  const [sign, setSign] = useState<string>(asked[0]?.id ?? '');
  const now = body.signs.find((one) => one.sign === sign)?.outcome ?? 'not looked for';
  const answer = (outcome: (typeof answers)[number]) => {
    const others = body.signs.filter((one) => one.sign !== sign);
    const looked: SignLooked[] =
      outcome === 'not looked for' ? [] : [{ sign, outcome, count: null, amount: null, places: [] }];
    onChange(sign, { ...body, signs: [...others, ...looked] });
  };
  return (
    <fieldset className="several what-if-row">
      <legend>{words.say('reasoning.what-if.signs')}</legend>
      <select
        className="text-input"
        aria-label={words.say('reasoning.what-if.sign')}
        value={sign}
        onChange={(event) => setSign(event.currentTarget.value)}
      >
        {asked.map((one) => (
          <option key={one.id} value={one.id}>
            {sayWord(words, 'signs.sign.*.name', one.id)}
          </option>
        ))}
      </select>
      {answers.map((outcome) => (
        <label key={outcome} className="what-if-answer">
          <input type="radio" name={`${id} outcome`} checked={now === outcome} onChange={() => answer(outcome)} />{' '}
          {words.say(
            outcome === 'seen'
              ? 'reasoning.what-if.seen'
              : outcome === 'not seen'
                ? 'reasoning.what-if.not-seen'
                : 'reasoning.what-if.not-looked',
          )}
        </label>
      ))}
    </fieldset>
  );
}

function ChangeLook({
  body,
  onChange,
}: {
  readonly body: ExaminationBody;
  readonly onChange: (what: string, body: ExaminationBody) => void;
}) {
  const words = useWords();
  const box = body.boxes[0];
  const unsaid = words.say('reasoning.what-if.not-said');
  const longest = body.ropeTests.reduce((most, one) => Math.max(most, one.threadMillimetres), 0);
  return (
    <div className="what-if-row">
      {body.boxes.map((one) => (
        <label key={one.box}>
          {words.say('reasoning.what-if.frames')} ({one.box})
          <select
            className="text-input"
            value={one.framesSeen}
            onChange={(event) => {
              const framesSeen = Number(event.currentTarget.value);
              const boxes = body.boxes.map((other) => (other.box === one.box ? { ...other, framesSeen } : other));
              const all = boxes.every((other) => other.framesSeen === other.framesHeld);
              const none = boxes.every((other) => other.framesSeen === 0);
              onChange(`frames ${one.box}`, { ...body, boxes, depth: none ? 'tops' : all ? 'full' : 'part' });
            }}
          >
            {Array.from({ length: one.framesHeld + 1 }, (_, frames) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the number is what it is
              <option key={frames} value={frames}>
                {frames} / {one.framesHeld}
              </option>
            ))}
          </select>
        </label>
      ))}
      <label>
        {words.say('reasoning.what-if.shaken')}
        <select
          className="text-input"
          value={String(body.beesShaken)}
          onChange={(event) =>
            onChange('shaken', {
              ...body,
              beesShaken: event.currentTarget.value === 'null' ? null : event.currentTarget.value === 'true',
            })
          }
        >
          <option value="null">{unsaid}</option>
          <option value="true">{words.say('always.yes')}</option>
          <option value="false">{words.say('always.no')}</option>
        </select>
      </label>
      <label>
        {words.say('reasoning.what-if.hold')}
        <select
          className="text-input"
          value={body.hold ?? ''}
          onChange={(event) =>
            onChange('hold', { ...body, hold: holds.find((one) => one === event.currentTarget.value) ?? null })
          }
        >
          <option value="">{unsaid}</option>
          {holds.map((one) => (
            <option key={one} value={one}>
              {sayWord(words, 'casework.hold.*', one)}
            </option>
          ))}
        </select>
      </label>
      {box && (
        <label>
          {words.say('reasoning.what-if.thread')}
          <select
            className="text-input"
            value={body.ropeTests.length === 0 ? '' : String(longest)}
            onChange={(event) => {
              const { value } = event.currentTarget;
              const test = {
                box: box.box,
                frame: null,
                side: null,
                tissue: 'moist brown' as const,
                stick: 'rough and dry' as const,
                threadMillimetres: Number(value),
                snapsBack: null,
                colour: null,
              };
              onChange('rope', { ...body, ropeTests: value === '' ? [] : [test] });
            }}
          >
            <option value="">{words.say('reasoning.what-if.no-rope')}</option>
            {[...new Set([0, 5, 10, 15, 20, 25, 30, longest])]
              .sort((a, b) => a - b)
              .map((millimetres) => (
                <option key={millimetres} value={millimetres}>
                  {words.unit(millimetres, 'mm')}
                </option>
              ))}
          </select>
        </label>
      )}
    </div>
  );
}
