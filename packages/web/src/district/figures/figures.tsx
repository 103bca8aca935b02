import './figures.css';
import { isDay } from '@combside/calendar/day';
import { dayOf } from '@combside/calendar/instant';
import { monthsLater } from '@combside/calendar/months-later';
import { type Figures as Answer, type FigureLine, figures } from '@combside/contract/figures';
import { Link, useSearchParams } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { commaSeparated, saveText } from './comma-separated.ts';
import { FigureRecords } from './figure-records.tsx';
import { MonthsView } from './months-view.tsx';
import { decimalsFor, figureName, figureSections, sayFigure, sayNumber } from './say-figure.ts';

/** The programme's figures of a period: the answer in a sentence, one plot, the numbers, how they are counted. */
export default function Figures() {
  const words = useWords();
  const [params, setParams] = useSearchParams();
  const today = dayOf(new Date().toISOString());
  const from = params.get('from') ?? monthsLater(today, -12);
  const to = params.get('to') ?? today;
  const opened = params.get('figure');
  const query = new URLSearchParams({ from, to }).toString();
  const asked = useAsked(figures, `/api/figures?${query}`, (event) =>
    ['colony', 'visit', 'apiary'].includes(event.about.type),
  );
  const { answer, state } = asked;
  const put = (name: 'from' | 'to', value: string) => {
    if (!isDay(value)) return;
    setParams((before) => {
      const next = new URLSearchParams(before);
      next.set(name, value);
      return next;
    });
  };
  const addressOf = (figure: FigureLine) =>
    `/figures?${new URLSearchParams({ from, to, figure: figureName(figure) }).toString()}`;

  return (
    <main className="figures stack">
      <h2>{words.say('programme.title')}</h2>
      <fieldset className="period">
        <legend className="visually-hidden">{words.say('programme.period')}</legend>
        <label>
          <span>{words.say('programme.from')}</span>
          <input
            type="date"
            className="text-input"
            value={from}
            max={to}
            onChange={(event) => put('from', event.target.value)}
          />
        </label>
        <label>
          <span>{words.say('programme.to')}</span>
          <input
            type="date"
            className="text-input"
            value={to}
            min={from}
            onChange={(event) => put('to', event.target.value)}
          />
        </label>
      </fieldset>
      <Unanswered asked={asked} />
      {state === 'asking' && !answer && <p className="quiet">{words.say('programme.loading')}</p>}
      {opened !== null ? (
        <FigureRecords figure={opened} from={from} to={to} back={`/figures?${query}`} />
      ) : (
        answer && <Numbers answer={answer} addressOf={addressOf} />
      )}
    </main>
  );
}

function Numbers({
  answer,
  addressOf,
}: {
  readonly answer: Answer;
  readonly addressOf: (figure: FigureLine) => string;
}) {
  const words = useWords();
  const { figures } = answer;
  const find = (...id: string[]) => figures.find((one) => figureName(one) === id.join('|'));
  const period = { from: words.day(answer.from), to: words.day(answer.to) };
  const inspected = find('inspected')?.count ?? 0;
  const sites = find('coverage', 'apiaries')?.count ?? 0;
  const suspect = find('incidence', 'american-foulbrood')?.count ?? 0;
  const full = find('prevalence', 'american-foulbrood', 'full');
  const none = figures.every((one) => one.id[0] !== 'examinations');
  const save = () =>
    saveText(
      `combside-${answer.from}-${answer.to}.csv`,
      commaSeparated([
        (['id', 'title', 'count', 'of', 'share', 'low', 'high'] as const).map((one) =>
          words.say(`programme.csv.${one}`),
        ),
        ...figures.map((one) => [
          figureName(one),
          sayFigure(words, one.id),
          one.count,
          one.of,
          one.of ? one.count / one.of : null,
          one.low,
          one.high,
        ]),
      ]),
    );

  return (
    <>
      <div className="stack close answer">
        <p>
          {none
            ? words.say('programme.answer.nothing', period)
            : words.say('programme.answer', { ...period, colonies: inspected, apiaries: sites, suspect })}
        </p>
        {full?.of && full.low !== null && full.high !== null && (
          <p>
            {words.say('programme.answer.share', {
              of: full.of,
              count: words.number(full.count),
              share: words.share(full.count / full.of, decimalsFor(full.high)),
              low: words.share(full.low, decimalsFor(full.high)),
              high: words.share(full.high, decimalsFor(full.high)),
            })}
          </p>
        )}
      </div>
      {!none && <MonthsView figures={figures} />}
      <p>
        <Button onClick={save}>{words.say('programme.save')}</Button>
      </p>
      <div className="figure-sections">
        {figureSections.map(({ section, holds }) => {
          const here = holds.flatMap((kind) => figures.filter((one) => one.id[0] === kind));
          return here.length === 0 ? null : (
            <FigureTable key={section} section={section} figures={here} addressOf={addressOf} />
          );
        })}
      </div>
      <section className="stack close" aria-labelledby="assumptions-title">
        <h3 id="assumptions-title">{words.say('programme.assumptions')}</h3>
        <ul className="assumptions">
          {(['suspect', 'depth', 'interval', 'coverage', 'day'] as const).map((one) => (
            <li key={one}>{words.say(`programme.assumption.${one}`)}</li>
          ))}
        </ul>
        <p className="quiet">
          {words.say('programme.source', { when: words.dayAndTime(answer.countedAt, timeZoneHere) })}
        </p>
      </section>
    </>
  );
}

interface FigureTableProps {
  readonly section: (typeof figureSections)[number]['section'];
  readonly figures: readonly FigureLine[];
  readonly addressOf: (figure: FigureLine) => string;
}

function FigureTable({ section, figures, addressOf }: FigureTableProps) {
  const words = useWords();
  const shares = figures.some((one) => one.of !== null);
  const intervals = figures.some((one) => one.low !== null);
  return (
    <table className="figure-table">
      <caption>{words.say(`programme.section.${section}`)}</caption>
      <thead className="visually-hidden">
        <tr>
          <th scope="col">{words.say('programme.csv.title')}</th>
          <th scope="col">{words.say('programme.count')}</th>
          {shares && <th scope="col">{words.say('programme.share')}</th>}
          {intervals && <th scope="col">{words.say('programme.interval-title')}</th>}
        </tr>
      </thead>
      <tbody>
        {figures.map((one) => {
          const title = sayFigure(words, one.id);
          const number = sayNumber(words, one);
          return (
            <tr key={figureName(one)}>
              <th scope="row">{title}</th>
              <td>
                <Link href={addressOf(one)} aria-label={words.say('programme.opens', { title, number })}>
                  {number}
                </Link>
              </td>
              {shares && <td>{one.of ? words.share(one.count / one.of, decimalsFor(one.high ?? 1)) : ''}</td>}
              {intervals && (
                <td className="quiet">
                  {one.low !== null && one.high !== null
                    ? words.say('programme.interval', {
                        low: words.share(one.low, decimalsFor(one.high)),
                        high: words.share(one.high, decimalsFor(one.high)),
                      })
                    : ''}
                </td>
              )}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
