import type { Act } from '@combside/casework/act';
import type { DuplicatePair } from '@combside/casework/register/duplicates';
import {
  type MergeApiaries,
  type MergeKeepers,
  mergeApiaries,
  mergeKeepers,
  tellApart,
} from '@combside/casework/register/merge';
import { apiaryPage } from '@combside/contract/apiary-page';
import { colonyPage } from '@combside/contract/colony-page';
import { keeperPage } from '@combside/contract/keeper-page';
import { useEffect, useId, useRef, useState } from 'react';
import { ask } from '../../device/ask/ask.ts';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { WriteStatus } from '../../ui/write-status.tsx';
import type { ComparisonTold } from './compare-worker.ts';
import { Labelled } from './labelled.tsx';
import { sayField, sayValue } from './say-value.ts';
import { useRecordWriting } from './use-record-writing.ts';

type Found = Extract<ComparisonTold, { told: 'found' }>;
type Step = { readonly told: 'not asked' } | ComparisonTold;

/** Pairs that may be one record, one after the other, with what speaks for it; a person decides each. */
export function DuplicatesPage() {
  const words = useWords();
  const [step, setStep] = useState<Step>({ told: 'not asked' });
  const worker = useRef<Worker | null>(null);
  const stop = () => {
    worker.current?.terminate();
    worker.current = null;
  };
  useEffect(() => () => worker.current?.terminate(), []);
  const look = () => {
    stop();
    setStep({ told: 'reading', count: 0 });
    const fresh = new Worker(new URL('./compare-worker.ts', import.meta.url), { type: 'module' });
    worker.current = fresh;
    fresh.addEventListener('message', ({ data }: MessageEvent<ComparisonTold>) => setStep(data));
    fresh.addEventListener('error', () => setStep({ told: 'failed' }));
    fresh.postMessage('look');
  };
  return (
    <>
      <h2>{words.say('register.duplicates')}</h2>
      <p className="quiet">{words.say('register.duplicates.intro')}</p>
      {(step.told === 'not asked' || step.told === 'failed') && (
        <>
          {step.told === 'failed' && (
            <p className="caution" role="alert">
              {words.say('register.failed')}
            </p>
          )}
          <Button look="act" onClick={look}>
            {words.say('register.duplicates.look')}
          </Button>
        </>
      )}
      {(step.told === 'reading' || step.told === 'comparing') && (
        <>
          <p role="status">
            {step.told === 'reading'
              ? words.say('register.duplicates.reading', { count: step.count })
              : words.say('register.duplicates.comparing')}
          </p>
          <Button
            onClick={() => {
              stop();
              setStep({ told: 'not asked' });
            }}
          >
            {words.say('register.duplicates.cancel')}
          </Button>
        </>
      )}
      {step.told === 'found' && <Pairs found={step} onAgain={look} />}
    </>
  );
}

function Pairs({ found, onAgain }: { readonly found: Found; readonly onAgain: () => void }) {
  const words = useWords();
  const [at, setAt] = useState(0);
  const pair = found.pairs[at];
  if (!pair) {
    return (
      <>
        <p role="status">{words.say('register.duplicates.none')}</p>
        <Button onClick={onAgain}>{words.say('register.duplicates.look')}</Button>
      </>
    );
  }
  return (
    <>
      <p role="status">{words.say('register.duplicates.found', { count: found.pairs.length - at })}</p>
      <PairInHand key={`${pair.kept} ${pair.other}`} pair={pair} found={found} onNext={() => setAt(at + 1)} />
    </>
  );
}

interface PairProps {
  readonly pair: DuplicatePair;
  readonly found: Found;
  readonly onNext: () => void;
}

