import { proposeReading, type ReadingPart } from '@combside/casework/comb/propose-reading';
import { combReadingProposed } from '@combside/contract/comb-readings';
import type { PhotographShown } from '@combside/contract/photograph';
import { visitPage } from '@combside/contract/visit-page';
import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { ColonyState, VisitState } from '@combside/record/states';
import { useState } from 'react';
import { ask } from '../../device/ask/ask.ts';
import { Button } from '../../ui/button.tsx';
import { lastWords } from '../../ui/comb/last-words.ts';
import { NotRead, ReadingCautions } from '../../ui/comb/reading-limits.tsx';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteStatus } from '../../ui/write-status.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { askReading } from './ask-reading.ts';
import { CameBack, draftName } from './came-back.tsx';
import { CombDesk, type ToWrite } from './comb-desk.tsx';
import { useCombDeskDraft } from './use-comb-desk-draft.ts';
import type { CombWriting } from './use-comb-writing.ts';
import { useFollow } from './use-follow.ts';

interface ProposedProps {
  readonly writing: CombWriting;
  readonly colony: ColonyState;
  readonly visit: string;
  readonly photograph: PhotographShown;
}

/** A photograph of which no reading is kept: the machine is asked, and what it says is looked at, corrected and kept. */
export function Proposed(props: ProposedProps) {
  const { photograph } = props;
  const words = useWords();
  // A reading under way is no entry, so no arrival tells of it.
  const asked = useAsked(combReadingProposed, `/api/comb-readings/${photograph.hash}`, () => false);
  const [failed, setFailed] = useState(false);
  const { answer } = asked;
  const state = answer?.state ?? null;
  useFollow(state === 'waiting' || state === 'reading', asked.again);
  const send = async (what: 'ask' | 'cancel') => {
    setFailed(false);
    try {
      await askReading(what, [photograph.hash]);
      asked.again();
    } catch {
      setFailed(true);
    }
  };
  if (!photograph.held) return <p>{words.say('district.photograph-waits')}</p>;
  if (answer?.part) return <Looked {...props} part={answer.part} readAt={answer.finishedAt ?? answer.askedAt} />;
  return (
    <div className="comb-desk">
      <img
        className="comb-unread"
        src={`/api/photographs/${photograph.hash}`}
        alt={words.say('comb.screen.photograph-taken', { when: words.dayAndTime(photograph.takenAt, timeZoneHere) })}
      />
      <div className="stack">
        <Unanswered asked={asked} />
        <div role="status" className="stack close">
          {state === null && asked.state === 'asking' && <p className="quiet">{words.say('district.comb.loading')}</p>}
          {asked.state === 'not there' && <p>{words.say('district.comb.not-asked')}</p>}
          {(state === 'waiting' || state === 'reading') && <p>{words.say(`district.comb.${state}`)}</p>}
        </div>
        {asked.state === 'not there' && (
          <Button look="act" onClick={() => void send('ask')}>
            {words.say('district.comb.ask')}
          </Button>
        )}
        {state === 'waiting' && (
          <Button onClick={() => void send('cancel')}>{words.say('district.comb.cancel')}</Button>
        )}
        {(state === 'refused' || state === 'failed') && <NotRead reasons={answer?.reasons ?? []} />}
        {failed && (
          <p className="caution" role="alert">
            {words.say('district.combs.failed')}
          </p>
        )}
        <ReadingCautions />
      </div>
    </div>
  );
}

/** What the machine made of it, looked at by a person. */
function Looked({
  writing,
  colony,
  visit,
  photograph,
  part,
  readAt,
}: ProposedProps & { readonly part: ReadingPart; readonly readAt: string }) {
  const words = useWords();
  const draft = useCombDeskDraft(draftName(colony.about.id, { ...part, photograph }), 'proposed');
  const body = colony.colony.current?.body;
  const { hash, mediaType, bytes, takenAt, caption } = photograph;
  const reference = { hash, mediaType, bytes, takenAt, caption };
  if (!draft) return <p className="quiet">{words.say('front.opening')}</p>;
  const keep = (said: ToWrite) => {
    const act = async () =>
      proposeReading({
        read: { part },
        photograph: reference,
        place: said.place,
        observedAt: takenAt,
        colony,
        visit: (await ask(visitPage, `/api/visits/${visit}`)).visit as VisitState,
        corrections: lastWords(said.corrections),
        accepted: said.accepted,
      });
    void writing.write({ act, draft });
  };
  return (
    <>
      <div className="stack close">
        <p>{words.say('district.comb.proposed', { when: words.dayAndTime(readAt, timeZoneHere) })}</p>
        {draft.cameBack && <CameBack draft={draft} />}
      </div>
      <CombDesk
        body={{
          visit,
          apiary: body?.apiary ?? '',
          observedAt: takenAt,
          photograph: reference,
          place: { box: body?.broodBoxes[0]?.box ?? '', frame: null, side: null },
          ...part,
          corrections: noCorrections,
          accepted: false,
        }}
        isKept={false}
        draft={draft}
        boxes={body?.broodBoxes ?? []}
        busy={!writing.canWrite || writing.state === 'busy'}
        onWrite={keep}
      >
        <WriteStatus writing={writing} />
      </CombDesk>
    </>
  );
}

const noCorrections: CombReadingBody['corrections'] = [];
