import type { Act } from '@combside/casework/act';
import {
  correctLimits,
  sameLimits,
  sameStatement,
  standingLimits,
  stateLimits,
} from '@combside/casework/laboratory/limits';
import { laboratories } from '@combside/contract/laboratories';
import type { LaboratoryState } from '@combside/record/states';
import { useEffect, useId, useState } from 'react';
import { useDevice } from '../../device/device-in-hand.tsx';
import { newId } from '../../device/keys/new-id.ts';
import { useWrite } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';
import { useAsked } from '../office/use-asked.ts';
import type { Value, Values } from './inputs-in-address.ts';
import { fieldsOf, limitsIn } from './limits-in-fields.ts';

interface KeptLimitsProps {
  readonly values: Values;
  readonly onUse: (limits: Readonly<Record<string, Value>>) => void;
}

/** The limits laboratories stated, kept for every district: what, from which day, written where, entered by whom. */
export function KeptLimits({ values, onUse }: KeptLimitsProps) {
  const words = useWords();
  const writing = useWrite((act: Act) => act);
  const { answer, state, again } = useAsked(
    laboratories,
    '/api/laboratories',
    (event) => event.about.type === 'laboratory',
  );
  const [older, forgetOlder] = useDeskLimits();
  const mine = limitsIn(values);
  const standing = answer ? standingLimits(answer.laboratories as unknown as LaboratoryState[]) : [];
  const same = mine === null ? undefined : standing.find((one) => sameStatement(one.limits.body, mine));
  const busy = !writing.canWrite || writing.state === 'busy';
  const nameOf = (person: string) =>
    answer?.people.find((one) => one.person === person)?.name ?? words.say('always.not-known');
  const keep = async (limits: NonNullable<typeof mine>) => {
    const written = await writing.write(stateLimits({ limits, standing, newLaboratory: newId() }));
    if (written) again();
    return written !== null;
  };
  // What an earlier program kept on this desk alone, as far as the record does not hold the same by now.
  const alone = older.filter(({ limits }) => !standing.some((one) => sameLimits(one.limits.body, limits)));
  return (
    <section className="stack close" aria-label={words.say('questions.limits')}>
      <h3>{words.say('questions.limits')}</h3>
      {state === 'failed' && <p className="caution">{words.say('questions.limits.failed')}</p>}
      {answer && standing.length === 0 && <p className="quiet">{words.say('questions.limits.none')}</p>}
      <ul className="rows">
        {standing.map(({ limits: { body, written, corrections } }) => (
          <li key={written.entry} className="stack close">
            <Button look="wide" onClick={() => onUse(fieldsOf(body))}>
              {words.say('questions.limits.use', {
                laboratory: body.laboratory,
                method: body.method,
                material: body.material,
                unit: sayWord(words, 'questions.laboratory-number.unit.*', body.unit),
                day: words.day(body.statedOn),
              })}
            </Button>
            <p className="quiet">
              {words.say('questions.limits.from', {
                source: body.source,
                name: nameOf(written.by),
                when: words.dayOf(written.at, timeZoneHere),
              })}
              {corrections.map((one) => (
                <span key={one.written.entry}>
                  {' '}
                  {words.say('questions.limits.corrected', {
                    name: nameOf(one.written.by),
                    when: words.dayOf(one.written.at, timeZoneHere),
                    reason: one.reason,
                  })}
                </span>
              ))}
            </p>
          </li>
        ))}
      </ul>
      {alone.length > 0 && (
        <div className="stack close">
          <p>{words.say('questions.limits.this-desk')}</p>
          <ul className="rows">
            {alone.map(({ key, limits }) => (
              <li key={key} className="stack close">
                <Button look="wide" onClick={() => onUse(fieldsOf(limits))}>
                  {key}
                </Button>
                <Button
                  disabled={busy || !answer}
                  onClick={() => void keep(limits).then((kept) => kept && forgetOlder(key))}
                >
                  {words.say('questions.limits.share')}
                </Button>
              </li>
            ))}
          </ul>
        </div>
      )}
      {mine && answer && !same && (
        <Button disabled={busy} onClick={() => void keep(mine)}>
          {words.say('questions.limits.keep')}
        </Button>
      )}
      {mine && same && !sameLimits(same.limits.body, mine) && (
        <Correct
          disabled={busy}
          onCorrect={async (reason) => {
            const act = correctLimits({ wrong: same, limits: mine, reason });
            if (await writing.write(act)) again();
          }}
        />
      )}
      <WriteTrouble writing={writing} />
      <p role="status">
        {writing.state === 'written' && words.say('questions.limits.on-its-way')}
        {writing.state === 'sent' && words.say('questions.limits.at-office')}
      </p>
    </section>
  );
}

/** What is stated differs from what was written down for the same day: then that was wrong, and why is asked for. */
function Correct({
  disabled,
  onCorrect,
}: {
  readonly disabled: boolean;
  readonly onCorrect: (reason: string) => Promise<void>;
}) {
  const words = useWords();
  const id = useId();
  const [reason, setReason] = useState('');
  return (
    <div className="stack close">
      <label htmlFor={id}>{words.say('questions.limits.why')}</label>
      <input
        id={id}
        className="text-input"
        maxLength={500}
        value={reason}
        onChange={(event) => setReason(event.target.value)}
      />
      <Button disabled={disabled || reason.trim() === ''} onClick={() => void onCorrect(reason)}>
        {words.say('questions.limits.correct')}
      </Button>
    </div>
  );
}

interface DeskLimits {
  readonly key: string;
  readonly limits: NonNullable<ReturnType<typeof limitsIn>>;
}

/** Where earlier programs kept limits: in the drafts of one desk. They stay until they stand in the record. */
const prefix = 'laboratory-limits/';

function useDeskLimits(): readonly [readonly DeskLimits[], (key: string) => void] {
  const { device } = useDevice();
  const [kept, setKept] = useState<readonly DeskLimits[]>([]);
  useEffect(() => {
    let left = false;
    void device?.drafts.all(prefix).then((drafts) => {
      if (left) return;
      setKept(
        Object.entries(drafts).flatMap(([key, values]) => {
          const limits = limitsIn(values as Values);
          return limits ? [{ key, limits }] : [];
        }),
      );
    });
    return () => {
      left = true;
    };
  }, [device]);
  const forget = (key: string) => {
    setKept((before) => before.filter((one) => one.key !== key));
    void device?.drafts.remove(prefix + key);
  };
  return [kept, forget];
}
