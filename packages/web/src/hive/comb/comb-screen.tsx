import '../../ui/comb/comb.css';
import { carryCorrections } from '@combside/casework/comb/carry-corrections';
import { proposeReading, type ReadingPart } from '@combside/casework/comb/propose-reading';
import { replaceReading } from '@combside/casework/comb/replace-reading';
import type { PhotographReference } from '@combside/record/kinds/examination';
import type { ColonyState, VisitState } from '@combside/record/states';
import { useState } from 'react';
import { Link } from 'wouter';
import type { ReadPhotograph } from '../../device/comb/messages.ts';
import { startReading } from '../../device/comb/start-reading.ts';
import { useWrite } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { lastWords, whatIsSaid } from '../../ui/comb/last-words.ts';
import { NotRead, ReadingCautions } from '../../ui/comb/reading-limits.tsx';
import { ReadingRuns } from '../../ui/comb/reading-runs.tsx';
import { SpeaksWords, useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';
import { WhyCorrected } from '../colony/why-corrected.tsx';
import { useEntity, useHiveDevice } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { CombCorners } from './comb-corners.tsx';
import { CombInHand } from './comb-in-hand.tsx';
import { type CombDraftInHand, combDraftPrefix, type SaidOfComb, useCombDraft } from './use-comb-draft.ts';
import { type InnerView, useInnerView } from './use-inner-view.ts';
import { usePhotographBytes, usePhotographReference } from './use-photograph.ts';

interface CombScreenProps {
  readonly visit: string;
  readonly colony: string;
  /** Hash of the photograph. */
  readonly photograph: string;
  /** The part of the screen that is shown, or null for the picture: `cell`, `corners` or `reason`. */
  readonly view: string | null;
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

function Comb({ visit: visitId, colony: colonyId, photograph, view }: CombScreenProps) {
  const words = useWords();
  const visit = useEntity('visit', visitId);
  const colony = useEntity('colony', colonyId);
  if (visit === undefined || colony === undefined) {
    return <Screen title={words.say('front.opening')}>{words.say('front.opening')}</Screen>;
  }
  if (!visit || !colony?.colony.current) {
    return <Screen title={words.say('front.nowhere')}>{words.say('casework.refused.not-in-register')}</Screen>;
  }
  return <CombOfColony visit={visit} colony={colony} hash={photograph} view={view} />;
}

interface OfColony {
  readonly visit: VisitState;
  readonly colony: ColonyState;
  /** Name of the apiary. */
  readonly where: string;
  readonly view: string | null;
  readonly inner: InnerView;
}

function CombOfColony({
  visit,
  colony,
  hash,
  view,
}: Omit<OfColony, 'where' | 'inner'> & {
  readonly hash: string;
}) {
  const inner = useInnerView(`/visit/${visit.about.id}/comb/${colony.about.id}/${hash}`, view);
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
  const given = { visit, colony, where, view, inner };
  if (kept) return <KeptComb key={kept.written.entry} {...given} kept={kept} bytes={bytes} />;
  if (!reference || !bytes) {
    return (
      <Screen title={words.say('front.nowhere')} foot={<BackToColony visit={visit} colony={colony} act />}>
        <p>{words.say('comb.screen.photograph-elsewhere')}</p>
      </Screen>
    );
  }
  return <NewComb {...given} photograph={reference} bytes={bytes} />;
}

function BackToColony({ visit, colony, act }: Pick<OfColony, 'visit' | 'colony'> & { readonly act?: boolean }) {
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

interface ToBeRead extends OfColony {
  readonly photograph: PhotographReference;
  readonly bytes: Blob;
}

/** A photograph that has not been kept as a reading: read now, looked at, corrected, kept. */
function NewComb(given: ToBeRead) {
  const { visit, colony, where, photograph } = given;
  const words = useWords();
  const box = colony.colony.current?.body.broodBoxes[0]?.box ?? '';
  const hand = useCombDraft(combDraftPrefix(visit.about.id, colony.about.id) + photograph.hash, {
    corrections: [],
    place: { box, frame: null, side: null },
    accepted: false,
    corners: null,
    reason: '',
  });
  const title = words.say('comb.screen.title', { label: colony.colony.current?.body.label ?? '' });
  if (!hand)
    return (
      <Screen title={title} where={where}>
        {words.say('front.opening')}
      </Screen>
    );
  return <CombToRead {...given} title={title} hand={hand} />;
}

/** Of these files nothing can be shown, so nothing can be set on them. */
const noPicture: readonly string[] = ['not-a-picture', 'damaged', 'file-too-large', 'picture-too-small'];

function CombToRead({
  visit,
  colony,
  where,
  view,
  inner,
  photograph,
  bytes,
  title,
  hand,
}: ToBeRead & { readonly title: string; readonly hand: CombDraftInHand }) {
  const words = useWords();
  const { part, said } = hand;
  const [state, setState] = useState<'running' | 'stopped' | 'failed' | 'read' | readonly string[]>(
    part ? 'read' : 'running',
  );
  /** How many words on cells went along from the reading before, and of how many. */
  const [carried, setCarried] = useState<{ readonly along: number; readonly of: number } | null>(null);
  const keeping = useWrite(
    (read: ReadingPart) => {
      const standing = hand.now();
      return proposeReading({
        read: { part: read },
        photograph,
        place: standing.place,
        observedAt: photograph.takenAt,
        colony,
        visit,
        corrections: lastWords(standing.corrections),
        accepted: standing.accepted,
      });
    },
    () => ({ closes: [hand] }),
  );
  const spokenOf = lastWords(said.corrections);

  if (view === 'corners') {
    return (
      <CombCorners
        title={title}
        where={where}
        hand={hand}
        bytes={bytes}
        spokenOf={spokenOf.length}
        onRead={(corners) => {
          hand.say({ corners });
          setState('running');
          inner.close();
        }}
        onBack={inner.close}
      />
    );
  }
  const toCorners = () => inner.open('corners');

  if (!part || state !== 'read') {
    const reasons = typeof state === 'string' ? [] : state;
    const shown = state !== 'running' && !reasons.some((one) => noPicture.includes(one));
    const take = (read: Extract<ReadPhotograph, { verdict: 'read' }>) => {
      const corrections = part ? carryCorrections(part.cells, said.corrections, read.part) : said.corrections;
      setCarried(part && spokenOf.length > 0 ? { along: corrections.length, of: spokenOf.length } : null);
      // Whoever agreed, agreed to the reading before this one.
      hand.keepPart(read.part, { corrections, ...(part ? { accepted: false } : {}) });
      setState('read');
    };
    return (
      <Screen
        title={title}
        where={where}
        saving={hand.saving}
        foot={
          <>
            {(state === 'stopped' || state === 'failed') && (
              <Button look={part ? 'wide act' : 'main act'} onClick={() => setState('running')}>
                {words.say('comb.screen.read')}
              </Button>
            )}
            {shown && (
              <Button look={reasons.length > 0 ? 'wide act' : 'wide'} onClick={toCorners}>
                {words.say('comb.screen.corners.set')}
              </Button>
            )}
            {part && state !== 'running' && (
              <Button look="wide" onClick={() => setState('read')}>
                {words.say('comb.screen.reading-before')}
              </Button>
            )}
            <BackToColony visit={visit} colony={colony} act={reasons.length > 0 && !shown} />
          </>
        }
      >
        {state === 'running' && (
          <ReadingRuns
            start={(progress) => startReading(bytes, progress, said.corners)}
            onEnd={(read) => {
              if (read === null) setState('stopped');
              else if (read === 'failed') setState('failed');
              else if (read.verdict === 'refused') setState(read.reasons);
              else take(read);
            }}
          />
        )}
        {state === 'stopped' && <p role="status">{words.say('comb.screen.stopped')}</p>}
        {state === 'failed' && (
          <p className="caution" role="alert">
            {words.say('comb.screen.failed')}
          </p>
        )}
        {said.corners && <p>{words.say('comb.screen.corners.count')}</p>}
        {reasons.length === 0 ? <ReadingCautions /> : <NotRead reasons={reasons} />}
        {reasons.length > 0 && shown && <p>{words.say('comb.screen.corners.when')}</p>}
      </Screen>
    );
  }

  return (
    <CombInHand
      title={title}
      where={where}
      hand={hand}
      part={part}
      bytes={bytes}
      boxes={colony.colony.current?.body.broodBoxes ?? []}
      view={view}
      inner={inner}
      onCorners={toCorners}
      above={
        <>
          {hand.cameBack && <p className="caution">{words.say('comb.screen.draft-back')}</p>}
          {carried && <p role="status">{words.say('comb.screen.corners.carried', { ...carried })}</p>}
        </>
      }
      foot={
        <>
          <WriteTrouble writing={keeping} />
          <Button look="wide act" disabled={keeping.state === 'busy'} onClick={() => part && void keeping.write(part)}>
            {words.say('comb.screen.keep')}
          </Button>
          <BackToColony visit={visit} colony={colony} />
        </>
      }
    />
  );
}

type ReadingOnRecord = ColonyState['combReadings'][number];

/** A reading that stands in the record: looked at again, and corrected with a reason. */
function KeptComb(given: OfColony & { readonly kept: ReadingOnRecord; readonly bytes: Blob | null }) {
  const { kept } = given;
  const words = useWords();
  const device = useHiveDevice();
  // Each correction written begins the next from what then stands.
  return (
    <KeptInHand
      key={kept.corrections.length}
      {...given}
      above={
        <>
          <p>
            {words.say(kept.body.accepted ? 'comb.screen.kept-accepted' : 'comb.screen.kept', {
              when: words.dayAndTime(kept.body.observedAt, device.timeZone),
            })}
          </p>
          {kept.corrections.map(({ written, reason }) => (
            <p key={written.entry} className="quiet">
              {words.say('comb.screen.corrected-because', {
                when: words.dayAndTime(written.at, device.timeZone),
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
  view,
  inner,
  kept,
  bytes,
  above,
}: OfColony & { readonly kept: ReadingOnRecord; readonly bytes: Blob | null; readonly above: React.ReactNode }) {
  const words = useWords();
  const device = useHiveDevice();
  const [begin] = useState<SaidOfComb>(() => ({
    corrections: kept.body.corrections,
    place: kept.body.place,
    accepted: kept.body.accepted,
    corners: null,
    reason: '',
  }));
  const hand = useCombDraft(`comb-correction/${kept.written.entry}/${kept.corrections.length}`, begin);
  const keeping = useWrite(
    () => {
      const said = hand?.now() ?? begin;
      return replaceReading({
        colony,
        corrects: kept.written.entry,
        reason: said.reason,
        correctedAt: device.now(),
        corrections: lastWords(said.corrections),
        place: said.place,
        accepted: said.accepted,
      });
    },
    () => ({ closes: hand ? [hand] : [] }),
  );
  const title = words.say('comb.screen.title', { label: colony.colony.current?.body.label ?? '' });
  if (!hand)
    return (
      <Screen title={title} where={where}>
        {words.say('front.opening')}
      </Screen>
    );
  const changed = whatIsSaid(hand.said) !== whatIsSaid(begin);
  const keepCorrection = async () => {
    if (await keeping.write()) inner.close();
  };
  if (view === 'reason' && changed) {
    return (
      <Screen
        title={title}
        where={where}
        saving={hand.saving}
        foot={
          <>
            <WriteTrouble writing={keeping} />
            <Button
              look="main act"
              disabled={keeping.state === 'busy' || hand.said.reason.trim() === ''}
              onClick={() => void keepCorrection()}
            >
              {words.say('comb.screen.correct')}
            </Button>
            <Button look="plain" onClick={inner.close}>
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
      view={view}
      inner={inner}
      above={above}
      foot={
        <>
          {changed && (
            <Button look="wide act" onClick={() => inner.open('reason')}>
              {words.say('hive.correct.to-reason')}
            </Button>
          )}
          <BackToColony visit={visit} colony={colony} />
        </>
      }
    />
  );
}
