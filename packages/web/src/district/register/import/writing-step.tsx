import type { Proposal } from '@combside/record/entry';
import { useEffect, useRef, useState } from 'react';
import type { Session } from '../../../app/session.ts';
import { Button } from '../../../ui/button.tsx';
import { useWords } from '../../../ui/words-context.tsx';
import { canWrite, useDeskDevice } from '../../use-desk-device.ts';
import { writeAtDesk } from '../use-writing.ts';

interface WritingStepProps {
  readonly session: Session;
  readonly proposals: readonly Proposal[];
  readonly onAgain: () => void;
  readonly onCancelled: () => void;
}

type State =
  | { readonly at: 'sealing' | 'storing'; readonly done: number }
  | { readonly at: 'settling' }
  | { readonly at: 'written' }
  | { readonly at: 'failed' };

class Called extends Error {}

/** The screen is told of progress so often, in entries. */
const toldEach = 200;

/**
 * Signs all entries and stores them together. Until the stroke that makes them safe cancelling leaves nothing; after it
 * the entries go to the office like any others, and again after the window was closed.
 */
export function WritingStep({ session, proposals, onAgain, onCancelled }: WritingStepProps) {
  const words = useWords();
  const desk = useDeskDevice(session);
  const { device } = desk;
  const [state, setState] = useState<State>({ at: 'sealing', done: 0 });
  const called = useRef(false);
  const begun = useRef(false);
  const [sync, setSync] = useState<{ waiting: number | null; refused: number }>({ waiting: null, refused: 0 });

  useEffect(() => {
    if (!device) return;
    const look = () => {
      const { waiting, refused } = device.sync.status();
      setSync({ waiting, refused });
    };
    look();
    return device.sync.subscribe(look);
  }, [device]);

  useEffect(() => {
    if (!device || begun.current) return;
    begun.current = true;
    const changed = proposals.filter(({ replaces }) => replaces.length > 0).map(({ about }) => about);
    const stopIfCalled = () => {
      if (called.current) throw new Called('the person called it off');
    };
    const watch = {
      sealed(done: number) {
        stopIfCalled();
        if (done === proposals.length) setState({ at: 'storing', done: 0 });
        else if (done % toldEach === 0) setState({ at: 'sealing', done });
      },
      stored(done: number) {
        stopIfCalled();
        setState(done === proposals.length ? { at: 'settling' } : { at: 'storing', done });
      },
    };
    writeAtDesk(device, proposals, changed, watch).then(
      () => setState({ at: 'written' }),
      (failure: unknown) => {
        if (failure instanceof Called) {
          onCancelled();
          return;
        }
        setState({ at: 'failed' });
        // Handed on, so that the fault report has it.
        void Promise.reject(failure);
      },
    );
  }, [device, proposals, onCancelled]);

  if (!canWrite(desk)) return <p className="caution">{words.say('register.no-store')}</p>;
  if (state.at === 'failed') {
    return (
      <>
        <p className="caution" role="alert">
          {words.say('register.write-failed')}
        </p>
        <Button onClick={onAgain}>{words.say('register.import.another')}</Button>
      </>
    );
  }
  if (state.at === 'written') {
    return (
      <>
        <p role="status">
          <strong>{words.say('register.import.done', { count: records(proposals) })}</strong>
        </p>
        {sync.waiting !== null && <p>{words.say('register.import.waiting', { count: sync.waiting })}</p>}
        {sync.refused > 0 && <p className="caution">{words.say('register.import.refused', { count: sync.refused })}</p>}
        <Button onClick={onAgain}>{words.say('register.import.another')}</Button>
      </>
    );
  }
  const far = state.at === 'settling' ? null : state;
  const said =
    far === null
      ? words.say('register.import.settling')
      : words.say(`register.import.${far.at}`, {
          done: words.number(far.done),
          of: words.number(proposals.length),
        });
  return (
    <>
      <p role="status">{said}</p>
      <progress
        {...(far === null ? {} : { value: far.done, max: proposals.length })}
        aria-label={words.say('register.import')}
      />
      {far !== null && (
        <Button
          onClick={() => {
            called.current = true;
          }}
        >
          {words.say('register.import.cancel')}
        </Button>
      )}
    </>
  );
}

function records(proposals: readonly Proposal[]): number {
  return proposals.filter(({ kind }) => kind !== 'reason').length;
}
