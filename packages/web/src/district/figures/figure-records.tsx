import { type FigureLine, figureRecords } from '@combside/contract/figures';
import { Link } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { commaSeparated, saveText } from './comma-separated.ts';
import { sayFigure } from './say-figure.ts';

interface FigureRecordsProps {
  /** Name of the figure: its parts joined. */
  readonly figure: string;
  readonly from: string;
  readonly to: string;
  readonly back: string;
}

/** The examinations behind one number, each with the way to its colony, apiary and visit. */
export function FigureRecords({ figure, from, to, back }: FigureRecordsProps) {
  const words = useWords();
  const query = new URLSearchParams({ from, to, figure }).toString();
  const asked = useAsked(figureRecords, `/api/figures/records?${query}`, () => false);
  const { answer, state } = asked;
  const title = sayFigure(words, figure.split('|') as FigureLine['id']);
  const save = () => {
    if (!answer) return;
    const head = (['day', 'apiary', 'colony', 'depth', 'reason', 'result'] as const).map((one) =>
      words.say(`programme.records.${one}`),
    );
    saveText(
      `${figure.replaceAll(/[^a-z0-9]+/gi, '-')}-${from}-${to}.csv`,
      commaSeparated([
        [...head, 'examination', 'colony id', 'visit id'],
        ...answer.records.map((one) => [
          one.observedAt,
          one.apiaryName,
          one.colonyLabel,
          one.depth,
          one.reason,
          one.result,
          one.examination,
          one.colony,
          one.visit,
        ]),
      ]),
    );
  };
  return (
    <section className="stack" aria-labelledby="records-title">
      <p>
        <Link href={back}>{words.say('programme.records.back')}</Link>
      </p>
      <h3 id="records-title">
        {answer ? words.say('programme.records.title', { title, count: answer.count }) : title}
      </h3>
      {state === 'asking' && <p className="quiet">{words.say('programme.records.loading')}</p>}
      <Unanswered asked={asked} />
      {answer?.count === 0 && <p className="quiet">{words.say('programme.records.none')}</p>}
      {answer && answer.records.length > 0 && (
        <>
          {answer.records.length < answer.count && (
            <p>{words.say('programme.records.first', { shown: answer.records.length })}</p>
          )}
          <p>
            <Button onClick={save}>{words.say('programme.records.save')}</Button>
          </p>
          <div className="figure-records">
            <table className="figure-table">
              <thead>
                <tr>
                  {(['day', 'apiary', 'colony', 'depth', 'reason', 'result', 'visit'] as const).map((one) => (
                    <th key={one} scope="col">
                      {words.say(`programme.records.${one}`)}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {answer.records.map((one) => (
                  <tr key={one.examination}>
                    <td>{one.observedAt ? words.dayOf(one.observedAt, timeZoneHere) : ''}</td>
                    <td>
                      <Link href={`/apiary/${one.apiary}`}>
                        {one.apiaryName ?? words.say('district.apiary-unknown')}
                      </Link>
                    </td>
                    <td>
                      <Link href={`/colony/${one.colony}`}>{one.colonyLabel ?? '–'}</Link>
                    </td>
                    <td>{sayWord(words, 'casework.depth.*', one.depth)}</td>
                    <td>{one.reason ? sayWord(words, 'casework.visit-reason.*', one.reason) : ''}</td>
                    <td>{one.result ? sayWord(words, 'casework.result.*', one.result) : ''}</td>
                    <td>
                      <Link href={`/visit/${one.visit}`}>{words.say('district.owed.visit')}</Link>
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </>
      )}
    </section>
  );
}
