import { usualPlanning } from '@combside/casework/plan/planning-settings';
import { visitReasons } from '@combside/casework/vocabulary';
import { people } from '@combside/contract/people';
import { useId, useState } from 'react';
import { useDevice } from '../../device/device-in-hand.tsx';
import { useWrite } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';
import { DeskDeviceWord } from '../apiary/ask-for-visit.tsx';
import { useAsked } from '../office/use-asked.ts';
import { actOfRound, type RoundInput, type Taken } from './act-of-round.ts';

interface RoundProps {
  readonly stops: readonly Taken[];
  /** YYYY-MM-DD. */
  readonly today: string;
  readonly onChange: (stops: readonly Taken[]) => void;
}

/** The round as it is laid out: its stops in order, who drives, when; and the button that writes it. */
export function Round({ stops, today, onChange }: RoundProps) {
  const words = useWords();
  const id = useId();
  const { state } = useDevice();
  const answered = useAsked(people, '/api/people', () => false);
  const [inspector, setInspector] = useState('');
  const [day, setDay] = useState(today);
  const [first, setFirst] = useState('09:00');
  const [between, setBetween] = useState(usualPlanning.minutesBetweenVisits.value);
  /** What was planned last, in words. */
  const [done, setDone] = useState('');
  const planning = useWrite((round: RoundInput) => actOfRound(round));

  const inspectors = answered.answer?.people.filter((one) => one.role === 'inspector' && one.active) ?? [];
  const name = inspectors.find((one) => one.person === inspector)?.name;
  // What is typed is the wall clock of the desk's own place.
  const start = new Date(`${day}T${first}:00`);
  const known = !Number.isNaN(start.getTime());
  const past = known && start.getTime() < Date.now();
  const arrival = (place: number) =>
    known ? words.clockTime(new Date(start.getTime() + place * between * 60_000).toISOString(), timeZoneHere) : '';
  const colonies = stops.reduce((sum, one) => sum + one.line.toOpen, 0);
  const write = async () => {
    if (!name || !known) return;
    const round = { stops, inspector, firstAt: start.toISOString(), minutesBetween: between };
    if (!(await planning.write(round))) return;
    setDone(words.say('planning.round.done', { visits: stops.length, name, day: words.day(day) }));
    onChange([]);
  };
  const isPlanned = planning.state === 'written' || planning.state === 'sent';

  return (
    <section className="round stack" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{words.say('planning.round')}</h2>
      {isPlanned && (
        <p role="status" className="round-done">
          {done} {words.say(planning.state === 'sent' ? 'district.saved.office' : 'district.saved.here')}
        </p>
      )}
      {(planning.state === 'refused' || planning.state === 'failed') && <WriteTrouble writing={planning} />}
      {stops.length === 0 ? (
        <p className="quiet">{words.say('planning.round.empty')}</p>
      ) : (
        <>
          <Stops stops={stops} arrival={arrival} onChange={onChange} />
          <p>{words.say('planning.round.total', { visits: stops.length, colonies })}</p>
          <label className="stack close">
            <span>{words.say('planning.round.inspector')}</span>
            <select className="text-input" value={inspector} onChange={(event) => setInspector(event.target.value)}>
              <option value="">{words.say('planning.round.choose')}</option>
              {inspectors.map((one) => (
                <option key={one.person} value={one.person}>
                  {one.name}
                </option>
              ))}
            </select>
          </label>
          <When
            today={today}
            day={day}
            first={first}
            between={between}
            onDay={setDay}
            onFirst={setFirst}
            onBetween={setBetween}
          />
          <DeskDeviceWord state={state} />
          {past && <p className="caution">{words.say('planning.round.past')}</p>}
          <Button
            look="act"
            disabled={!name || !known || day < today || planning.state === 'busy' || !planning.canWrite}
            onClick={() => void write()}
          >
            {planning.state === 'busy'
              ? words.say('planning.round.doing')
              : name
                ? words.say('planning.round.do', { visits: stops.length, name })
                : words.say('planning.round.do-nobody')}
          </Button>
        </>
      )}
    </section>
  );
}

interface StopsProps {
  readonly stops: readonly Taken[];
  /** The time of arrival at a place in the order, in words. */
  readonly arrival: (place: number) => string;
  readonly onChange: (stops: readonly Taken[]) => void;
}

/** The stops in order, each moved, dropped, or given another reason. */
function Stops({ stops, arrival, onChange }: StopsProps) {
  const words = useWords();
  const move = (place: number, by: number) => {
    const next = [...stops];
    const [one] = next.splice(place, 1);
    if (one) next.splice(place + by, 0, one);
    onChange(next);
  };
  return (
    <ol className="rows">
      {stops.map(({ line, reason }, place) => (
        <li key={line.apiary} className="round-stop">
          <strong>{words.say('planning.round.stop', { time: arrival(place), name: line.name })}</strong>
          <span className="round-tools">
            <Button
              aria-label={words.say('planning.round.earlier', { name: line.name })}
              disabled={place === 0}
              onClick={() => move(place, -1)}
            >
              ↑
            </Button>
            <Button
              aria-label={words.say('planning.round.later', { name: line.name })}
              disabled={place === stops.length - 1}
              onClick={() => move(place, 1)}
            >
              ↓
            </Button>
            <Button
              aria-label={words.say('planning.round.drop', { name: line.name })}
              onClick={() => onChange(stops.filter((one) => one.line.apiary !== line.apiary))}
            >
              ×
            </Button>
          </span>
          <span className="quiet">{words.say('planning.open', { open: line.toOpen, colonies: line.colonies })}</span>
          <select
            className="text-input"
            aria-label={words.say('planning.round.reason', { name: line.name })}
            value={reason}
            onChange={(event) =>
              onChange(stops.map((one, at) => (at === place ? { ...one, reason: event.target.value } : one)))
            }
          >
            {visitReasons.map((one) => (
              <option key={one} value={one}>
                {sayWord(words, 'casework.visit-reason.*', one)}
              </option>
            ))}
          </select>
        </li>
      ))}
    </ol>
  );
}

interface WhenProps {
  /** YYYY-MM-DD. */
  readonly today: string;
  readonly day: string;
  /** HH:MM by the desk's clock. */
  readonly first: string;
  /** Minutes from one arrival to the next. */
  readonly between: number;
  readonly onDay: (day: string) => void;
  readonly onFirst: (first: string) => void;
  readonly onBetween: (minutes: number) => void;
}

/** The day, the first arrival, and the time from one arrival to the next. */
function When({ today, day, first, between, onDay, onFirst, onBetween }: WhenProps) {
  const words = useWords();
  return (
    <div className="round-when">
      <label className="stack close">
        <span>{words.say('planning.round.day')}</span>
        <input
          type="date"
          className="text-input"
          value={day}
          min={today}
          onChange={(event) => onDay(event.target.value)}
        />
      </label>
      <label className="stack close">
        <span>{words.say('planning.round.first')}</span>
        <input type="time" className="text-input" value={first} onChange={(event) => onFirst(event.target.value)} />
      </label>
      <label className="stack close">
        <span>{words.say('planning.round.between')}</span>
        <input
          type="number"
          className="text-input"
          min={10}
          max={600}
          step={5}
          value={between}
          onChange={(event) => onBetween(Math.min(600, Math.max(10, event.target.valueAsNumber || 10)))}
        />
      </label>
    </div>
  );
}
