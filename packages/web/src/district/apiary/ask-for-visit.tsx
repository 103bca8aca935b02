import { type AskedReason, askedReasons, askForVisit } from '@combside/casework/plan/ask-for-visit';
import type { ApiaryState } from '@combside/record/states';
import { useState } from 'react';
import type { Session } from '../../app/session.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { saySentence, sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { canWrite, deskDevice, useDeskDevice } from '../use-desk-device.ts';

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
  const desk = useDeskDevice(session);
  const [reason, setReason] = useState<AskedReason | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const write = async (why: AskedReason) => {
    setBusy(true);
    try {
      const device = await deskDevice(session);
      const act = askForVisit({ visit: device.book.newId(), apiary, takenBy: session.person, reason: why });
      if (!act.ok) return setFailed(saySentence(words, { id: act.reason, values: act.values }));
      await device.book.write(act.proposals);
      onDone();
      await device.sync.run();
    } catch {
      setFailed(words.say('always.went-wrong'));
    } finally {
      setBusy(false);
    }
  };
  return (
    <div className="stack close">
      <Choice
        label={words.say('district.apiary.ask.why')}
        options={askedReasons.map((value) => ({ value, label: sayWord(words, 'casework.visit-reason.*', value) }))}
        chosen={reason}
        onChoose={setReason}
      />
      <DeskDeviceWord state={desk.state} />
      {failed && <p role="alert">{failed}</p>}
      <Button
        look="act"
        disabled={reason === null || busy || !canWrite(desk)}
        onClick={() => reason && void write(reason)}
      >
        {words.say('district.apiary.ask.do')}
      </Button>
    </div>
  );
}

/** Why nothing can be written at this desk just now; silent when it can. */
export function DeskDeviceWord({ state }: { readonly state: ReturnType<typeof useDeskDevice>['state'] }) {
  const words = useWords();
  if (state === 'there') return null;
  const word = state === 'given up' ? 'failed' : state;
  return <p className="quiet">{words.say(`district.device.${word}`)}</p>;
}
