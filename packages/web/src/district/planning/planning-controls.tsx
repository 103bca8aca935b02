import { openingRule, openingRules } from '@combside/casework/plan/opening-rules';
import { usualPlanning, visitGrounds } from '@combside/casework/plan/planning-settings';
import { source } from '@combside/sources/bibliography';
import { useEffect, useId, useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import type { PlanningAddress } from './planning-address.ts';

/** How it is ranked and how much is opened: every weight and rule in sight, with its source or marked as a setting. */
export function PlanningControls({ address }: { readonly address: PlanningAddress }) {
  const words = useWords();
  const id = useId();
  const rule = openingRule(address.rule);
  const distance = words.unit(usualPlanning.caseWithinMetres.value / 1000, 'km');
  return (
    <section className="planning-controls stack" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{words.say('planning.settings')}</h2>
      <div className="stack close">
        <fieldset className="several stack close">
          <legend>{words.say('planning.rule')}</legend>
          {openingRules.map((one) => (
            <label key={one.id} className="rule-line">
              <input
                type="radio"
                name={`${id}-rule`}
                checked={one.id === rule.id}
                onChange={() => address.change({ rule: one.id })}
              />
              <span>{sayWord(words, 'planning.rule.*', one.id)}</span>
            </label>
          ))}
        </fieldset>
        {rule.sources.map(source).map(({ title, seenAt }) => (
          <p key={title} className="quiet small">
            {words.say('planning.rule.source', { source: title, seenAt })}
          </p>
        ))}
      </div>
      <div className="stack close">
        <NumberField
          label={words.say('planning.sensitivity')}
          value={Math.round(address.sensitivity * 100)}
          most={100}
          onChange={(value) => address.change({ sensitivity: value / 100 })}
        />
        <p className="quiet small">{words.say('planning.sensitivity.doubt')}</p>
      </div>
      <fieldset className="several stack close">
        <legend>{words.say('planning.weights')}</legend>
        {visitGrounds.map((ground, place) => (
          <NumberField
            key={ground}
            label={sayWord(words, 'planning.weight.*', ground, {
              distance,
              days:
                ground === 'unconfirmed site'
                  ? usualPlanning.confirmedWithinDays.value
                  : usualPlanning.visitWithinDays.value,
            })}
            value={address.weights[place] ?? 0}
            most={999}
            onChange={(value) =>
              address.change({ weights: address.weights.map((one, at) => (at === place ? value : one)) })
            }
          />
        ))}
        <p className="quiet small">{words.say('planning.weights.doubt')}</p>
        <Button
          look="plain"
          onClick={() => address.change({ weights: visitGrounds.map((one) => usualPlanning.weights[one].value) })}
        >
          {words.say('planning.weights.usual')}
        </Button>
      </fieldset>
    </section>
  );
}

interface NumberFieldProps {
  readonly label: string;
  readonly value: number;
  readonly most: number;
  readonly onChange: (value: number) => void;
}

/** A whole number; what is being typed is taken when it is one. */
function NumberField({ label, value, most, onChange }: NumberFieldProps) {
  const [text, setText] = useState(String(value));
  useEffect(() => setText(String(value)), [value]);
  return (
    <label className="number-line">
      <span>{label}</span>
      <input
        type="number"
        className="text-input"
        min={0}
        max={most}
        step={1}
        value={text}
        onChange={(event) => {
          setText(event.target.value);
          const typed = event.target.valueAsNumber;
          if (Number.isInteger(typed) && typed >= 0 && typed <= most) onChange(typed);
        }}
        onBlur={() => setText(String(value))}
      />
    </label>
  );
}
