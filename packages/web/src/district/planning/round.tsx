import { usualPlanning } from '@combside/casework/plan/planning-settings';
import { visitReasons } from '@combside/casework/vocabulary';
import type { People } from '@combside/contract/people';
import { useId, useState } from 'react';
import type { Session } from '../../app/session.ts';
import { Button } from '../../ui/button.tsx';
import { saySentence, sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { DeskDeviceWord } from '../apiary/ask-for-visit.tsx';
import { useAsked } from '../office/use-office.ts';
import { deskTimeZone } from '../time-zone.ts';
import { canWrite, deskDevice, useDeskDevice } from '../use-desk-device.ts';
import { type Taken, writeRound } from './use-round.ts';

interface RoundProps {
  readonly session: Session;
  readonly stops: readonly Taken[];
  /** YYYY-MM-DD. */
  readonly today: string;
  readonly onChange: (stops: readonly Taken[]) => void;
}

/** The round as it is laid out: its stops in order, who drives, when; and the button that writes it. */
export function Round({ session, stops, today, onChange }: RoundProps) {
  const words = useWords();
  const id = useId();
  const desk = useDeskDevice(session);
  const people = useAsked<People>('/api/people', () => false);
  const [inspector, setInspector] = useState('');
  const [day, setDay] = useState(today);
  const [first, setFirst] = useState('09:00');
  const [between, setBetween] = useState(usualPlanning.minutesBetweenVisits.value);
  const [busy, setBusy] = useState(false);
  const [told, setTold] = useState<{ readonly ok: boolean; readonly text: string } | null>(null);

  const inspectors = people.answer?.people.filter((one) => one.role === 'inspector' && one.active) ?? [];
  const name = inspectors.find((one) => one.person === inspector)?.name;
  // What is typed is the wall clock of the desk's own place.
  const start = new Date(`${day}T${first}:00`);
  const known = !Number.isNaN(start.getTime());
  const past = known && start.getTime() < Date.now();
  const arrival = (place: number) =>
    known ? words.clockTime(new Date(start.getTime() + place * between * 60_000).toISOString(), deskTimeZone) : '';
  const colonies = stops.reduce((sum, one) => sum + one.line.toOpen, 0);
  const move = (place: number, by: number) => {
    const next = [...stops];
    const [one] = next.splice(place, 1);
    if (one) next.splice(place + by, 0, one);
    onChange(next);
  };

  const write = async () => {
    if (!name || !known) return;
    setBusy(true);
    setTold(null);
    try {
      const device = await deskDevice(session);
      const written = await writeRound(device, {
        stops,
        inspector,
        firstAt: start.toISOString(),
        minutesBetween: between,
      });
      if (written.ok) {
        const done = words.say('planning.round.done', { visits: stops.length, name, day: words.day(day) });
        setTold({ ok: true, text: `${done} ${words.say('district.saved.here')}` });
        onChange([]);
        await device.sync.run();
        if (device.sync.status().waiting === 0) {
          setTold({ ok: true, text: `${done} ${words.say('district.saved.office')}` });
        }
      } else {
        const why =
          written.why === 'refused'
            ? saySentence(words, { id: written.reason, values: written.values })
            : words.say('planning.round.apiary-failed', { name: written.name });
        setTold({ ok: false, text: words.say('planning.round.not-done', { why }) });
      }
    } catch {
      setTold({ ok: false, text: words.say('always.went-wrong') });
    } finally {
      setBusy(false);
    }
  };

  return (
    <section className="round stack" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{words.say('planning.round')}</h2>
      {told && (
        <p role={told.ok ? 'status' : 'alert'} className={told.ok ? 'round-done' : 'caution'}>
          {told.text}
        </p>
      )}
      {stops.length === 0 ? (
        <p className="quiet">{words.say('planning.round.empty')}</p>
      ) : (
        <>
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
                <span className="quiet">
                  {words.say('planning.open', { open: line.toOpen, colonies: line.colonies })}
                </span>
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
          <div className="round-when">
            <label className="stack close">
              <span>{words.say('planning.round.day')}</span>
              <input
                type="date"
                className="text-input"
                value={day}
                min={today}
                onChange={(event) => setDay(event.target.value)}
              />
            </label>
            <label className="stack close">
              <span>{words.say('planning.round.first')}</span>
              <input
                type="time"
                className="text-input"
                value={first}
                onChange={(event) => setFirst(event.target.value)}
              />
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
                onChange={(event) => setBetween(Math.min(600, Math.max(10, event.target.valueAsNumber || 10)))}
              />
            </label>
          </div>
          <DeskDeviceWord state={desk.state} />
          {past && <p className="caution">{words.say('planning.round.past')}</p>}
          <Button
            look="act"
            disabled={!name || !known || day < today || busy || !canWrite(desk)}
            onClick={() => void write()}
          >
            {busy
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
