import { type AskedReason, askedReasons, askForVisit } from '@combside/casework/plan/ask-for-visit';
import type { ApiaryState } from '@combside/record/states';
import { useState } from 'react';
import type { Session } from '../../app/session.ts';
import { type DeviceNow, useDevice } from '../../device/device-in-hand.tsx';
import { newId } from '../../device/keys/new-id.ts';
import { useWrite } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';

interface AskForVisitProps {
  readonly session: Session;
  readonly apiary: unknown;
}

/** Somebody telephones: the wish for a visit is written down, and waits for a day. */
export function AskForVisit({ session, apiary }: AskForVisitProps) {
  const words = useWords();
  const [open, setOpen] = useState(false);
  const [done, setDone] = useState(false);
  if (done) return <p role="status">{words.say('district.apiary.ask.done')}</p>;
  return (
    <details className="ask-for-visit" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.say('district.apiary.ask')}</summary>
      {open && <Asking session={session} apiary={apiary as ApiaryState} onDone={() => setDone(true)} />}
    </details>
  );
}

function Asking({
  session,
  apiary,
  onDone,
}: {
  readonly session: Session;
  readonly apiary: ApiaryState;
  readonly onDone: () => void;
}) {
  const words = useWords();
  const { state } = useDevice();
  const [reason, setReason] = useState<AskedReason | null>(null);
  const asking = useWrite((why: AskedReason) =>
    askForVisit({ visit: newId(), apiary, takenBy: session.person, reason: why }),
  );
  const write = async (why: AskedReason) => {
    if (await asking.write(why)) onDone();
  };
  return (
    <div className="stack close">
      <Choice
        label={words.say('district.apiary.ask.why')}
        options={askedReasons.map((value) => ({ value, label: sayWord(words, 'casework.visit-reason.*', value) }))}
        chosen={reason}
        onChoose={setReason}
      />
      <DeskDeviceWord state={state} />
      <WriteTrouble writing={asking} />
      <Button
        look="act"
        disabled={reason === null || asking.state === 'busy' || !asking.canWrite}
        onClick={() => reason && void write(reason)}
      >
        {words.say('district.apiary.ask.do')}
      </Button>
    </div>
  );
}

/** Why nothing can be written at this desk just now; silent when it can. */
export function DeskDeviceWord({ state }: { readonly state: DeviceNow['state'] }) {
  const words = useWords();
  if (state === 'there') return null;
  const word = state === 'given up' ? 'failed' : state;
  return <p className="quiet">{words.say(`district.device.${word}`)}</p>;
}
