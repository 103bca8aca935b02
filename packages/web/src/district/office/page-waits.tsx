import type { WordId } from '@combside/words/rooms';
import { useWords } from '../../ui/words-context.tsx';
import type { Query } from './query.ts';
import { Unanswered } from './unanswered.tsx';

interface PageWaitsProps {
  readonly asked: Query<unknown>;
  readonly loading: WordId<'district'>;
  readonly notThere: WordId<'district'>;
}

/** A page that is not there yet, or not at all, and why. */
export function PageWaits({ asked, loading, notThere }: PageWaitsProps) {
  const words = useWords();
  return (
    <main className="office-page">
      {asked.state === 'asking' && <p className="quiet">{words.say(loading)}</p>}
      {asked.state === 'not there' && <p>{words.say(notThere)}</p>}
      <Unanswered asked={asked} />
    </main>
  );
}
