import type { ExaminationDraft } from '@combside/casework/draft/examination-draft';
import type { RopeForm, Tap } from '@combside/casework/draft/tap';
import { drawCellSection } from '@combside/papers/drawings/cell-section';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { Drawn } from '../../ui/drawn.tsx';
import { Stepper } from '../../ui/stepper.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { PlaceChoice, placeWords } from './place-choice.tsx';

const tissues = [
  ['too fresh', 'hive.rope.tissue.fresh'],
  ['moist brown', 'hive.rope.tissue.moist'],
  ['part dry', 'hive.rope.tissue.part-dry'],
  ['dry scale', 'hive.rope.tissue.dry'],
] as const;

const sticks = [
  ['rough and dry', 'hive.rope.stick.rough'],
  ['smooth or wet', 'hive.rope.stick.smooth'],
] as const;

const colours = [
  ['white', 'hive.rope.colour.white'],
  ['yellow', 'hive.rope.colour.yellow'],
  ['coffee', 'hive.rope.colour.coffee'],
  ['dark brown', 'hive.rope.colour.dark-brown'],
  ['black', 'hive.rope.colour.black'],
  ['grey', 'hive.rope.colour.grey'],
] as const;

interface RopeScreenProps {
  readonly draft: ExaminationDraft;
  readonly onTap: (tap: Tap) => void;
}

/** One rope test on one cell: how to do it right, then what came of it. */
export function RopeScreen({ draft, onTap }: RopeScreenProps) {
  const words = useWords();
  const { tissue, stick, threadMillimetres: thread, snapsBack, colour, place } = draft.ropeForm;
  const fill = (part: Partial<RopeForm>) => onTap({ tap: 'rope form', form: { ...draft.ropeForm, ...part } });

  const complete = tissue !== null && stick !== null && thread !== null;
  const keep = () => {
    if (!complete) return;
    const box = place ?? { box: draft.boxes[0]?.box ?? '', frame: null, side: null };
    onTap({ tap: 'rope test', test: { ...box, tissue, stick, threadMillimetres: thread, snapsBack, colour } });
  };

  return (
    <section className="stack" aria-labelledby="rope-title">
      <h2 id="rope-title">{words.say('hive.rope.title')}</h2>
      <div className="rope-how">
        <Drawn
          drawing={drawCellSection({ content: 'slumped', colour: 'brown', threadMillimetres: thread ?? 20 })}
          width={112}
          name=""
        />
        <p>{words.say('hive.rope.how')}</p>
      </div>
      {draft.ropeTests.length > 0 && (
        <ul className="rows">
          {draft.ropeTests.map((test, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two rope tests may be alike in every value; their place tells them apart
            <li key={index} className="kept-line">
              <span>
                {words.say('hive.rope.line', {
                  thread: words.unit(test.threadMillimetres, 'mm'),
                  place: placeWords(words, test),
                })}
              </span>
              <Button look="plain" onClick={() => onTap({ tap: 'rope test removed', index })}>
                {words.say('hive.rope.remove')}
              </Button>
            </li>
          ))}
        </ul>
      )}
      <Choice
        label={words.say('hive.rope.tissue')}
        options={tissues.map(([value, id]) => ({ value, label: words.say(id) }))}
        chosen={tissue}
        onChoose={(chosen) => fill({ tissue: chosen })}
      />
      <Choice
        label={words.say('hive.rope.stick')}
        options={sticks.map(([value, id]) => ({ value, label: words.say(id) }))}
        chosen={stick}
        onChoose={(chosen) => fill({ stick: chosen })}
      />
      <Stepper
        label={words.say('hive.rope.thread')}
        value={thread}
        from={0}
        to={100}
        step={5}
        start={0}
        unstated={words.say('hive.colony.unstated')}
        less={words.say('always.less')}
        more={words.say('always.more')}
        format={(value) => words.unit(value, 'mm')}
        onChange={(millimetres) => fill({ threadMillimetres: millimetres })}
      />
      <Choice
        label={words.say('hive.rope.snaps')}
        options={[
          { value: 'yes', label: words.say('always.yes') },
          { value: 'no', label: words.say('always.no') },
        ]}
        chosen={snapsBack === null ? null : snapsBack ? 'yes' : 'no'}
        onChoose={(chosen) => fill({ snapsBack: chosen === 'yes' })}
      />
      <Choice
        label={words.say('hive.rope.colour')}
        options={colours.map(([value, id]) => ({ value, label: words.say(id) }))}
        chosen={colour}
        onChoose={(chosen) => fill({ colour: chosen })}
      />
      {place === null ? (
        draft.boxes[0] && (
          <Button onClick={() => fill({ place: { box: draft.boxes[0]?.box ?? '', frame: 1, side: 'a' } })}>
            {words.say('hive.signs.where')}
          </Button>
        )
      ) : (
        <PlaceChoice boxes={draft.boxes} place={place} onPlace={(at) => fill({ place: at })} />
      )}
      <Button look="wide act" disabled={!complete} onClick={keep}>
        {words.say('hive.rope.keep')}
      </Button>
      <p className="quiet">{words.say('hive.rope.burn')}</p>
    </section>
  );
}
