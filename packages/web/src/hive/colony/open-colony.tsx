import './colony.css';
import { notifiableDiseases } from '@combside/casework/assess/assess-examination';
import { unfinishedTests } from '@combside/casework/draft/examination-draft';
import { lookStated } from '@combside/casework/draft/look-stated';
import { tapsFromExamination } from '@combside/casework/draft/taps-from-examination';
import type { Closing } from '@combside/casework/examine/closing';
import { fullClaim, lesserClaim, somethingSeen } from '@combside/casework/examine/nothing-seen';
import type { Pack } from '@combside/law/pack';
import type { ColonyState } from '@combside/record/states';
import { type DiseaseId, diseases } from '@combside/science/signs/catalogue';
import { lazy, type ReactNode, Suspense, useEffect } from 'react';
import { useLocation } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { useReasoning } from '../../ui/reasoning/reasoning.ts';
import type { Refused } from '../../ui/refusal.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useHiveDevice } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import type { VisitInHand } from '../visit/use-visit.ts';
import { CloseScreen } from './close-screen.tsx';
import { combReadingsSaid } from './comb-readings-said.ts';
import { fetchClosedColony } from './fetch-closed-colony.ts';
import { LookControls } from './look-controls.tsx';
import { LookScreen } from './look-screen.tsx';
import { ReasoningLineButton } from './reasoning-line.tsx';
import { SignsScreen } from './signs-screen.tsx';
import { UndoBar } from './undo-bar.tsx';
import { type Corrected, useClosing } from './use-closing.ts';
import { correctionKey, draftKey, useColonyDraft } from './use-colony-draft.ts';
import { useKnown } from './use-known.ts';
import { type View, views } from './views.ts';
import { WhyCorrected } from './why-corrected.tsx';

// Deeper than the line, so no part of what the first tap waits for.
const MoreScreen = lazy(async () => ({ default: (await import('./more-screen.tsx')).MoreScreen }));
const WhyScreen = lazy(async () => ({ default: (await import('./why-screen.tsx')).WhyScreen }));

interface OpenColonyProps {
  readonly known: VisitInHand;
  readonly colony: ColonyState;
  readonly view: string;
  /** Null while the colony is looked at. */
  readonly corrects?: Corrected | null;
}

