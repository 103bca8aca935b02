import { type CorrectedReading, correctedReading, isCellClass } from '@combside/casework/comb/corrected-reading';
import type { ReadingPart } from '@combside/casework/comb/propose-reading';
import type { ColonyBody } from '@combside/record/kinds/colony';
import { type ReactNode, useCallback, useDeferredValue, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { ShownPhotograph } from '../../device/comb/open-photograph.ts';
import { toUpright } from '../../device/comb/turn.ts';
import { Button } from '../../ui/button.tsx';
import { CellLens } from '../../ui/comb/cell-lens.tsx';
import { cellTowards, type Direction } from '../../ui/comb/cell-outlines.ts';
import { cellWords } from '../../ui/comb/cell-words.ts';
import { ClassChoice } from '../../ui/comb/class-choice.tsx';
import { CombPicture } from '../../ui/comb/comb-picture.tsx';
import { ReadingFigures } from '../../ui/comb/reading-figures.tsx';
import { ReadingCautions, ReadingLimits } from '../../ui/comb/reading-limits.tsx';
import { SecondLooks } from '../../ui/comb/second-looks.tsx';
import { useCombShown } from '../../ui/comb/shown-comb.ts';
import { useShownPhotograph } from '../../ui/comb/use-shown-photograph.ts';
import { useWords } from '../../ui/words-context.tsx';
import { PlaceChoice } from '../colony/place-choice.tsx';
import { Screen } from '../screen/screen.tsx';
import type { CombDraftInHand } from './use-comb-draft.ts';
import type { InnerView } from './use-inner-view.ts';

interface CombInHandProps {
  readonly title: string;
  /** Name of the apiary. */
  readonly where: string;
  readonly hand: CombDraftInHand;
  readonly part: ReadingPart;
  /** Null when the photograph is on another device: then only the figures are shown. */
  readonly bytes: Blob | null;
  readonly boxes: ColonyBody['broodBoxes'];
  /** The part of the screen that is shown: `cell` is the lens. */
  readonly view: string | null;
  readonly inner: InnerView;
  /** Left out where the comb cannot be read again. */
  readonly onCorners?: () => void;
  readonly above: ReactNode;
  readonly foot: ReactNode;
}

/** A reading in the hand: the picture with what was read on it, one cell under the lens, and what it all amounts to. */
export function CombInHand({ bytes, ...props }: CombInHandProps) {
  const { title, where, hand, part, above, foot } = props;
  const words = useWords();
  // The picture and the figures follow a moment after the key that was pressed.
  const corrections = useDeferredValue(hand.said.corrections);
  const corrected = useMemo(() => correctedReading({ cells: part.cells, corrections }), [part.cells, corrections]);
  const fetchBytes = useMemo(() => bytes && (async () => bytes), [bytes]);
  const photograph = useShownPhotograph(fetchBytes, part.reader.picture);
  if (!corrected) {
    return (
      <Screen title={title} where={where} foot={foot}>
        <p className="caution">{words.say('comb.screen.newer')}</p>
      </Screen>
    );
  }
  const given = { ...props, corrected };
  if (bytes && photograph === null) {
    return (
      <Screen title={title} where={where} foot={foot}>
        {words.say('front.opening')}
      </Screen>
    );
  }
  return photograph && photograph !== 'failed' ? (
    <WithPicture {...given} photograph={photograph} />
  ) : (
    <Screen title={title} where={where} saving={hand.saving} foot={foot}>
      {above}
      <p className="caution">
        {words.say(bytes ? 'comb.screen.photograph-not-opened' : 'comb.screen.photograph-elsewhere')}
      </p>
      <Below {...given} />
    </Screen>
  );
}

interface Given extends Omit<CombInHandProps, 'bytes'> {
  readonly corrected: CorrectedReading;
}

const directions: readonly (readonly [Direction, string])[] = [
  ['left', '←'],
  ['up', '↑'],
  ['down', '↓'],
  ['right', '→'],
];

function WithPicture({ photograph, ...given }: Given & { readonly photograph: ShownPhotograph }) {
  const { title, where, hand, part, view, inner, onCorners, above, foot, corrected } = given;
  const words = useWords();
  const id = useId();
  const [overlay, setOverlay] = useState(true);
  const [inHand, setInHand] = useState<number | null>(null);
  const { turn } = photograph;
  const upright = useCallback((at: { readonly x: number; readonly y: number }) => toUpright(turn, at), [turn]);
  const comb = useCombShown(photograph, corrected.cells, part.reader, upright);
  const second = useMemo(() => part.reader.secondLook.map((one) => one.cell), [part]);
  const said = useMemo(() => corrected.cells.flatMap((cell, n) => (cell.lookedAt ? [n] : [])), [corrected]);
  const underLens = view === 'cell' && inHand !== null;
  const lens = useRef<HTMLElement>(null);
  /** Where the page stood before the lens covered it. */
  const stood = useRef(0);
  useEffect(() => {
    window.scrollTo(0, underLens ? 0 : stood.current);
    if (underLens) lens.current?.focus({ preventScroll: true });
  }, [underLens]);
  const openLens = () => {
    stood.current = window.scrollY;
    inner.open('cell');
  };
  const look = (cell: number) => {
    setInHand(cell);
    openLens();
  };
  const undo = hand.canUndo && (
    <div className="undo-bar">
      <Button onClick={hand.undo}>{words.say('comb.screen.undo')}</Button>
    </div>
  );
  const cell = inHand === null ? undefined : corrected.cells[inHand];
  const toggle = (
    <Button look="wide" aria-pressed={overlay} onClick={() => setOverlay(!overlay)}>
      {words.say('comb.screen.overlay')}
    </Button>
  );

  if (underLens && cell) {
    // What was said last, at once: the picture follows.
    const standing = hand.said.corrections.findLast((one) => one.cell === inHand)?.class ?? '';
    const look = part.reader.secondLook.findIndex((one) => one.cell === inHand);
    const next = part.reader.secondLook[(look + 1) % Math.max(1, part.reader.secondLook.length)];
    return (
      <Screen
        title={title}
        where={where}
        saving={hand.saving}
        undoBar={undo}
        foot={
          <Button look="wide act" onClick={inner.close}>
            {words.say('comb.screen.lens.back')}
          </Button>
        }
      >
        <section ref={lens} tabIndex={-1} aria-label={words.say('comb.screen.lens')} className="stack">
          <CellLens
            comb={comb}
            cell={inHand}
            overlay={overlay}
            said={said}
            second={second}
            label={cellWords(words, corrected.cells, inHand)}
            onPick={setInHand}
          />
          <p role="status">{cellWords(words, corrected.cells, inHand)}</p>
          <div className="comb-steps">
            {directions.map(([direction, arrow]) => {
              const there = cellTowards(comb.cells, inHand, direction);
              return (
                <Button
                  key={direction}
                  disabled={there === null}
                  aria-label={words.say(`comb.screen.step.${direction}`)}
                  onClick={() => there !== null && setInHand(there)}
                >
                  {arrow}
                </Button>
              );
            })}
          </div>
          {look >= 0 && next && next.cell !== inHand && (
            <Button look="wide" onClick={() => setInHand(next.cell)}>
              {words.say('comb.screen.second-look.next')}
            </Button>
          )}
          <ClassChoice
            chosen={isCellClass(standing) ? standing : cell.machine}
            machine={cell.machine}
            digits={false}
            onChoose={(of) => hand.sayOfCell(inHand, of)}
          />
          {toggle}
        </section>
      </Screen>
    );
  }
  return (
    <Screen title={title} where={where} saving={hand.saving} undoBar={undo} foot={foot}>
      {above}
      <ReadingCautions />
      <div className="stack close">
        <CombPicture
          comb={comb}
          focused={inHand !== null}
          overlay={overlay}
          inHand={inHand}
          said={said}
          second={second}
          label={words.say('comb.screen.picture', { count: corrected.cells.length })}
          describedBy={`${id}-cell`}
          onPick={(picked, by) => (by === 'finger' ? look(picked) : setInHand(picked))}
          onOpen={openLens}
          onClass={hand.sayOfCell}
          onUndo={hand.undo}
        />
        <p id={`${id}-cell`} className="quiet" role="status">
          {inHand === null ? words.say('comb.screen.how') : cellWords(words, corrected.cells, inHand)}
        </p>
        {toggle}
        {part.reader.region && <p>{words.say('comb.screen.corners.were-set')}</p>}
        {onCorners && (
          <Button look="wide" onClick={onCorners}>
            {words.say('comb.screen.corners.set')}
          </Button>
        )}
      </div>
      <SecondLooks
        looks={part.reader.secondLook}
        measured={!part.reader.warnings.includes('cappings-not-measured')}
        inHand={null}
        onPick={look}
      />
      <Below {...given} />
    </Screen>
  );
}

/** Below the picture: what the cells amount to, where the comb hung, and whether a person stands by it. */
function Below({ hand, part, boxes, corrected }: Given) {
  const words = useWords();
  const { place, accepted } = hand.said;
  return (
    <>
      <ReadingFigures corrected={corrected} />
      <ReadingLimits warnings={part.reader.warnings} />
      <section className="stack close">
        <h2>{words.say('comb.screen.place')}</h2>
        <PlaceChoice
          boxes={boxes.map((one) => ({ box: one.box, framesHeld: one.frames, framesSeen: null, sides: null }))}
          place={place}
          onPlace={(next) => hand.say({ place: next })}
        />
      </section>
      <section className="stack close">
        <h2>{words.say('comb.screen.evidence')}</h2>
        <p>{words.say('comb.screen.evidence.what')}</p>
        <Button look="wide" aria-pressed={accepted} onClick={() => hand.say({ accepted: !accepted })}>
          {words.say('comb.screen.agree')}
        </Button>
      </section>
    </>
  );
}
