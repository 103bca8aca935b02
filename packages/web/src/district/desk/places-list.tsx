import { type ApiaryLine, apiaries } from '@combside/contract/apiaries';
import { Link } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { ResultMark } from '../../ui/result-mark.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskAddress } from '../desk-address.ts';
import { onceEach } from '../office/once-each.ts';
import { Unanswered } from '../office/unanswered.tsx';
import { usePages } from '../office/use-pages.ts';

/** Apiaries by name, a page at a time: the twin of the map for whoever reads rather than looks. */
export function PlacesList({ chosen }: { readonly chosen: string | null }) {
  const words = useWords();
  const asked = usePages(apiaries, '/api/apiaries?limit=100', (event) =>
    ['apiary', 'colony', 'keeper'].includes(event.about.type),
  );
  const { answer, state, more } = asked;
  const shown = onceEach(
    answer,
    (page) => page.apiaries,
    (one) => one.apiary,
  );

  return (
    <>
      <Unanswered asked={asked} />
      {state === 'asking' && !answer && <p className="quiet">{words.say('district.places.loading')}</p>}
      {answer && shown.length === 0 && <p className="quiet">{words.say('district.places.none')}</p>}
      <ul className="rows place-rows">
        {shown.map((one) => (
          <li key={one.apiary}>
            <PlaceLine apiary={one} chosen={one.apiary === chosen} />
          </li>
        ))}
      </ul>
      {more && shown.length > 0 && (
        <Button look="wide" onClick={more}>
          {words.say('district.places.more')}
        </Button>
      )}
    </>
  );
}

function PlaceLine({ apiary, chosen }: { readonly apiary: ApiaryLine; readonly chosen: boolean }) {
  const words = useWords();
  const desk = useDeskAddress();
  return (
    <Link
      className="office-line place-line"
      href={desk.to(`/apiary/${apiary.apiary}`)}
      aria-current={chosen ? 'page' : undefined}
    >
      <ResultMark result={apiary.mark} />
      <span className="place-name">
        <strong>{apiary.name}</strong>{' '}
        <span className="quiet">
          {apiary.mark ? sayWord(words, 'casework.result.*', apiary.mark) : words.say('district.places.not-looked')}
        </span>
      </span>
      <span className="quiet">
        {[
          apiary.keeperName ?? words.say('district.keeper-unknown'),
          apiary.coloniesRegistered !== null &&
            words.say('district.places.colonies', { count: apiary.coloniesRegistered }),
        ]
          .filter(Boolean)
          .join(' · ')}
      </span>
    </Link>
  );
}