/** The screens of one colony in the hand: being looked at, or being corrected from what was sealed. */
export function OpenColony({ known, colony, view: asked, corrects = null }: OpenColonyProps) {
  const words = useWords();
  const device = useHiveDevice();
  const [, go] = useLocation();
  const visit = known.visit.about.id;
  const view = views.find((one) => one === asked) ?? 'look';
  const key = corrects ? correctionKey(visit, colony.about.id) : draftKey(visit, colony.about.id);
  const hand = useColonyDraft(
    key,
    colony,
    corrects ? tapsFromExamination(corrects.examined.body, corrects.assessed?.body ?? null, colony) : [],
  );
  // So that what was decided stands there the moment the colony is closed.
  useEffect(() => void fetchClosedColony(), []);
  const observedAt = corrects ? corrects.examined.body.observedAt : device.now();
  const knownNow = useKnown(colony.about.id, known.apiary.about.id);
  // A correction is weighed with what was known then.
  const before = corrects ? (corrects.assessed?.body.circumstances ?? null) : knownNow;
  const closing = useClosing(hand ? { hand, known, colony, circumstances: before, corrects } : null);
  const line = useReasoning(
    hand ? { ask: 'line', draft: hand.draft, colony, visit, pack: device.pack, observedAt, known: before } : null,
    hand ? JSON.stringify([hand.taps, before, combReadingsSaid(colony)]) : '',
  );
  if (!hand) return null;

  const { draft } = hand;
  const sealed = `/visit/${visit}/colony/${colony.about.id}`;
  const here = corrects ? `/visit/${visit}/correct/${colony.about.id}` : sealed;
  const show = (next: View) => go(next === 'look' ? here : `${here}/${next}`);
  const close = async (how: Closing, suspected: readonly DiseaseId[]) => {
    const done = await closing.write({ closing: how, suspected });
    if (done) go(corrects ? sealed : done.assessed.suspicion ? `${here}/look` : `/visit/${visit}`, { replace: true });
  };
  const leave = async () => {
    await hand.settled();
    await device.drafts.remove(key);
    go(sealed, { replace: true });
  };

  const screen = {
    title: words.say(view === 'signs' ? 'hive.signs.title' : corrects ? 'hive.correct.title' : 'hive.colony.title', {
      label: draft.label,
    }),
    where: known.apiary.apiary.current?.body.name ?? '',
    saving: hand.saving,
    undoBar: <UndoBar hand={hand} />,
  };
  const reasoning = <ReasoningLineButton line={line.answer} failed={line.failed} onOpen={() => show('why')} />;
  const deeper = (children: ReactNode) => (
    <Screen
      {...screen}
      foot={
        <Button look="wide" onClick={() => show('look')}>
          {words.say('hive.signs.back', { label: draft.label })}
        </Button>
      }
    >
      {children}
    </Screen>
  );

  switch (view) {
    case 'signs':
      return deeper(
        <>
          <SignsScreen draft={draft} onTap={hand.tap} />
          {reasoning}
        </>,
      );
    case 'more':
      return deeper(
        <Suspense fallback={<p>{words.say('front.opening')}</p>}>
          <MoreScreen visit={visit} draft={draft} onTap={hand.tap} />
        </Suspense>,
      );
    case 'why':
      return deeper(
        <>
          <ReasoningLineButton line={line.answer} failed={line.failed} onOpen={null} />
          <Suspense fallback={<p>{words.say('reasoning.working')}</p>}>
            <WhyScreen hand={hand} colony={colony} visit={visit} known={before} />
          </Suspense>
        </>,
      );
    case 'close': {
      const trouble = somethingSeen(draft);
      const claim = fullClaim(draft);
      const lesser = lesserClaim(draft);
      const look = lookStated(draft);
      const claimed = claim.ok ? claim : lesser.ok ? lesser : null;
      return (
        <CloseScreen
          screen={screen}
          claimWords={claimed && words.say(claimed.sentence, claimed.values)}
          onTrouble={trouble !== null}
          suspected={diseases.find((one) => one === draft.suspects[0]) ?? null}
          onSuspect={(disease) => hand.tap({ tap: 'suspects', conditions: disease === null ? [] : [disease] })}
          lookMissing={look.ok ? null : (look as Refused)}
          label={draft.label}
          order={suspectsOffered(device.pack)}
          writing={closing}
          look={<LookControls draft={draft} onTap={hand.tap} />}
          unfinished={
            unfinishedTests(draft).length > 0 && (
              <div className="caution stack close">
                <p>{words.say('hive.colony.test-unfinished')}</p>
                <Button onClick={() => show('more')}>{words.say('hive.colony.test-unfinished.open')}</Button>
              </div>
            )
          }
          why={
            corrects && (
              <WhyCorrected reason={draft.correctionReason} onReason={(text) => hand.tap({ tap: 'reason', text })} />
            )
          }
          doWords={corrects && words.say('hive.correct.do')}
          unexplained={corrects !== null && draft.correctionReason.trim() === ''}
          onClose={() =>
            void (trouble
              ? close(
                  'signs seen',
                  diseases.filter((one) => draft.suspects.includes(one)),
                )
              : close(claim.ok ? 'nothing seen' : 'nothing seen with less', []))
          }
          onNotJudged={() => void close('not judged', [])}
          onBack={() => show('look')}
        />
      );
    }
    default:
      return (
        <LookScreen
          screen={screen}
          hand={hand}
          known={known}
          colony={colony}
          isLess={view === 'less'}
          corrects={corrects !== null}
          reasoning={reasoning}
          onShow={show}
          onLeave={() => void leave()}
        />
      );
  }
}

/** What may be suspected, what the law makes notifiable first; always in the same place, so that no thumb misses. */
function suspectsOffered(pack: Pack): readonly DiseaseId[] {
  const notifiable = notifiableDiseases(pack);
  return [...notifiable, ...diseases.filter((one) => !notifiable.includes(one))];
}