function PairInHand({ pair, found, onNext }: PairProps) {
  const words = useWords();
  const id = useId();
  const writing = useRecordWriting();
  const [takes, setTakes] = useState<readonly string[]>([]);
  const [reason, setReason] = useState(() => words.list(pair.reasons.map((one) => words.say(one.id, one.values))));
  const [decided, setDecided] = useState<'merged' | 'told-apart' | null>(null);
  const rows = pair.type === 'keeper' ? found.keepers : found.apiaries;
  const [kept, other] = [pair.kept, pair.other].map((one) => rows.find((row) => row.id === one));
  if (!kept || !other) return null;
  const names = new Map(found.keepers.map((row) => [row.id, row.body.name]));
  const bodies = [kept.body, other.body] as unknown as readonly [Record<string, unknown>, Record<string, unknown>];
  const fields = Object.keys(bodies[0]).filter((field) => field !== 'plan' && field !== 'language');
  const differs = (field: string) => JSON.stringify(bodies[0][field]) !== JSON.stringify(bodies[1][field]);

  const decide = async (verdict: 'merged' | 'told-apart') => {
    if (await writing.write(() => actFor(pair, verdict, takes, reason))) setDecided(verdict);
  };
  const busy = writing.state === 'busy';
  return (
    <article
      className="stack"
      aria-label={words.say('register.duplicates.pair', { one: kept.body.name, two: other.body.name })}
    >
      <h3>
        {words.say(`register.type.${pair.type}`)}:{' '}
        {words.list(pair.reasons.map((one) => words.say(one.id, one.values)))}
      </h3>
      <div className="scrolls">
        <table className="compare">
          <thead>
            <tr>
              <td />
              <th scope="col">{words.say('register.duplicates.kept')}</th>
              <th scope="col">{words.say('register.duplicates.other')}</th>
            </tr>
          </thead>
          <tbody>
            {fields.map((field) => (
              <tr key={field} className={differs(field) ? 'differs' : undefined}>
                <th scope="row">{sayField(words, field)}</th>
                <td>{sayValue(words, field, bodies[0][field], names)}</td>
                <td>
                  {sayValue(words, field, bodies[1][field], names)}
                  {differs(field) && field !== 'district' && (
                    <label className="take">
                      <input
                        type="checkbox"
                        checked={takes.includes(field)}
                        disabled={decided !== null}
                        onChange={(event) =>
                          setTakes(
                            event.currentTarget.checked ? [...takes, field] : takes.filter((one) => one !== field),
                          )
                        }
                      />{' '}
                      {words.say('register.duplicates.take')}
                      <span className="visually-hidden">: {sayField(words, field)}</span>
                    </label>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {decided === null ? (
        <>
          <Labelled id={id} label={words.say('register.duplicates.reason')}>
            <input
              id={id}
              className="text-input"
              value={reason}
              maxLength={500}
              onChange={(event) => setReason(event.currentTarget.value)}
            />
          </Labelled>
          <div className="buttons">
            <Button look="act" disabled={busy} onClick={() => void decide('merged')}>
              {words.say('register.duplicates.merge')}
            </Button>
            <Button disabled={busy} onClick={() => void decide('told-apart')}>
              {words.say('register.duplicates.two')}
            </Button>
            <Button look="plain" onClick={onNext}>
              {words.say('register.duplicates.next')}
            </Button>
          </div>
          <WriteStatus writing={writing} />
        </>
      ) : (
        <>
          <p role="status">{words.say(`register.duplicates.${decided}`)}</p>
          <Button look="act" onClick={onNext}>
            {words.say('register.duplicates.next')}
          </Button>
        </>
      )}
    </article>
  );
}

/** What to write about a pair, from the records as the office holds them now. */
async function actFor(
  { type, kept, other }: DuplicatePair,
  verdict: 'merged' | 'told-apart',
  takes: readonly string[],
  reason: string,
): Promise<Act> {
  if (type === 'keeper') {
    const [one, two] = await Promise.all([
      ask(keeperPage, `/api/keepers/${kept}`),
      ask(keeperPage, `/api/keepers/${other}`),
    ]);
    const states = [one.keeper, two.keeper] as const;
    if (verdict === 'told-apart') return tellApart(...states, reason);
    const apiaries = await Promise.all(
      two.apiaries.map(async ({ apiary }) => (await ask(apiaryPage, `/api/apiaries/${apiary}`)).apiary),
    );
    return mergeKeepers(...states, { takes: takes as MergeKeepers['takes'], apiaries, reason });
  }
  const [one, two] = await Promise.all([
    ask(apiaryPage, `/api/apiaries/${kept}`),
    ask(apiaryPage, `/api/apiaries/${other}`),
  ]);
  const states = [one.apiary, two.apiary] as const;
  if (verdict === 'told-apart') return tellApart(...states, reason);
  const colonies = await Promise.all(
    [...one.colonies, ...two.colonies].map(
      async ({ colony }) => (await ask(colonyPage, `/api/colonies/${colony}`)).colony,
    ),
  );
  return mergeApiaries(...states, { takes: takes as MergeApiaries['takes'], colonies, reason });
}
