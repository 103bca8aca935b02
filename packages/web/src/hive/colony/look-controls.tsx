import type { ExaminationDraft } from '@combside/casework/draft/examination-draft';
import type { Tap } from '@combside/casework/draft/tap';
import { Choice } from '../../ui/choice.tsx';
import { Stepper } from '../../ui/stepper.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { boxWords } from './place-choice.tsx';

interface LookControlsProps {
  readonly draft: ExaminationDraft;
  readonly onTap: (tap: Tap) => void;
}

/** How the hive was looked at. Nothing here is ever prefilled: each answer limits what "not seen" may mean. */
export function LookControls({ draft, onTap }: LookControlsProps) {
  const words = useWords();
  const unstated = words.say('hive.colony.unstated');
  const less = words.say('always.less');
  const more = words.say('always.more');
  return (
    <section className="stack" aria-label={words.say('hive.colony.how-looked')}>
      {draft.boxes.map((box) => (
        <div key={box.box} className="stack">
          <Stepper
            label={words.say('hive.colony.frames-seen', { box: boxWords(words, box.box) })}
            value={box.framesSeen}
            from={0}
            to={box.framesHeld}
            start={box.framesHeld}
            unstated={unstated}
            less={less}
            more={more}
            format={(seen) => words.say('hive.colony.frames-of', { seen, held: box.framesHeld })}
            onChange={(frames) => onTap({ tap: 'frames seen', box: box.box, frames })}
          />
          <Choice
            label={words.say('hive.colony.sides')}
            options={[
              { value: 'both', label: words.say('hive.colony.sides.both') },
              { value: 'one', label: words.say('hive.colony.sides.one') },
            ]}
            chosen={box.sides}
            onChoose={(sides) => onTap({ tap: 'sides', box: box.box, sides })}
          />
        </div>
      ))}
      {draft.hiveState === 'living' && (
        <Choice
          label={words.say('hive.colony.shaken')}
          options={[
            { value: 'yes', label: words.say('always.yes') },
            { value: 'no', label: words.say('always.no') },
          ]}
          chosen={draft.beesShaken === null ? null : draft.beesShaken ? 'yes' : 'no'}
          onChoose={(shaken) => onTap({ tap: 'bees shaken', shaken: shaken === 'yes' })}
        />
      )}
      <Choice
        label={words.say('hive.colony.hold')}
        options={[
          { value: 'top bar toward the viewer', label: words.say('hive.colony.hold.toward') },
          { value: 'top bar away', label: words.say('hive.colony.hold.away') },
          { value: 'flat', label: words.say('hive.colony.hold.flat') },
        ]}
        chosen={draft.hold}
        onChoose={(hold) => onTap({ tap: 'hold', hold })}
      />
      <Choice
        label={words.say('hive.colony.light')}
        options={[
          { value: 'sun over the shoulder', label: words.say('hive.colony.light.sun') },
          { value: 'torch', label: words.say('hive.colony.light.torch') },
          { value: 'shade', label: words.say('hive.colony.light.shade') },
          { value: 'poor', label: words.say('hive.colony.light.poor') },
        ]}
        chosen={draft.light}
        onChoose={(light) => onTap({ tap: 'light', light })}
      />
      {draft.hiveState === 'living' && (
        <Stepper
          label={words.say('hive.colony.sealed')}
          value={draft.sealedBroodCombSides}
          from={0}
          to={60}
          step={0.25}
          stride={1}
          start={1}
          unstated={unstated}
          less={less}
          more={more}
          format={(value) => words.number(value, 2)}
          onChange={(combSides) => onTap({ tap: 'sealed brood', combSides })}
        />
      )}
      <Choice
        label={words.say('hive.colony.depth')}
        options={[
          { value: 'tops', label: words.say('hive.colony.depth.tops') },
          { value: 'outside', label: words.say('hive.colony.depth.outside') },
        ]}
        chosen={draft.depth === 'tops' || draft.depth === 'outside' ? draft.depth : null}
        onChoose={(depth) => onTap({ tap: 'depth', depth: draft.depth === depth ? null : depth })}
      />
    </section>
  );
}
