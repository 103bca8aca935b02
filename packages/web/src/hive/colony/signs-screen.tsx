import type { ExaminationDraft } from '@combside/casework/draft/examination-draft';
import { signsAsked } from '@combside/casework/draft/sign-order';
import type { Tap } from '@combside/casework/draft/tap';
import type { SignLooked } from '@combside/record/kinds/examination';
import type { Sign } from '@combside/science/signs/catalogue';
import { withSoftHyphens } from '@combside/words/soft-hyphens';
import { useState } from 'react';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { SignDrawing } from '../../ui/sign-drawing.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { CellsAt } from './cells-at.tsx';

interface SignsScreenProps {
  readonly draft: ExaminationDraft;
  readonly onTap: (tap: Tap) => void;
}

/**
 * The signs in the order in which they meet the inspector. One tap says "seen" and opens how many; a second takes it
 * back; "not seen" stands beside it. Nothing is held, dragged or typed.
 */
export function SignsScreen({ draft, onTap }: SignsScreenProps) {
  const words = useWords();
  const groups = signsAsked(draft.hiveState);
  const [open, setOpen] = useState(() => (draft.hiveState === 'living' ? groups[0]?.group : 'lower-wall'));
  const group = groups.find((one) => one.group === open) ?? groups[0];
  if (!group) return null;
  const looked = new Map(draft.signs.map((sign) => [sign.sign, sign]));
  const unanswered = group.signs.filter((sign) => !looked.has(sign.id)).map((sign) => sign.id);

  return (
    <>
      <div className="sign-groups" role="tablist" aria-label={words.say('hive.colony.signs')}>
        {groups.map((one) => {
          const seen = one.signs.filter((sign) => looked.get(sign.id)?.outcome === 'seen').length;
          return (
            <button
              type="button"
              key={one.group}
              id={`group-${one.group}`}
              role="tab"
              aria-selected={one.group === group.group}
              aria-controls="signs-of-group"
              onClick={() => setOpen(one.group)}
            >
              {withSoftHyphens(sayWord(words, 'signs.group.*', one.group))}
              {seen > 0 ? ` ${seen}` : ''}
            </button>
          );
        })}
      </div>
      <div id="signs-of-group" role="tabpanel" aria-labelledby={`group-${group.group}`} className="stack">
        <ul className="rows">
          {group.signs.map((sign) => (
            <li key={sign.id} className="sign-row">
              <SignRow sign={sign} looked={looked.get(sign.id)} draft={draft} onTap={onTap} />
            </li>
          ))}
        </ul>
        <Button
          look="wide"
          disabled={unanswered.length === 0}
          onClick={() => onTap({ tap: 'signs not seen', signs: unanswered })}
        >
          {words.say('hive.signs.rest-not-seen')}
        </Button>
      </div>
    </>
  );
}

const outcomeWords = {
  seen: 'hive.signs.seen',
  'not seen': 'hive.signs.not-seen',
  'not looked for': 'hive.signs.not-looked',
} as const;

const counts = [
  ['1-10', 'hive.signs.count.few'],
  ['11-100', 'hive.signs.count.some'],
  ['over 100', 'hive.signs.count.many'],
] as const;

const amounts = [
  ['slight', 'hive.signs.slight'],
  ['marked', 'hive.signs.marked'],
] as const;

interface SignRowProps {
  readonly sign: Sign;
  readonly looked: SignLooked | undefined;
  readonly draft: ExaminationDraft;
  readonly onTap: (tap: Tap) => void;
}

function SignRow({ sign, looked, draft, onTap }: SignRowProps) {
  const words = useWords();
  const name = sayWord(words, 'signs.sign.*.name', sign.id);
  const outcome = looked?.outcome ?? 'not looked for';
  const seen = outcome === 'seen';
  return (
    <>
      <div className="sign-line">
        <button
          type="button"
          className="sign-button"
          data-outcome={outcome}
          aria-pressed={seen}
          onClick={() => onTap({ tap: 'sign', sign: sign.id, outcome: seen ? 'not looked for' : 'seen' })}
        >
          <SignDrawing sign={sign.id} width={56} name="" />
          <span>
            {withSoftHyphens(name)}
            <span className="outcome">{words.say(outcomeWords[outcome])}</span>
          </span>
        </button>
        <Button
          aria-pressed={outcome === 'not seen'}
          aria-label={`${name}: ${words.say('hive.signs.not-seen')}`}
          onClick={() =>
            onTap({ tap: 'sign', sign: sign.id, outcome: outcome === 'not seen' ? 'not looked for' : 'not seen' })
          }
        >
          {words.say('hive.signs.not-seen')}
        </Button>
      </div>
      {seen && looked && sign.measure !== 'none' && (
        <div className="sign-counts">
          {sign.measure === 'cells' ? (
            <>
              <Choice
                label={words.say('hive.signs.how-many')}
                options={counts.map(([value, id]) => ({ value, label: words.say(id) }))}
                chosen={looked.count}
                onChoose={(count) => onTap({ tap: 'sign count', sign: sign.id, count })}
              />
              <CellsAt sign={sign.id} looked={looked} draft={draft} onTap={onTap} />
            </>
          ) : (
            <Choice
              label={words.say('hive.signs.how-much')}
              options={amounts.map(([value, id]) => ({ value, label: words.say(id) }))}
              chosen={looked.amount}
              onChoose={(amount) => onTap({ tap: 'sign amount', sign: sign.id, amount })}
            />
          )}
        </div>
      )}
    </>
  );
}
