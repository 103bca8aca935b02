import type { GroundLine, RankedLine } from '@combside/contract/planning';
import type { Words } from '@combside/words/words';
import { Link } from 'wouter';
import { ResultMark } from '../../ui/result-mark.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';

interface RankedRowProps {
  readonly apiary: RankedLine;
  readonly taken: boolean;
  readonly onTake: (taken: boolean) => void;
}

/** One apiary with its points, why it has them, how much to open there, and whether it is in the round. */
export function RankedRow({ apiary, taken, onTake }: RankedRowProps) {
  const words = useWords();
  return (
    <article className="ranked" aria-label={apiary.name}>
      <label className="ranked-take">
        <input type="checkbox" checked={taken} onChange={(event) => onTake(event.target.checked)} />
        <span className="visually-hidden">{words.say('planning.take', { name: apiary.name })}</span>
      </label>
      <div className="stack close">
        <h3 className="mark">
          <ResultMark result={apiary.mark} />
          <Link href={`/apiary/${apiary.apiary}`}>{apiary.name}</Link>
          <span className="quiet">{apiary.keeperName ?? words.say('district.keeper-unknown')}</span>
        </h3>
        {apiary.suspect && (
          <p>
            <strong>{words.say('planning.suspect-here')}</strong>
          </p>
        )}
        <ul className="grounds">
          {apiary.grounds.map((ground) => (
            <li key={ground.ground}>
              {words.say('planning.adds', {
                ground: sayGround(words, ground),
                points: words.number(ground.points, 0),
              })}
            </li>
          ))}
        </ul>
        {apiary.asked.map((one) => (
          <p key={one.visit}>
            {words.say('planning.asked', { reason: sayWord(words, 'casework.visit-reason.*', one.reason) })}
          </p>
        ))}
        {apiary.planned.map((one) => (
          <p key={one.visit}>
            {words.say('planning.planned', {
              when: words.dayAndTime(one.plannedFor, timeZoneHere),
              name: one.inspectorName ?? words.say('always.not-known'),
            })}
          </p>
        ))}
      </div>
      <div className="ranked-numbers">
        <p className="points">
          <strong>{words.say('planning.points', { points: words.number(apiary.points, 0) })}</strong>
        </p>
        {apiary.chance === null ? (
          <p className="quiet">{words.say('planning.chance.none')}</p>
        ) : (
          <>
            <p>{words.say('planning.open', { open: apiary.toOpen, colonies: apiary.colonies })}</p>
            <p className="quiet">{words.say('planning.chance', { chance: words.share(apiary.chance, 0) })}</p>
          </>
        )}
      </div>
    </article>
  );
}

/** One ground in words: what it is, where it comes from, how far or how long ago. */
export function sayGround(words: Words, ground: GroundLine): string {
  const never = ground.days === null && ['time since last visit', 'unconfirmed site'].includes(ground.ground);
  return sayWord(words, 'planning.ground.*', never ? `${ground.ground}.never` : ground.ground, {
    from: ground.fromName ?? words.say('planning.unknown-apiary'),
    distance: ground.metres === null ? '' : words.unit(Number((ground.metres / 1000).toFixed(1)), 'km'),
    days: ground.days ?? 0,
  });
}
