import type { ExaminationDraft } from '@combside/casework/draft/examination-draft';
import type { Place, Tap } from '@combside/casework/draft/tap';
import type { SignLooked } from '@combside/record/kinds/examination';
import { useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { Stepper } from '../../ui/stepper.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { PlaceChoice, placeWords } from './place-choice.tsx';

interface CellsAtProps {
  readonly sign: string;
  readonly looked: SignLooked;
  readonly draft: ExaminationDraft;
  readonly onTap: (tap: Tap) => void;
}

/** Cells opened and cells affected by box, frame and side: asked only of who wants to say it. */
export function CellsAt({ sign, looked, draft, onTap }: CellsAtProps) {
  const words = useWords();
  const [place, setPlace] = useState<Place | null>(null);
  const here = place
    ? looked.places.find((one) => one.box === place.box && one.frame === place.frame && one.side === place.side)
    : undefined;
  const first = draft.boxes[0];

  return (
    <div className="stack close">
      {looked.places.length > 0 && (
        <ul>
          {looked.places.map((one) => (
            <li key={`${one.box} ${one.frame} ${one.side}`}>
              {words.say('hive.signs.at', {
                place: placeWords(words, one),
                opened: one.cellsOpened ?? 0,
                affected: one.cellsAffected ?? 0,
              })}
            </li>
          ))}
        </ul>
      )}
      {place === null ? (
        first && (
          <Button onClick={() => setPlace({ box: first.box, frame: 1, side: 'a' })}>
            {words.say('hive.signs.where')}
          </Button>
        )
      ) : (
        <>
          <PlaceChoice boxes={draft.boxes} place={place} onPlace={setPlace} />
          <Stepper
            label={words.say('hive.signs.opened')}
            value={here?.cellsOpened ?? null}
            from={0}
            to={10_000}
            start={1}
            stride={10}
            unstated={words.say('hive.colony.unstated')}
            less={words.say('always.less')}
            more={words.say('always.more')}
            onChange={(cellsOpened) =>
              onTap({
                tap: 'cells at',
                sign,
                place,
                cellsOpened,
                cellsAffected: here?.cellsAffected == null ? null : Math.min(here.cellsAffected, cellsOpened),
              })
            }
          />
          <Stepper
            label={words.say('hive.signs.affected')}
            value={here?.cellsAffected ?? null}
            from={0}
            to={10_000}
            start={1}
            stride={10}
            unstated={words.say('hive.colony.unstated')}
            less={words.say('always.less')}
            more={words.say('always.more')}
            onChange={(cellsAffected) =>
              onTap({
                tap: 'cells at',
                sign,
                place,
                cellsOpened: here?.cellsOpened == null ? null : Math.max(here.cellsOpened, cellsAffected),
                cellsAffected,
              })
            }
          />
        </>
      )}
    </div>
  );
}
