import {
  type Conditions,
  calmConditions,
  readBack,
  startVisit,
  warningsOnArrival,
} from '@combside/casework/examine/start-visit';
import { powers, roles, visitReasons } from '@combside/casework/vocabulary';
import type { ApiaryState, ColonyState, KeeperState, VisitState } from '@combside/record/states';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { FindingLine } from '../../ui/finding-line.tsx';
import type { Refused } from '../../ui/refusal.tsx';
import { Refusal } from '../../ui/refusal.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { Stepper } from '../../ui/stepper.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useEntity, useHiveDevice, useStates } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';

/** Reads the states the start of a visit needs, then shows it. */
export function StartVisit({ apiary, visit }: { readonly apiary: string; readonly visit: string | null }) {
  const words = useWords();
  const place = useEntity('apiary', apiary);
  const colonies = useStates('colony', { apiary });
  const planned = useEntity('visit', visit ?? '');
  const keeper = useEntity('keeper', place?.apiary.current?.body.keeper ?? '');
  if (place === undefined || colonies === undefined || planned === undefined || keeper === undefined) {
    return (
      <Screen title={words.say('hive.start.title')}>
        <p>{words.say('front.opening')}</p>
      </Screen>
    );
  }
  if (place === null) {
    return (
      <Screen title={words.say('hive.start.title')}>
        <p className="caution">{words.say('casework.refused.not-in-register')}</p>
      </Screen>
    );
  }
  return <Arrival place={place} colonies={colonies} planned={planned} keeper={keeper} />;
}

interface ArrivalProps {
  readonly place: ApiaryState;
  readonly colonies: readonly ColonyState[];
  readonly planned: VisitState | null;
  readonly keeper: KeeperState | null;
}

const weather = ['rain', 'wind', 'thunder', 'foehn', 'robbing', 'dearth'] as const;

