import { correctedReading } from '@combside/casework/comb/corrected-reading';
import type { ColonyBody } from '@combside/record/kinds/colony';
import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import { type ReactNode, useCallback, useDeferredValue, useId, useMemo, useState } from 'react';
import { toUpright } from '../../device/comb/turn.ts';
import { Button } from '../../ui/button.tsx';
import { CellLens } from '../../ui/comb/cell-lens.tsx';
import { cellWords } from '../../ui/comb/cell-words.ts';
import { ClassChoice } from '../../ui/comb/class-choice.tsx';
import { CombPicture } from '../../ui/comb/comb-picture.tsx';
import { whatIsSaid } from '../../ui/comb/last-words.ts';
import { ReadingFigures } from '../../ui/comb/reading-figures.tsx';
import { ReadingCautions, ReadingLimits } from '../../ui/comb/reading-limits.tsx';
import { SecondLooks } from '../../ui/comb/second-looks.tsx';
import { useCombShown } from '../../ui/comb/shown-comb.ts';
import { useWords } from '../../ui/words-context.tsx';
import type { CombDeskDraft } from './use-comb-desk-draft.ts';
import { useStoredPhotograph } from './use-stored-photograph.ts';

/** A reading as it will stand, with what is said of it at the desk. */
export interface ToWrite extends Pick<CombReadingBody, 'corrections' | 'place' | 'accepted'> {
  readonly reason: string;
}

interface CombDeskProps {
  /** What stands: a kept reading, or what the machine proposes and nobody has kept. */
  readonly body: CombReadingBody;
  readonly isKept: boolean;
  readonly draft: CombDeskDraft;
  readonly boxes: ColonyBody['broodBoxes'];
  readonly busy: boolean;
  readonly onWrite: (said: ToWrite) => void;
  /** How the writing stands, beside its button. */
  readonly children?: ReactNode;
}

/** A reading at the desk: left the photograph with what was read, right the cell in hand and what it all amounts to. */
export function CombDesk({ body, isKept, draft, boxes, busy, onWrite, children }: CombDeskProps) {
  const words = useWords();
  const id = useId();
  const own = draft.said;
  const said: ToWrite = {
    corrections: useMemo(() => [...body.corrections, ...own.corrections], [body.corrections, own.corrections]),
    place: own.place ?? body.place,
    accepted: own.accepted ?? body.accepted,
    reason: own.reason,
  };
  const [overlay, setOverlay] = useState(true);
  const [inHand, setInHand] = useState<number | null>(null);
  const { reader } = body;
  const photograph = useStoredPhotograph(body.photograph.hash, reader.picture);
  const corrections = useDeferredValue(said.corrections);
  const corrected = useMemo(() => correctedReading({ cells: body.cells, corrections }), [body.cells, corrections]);
  const there = photograph !== null && photograph !== 'failed' ? photograph : null;
  const turn = there?.turn;
  const upright = useCallback(
    (at: { readonly x: number; readonly y: number }) => (turn ? toUpright(turn, at) : at),
    [turn],
  );
  const nothing = useMemo(() => ({ address: '', ...reader.picture }), [reader.picture]);
  const comb = useCombShown(there ?? nothing, corrected?.cells ?? [], reader, upright);
  const second = useMemo(() => reader.secondLook.map((one) => one.cell), [reader]);
  const spokenOf = useMemo(() => corrected?.cells.flatMap((cell, n) => (cell.lookedAt ? [n] : [])) ?? [], [corrected]);
  if (!corrected) return <p className="caution">{words.say('comb.screen.newer')}</p>;

  const canUndo = own.corrections.length > 0;
  const { sayOfCell } = draft;
  const undo = () => {
    if (canUndo) draft.undo();
  };
  const changed = whatIsSaid(said) !== whatIsSaid(body);
  const cell = inHand === null ? undefined : corrected.cells[inHand];
  const inWords = inHand === null ? words.say('comb.screen.how-keys') : cellWords(words, corrected.cells, inHand);
  return (
    <div className="comb-desk">
      <div className="stack close">
        {photograph === 'failed' && <p className="caution">{words.say('comb.screen.photograph-not-held')}</p>}
        {photograph === null && <p className="quiet">{words.say('front.opening')}</p>}
        {there && (
          <>
            <CombPicture
              comb={comb}
              overlay={overlay}
              inHand={inHand}
              said={spokenOf}
              second={second}
              label={words.say('comb.screen.picture', { count: corrected.cells.length })}
              describedBy={`${id}-cell`}
              onPick={setInHand}
              onClass={sayOfCell}
              onUndo={undo}
            />
            <p id={`${id}-cell`} role="status">
              {inWords}
            </p>
            <div className="choices">
              <Button aria-pressed={overlay} onClick={() => setOverlay(!overlay)}>
                {words.say('comb.screen.overlay')}
              </Button>
              <Button disabled={!canUndo} onClick={undo}>
                {words.say('comb.screen.undo')}
              </Button>
            </div>
          </>
        )}
      </div>
      <div className="stack">
        <ReadingCautions />
        {there && inHand !== null && cell && (
          <section className="stack close" aria-label={words.say('comb.screen.lens')}>
            <CellLens
              comb={comb}
              cell={inHand}
              overlay={overlay}
              said={spokenOf}
              second={second}
              label={inWords}
              onPick={setInHand}
            />
            <ClassChoice chosen={cell.class} machine={cell.machine} digits onChoose={(of) => sayOfCell(inHand, of)} />
          </section>
        )}
        <ReadingFigures corrected={corrected} />
        <SecondLooks
          looks={reader.secondLook}
          measured={!reader.warnings.includes('cappings-not-measured')}
          inHand={inHand}
          onPick={setInHand}
        />
        <ReadingLimits warnings={reader.warnings} />
        <PlaceAtDesk place={said.place} boxes={boxes} onPlace={(place) => draft.say({ place })} />
        <label className="comb-agree">
          <input
            type="checkbox"
            checked={said.accepted}
            onChange={(event) => draft.say({ accepted: event.target.checked })}
          />
          <span>
            {words.say('comb.screen.agree')}. <span className="quiet">{words.say('comb.screen.evidence.what')}</span>
          </span>
        </label>
        {isKept && changed && !draft.isWritten && (
          <section className="stack close">
            <label className="stack close">
              {words.say('comb.screen.why')}
              <textarea
                className="text-input"
                rows={2}
                maxLength={500}
                value={said.reason}
                onChange={(event) => draft.say({ reason: event.target.value })}
              />
            </label>
            <Button look="act" disabled={busy || said.reason.trim() === ''} onClick={() => onWrite(said)}>
              {words.say('comb.screen.correct')}
            </Button>
          </section>
        )}
        {!isKept && !draft.isWritten && (
          <Button look="act" disabled={busy} onClick={() => onWrite(said)}>
            {words.say(said.accepted ? 'district.comb.keep-accepted' : 'district.comb.keep')}
          </Button>
        )}
        {children}
        {!draft.isWritten && <p className="quiet">{words.say(`district.comb.draft.${draft.saving}`)}</p>}
      </div>
    </div>
  );
}

