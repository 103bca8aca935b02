import { useEffect, useState } from 'react';
import { Button } from '../ui/button.tsx';
import { useWords } from '../ui/words-context.tsx';
import { type KeptProgram, keepProgram } from './kept-program.ts';
import { isVisitOpen, onVisitFlag } from './visit-flag.ts';

/**
 * Keeps the program on the device, and offers a new version when one is ready. It is never taken by itself, and not
 * offered while a visit is open.
 */
export function NewVersion() {
  const words = useWords();
  const [program, setProgram] = useState<KeptProgram | null>(null);
  const [ready, setReady] = useState(false);
  const [visitOpen, setVisitOpen] = useState(true);
  useEffect(() => {
    // A browser that keeps no program still runs this one, with a network.
    void keepProgram(() => setReady(true)).then(setProgram, () => undefined);
    void isVisitOpen().then(setVisitOpen);
    return onVisitFlag(setVisitOpen);
  }, []);
  useEffect(() => {
    // A version that was turned away during the visit is asked for again when it is over.
    if (program && !visitOpen) program.look();
  }, [program, visitOpen]);
  if (!ready || !program || visitOpen) return null;
  return (
    <aside className="new-version">
      <span>{words.say('front.update.ready')}</span>
      <Button onClick={program.take}>{words.say('front.update.take')}</Button>
    </aside>
  );
}