function Arrival({ place, colonies, planned, keeper }: ArrivalProps) {
  const words = useWords();
  const device = useHiveDevice();
  const [, go] = useLocation();
  const before = planned?.visit.current?.body ?? null;
  const [counted, setCounted] = useState<number | null>(null);
  const [reason, setReason] = useState<string | null>(before?.reason ?? null);
  const [power, setPower] = useState<string | null>(null);
  const [present, setPresent] = useState<readonly string[]>([]);
  const [conditions, setConditions] = useState<Conditions>(calmConditions);
  const [answers, setAnswers] = useState<Readonly<Record<string, string>>>({});
  const [refusal, setRefusal] = useState<Refused | null>(null);

  const now = device.now();
  const site = readBack(place, colonies, now);
  if (!site) return null;
  const registered = site.coloniesRegistered;
  const warnings = warningsOnArrival(conditions, now, site.position?.latitude ?? null);
  const keeperName = keeper?.keeper.current?.body.name ?? null;
  const missing = [
    counted === null ? words.say('hive.start.count') : null,
    reason === null ? words.say('hive.start.reason') : null,
    power === null ? words.say('hive.start.power') : null,
  ].filter((one) => one !== null);

  const start = async () => {
    if (reason === null || power === null) return;
    const visit = planned?.about.id ?? device.book.newId();
    const act = startVisit({
      visit,
      planned,
      apiary: place,
      colonies,
      inspector: device.session.person,
      reason,
      power,
      startedAt: device.now(),
      conditions,
      answers,
      people: present.map((role) => ({
        role,
        name: role === 'keeper' && keeperName ? keeperName : sayWord(words, 'casework.role.*', role),
      })),
      coloniesCounted: counted,
    });
    if (!act.ok) {
      setRefusal(act);
      return;
    }
    await device.book.write(act.proposals);
    go(`/visit/${visit}`, { replace: true });
  };

  return (
    <Screen
      title={site.name}
      beside={words.say('hive.start.title')}
      foot={
        <>
          {refusal && <Refusal refusal={refusal} />}
          {missing.length > 0 && (
            <p className="quiet">{words.say('hive.start.missing', { what: words.list(missing) })}</p>
          )}
          <Button look="main act" disabled={missing.length > 0} onClick={() => void start()}>
            {words.say('hive.start.do')}
          </Button>
        </>
      }
    >
      <section className="stack close" aria-label={words.say('hive.start.site')}>
        <p>{site.addressWords}</p>
        <p>
          {words.say('hive.start.keeper')}: {keeperName ?? words.say('hive.start.keeper-unknown')}
        </p>
        <p className="quiet">
          {site.position
            ? words.say('hive.start.position', {
                latitude: site.position.latitude.toFixed(5),
                longitude: site.position.longitude.toFixed(5),
                metres: words.unit(site.position.uncertaintyMetres, 'm'),
              })
            : words.say('hive.start.no-position')}
        </p>
        {site.findings.map((one) => (
          <FindingLine key={one.id} finding={one} />
        ))}
      </section>

      <section className="stack close">
        <h2>{words.say('hive.start.count')}</h2>
        {registered !== null && (
          <Button look="wide" aria-pressed={counted === registered} onClick={() => setCounted(registered)}>
            {words.say('hive.start.count-agrees', { count: registered })}
          </Button>
        )}
        <Stepper
          label={words.say('hive.start.count-other')}
          value={counted}
          from={0}
          to={500}
          start={registered ?? site.coloniesKnown}
          unstated={words.say('hive.start.unstated')}
          less={words.say('always.less')}
          more={words.say('always.more')}
          onChange={setCounted}
        />
        {counted !== null && registered !== null && counted !== registered && (
          <p className="caution">{words.say('hive.start.count-differs', { from: registered, to: counted })}</p>
        )}
      </section>

      <Choice
        label={words.say('hive.start.reason')}
        options={visitReasons.map((value) => ({ value, label: words.say(`casework.visit-reason.${value}`) }))}
        chosen={visitReasons.find((one) => one === reason) ?? null}
        onChoose={setReason}
      />
      <Choice
        label={words.say('hive.start.power')}
        options={powers.map((value) => ({ value, label: words.say(`casework.power.${value}`) }))}
        chosen={powers.find((one) => one === power) ?? null}
        onChoose={setPower}
      />
      <Several
        label={words.say('hive.start.people')}
        options={roles.map((value) => ({ value, label: words.say(`casework.role.${value}`) }))}
        chosen={present}
        onChange={setPresent}
      />
      <Stepper
        label={words.say('hive.start.temperature')}
        value={conditions.temperatureCelsius}
        from={-20}
        to={45}
        start={18}
        unstated={words.say('hive.colony.unstated')}
        less={words.say('always.less')}
        more={words.say('always.more')}
        format={(value) => words.unit(value, '°C')}
        onChange={(temperatureCelsius) => setConditions({ ...conditions, temperatureCelsius })}
      />
      <Several
        label={words.say('hive.start.weather')}
        options={weather.map((value) => ({ value, label: words.say(`hive.start.weather.${value}`) }))}
        chosen={weather.filter((one) => conditions[one])}
        onChange={(chosen) =>
          setConditions({
            ...conditions,
            ...Object.fromEntries(weather.map((one) => [one, chosen.includes(one)])),
          })
        }
      />
      {warnings
        .filter((one) => one.id !== 'casework.warning.temperature-not-known')
        .map((one) => (
          <div key={one.id} className="caution stack close">
            <FindingLine finding={one} />
            <Button
              aria-pressed={answers[one.id] !== undefined}
              onClick={() => setAnswers({ ...answers, [one.id]: words.say('hive.start.go-on-anyway') })}
            >
              {words.say('hive.start.go-on-anyway')}
            </Button>
          </div>
        ))}
      <Link className="button" href={`/safety/${site.apiary}`}>
        {words.say('hive.safety.open')}
      </Link>
    </Screen>
  );
}

interface SeveralProps {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: readonly string[]) => void;
}

/** Any number of a few: each key goes down and comes up again. */
function Several({ label, options, chosen, onChange }: SeveralProps) {
  return (
    <fieldset className="several">
      <legend>{label}</legend>
      <div className={options.length > 3 ? 'choices many' : 'choices'}>
        {options.map(({ value, label: text }) => {
          const pressed = chosen.includes(value);
          return (
            <Button
              key={value}
              aria-pressed={pressed}
              onClick={() => onChange(pressed ? chosen.filter((one) => one !== value) : [...chosen, value])}
            >
              {text}
            </Button>
          );
        })}
      </div>
    </fieldset>
  );
}
