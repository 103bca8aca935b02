import { Button } from '../../ui/button.tsx';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import type { Query } from './query.ts';

/**
 * Why there is no fresh answer, and of when the shown one is; silent while all is well. A wrong address is the address's
 * fault, and asking again would not help.
 */
export function Unanswered({ asked }: { readonly asked: Query<unknown> }) {
  const words = useWords();
  if (asked.state === 'wrong address') {
    return (
      <p className="caution" role="alert">
        {words.say('district.wrong-address')}
      </p>
    );
  }
  if (asked.state !== 'failed') return null;
  return (
    <div className="caution stack close" role="alert">
      <p>
        {words.say(whyNot(asked.failure))}
        {asked.answeredAt !== null &&
          ` ${words.say('district.shown-of', { when: words.dayAndTime(asked.answeredAt, timeZoneHere) })}`}
      </p>
      <div>
        <Button onClick={asked.again}>{words.say('district.again')}</Button>
      </div>
    </div>
  );
}

function whyNot(failure: Query<unknown>['failure']) {
  switch (failure) {
    case 'not understood':
      return 'district.not-understood';
    case 'not signed in':
      return 'district.signed-out';
    case 'newer program needed':
      return 'district.too-old';
    default:
      return 'district.failed';
  }
}
