import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';

/** Back to where one came from, in the thumb's reach. */
export function BackButton() {
  const words = useWords();
  return (
    <Button look="wide" onClick={() => history.back()}>
      {words.say('always.back')}
    </Button>
  );
}
