import type { WholeReasoning } from '@combside/casework/assess/whole-reasoning';
import type { PriorChanged } from '@combside/record/kinds/assessment';
import type { DiseaseAssessment } from '@combside/science/diagnosis/assess';
import { type DiseaseId, diseases } from '@combside/science/signs/catalogue';
import { useState } from 'react';
import { Button } from '../button.tsx';
import { Choice } from '../choice.tsx';
import { sayWord } from '../say-sentence.ts';
import { useWords } from '../words-context.tsx';
import { OneTapDeeper } from './one-tap-deeper.tsx';
import { intervalSaid } from './shares.ts';

/** How what was known is changed, where it may be: at the hive, before the colony is closed. */
export interface ChangesKnown {
  readonly honeyPositive: boolean | null;
  onHoney(found: boolean | null): void;
  onPrior(condition: DiseaseId, change: Omit<PriorChanged, 'condition'> | null): void;
}

interface KnownBeforeProps {
  readonly whole: WholeReasoning;
  readonly changes: ChangesKnown | null;
}

/**
 * What was known before the look and what is believed from it, one tap away; what concerns other keepers one tap
 * further, since the keeper looks over the shoulder.
 */
export function KnownBefore({ whole, changes }: KnownBeforeProps) {
  const words = useWords();
  const { known } = whole;
  const { diseases: assessed } = whole.assessed.reasoning;
  const word = (value: boolean | null) => (value === null ? 'not-known' : value ? 'yes' : 'no');
  const moved = assessed.filter((one) => one.priorSteps.some((step) => step.id !== 'assumed'));
  return (
    <OneTapDeeper title={words.say('reasoning.known')}>
      <div className="stack">
        {known === null && <p>{words.say('reasoning.known-not-kept')}</p>}
        {known && (
          <ul className="rows">
            <li className="open-line">{sayWord(words, 'reasoning.known-apiary.*', word(known.earlierCaseAtApiary))}</li>
            {known.exposure === 'operation affected' && known.honeyPositive !== true && (
              <li className="open-line">{words.say('reasoning.known-operation')}</li>
            )}
            <li className="open-line">{sayWord(words, 'reasoning.known-honey.*', word(known.honeyPositive))}</li>
          </ul>
        )}
        {changes && (
          <Choice
            label={words.say('reasoning.known-honey.ask')}
            options={[
              { value: 'yes', label: words.say('reasoning.known-honey.found') },
              { value: 'no', label: words.say('reasoning.known-honey.not-found') },
              { value: 'not known', label: words.say('always.not-known') },
            ]}
            chosen={changes.honeyPositive === null ? 'not known' : changes.honeyPositive ? 'yes' : 'no'}
            onChoose={(value) => changes.onHoney(value === 'not known' ? null : value === 'yes')}
          />
        )}
        {known && (
          <OneTapDeeper title={words.say('reasoning.known-others')}>
            <div className="stack close">
              <p className="quiet">{words.say('reasoning.known-others-discreet')}</p>
              <p>{sayWord(words, 'reasoning.known-contact.*', word(known.contactOfCase))}</p>
              {known.district.length === 0 && <p>{words.say('reasoning.known-no-district')}</p>}
              {known.district.map((count) => (
                <p key={`${count.condition} ${count.about}`}>
                  {words.say('reasoning.known-district', {
                    condition: sayWord(words, 'signs.condition.*.name', count.condition),
                    about: count.about,
                    confirmed: count.confirmed,
                    examined: count.examined,
                  })}
                </p>
              ))}
              {moved.map((one) => (
                <PriorLine key={one.disease} one={one} />
              ))}
            </div>
          </OneTapDeeper>
        )}
        {moved.length === 0 && <p className="quiet">{words.say('reasoning.known-assumed')}</p>}
        {whole.priorChanges.map((one) => (
          <p key={one.condition}>
            <strong>{sayWord(words, 'signs.condition.*.name', one.condition)}</strong>:{' '}
            {words.say('reasoning.prior-changed', { reason: one.reason })}
          </p>
        ))}
        {changes && <ChangePrior changes={changes} kept={whole.priorChanges} assessed={assessed} />}
      </div>
    </OneTapDeeper>
  );
}

function PriorLine({ one }: { readonly one: DiseaseAssessment }) {
  const words = useWords();
  return (
    <p>
      {words.say('reasoning.prior-line', {
        condition: sayWord(words, 'signs.condition.*.name', one.disease),
        value: intervalSaid(words, one.prior, one.priorBetween[0], one.priorBetween[1]),
      })}
    </p>
  );
}

function ChangePrior({
  changes,
  kept,
  assessed,
}: {
  readonly changes: ChangesKnown;
  readonly kept: readonly PriorChanged[];
  readonly assessed: readonly DiseaseAssessment[];
}) {
  const words = useWords();
  const [condition, setCondition] = useState<DiseaseId>(diseases[0]);
  const [percent, setPercent] = useState('');
  const [reason, setReason] = useState('');
  const value = Number(percent.replace(',', '.')) / 100;
  const complete = percent.trim() !== '' && value > 0 && value < 1 && reason.trim() !== '';
  const now = assessed.find((one) => one.disease === condition);
  return (
    <OneTapDeeper title={words.say('reasoning.prior-change')}>
      <div className="stack close">
        <label className="stack close">
          {words.say('reasoning.prior-which')}
          <select
            className="text-input"
            value={condition}
            onChange={(event) => setCondition(diseases.find((one) => one === event.currentTarget.value) ?? condition)}
          >
            {diseases.map((one) => (
              <option key={one} value={one}>
                {sayWord(words, 'signs.condition.*.name', one)}
              </option>
            ))}
          </select>
        </label>
        {now && <PriorLine one={now} />}
        <label className="stack close">
          {words.say('reasoning.prior-value')}
          <input
            className="text-input"
            inputMode="decimal"
            value={percent}
            onChange={(event) => setPercent(event.currentTarget.value)}
          />
        </label>
        <label className="stack close">
          {words.say('reasoning.prior-reason')}
          <input
            className="text-input"
            maxLength={1000}
            value={reason}
            onChange={(event) => setReason(event.currentTarget.value)}
          />
        </label>
        {!complete && <p className="quiet">{words.say('reasoning.prior-range')}</p>}
        <Button
          look="wide act"
          disabled={!complete}
          onClick={() => {
            changes.onPrior(condition, { value, low: null, high: null, reason: reason.trim() });
            setPercent('');
            setReason('');
          }}
        >
          {words.say('reasoning.prior-keep')}
        </Button>
        <p className="quiet">{words.say('reasoning.prior-kept')}</p>
        {kept.map((one) => (
          <Button key={one.condition} onClick={() => changes.onPrior(one.condition as DiseaseId, null)}>
            {words.say('reasoning.prior-take-back', {
              condition: sayWord(words, 'signs.condition.*.name', one.condition),
            })}
          </Button>
        ))}
      </div>
    </OneTapDeeper>
  );
}
