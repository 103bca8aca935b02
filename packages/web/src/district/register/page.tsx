import { useWords } from '../../ui/words-context.tsx';
import type { Query } from '../office/query.ts';
import { Unanswered } from '../office/unanswered.tsx';

/** A page whose answer is not there: on its way, not to be had, or failed. */
export function Page({ asked }: { readonly asked: Query<unknown> }) {
  const words = useWords();
  return (
    <main className="office-page stack">
      {asked.state === 'asking' && <p className="quiet">{words.say('register.loading')}</p>}
      {asked.state === 'not there' && <p>{words.say('register.not-there')}</p>}
      <Unanswered asked={asked} />
    </main>
  );
}
