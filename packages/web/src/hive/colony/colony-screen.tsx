import './colony.css';
import { notifiableDiseases } from '@combside/casework/assess/assess-examination';
import { unfinishedTests } from '@combside/casework/draft/examination-draft';
import { lookStated } from '@combside/casework/draft/look-stated';
import { tapsFromExamination } from '@combside/casework/draft/taps-from-examination';
import { fullClaim, lesserClaim, somethingSeen } from '@combside/casework/examine/claim';
import { beforeOpening } from '@combside/casework/examine/clean-down';
import type { Closing } from '@combside/casework/examine/closing';
import { examinationAt } from '@combside/casework/examine/walk';
import { outdatedSince } from '@combside/casework/report/issue';
import type { Pack } from '@combside/law/pack';
import type { CircumstancesKnown } from '@combside/record/kinds/assessment';
import type { ColonyState } from '@combside/record/states';
import { type DiseaseId, diseases } from '@combside/science/signs/catalogue';
import { lazy, Suspense, useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { FindingLine } from '../../ui/finding-line.tsx';
import { askReasoning, useReasoning } from '../../ui/reasoning/reasoning.ts';
import { Refusal, type Refused } from '../../ui/refusal.tsx';
import { saySentence, sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useEntity, useHiveDevice } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { useVisit, type VisitInHand } from '../visit/use-visit.ts';
import { LookControls } from './look-controls.tsx';
import { ReasoningLineButton } from './reasoning-line.tsx';
import { SignsScreen } from './signs-screen.tsx';
import { UndoBar } from './undo-bar.tsx';
import { correctionKey, type DraftInHand, draftKey, useDraft } from './use-draft.ts';
import { useKnown } from './use-known.ts';
import { WhyCorrected } from './why-corrected.tsx';

// Deeper than the line, so no part of what the first tap waits for.
const fetchClosed = () => import('./closed-colony.tsx');
const ClosedColony = lazy(async () => ({ default: (await fetchClosed()).ClosedColony }));
const MoreScreen = lazy(async () => ({ default: (await import('./more-screen.tsx')).MoreScreen }));
const ReasoningPage = lazy(async () => ({
  default: (await import('../../ui/reasoning/reasoning-page.tsx')).ReasoningPage,
}));

const views = ['look', 'less', 'signs', 'more', 'why', 'close'] as const;
type View = (typeof views)[number];

interface ColonyScreenProps {
  readonly visit: string;
  readonly colony: string;
  readonly view: string;
}

/** One colony at a visit: being looked at, or closed already. */
export function ColonyScreen({ visit, colony, view }: ColonyScreenProps) {
  const words = useWords();
  const known = useVisit(visit);
  const state = useEntity('colony', colony);
  if (known === undefined || state === undefined) {
    return (
      <Screen title={words.say('front.opening')}>
        <p>{words.say('front.opening')}</p>
      </Screen>
    );
  }
  if (known === null || state === null || !state.colony.current) {
    return (
      <Screen title={words.say('front.nowhere')}>
        <p>{words.say('casework.refused.not-in-register')}</p>
      </Screen>
    );
  }
  if (examinationAt(state, visit) && known.drafts[colony] === undefined) {
    return (
      <Suspense
        fallback={
          <Screen title={words.say('front.opening')}>
            <p>{words.say('front.opening')}</p>
          </Screen>
        }
      >
        <ClosedColony
          colony={state}
          visit={visit}
          where={known.apiary.apiary.current?.body.name ?? ''}
          outdated={outdatedSince(known.visit, [state])}
        />
      </Suspense>
    );
  }
  return <OpenColony known={known} colony={state} view={view} />;
}

/** What is corrected: the sealed examination, and the assessment that rests on it. */
export interface Corrected {
  readonly examined: ColonyState['examinations'][number];
  readonly assessed: ColonyState['assessments'][number] | null;
}

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
  const hand = useDraft(
    key,
    colony,
    corrects ? tapsFromExamination(corrects.examined.body, corrects.assessed?.body ?? null, colony) : [],
  );
  // So that what was decided stands there the moment the colony is closed.
  useEffect(() => void fetchClosed(), []);
  const [refusal, setRefusal] = useState<Refused | null>(null);
  const [busy, setBusy] = useState(false);
  const [failed, setFailed] = useState(false);
  const observedAt = corrects ? corrects.examined.body.observedAt : device.now();
  const knownNow = useKnown(colony.about.id, known.apiary.about.id);
  // A correction is weighed with what was known then.
  const before = corrects ? (corrects.assessed?.body.circumstances ?? null) : knownNow;
  const line = useReasoning(
    hand ? { ask: 'line', draft: hand.draft, colony, visit, pack: device.pack, observedAt, known: before } : null,
    hand ? JSON.stringify([hand.taps, before, combReadingsSaid(colony)]) : '',
  );
  if (!hand) return null;

  const { draft } = hand;
  const sealed = `/visit/${visit}/colony/${colony.about.id}`;
  const here = corrects ? `/visit/${visit}/correct/${colony.about.id}` : sealed;
  const show = (next: View) => go(next === 'look' ? here : `${here}/${next}`);
  const label = draft.label;
  const seen = draft.signs.filter((sign) => sign.outcome === 'seen').length;
  const trouble = somethingSeen(draft);
  const claim = fullClaim(draft);
  const lesser = lesserClaim(draft);
  const frames = draft.boxes.reduce((sum, box) => sum + box.framesHeld, 0);

  const close = async (closing: Closing, suspected: readonly DiseaseId[]) => {
    setBusy(true);
    setFailed(false);
    try {
      await hand.settled();
      const stated = {
        taps: hand.taps,
        colony,
        visit: known.visit,
        pack: device.pack,
        closing,
        suspected,
        known: before,
      };
      const act = corrects
        ? await askReasoning({
            ask: 'correct',
            input: {
              ...stated,
              corrects: corrects.examined.written.entry,
              reason: draft.correctionReason,
              by: device.session.person,
              correctedAt: device.now(),
            },
          })
        : await askReasoning({
            ask: 'close',
            input: { ...stated, observedAt: device.now(), examinationId: device.book.newId() },
          });
      if (!act.ok) {
        setRefusal(act);
        return;
      }
      await device.book.write(act.proposals, { closes: [key] });
      void device.sync.run();
      go(corrects ? sealed : act.assessed.suspicion ? `${here}/look` : `/visit/${visit}`, { replace: true });
    } catch {
      setFailed(true);
    } finally {
      setBusy(false);
    }
  };

  const leave = async () => {
    await hand.settled();
    await device.saveDraft(key, []);
    go(sealed, { replace: true });
  };

  const screen = {
    title: words.say(view === 'signs' ? 'hive.signs.title' : corrects ? 'hive.correct.title' : 'hive.colony.title', {
      label,
    }),
    where: known.apiary.apiary.current?.body.name ?? '',
    saving: hand.saving,
    undoBar: <UndoBar hand={hand} />,
  };
  const back = (
    <Button look="wide" onClick={() => show('look')}>
      {words.say('hive.signs.back', { label })}
    </Button>
  );
  const reasoning = <ReasoningLineButton line={line.answer} failed={line.failed} onOpen={() => show('why')} />;

  if (view === 'signs') {
    return (
      <Screen {...screen} foot={back}>
        <SignsScreen draft={draft} onTap={hand.tap} />
        {reasoning}
      </Screen>
    );
  }
  if (view === 'more') {
    return (
      <Screen {...screen} foot={back}>
        <Suspense fallback={<p>{words.say('front.opening')}</p>}>
          <MoreScreen visit={visit} draft={draft} onTap={hand.tap} />
        </Suspense>
      </Screen>
    );
  }
  if (view === 'why') {
    return (
      <Screen {...screen} foot={back}>
        <ReasoningLineButton line={line.answer} failed={line.failed} onOpen={null} />
        <Suspense fallback={<p>{words.say('reasoning.working')}</p>}>
          <Why hand={hand} colony={colony} visit={visit} known={before} />
        </Suspense>
      </Screen>
    );
  }
  if (view === 'close') {
    return (
      <CloseScreen
        screen={screen}
        claimWords={
          claim.ok
            ? words.say(claim.sentence, claim.values)
            : lesser.ok
              ? words.say(lesser.sentence, lesser.values)
              : null
        }
        onTrouble={trouble !== null}
        suspected={diseases.find((one) => one === draft.suspects[0]) ?? null}
        onSuspect={(disease) => hand.tap({ tap: 'suspects', conditions: disease === null ? [] : [disease] })}
        lookMissing={lookStated(draft).ok ? null : (lookStated(draft) as Refused)}
        label={label}
        order={suspectsOffered(device.pack)}
        refusal={refusal}
        busy={busy}
        failed={failed}
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

  const lesserShown = view === 'less' || corrects !== null;
  return (
    <Screen
      {...screen}
      foot={
        trouble || lesserShown ? (
          <>
            {hand.refusal && <Refusal refusal={hand.refusal} />}
            <Button look="wide" onClick={() => show('signs')}>
              {words.say('hive.colony.signs-count', { count: seen })}
            </Button>
            <Button look="main act" onClick={() => show('close')}>
              {corrects ? words.say('hive.correct.to-reason') : words.say('hive.colony.close', { label })}
            </Button>
            {corrects && (
              <Button look="plain" onClick={() => void leave()}>
                {words.say('hive.correct.leave')}
              </Button>
            )}
          </>
        ) : (
          <>
            <div className="opposites">
              <Button look="main" disabled={!claim.ok} onClick={() => show('close')}>
                {claim.ok
                  ? words.say(claim.sentence, claim.values)
                  : saySentence(words, { id: claim.reason, values: claim.values })}
              </Button>
              <Button look="main" onClick={() => show('signs')}>
                {words.say('hive.colony.signs')}
              </Button>
            </div>
            <Button look="plain" onClick={() => show('less')}>
              {words.say('hive.colony.less')}
            </Button>
          </>
        )
      }
    >
      {corrects && <p>{words.say('hive.correct.about')}</p>}
      {hand.cameBack && hand.taps.length > 0 && (
        <p className="caution">{words.say(corrects ? 'hive.correct.draft-back' : 'hive.colony.draft-back')}</p>
      )}
      {!corrects &&
        beforeOpening(known.visit, known.colonies, colony.about.id).map((one) => (
          <FindingLine key={`${one.id} ${one.about?.id}`} finding={one} />
        ))}
      <p className="quiet">
        {sayWord(words, 'casework.hive-type.*', draft.hiveType)}
        {', '}
        {words.say('hive.colony.boxes', { boxes: draft.boxes.length, frames })}
      </p>
      <Choice
        label={words.say('hive.colony.state')}
        options={[
          { value: 'living', label: words.say('hive.colony.state.living') },
          { value: 'dead', label: words.say('hive.colony.state.dead') },
          { value: 'stored combs', label: words.say('hive.colony.state.stored') },
        ]}
        chosen={draft.hiveState}
        onChoose={(state) => hand.tap({ tap: 'hive state', state })}
      />
      {reasoning}
      <Button look="wide" onClick={() => show('more')}>
        {words.say('hive.colony.more')}
      </Button>
      {(trouble !== null || lesserShown) && <LookControls draft={draft} onTap={hand.tap} />}
    </Screen>
  );
}

function Why({
  hand,
  colony,
  visit,
  known,
}: {
  readonly hand: DraftInHand;
  readonly colony: ColonyState;
  readonly visit: string;
  readonly known: CircumstancesKnown | null;
}) {
  const words = useWords();
  const device = useHiveDevice();
  const { draft } = hand;
  const { answer, failed } = useReasoning(
    { ask: 'whole', draft, colony, visit, pack: device.pack, observedAt: device.now(), known },
    JSON.stringify([hand.taps, known, combReadingsSaid(colony)]),
  );
  if (failed) return <p className="caution">{words.say('always.went-wrong')}</p>;
  if (!answer) return <p>{words.say('reasoning.working')}</p>;
  return (
    <ReasoningPage
      whole={answer}
      changes={{
        honeyPositive: draft.honeyPositive,
        onHoney: (found) => hand.tap({ tap: 'spores in honey or bees', found }),
        onPrior: (condition, change) => hand.tap({ tap: 'prior', condition, change }),
      }}
    />
  );
}

/** What may be suspected, what the law makes notifiable first; always in the same place, so that no thumb misses. */
function suspectsOffered(pack: Pack): readonly DiseaseId[] {
  const notifiable = notifiableDiseases(pack);
  return [...notifiable, ...diseases.filter((one) => !notifiable.includes(one))];
}

interface CloseScreenProps {
  readonly screen: {
    readonly title: string;
    readonly where: string;
    readonly saving: 'saved' | 'saving' | 'failed';
    readonly undoBar: React.ReactNode;
  };
  /** What closing would state; null when signs were seen or the look does not stand yet. */
  readonly claimWords: string | null;
  readonly onTrouble: boolean;
  readonly suspected: DiseaseId | null;
  readonly onSuspect: (disease: DiseaseId | null) => void;
  readonly lookMissing: Refused | null;
  readonly label: string;
  readonly order: readonly DiseaseId[];
  readonly refusal: Refused | null;
  readonly busy: boolean;
  readonly failed: boolean;
  readonly look: React.ReactNode;
  /** A test that was begun and would be left out. */
  readonly unfinished: React.ReactNode;
  /** Of a correction: where its reason is given. */
  readonly why: React.ReactNode;
  /** What the main button says in place of its usual words. */
  readonly doWords: string | null;
  readonly unexplained: boolean;
  readonly onClose: () => void;
  readonly onNotJudged: () => void;
  readonly onBack: () => void;
}

/** The last look before a colony is sealed: what will stand written, and whether the inspector suspects something. */
function CloseScreen(props: CloseScreenProps) {
  const words = useWords();
  const { suspected } = props;
  const missing = props.onTrouble ? props.lookMissing : props.claimWords === null ? props.lookMissing : null;
  // Once asked for, the look stays in sight: it must not go away under the thumb with its last answer.
  const [lookAsked] = useState(missing !== null);
  return (
    <Screen
      {...props.screen}
      foot={
        <>
          {props.refusal && <Refusal refusal={props.refusal} />}
          {props.failed && <p className="caution">{words.say('always.went-wrong')}</p>}
          <Button
            look="main act"
            disabled={props.busy || missing !== null || props.unexplained}
            onClick={props.onClose}
          >
            {(!props.busy && props.doWords) ||
              words.say(
                props.busy
                  ? 'hive.status.saving'
                  : suspected !== null && props.onTrouble
                    ? 'hive.suspect.do'
                    : props.onTrouble
                      ? 'hive.suspect.close-without'
                      : 'hive.colony.close',
                {
                  label: props.label,
                  ...(suspected === null ? {} : { condition: sayWord(words, 'signs.condition.*.name', suspected) }),
                },
              )}
          </Button>
          <Button look="plain" onClick={props.onBack}>
            {words.say('hive.signs.back', { label: props.label })}
          </Button>
        </>
      }
    >
      {props.unfinished}
      {props.why}
      {props.claimWords !== null && !props.onTrouble && <p className="large-words">{props.claimWords}</p>}
      {missing && <Refusal refusal={missing} />}
      {lookAsked && props.look}
      {missing && (
        <Button look="wide" disabled={props.busy} onClick={props.onNotJudged}>
          {words.say('hive.colony.not-judged')}
        </Button>
      )}
      {props.onTrouble && (
        <>
          <p>{words.say('hive.suspect.is-yours')}</p>
          <Choice
            label={words.say('hive.suspect.which')}
            options={[
              { value: 'none', label: words.say('hive.suspect.nothing') },
              ...props.order.map((disease) => ({
                value: disease,
                label: sayWord(words, 'signs.condition.*.name', disease),
              })),
            ]}
            chosen={suspected ?? 'none'}
            onChoose={(value) => props.onSuspect(diseases.find((one) => one === value) ?? null)}
          />
          {suspected !== null && <p className="caution">{words.say('hive.suspect.first')}</p>}
        </>
      )}
    </Screen>
  );
}

/** Changes when a reading of a comb photograph is kept, accepted or corrected: then the reasoning is asked again. */
function combReadingsSaid(colony: ColonyState): readonly (readonly [string, number])[] {
  return colony.combReadings.map((one) => [one.written.entry, one.corrections.length]);
}
