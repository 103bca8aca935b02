import '../ui/comb/comb.css';
import { proposeReading } from '@combside/casework/comb/propose-reading';
import { replaceReading } from '@combside/casework/comb/replace-reading';
import type { PhotographReference } from '@combside/record/kinds/examination';
import type { ColonyState, VisitState } from '@combside/record/states';
import { useState } from 'react';
import { Link } from 'wouter';
import { startReading } from '../device/comb/start-reading.ts';
import { Button } from '../ui/button.tsx';
import { lastWords, whatIsSaid } from '../ui/comb/last-words.ts';
import { NotRead, ReadingCautions } from '../ui/comb/reading-limits.tsx';
import { ReadingRuns } from '../ui/comb/reading-runs.tsx';
import { Refusal } from '../ui/refusal.tsx';
import { SpeaksWords, useWords } from '../ui/words-context.tsx';
import { CombInHand } from './comb-in-hand.tsx';
import { useEntity, useField } from './field.tsx';
import { Screen } from './screen.tsx';
import { combDraftPrefix, type SaidOfComb, useCombDraft } from './use-comb-draft.ts';
import { useKeepingReading } from './use-keeping-reading.ts';
import { usePhotographBytes, usePhotographReference } from './use-photograph.ts';
import { WhyCorrected } from './why-corrected.tsx';

interface CombScreenProps {
  readonly visit: string;
  readonly colony: string;
  /** Hash of the photograph. */
  readonly photograph: string;
}

/** The comb on one photograph, read cell by cell: beside the open colony, and after it was closed. */
export default function CombScreen(props: CombScreenProps) {
  const { language } = useWords();
  return (
    <SpeaksWords language={language} rooms={['always', 'front', 'hive', 'casework', 'comb']}>
      <Comb {...props} />
    </SpeaksWords>
  );
}

function Comb({ visit: visitId, colony: colonyId, photograph }: CombScreenProps) {
  const words = useWords();
  const visit = useEntity('visit', visitId);
  const colony = useEntity('colony', colonyId);
  if (visit === undefined || colony === undefined) {
    return <Screen title={words.say('front.opening')}>{words.say('front.opening')}</Screen>;
  }
  if (!visit || !colony?.colony.current) {
    return <Screen title={words.say('front.nowhere')}>{words.say('casework.refused.not-in-register')}</Screen>;
  }
  return <CombOfColony visit={visit} colony={colony} hash={photograph} />;
}

interface OfColony {
  readonly visit: VisitState;
  readonly colony: ColonyState;
  /** Name of the apiary. */
  readonly where: string;
}

function CombOfColony({ visit, colony, hash }: Omit<OfColony, 'where'> & { readonly hash: string }) {
  const words = useWords();
  const apiary = useEntity('apiary', visit.visit.current?.body.apiary ?? '');
  const where = apiary?.apiary.current?.body.name ?? '';
  const reference = usePhotographReference(visit.about.id, colony, hash);
  const bytes = usePhotographBytes(hash);
  const kept = colony.combReadings.find(
    (one) => one.body.visit === visit.about.id && one.body.photograph.hash === hash,
  );
  if (reference === undefined || bytes === undefined) {
    return <Screen title={words.say('front.opening')}>{words.say('front.opening')}</Screen>;
  }
  // What is written changes `kept`: each reading has a draft of its own.
  if (kept)
    return <KeptComb key={kept.written.entry} visit={visit} colony={colony} where={where} kept={kept} bytes={bytes} />;
  if (!reference || !bytes) {
    return (
      <Screen title={words.say('front.nowhere')} foot={<BackToColony visit={visit} colony={colony} act />}>
        <p>{words.say('comb.screen.photograph-elsewhere')}</p>
      </Screen>
    );
  }
  return <NewComb visit={visit} colony={colony} where={where} photograph={reference} bytes={bytes} />;
}

function BackToColony({ visit, colony, act }: Omit<OfColony, 'where'> & { readonly act?: boolean }) {
  const words = useWords();
  return (
    <Link
      className={act ? 'button main act' : 'button plain'}
      href={`/visit/${visit.about.id}/colony/${colony.about.id}/more`}
    >
      {words.say('comb.screen.back', { label: colony.colony.current?.body.label ?? '' })}
    </Link>
  );
}

