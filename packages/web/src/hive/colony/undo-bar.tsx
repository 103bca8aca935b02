import type { Tap } from '@combside/casework/draft/tap';
import type { Words } from '@combside/words/words';
import { useEffect, useState } from 'react';
import { Button } from '../../ui/button.tsx';

import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import type { ColonyDraftInHand } from './use-colony-draft.ts';

const staysFor = 10_000;

/** Undo of the last tap, in sight for ten seconds after it. */
export function UndoBar({ hand }: { readonly hand: ColonyDraftInHand }) {
  const words = useWords();
  const [shown, setShown] = useState(false);
  const { taps } = hand;
  const [before, setBefore] = useState(taps);
  if (taps !== before) {
    setBefore(taps);
    // Typing on at a remark changes the last tap and adds none.
    setShown(taps.length >= before.length);
  }
  // biome-ignore lint/correctness/useExhaustiveDependencies: each tap has ten seconds of its own
  useEffect(() => {
    if (!shown) return;
    const timer = setTimeout(() => setShown(false), staysFor);
    return () => clearTimeout(timer);
  }, [shown, taps]);
  const last = taps.at(-1);
  if (!shown || !last) return null;
  return (
    <div className="undo-bar">
      <Button onClick={hand.undo}>{words.say('hive.colony.undo', { what: tapWords(last, words) })}</Button>
    </div>
  );
}

/** The last tap in a few words. */
function tapWords(tap: Tap, words: Words): string {
  switch (tap.tap) {
    case 'sign':
    case 'sign count':
    case 'sign amount':
    case 'cells at':
      return sayWord(words, 'signs.sign.*.name', tap.sign);
    case 'find':
      return sayWord(words, 'casework.find.*', tap.find);
    case 'rope form':
    case 'rope test':
    case 'rope test removed':
      return words.say('hive.rope.title');
    case 'test form':
      return words.say('hive.tests.title');
    case 'test':
      return sayWord(words, 'signs.check.*.name', tap.test.test);
    case 'prior':
      return words.say('reasoning.prior-change');
    case 'spores in honey or bees':
      return words.say('reasoning.known-honey.ask');
    case 'signs not seen':
      return words.say('hive.signs.not-seen');
    default:
      return words.say(`hive.tap.${tap.tap}`);
  }
}