interface PlaceAtDeskProps {
  readonly place: CombReadingBody['place'];
  readonly boxes: ColonyBody['broodBoxes'];
  readonly onPlace: (place: CombReadingBody['place']) => void;
}

/** Box, frame and side, so that the same side can be found at another visit. */
function PlaceAtDesk({ place, boxes, onPlace }: PlaceAtDeskProps) {
  const words = useWords();
  const names = [...new Set([place.box, ...boxes.map((one) => one.box)])];
  const held = Math.max(place.frame ?? 1, boxes.find((one) => one.box === place.box)?.frames ?? 1);
  return (
    <fieldset className="several stack close">
      <legend>{words.say('comb.screen.place')}</legend>
      <div className="choices">
        <label>
          {words.say('comb.screen.place.box')}
          <select
            className="text-input"
            value={place.box}
            onChange={(event) => onPlace({ ...place, box: event.target.value })}
          >
            {names.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <label>
          {words.say('comb.screen.place.frame')}
          <select
            className="text-input"
            value={place.frame ?? ''}
            onChange={(event) => onPlace({ ...place, frame: Number(event.target.value) || null })}
          >
            <option value="">{words.say('comb.screen.place.unknown')}</option>
            {Array.from({ length: held }, (_, n) => n + 1).map((frame) => (
              <option key={frame} value={frame}>
                {frame}
              </option>
            ))}
          </select>
        </label>
        <label>
          {words.say('comb.screen.place.side')}
          <select
            className="text-input"
            value={place.side ?? ''}
            onChange={(event) =>
              onPlace({
                ...place,
                side: event.target.value === 'a' ? 'a' : event.target.value === 'b' ? 'b' : null,
              })
            }
          >
            <option value="">{words.say('comb.screen.place.unknown')}</option>
            <option value="a">A</option>
            <option value="b">B</option>
          </select>
        </label>
      </div>
    </fieldset>
  );
}