/** A photograph that has not been kept as a reading: read now, looked at, corrected, kept. */
function NewComb({
  visit,
  colony,
  where,
  photograph,
  bytes,
}: OfColony & { readonly photograph: PhotographReference; readonly bytes: Blob }) {
  const words = useWords();
  const box = colony.colony.current?.body.broodBoxes[0]?.box ?? '';
  const hand = useCombDraft(combDraftPrefix(visit.about.id, colony.about.id) + photograph.hash, {
    corrections: [],
    place: { box, frame: null, side: null },
    accepted: false,
    reason: '',
  });
  const [state, setState] = useState<'running' | 'stopped' | 'failed' | readonly string[]>('running');
  const { busy, failed, refusal, keep } = useKeepingReading();
  const label = colony.colony.current?.body.label ?? '';
  const title = words.say('comb.screen.title', { label });
  if (!hand)
    return (
      <Screen title={title} where={where}>
        {words.say('front.opening')}
      </Screen>
    );

  if (!hand.part) {
    return (
      <Screen
        title={title}
        where={where}
        saving={hand.saving}
        foot={
          <>
            {state !== 'running' && typeof state === 'string' && (
              <Button look="main act" onClick={() => setState('running')}>
                {words.say('comb.screen.read')}
              </Button>
            )}
            <BackToColony visit={visit} colony={colony} act={typeof state !== 'string'} />
          </>
        }
      >
        {state === 'running' && (
          <ReadingRuns
            start={(progress) => startReading(bytes, progress)}
            onEnd={(read) => {
              if (read === null) setState('stopped');
              else if (read === 'failed') setState('failed');
              else if (read.verdict === 'refused') setState(read.reasons);
              else hand.keepPart(read.part);
            }}
          />
        )}
        {state === 'stopped' && <p role="status">{words.say('comb.screen.stopped')}</p>}
        {state === 'failed' && (
          <p className="caution" role="alert">
            {words.say('comb.screen.failed')}
          </p>
        )}
        {typeof state === 'string' ? <ReadingCautions /> : <NotRead reasons={state} />}
      </Screen>
    );
  }

  const { part } = hand;
  const keepReading = () =>
    keep(hand, () =>
      proposeReading({
        read: { part },
        photograph,
        place: hand.said.place,
        observedAt: photograph.takenAt,
        colony,
        visit,
        corrections: lastWords(hand.said.corrections),
        accepted: hand.said.accepted,
      }),
    );
  return (
    <CombInHand
      title={title}
      where={where}
      hand={hand}
      part={part}
      bytes={bytes}
      boxes={colony.colony.current?.body.broodBoxes ?? []}
      above={hand.cameBack && <p className="caution">{words.say('comb.screen.draft-back')}</p>}
      foot={
        <>
          {refusal && <Refusal refusal={refusal} />}
          {failed && <p className="caution">{words.say('always.went-wrong')}</p>}
          <Button look="wide act" disabled={busy} onClick={() => void keepReading()}>
            {words.say('comb.screen.keep')}
          </Button>
          <BackToColony visit={visit} colony={colony} />
        </>
      }
    />
  );
}

type Kept = ColonyState['combReadings'][number];

/** A reading that stands in the record: looked at again, and corrected with a reason. */
function KeptComb({
  visit,
  colony,
  where,
  kept,
  bytes,
}: OfColony & { readonly kept: Kept; readonly bytes: Blob | null }) {
  const words = useWords();
  const field = useField();
  // Each correction written begins the next from what then stands.
  return (
    <KeptInHand
      key={kept.corrections.length}
      visit={visit}
      colony={colony}
      where={where}
      kept={kept}
      bytes={bytes}
      above={
        <>
          <p>
            {words.say(kept.body.accepted ? 'comb.screen.kept-accepted' : 'comb.screen.kept', {
              when: words.dayAndTime(kept.body.observedAt, field.timeZone),
            })}
          </p>
          {kept.corrections.map(({ written, reason }) => (
            <p key={written.entry} className="quiet">
              {words.say('comb.screen.corrected-because', {
                when: words.dayAndTime(written.at, field.timeZone),
                reason,
              })}
            </p>
          ))}
        </>
      }
    />
  );
}

function KeptInHand({
  visit,
  colony,
  where,
  kept,
  bytes,
  above,
}: OfColony & { readonly kept: Kept; readonly bytes: Blob | null; readonly above: React.ReactNode }) {
  const words = useWords();
  const field = useField();
  const [begin] = useState<SaidOfComb>(() => ({
    corrections: kept.body.corrections,
    place: kept.body.place,
    accepted: kept.body.accepted,
    reason: '',
  }));
  const hand = useCombDraft(`comb-correction/${kept.written.entry}/${kept.corrections.length}`, begin);
  const { busy, failed, refusal, keep } = useKeepingReading();
  const [asking, setAsking] = useState(false);
  const title = words.say('comb.screen.title', { label: colony.colony.current?.body.label ?? '' });
  if (!hand)
    return (
      <Screen title={title} where={where}>
        {words.say('front.opening')}
      </Screen>
    );
  const changed = whatIsSaid(hand.said) !== whatIsSaid(begin);
  const keepCorrection = () =>
    keep(hand, () =>
      replaceReading({
        colony,
        corrects: kept.written.entry,
        reason: hand.said.reason,
        correctedAt: field.now(),
        corrections: lastWords(hand.said.corrections),
        place: hand.said.place,
        accepted: hand.said.accepted,
      }),
    );
  if (asking && changed) {
    return (
      <Screen
        title={title}
        where={where}
        saving={hand.saving}
        foot={
          <>
            {refusal && <Refusal refusal={refusal} />}
            {failed && <p className="caution">{words.say('always.went-wrong')}</p>}
            <Button
              look="main act"
              disabled={busy || hand.said.reason.trim() === ''}
              onClick={() => void keepCorrection()}
            >
              {words.say('comb.screen.correct')}
            </Button>
            <Button look="plain" onClick={() => setAsking(false)}>
              {words.say('comb.screen.lens.back')}
            </Button>
          </>
        }
      >
        <WhyCorrected reason={hand.said.reason} onReason={(reason) => hand.say({ reason })} />
      </Screen>
    );
  }
  return (
    <CombInHand
      title={title}
      where={where}
      hand={hand}
      part={kept.body}
      bytes={bytes}
      boxes={colony.colony.current?.body.broodBoxes ?? []}
      above={above}
      foot={
        <>
          {changed && (
            <Button look="wide act" onClick={() => setAsking(true)}>
              {words.say('hive.correct.to-reason')}
            </Button>
          )}
          <BackToColony visit={visit} colony={colony} />
        </>
      }
    />
  );
}
