import { beforeOpening } from '@combside/casework/examine/clean-down';
import { fullClaim, somethingSeen } from '@combside/casework/examine/nothing-seen';
import type { ColonyState } from '@combside/record/states';
import type { ReactNode } from 'react';
import type { Saving } from '../../device/drafts/open-draft.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { FindingLine } from '../../ui/finding-line.tsx';
import { Refusal } from '../../ui/refusal.tsx';
import { saySentence, sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { Screen } from '../screen/screen.tsx';
import type { VisitInHand } from '../visit/use-visit.ts';
import { LookControls } from './look-controls.tsx';
import type { ColonyDraftInHand } from './use-colony-draft.ts';
import type { View } from './views.ts';

interface LookScreenProps {
  readonly screen: {
    readonly title: string;
    readonly where: string;
    readonly saving: Saving;
    readonly undoBar: ReactNode;
  };
  readonly hand: ColonyDraftInHand;
  readonly known: VisitInHand;
  readonly colony: ColonyState;
  /** Less than everything was looked at: then it is asked what. */
  readonly isLess: boolean;
  readonly corrects: boolean;
  readonly reasoning: ReactNode;
  readonly onShow: (view: View) => void;
  readonly onLeave: () => void;
}

/** The first screen of a colony: its state, and whether nothing was seen, or signs. */
export function LookScreen(props: LookScreenProps) {
  const { screen, hand, known, colony, corrects, reasoning, onShow } = props;
  const words = useWords();
  const { draft } = hand;
  const trouble = somethingSeen(draft);
  const isLess = props.isLess || corrects;
  const frames = draft.boxes.reduce((sum, box) => sum + box.framesHeld, 0);
  return (
    <Screen {...screen} foot={trouble || isLess ? <SignsAndClose {...props} /> : <NothingOrSigns {...props} />}>
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
      <Button look="wide" onClick={() => onShow('more')}>
        {words.say('hive.colony.more')}
      </Button>
      {(trouble !== null || isLess) && <LookControls draft={draft} onTap={hand.tap} />}
    </Screen>
  );
}

/** Once something was seen, or less was looked at: the signs so far, and the way to close. */
function SignsAndClose({ hand, corrects, onShow, onLeave }: LookScreenProps) {
  const words = useWords();
  const { draft } = hand;
  const seen = draft.signs.filter((sign) => sign.outcome === 'seen').length;
  return (
    <>
      {hand.refusal && <Refusal refusal={hand.refusal} />}
      <Button look="wide" onClick={() => onShow('signs')}>
        {words.say('hive.colony.signs-count', { count: seen })}
      </Button>
      <Button look="main act" onClick={() => onShow('close')}>
        {corrects ? words.say('hive.correct.to-reason') : words.say('hive.colony.close', { label: draft.label })}
      </Button>
      {corrects && (
        <Button look="plain" onClick={onLeave}>
          {words.say('hive.correct.leave')}
        </Button>
      )}
    </>
  );
}

/** While nothing was said: the two opposites, far enough apart for a glove. */
function NothingOrSigns({ hand, onShow }: LookScreenProps) {
  const words = useWords();
  const claim = fullClaim(hand.draft);
  return (
    <>
      <div className="opposites">
        <Button look="main" disabled={!claim.ok} onClick={() => onShow('close')}>
          {claim.ok
            ? words.say(claim.sentence, claim.values)
            : saySentence(words, { id: claim.reason, values: claim.values })}
        </Button>
        <Button look="main" onClick={() => onShow('signs')}>
          {words.say('hive.colony.signs')}
        </Button>
      </div>
      <Button look="plain" onClick={() => onShow('less')}>
        {words.say('hive.colony.less')}
      </Button>
    </>
  );
}
