import './planning.css';
import { type Planning as Answer, planning } from '@combside/contract/planning';
import { useEffect, useState } from 'react';
import { useWords } from '../../ui/words-context.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { type Taken, taken } from './act-of-round.ts';
import { usePlanningAddress } from './planning-address.ts';
import { PlanningControls } from './planning-controls.tsx';
import { RankedRow } from './ranked-row.tsx';
import { Round } from './round.tsx';

/** Where to go and who goes: apiaries ranked by grounds that are shown, and the round laid out from them. */
export default function Planning() {
  const words = useWords();
  const address = usePlanningAddress();
  const asked = useAsked(planning, address.asked, (event) =>
    ['visit', 'apiary', 'colony', 'movement'].includes(event.about.type),
  );
  const { answer, state } = asked;
  const [last, setLast] = useState<Answer | null>(null);
  const [stops, setStops] = useState<readonly Taken[]>([]);
  const [tookFirst, setTookFirst] = useState(false);
  useEffect(() => {
    if (!answer) return;
    setLast(answer);
    const fresh = new Map(answer.apiaries.map((one) => [one.apiary, one]));
    setStops((before) => before.map((one) => ({ ...one, line: fresh.get(one.line.apiary) ?? one.line })));
    const wanted = address.take === null ? undefined : fresh.get(address.take);
    if (wanted && !tookFirst) {
      setTookFirst(true);
      setStops((before) =>
        before.some((one) => one.line.apiary === wanted.apiary) ? before : [...before, taken(wanted)],
      );
    }
  }, [answer, address.take, tookFirst]);
  // While another ranking is on its way the one before stays in sight.
  const shown = answer ?? last;
  return (
    <main className="planning">
      <PlanningControls address={address} />
      <section className="stack planning-list" aria-labelledby="planning-title">
        <header className="stack close">
          <h2 id="planning-title">{words.say('planning.title')}</h2>
          <p className="quiet">{words.say('planning.lead')}</p>
        </header>
        <Unanswered asked={asked} />
        {!shown && state === 'asking' && <p className="quiet">{words.say('planning.loading')}</p>}
        {shown?.apiaries.length === 0 && <p className="quiet">{words.say('planning.none')}</p>}
        {shown && shown.apiaries.length > 0 && (
          <p>{words.say('planning.ranked', { shown: shown.apiaries.length, count: shown.ranked })}</p>
        )}
        <ol className="rows">
          {shown?.apiaries.map((one) => (
            <li key={one.apiary}>
              <RankedRow
                apiary={one}
                taken={stops.some((stop) => stop.line.apiary === one.apiary)}
                onTake={(take) =>
                  setStops((before) =>
                    take ? [...before, taken(one)] : before.filter((stop) => stop.line.apiary !== one.apiary),
                  )
                }
              />
            </li>
          ))}
        </ol>
      </section>
      {shown && <Round stops={stops} today={shown.today} onChange={setStops} />}
    </main>
  );
}
