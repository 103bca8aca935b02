import type { SourceId } from '@combside/sources/bibliography';
import { useState } from 'react';
import { Button } from '../button.tsx';
import { useWords } from '../words-context.tsx';

interface SourcesOfProps {
  readonly ids: readonly SourceId[];
  readonly expertBand?: boolean;
}

/** Where a statement comes from, one tap away. The bibliography is fetched only when somebody asks. */
export function SourcesOf({ ids, expertBand = false }: SourcesOfProps) {
  const words = useWords();
  const [titles, setTitles] = useState<readonly string[] | null>(null);
  const open = async () => {
    if (titles) {
      setTitles(null);
      return;
    }
    const { citation } = await import('@combside/sources/bibliography');
    setTitles(ids.map(citation));
  };
  if (ids.length === 0 && !expertBand) return <p className="quiet">{words.say('reasoning.no-source')}</p>;
  return (
    <>
      <p className="quiet">
        {expertBand && `${words.say('reasoning.expert-band')} `}
        {ids.length > 0 && (
          <Button look="plain" aria-expanded={titles !== null} onClick={() => void open()}>
            {words.say('reasoning.source')}
          </Button>
        )}
      </p>
      {titles && (
        <ul className="quiet">
          {titles.map((title) => (
            <li key={title}>{title}</li>
          ))}
        </ul>
      )}
    </>
  );
}
