import { useWords } from '../../ui/words-context.tsx';

/** Where no map can be drawn, the list says the same. */
export function MapFailed() {
  const words = useWords();
  return (
    <p className="caution" role="alert">
      {words.say('district.map.failed')}
    </p>
  );
}
