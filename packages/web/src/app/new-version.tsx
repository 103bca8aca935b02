import { registerSW } from 'virtual:pwa-register';
import { useEffect, useState } from 'react';
import { Button } from '../ui/button.tsx';
import { useWords } from '../ui/words-context.tsx';
import { isVisitOpen, onVisitFlag } from './visit-flag.ts';

/**
 * Keeps the program on the device, and offers a new version when one is ready. It is never taken by itself, and not
 * offered while a visit is open.
 */
export function NewVersion() {
  const words = useWords();
  const [take, setTake] = useState<(() => void) | null>(null);
  const [visitOpen, setVisitOpen] = useState(true);
  useEffect(() => {
    const change = registerSW({
      onNeedRefresh: () => setTake(() => () => void change(true)),
      onRegisteredSW: (_address, registration) => {
        // A version that was refused during a visit is asked for again when the visit is over.
        onVisitFlag((open) => {
          if (!open) void registration?.update().catch(() => undefined);
        });
      },
    });
    void isVisitOpen().then(setVisitOpen);
    return onVisitFlag(setVisitOpen);
  }, []);
  if (!take || visitOpen) return null;
  return (
    <aside className="new-version">
      <span>{words.say('front.update.ready')}</span>
      <Button onClick={take}>{words.say('front.update.take')}</Button>
    </aside>
  );
}
