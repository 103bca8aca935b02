import { takeApart } from '@combside/casework/register/merge';
import type { ApiaryState, KeeperState } from '@combside/record/states';
import { useId, useState } from 'react';
import { Link } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { Why } from './labelled.tsx';
import type { RecordWriting } from './use-record-writing.ts';

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
