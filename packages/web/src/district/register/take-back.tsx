import { sayWhetherItHappened } from '@combside/casework/register/movement';
import { withReason } from '@combside/casework/register/with-reason';
import type { MovementState } from '@combside/record/states';
import { useId, useState } from 'react';
import { newId } from '../../device/keys/new-id.ts';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { Why } from './labelled.tsx';
import type { RecordWriting } from './use-record-writing.ts';

interface TakeBackProps {
  readonly state: MovementState;
  readonly happened: boolean;
  readonly writing: RecordWriting;
}

/** A movement entered in error is taken back with a reason, and stays in sight with its history. */
export function TakeBack(props: TakeBackProps) {
  const words = useWords();
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {words.say(props.happened ? 'register.movement.take-back' : 'register.movement.happened-after-all')}
      </summary>
      {open && <SayWhy {...props} />}
    </details>
  );
}

function SayWhy({ state, happened, writing }: TakeBackProps) {
  const words = useWords();
  const id = useId();
  const [why, setWhy] = useState('');
  const write = () => void writing.write(() => withReason(sayWhetherItHappened(state, !happened), why, newId));
  return (
    <div className="stack close">
      {happened && <p className="quiet">{words.say('register.movement.take-back.about')}</p>}
      <Why id={`${id}why`} why={why} most={600} onWhy={setWhy} />
      <div>
        <Button disabled={writing.state === 'busy' || why.trim() === ''} onClick={write}>
          {words.say(happened ? 'register.movement.take-back.do' : 'register.movement.happened-after-all')}
        </Button>
      </div>
    </div>
  );
}
