import { type ReactNode, useCallback, useEffect, useState } from 'react';
import type { SetCorners } from '../../device/comb/messages.ts';
import { startFindingCorners } from '../../device/comb/start-reading.ts';
import { toStored, toUpright } from '../../device/comb/turn.ts';
import { Button } from '../../ui/button.tsx';
import { CornerSetting } from '../../ui/comb/corner-setting.tsx';
import { type Corners, cornersOf, cornersTrouble, insetCorners } from '../../ui/comb/corners.ts';
import { useShownPhotograph } from '../../ui/comb/use-shown-photograph.ts';
import { useWords } from '../../ui/words-context.tsx';
import { Screen } from '../screen/screen.tsx';
import type { CombDraftInHand } from './use-comb-draft.ts';

interface CombCornersProps {
  readonly title: string;
  /** Name of the apiary. */
  readonly where: string;
  readonly hand: CombDraftInHand;
  readonly bytes: Blob;
  /** Cells a person spoke of in the reading that another one would take the place of. */
  readonly spokenOf: number;
  /** Reads with the corners given, or the whole photograph. */
  readonly onRead: (corners: SetCorners) => void;
  readonly onBack: () => void;
}

/** The four corners of the comb on its photograph, set by a person, so that only what lies between them is read. */
export function CombCorners({ title, where, hand, bytes, spokenOf, onRead, onBack }: CombCornersProps) {
  const words = useWords();
  const fetchBytes = useCallback(async () => bytes, [bytes]);
  const photograph = useShownPhotograph(fetchBytes, hand.part?.reader.picture ?? null);
  const [proposed, setProposed] = useState<SetCorners>(null);
  const untouched = hand.said.corners === null;
  useEffect(() => {
    if (!untouched) return;
    const finding = startFindingCorners(bytes);
    finding.done
      .then((answer) => setProposed(answer?.found ?? null))
      .catch((failure: unknown) => {
        // Without a proposal the rings stand where they began. Handed on, so that the fault report has it.
        void Promise.reject(failure);
      });
    return () => finding.cancel();
  }, [bytes, untouched]);
  /** What was asked for, while a person is asked whether what they said may go over to another reading. */
  const [asking, setAsking] = useState<{ readonly corners: SetCorners } | null>(null);
  const screen = (children: ReactNode, keys: ReactNode) => (
    <Screen
      title={title}
      where={where}
      saving={hand.saving}
      foot={
        <>
          {keys}
          <Button look="wide" onClick={asking ? () => setAsking(null) : onBack}>
            {words.say(asking ? 'comb.screen.corners.leave' : 'comb.screen.corners.back')}
          </Button>
        </>
      }
    >
      {children}
    </Screen>
  );
  if (photograph === null) return screen(words.say('front.opening'), null);
  if (photograph === 'failed') {
    return screen(<p className="caution">{words.say('comb.screen.photograph-not-opened')}</p>, null);
  }
  const { turn } = photograph;
  const shown = (all: SetCorners) => cornersOf((all ?? []).map((corner) => toUpright(turn, corner)));
  const standing = shown(hand.said.corners);
  const found = shown(proposed);
  const offered = found && cornersTrouble(found, photograph) === null ? found : null;
  const corners = standing ?? offered ?? insetCorners(photograph);
  const asStored = (all: Corners): SetCorners => all.map((corner) => toStored(turn, corner));
  const read = (next: SetCorners) => {
    if (spokenOf > 0 || hand.said.accepted) setAsking({ corners: next });
    else onRead(next);
  };
  if (asking) {
    return screen(
      <p className="caution" role="alert">
        {words.say('comb.screen.corners.ask', { count: spokenOf })}
      </p>,
      <Button look="wide act" onClick={() => onRead(asking.corners)}>
        {words.say('comb.screen.corners.go-on')}
      </Button>,
    );
  }
  return screen(
    <>
      <CornerSetting
        picture={photograph}
        found={!standing && offered !== null}
        corners={corners}
        onCorners={(next) => hand.say({ corners: asStored(next) })}
      />
      <Button look="wide" onClick={() => read(null)}>
        {words.say('comb.screen.corners.whole')}
      </Button>
    </>,
    <Button
      look="wide act"
      disabled={cornersTrouble(corners, photograph) !== null}
      onClick={() => read(asStored(corners))}
    >
      {words.say('comb.screen.corners.read')}
    </Button>,
  );
}
