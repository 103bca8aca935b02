import type { CombPhotographLine } from '@combside/contract/comb-photographs';
import { Link } from 'wouter';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { StandingShown } from './standing-shown.tsx';

interface PhotographLineProps {
  readonly photograph: CombPhotographLine;
  readonly isChosen: boolean;
  readonly onChoose: (isChosen: boolean) => void;
}

/** One photograph of a comb in the list: small, of which colony and day, how it stands, and whether it shall be read. */
export function PhotographLine({ photograph, isChosen, onChoose }: PhotographLineProps) {
  const words = useWords();
  const { hash, colony, label, apiaryName, takenAt, caption, standing, reasons } = photograph;
  const when = words.dayAndTime(takenAt, timeZoneHere);
  return (
    <article className="comb-line" aria-label={words.say('district.combs.one', { label, when })}>
      <Link href={`/comb/colony/${colony}/photograph/${hash}`}>
        {standing === 'not-held' ? (
          <span className="comb-small" />
        ) : (
          <img className="comb-small" src={`/api/photographs/${hash}/small`} loading="lazy" alt="" />
        )}
        <strong>{words.say('district.colony', { label })}</strong>
      </Link>
      <p>
        {apiaryName ?? words.say('district.apiary-unknown')}
        <br />
        {when}
      </p>
      {caption !== '' && <p className="quiet">{caption}</p>}
      <p>
        <StandingShown standing={standing} />
      </p>
      {reasons.map((reason) => (
        <p key={reason} className="quiet">
          {sayWord(words, 'comb.reason.*', reason)}
        </p>
      ))}
      {standing === 'not-read' && (
        <label className="comb-choose">
          <input
            type="checkbox"
            checked={isChosen}
            aria-label={words.say('district.combs.choose-one', { label, when })}
            onChange={(event) => onChoose(event.target.checked)}
          />
          <span>{words.say('district.combs.choose')}</span>
        </label>
      )}
    </article>
  );
}
