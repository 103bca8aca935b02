import './today.css';
import { cautionsFor, loneWorkCard, stingCard } from '@combside/casework/examine/safety';
import type { WordId } from '@combside/words/rooms';
import { useWords } from '../../ui/words-context.tsx';
import { useEntity } from '../hive-device.tsx';
import { BackButton } from '../screen/back-button.tsx';
import { Screen } from '../screen/screen.tsx';

/** What to do after a sting or when something happens alone. Everything on it is on the phone. */
export function SafetyCard({ apiary }: { readonly apiary: string }) {
  const words = useWords();
  const position = useEntity('apiary', apiary)?.apiary.current?.body.position;
  const lines = (title: string, all: readonly { readonly id: WordId<'casework'> }[]) => (
    <section className="stack close" aria-label={title}>
      <h2>{title}</h2>
      <ul className="stack close">
        {all.map((line) => (
          <li key={line.id}>{words.say(line.id)}</li>
        ))}
      </ul>
    </section>
  );
  return (
    <Screen title={words.say('hive.safety.title')} foot={<BackButton />}>
      {lines(words.say('hive.safety.stings'), stingCard)}
      {position && (
        <section className="stack close">
          <h2>{words.say('hive.safety.position')}</h2>
          <p className="code position">
            {position.latitude.toFixed(5)}, {position.longitude.toFixed(5)}
          </p>
        </section>
      )}
      {lines(words.say('hive.safety.alone'), loneWorkCard)}
      {lines(words.say('hive.safety.work'), [
        ...cautionsFor('opening a hive'),
        ...cautionsFor('lighting the smoker'),
        ...cautionsFor('lifting'),
        ...cautionsFor('flaming'),
        ...cautionsFor('caustics'),
      ])}
    </Screen>
  );
}
