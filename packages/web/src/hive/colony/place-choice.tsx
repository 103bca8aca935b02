import type { DraftBox } from '@combside/casework/draft/examination-draft';
import type { Place } from '@combside/casework/draft/tap';
import type { Words } from '@combside/words/words';
import { Choice } from '../../ui/choice.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { Stepper } from '../../ui/stepper.tsx';
import { useWords } from '../../ui/words-context.tsx';

/** A box in words: the usual names of the record have some, any other stands as it was written. */
export function boxWords(words: Words, box: string): string {
  return sayWord(words, 'hive.box.*', box);
}

/** A place on the comb in words: "lower box, frame 4, side A". */
export function placeWords(words: Words, place: Place): string {
  const parts = [boxWords(words, place.box)];
  if (place.frame !== null) parts.push(words.say('hive.place.frame-n', { frame: place.frame }));
  if (place.side !== null) parts.push(words.say(`hive.place.side.${place.side}`));
  return parts.join(', ');
}

interface PlaceChoiceProps {
  readonly boxes: readonly DraftBox[];
  readonly place: Place;
  readonly onPlace: (place: Place) => void;
}

/** Box, frame and side by keys, never typed. */
export function PlaceChoice({ boxes, place, onPlace }: PlaceChoiceProps) {
  const words = useWords();
  const held = boxes.find((one) => one.box === place.box)?.framesHeld ?? 1;
  return (
    <div className="stack close">
      {boxes.length > 1 && (
        <Choice
          label={words.say('hive.place.box')}
          options={boxes.map((one) => ({ value: one.box, label: boxWords(words, one.box) }))}
          chosen={place.box}
          onChoose={(box) => onPlace({ ...place, box, frame: 1 })}
        />
      )}
      <Stepper
        label={words.say('hive.place.frame')}
        value={place.frame}
        from={1}
        to={Math.max(1, held)}
        unstated={words.say('hive.colony.unstated')}
        less={words.say('always.less')}
        more={words.say('always.more')}
        onChange={(frame) => onPlace({ ...place, frame })}
      />
      <Choice
        label={words.say('hive.place.side')}
        options={(['a', 'b'] as const).map((value) => ({ value, label: words.say(`hive.place.side.${value}`) }))}
        chosen={place.side}
        onChoose={(side) => onPlace({ ...place, side })}
      />
    </div>
  );
}
