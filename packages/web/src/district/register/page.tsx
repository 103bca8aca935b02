import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import type { Asked } from '../use-office.ts';

/** A page whose answer is not there: on its way, not to be had, or failed. */
export function Page({ asked }: { readonly asked: Asked<unknown> }) {
  const words = useWords();
  return (
    <main className="office-page stack">
      {asked.state === 'asking' && <p className="quiet">{words.say('register.loading')}</p>}
      {asked.state === 'not there' && <p>{words.say('register.not-there')}</p>}
      {asked.state === 'failed' && (
        <div className="caution stack close" role="alert">
          <p>{words.say('register.failed')}</p>
          <Button onClick={asked.again}>{words.say('register.again')}</Button>
        </div>
      )}
    </main>
  );
}
