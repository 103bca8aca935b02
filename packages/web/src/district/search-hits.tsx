import type { ColoniesFound } from '@combside/contract/colonies';
import type { RegisterHits } from '@combside/contract/register';
import { Link } from 'wouter';
import { Button } from '../ui/button.tsx';
import { useWords } from '../ui/words-context.tsx';
import { useDeskAddress } from './desk-address.ts';
import { useAsked } from './use-office.ts';

interface SearchHitsProps {
  readonly text: string;
  readonly chosen: string | null;
}

/** One line of what was found. */
interface Hit {
  readonly type: 'apiary' | 'keeper' | 'colony';
  readonly id: string;
  readonly name: string;
  readonly beside: string | null;
  readonly href: string;
}

/** Whatever matches what was typed: apiaries, keepers, colonies by their label. */
export function SearchHits({ text, chosen }: SearchHitsProps) {
  const words = useWords();
  const desk = useDeskAddress();
  const query = encodeURIComponent(text);
  const register = useAsked<RegisterHits>(`/api/register/search?limit=60&text=${query}`, () => false);
  const colonies = useAsked<ColoniesFound>(`/api/colonies?limit=40&text=${query}`, () => false);
  const hits: Hit[] = [
    ...(register.answer?.hits ?? []).map((hit) => ({
      type: hit.type,
      id: hit.id,
      name: hit.name,
      beside: [hit.number, hit.at && words.say('district.places.keeper-of', { name: hit.at })]
        .filter(Boolean)
        .join(' · '),
      href: hit.type === 'apiary' ? desk.to(`/apiary/${hit.id}`) : `/register/keepers/${hit.id}`,
    })),
    ...(colonies.answer?.colonies ?? []).map((hit) => ({
      type: 'colony' as const,
      id: hit.colony,
      name: words.say('district.colony', { label: hit.label }),
      beside: words.say('district.places.at', { name: hit.apiaryName }),
      href: desk.to(`/colony/${hit.colony}`),
    })),
  ];
  const waiting = register.state === 'asking' || colonies.state === 'asking';
  const failed = register.state === 'failed' || colonies.state === 'failed';
  return (
    <div className="stack close">
      <div aria-live="polite">
        {waiting && hits.length === 0 && <p className="quiet">{words.say('district.places.loading')}</p>}
        {!waiting && !failed && hits.length === 0 && <p>{words.say('district.places.none-found', { text })}</p>}
      </div>
      {failed && (
        <div className="caution stack close" role="alert">
          <p>{words.say('district.failed.nothing')}</p>
          <Button
            onClick={() => {
              register.again();
              colonies.again();
            }}
          >
            {words.say('district.again')}
          </Button>
        </div>
      )}
      <ul className="rows">
        {hits.map((hit) => (
          <li key={`${hit.type} ${hit.id}`}>
            <Link className="office-line" href={hit.href} aria-current={hit.id === chosen ? 'page' : undefined}>
              <span>
                <strong>{hit.name}</strong>{' '}
                <span className="quiet">{words.say(`district.places.hit.${hit.type}`)}</span>
              </span>
              <span className="quiet">{hit.beside}</span>
            </Link>
          </li>
        ))}
      </ul>
      {(register.answer?.more || colonies.answer?.more) && (
        <p className="quiet">{words.say('district.places.hits-more')}</p>
      )}
    </div>
  );
}
