import {
  type Conditions,
  calmConditions,
  type ReadBack,
  readBack,
  startVisit,
  warningsOnArrival,
} from '@combside/casework/examine/start-visit';
import { powers, roles, visitReasons } from '@combside/casework/vocabulary';
import type { ApiaryState, ColonyState, KeeperState, VisitState } from '@combside/record/states';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useWrite } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { FindingLine } from '../../ui/finding-line.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { Stepper } from '../../ui/stepper.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';
import { useEntity, useHiveDevice, useStates } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { Several } from './several.tsx';

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

/** Arriving: the site read back, the colonies counted, why and by which power, who is there, and the weather. */
function Arrival({ place, colonies, planned, keeper }: ArrivalProps) {
  const words = useWords();
  const device = useHiveDevice();
  const [, go] = useLocation();
  // One visit however often it is started from here.
  const [visit] = useState(() => planned?.about.id ?? device.book.newId());
  const [counted, setCounted] = useState<number | null>(null);
  const [reason, setReason] = useState<string | null>(planned?.visit.current?.body.reason ?? null);
  const [power, setPower] = useState<string | null>(null);
  const [present, setPresent] = useState<readonly string[]>([]);
  const [conditions, setConditions] = useState<Conditions>(calmConditions);
  const [answers, setAnswers] = useState<Readonly<Record<string, string>>>({});
  const keeperName = keeper?.keeper.current?.body.name ?? null;
  const starting = useWrite(async (said: { readonly reason: string; readonly power: string }, fresh) =>
    startVisit({
      ...said,
      visit,
      planned: await fresh.state({ type: 'visit', id: visit }),
      apiary: place,
      colonies,
      inspector: device.session.person,
      startedAt: device.now(),
      conditions,
      answers,
      people: present.map((role) => ({
        role,
        name: role === 'keeper' && keeperName ? keeperName : sayWord(words, 'casework.role.*', role),
      })),
      coloniesCounted: counted,
    }),
  );

  const now = device.now();
  const site = readBack(place, colonies, now);
  if (!site) return null;
  const warnings = warningsOnArrival(conditions, now, site.position?.latitude ?? null);
  const missing = [
    counted === null ? words.say('hive.start.count') : null,
    reason === null ? words.say('hive.start.reason') : null,
    power === null ? words.say('hive.start.power') : null,
  ].filter((one) => one !== null);
  const start = async () => {
    if (reason === null || power === null) return;
    if (await starting.write({ reason, power })) go(`/visit/${visit}`, { replace: true });
  };

  return (
    <Screen
      title={site.name}
      beside={words.say('hive.start.title')}
      foot={
        <>
          <WriteTrouble writing={starting} />
          {missing.length > 0 && (
            <p className="quiet">{words.say('hive.start.missing', { what: words.list(missing) })}</p>
          )}
          <Button
            look="main act"
            disabled={missing.length > 0 || starting.state === 'busy'}
            onClick={() => void start()}
          >
            {words.say('hive.start.do')}
          </Button>
        </>
      }
    >
      <SiteReadBack site={site} keeperName={keeperName} />
      <ColoniesCounted site={site} counted={counted} onCount={setCounted} />
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
      <WeatherNow conditions={conditions} onChange={setConditions} />
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

/** Where one is, as the register has it. */
function SiteReadBack({ site, keeperName }: { readonly site: ReadBack; readonly keeperName: string | null }) {
  const words = useWords();
  return (
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
  );
}

interface ColoniesCountedProps {
  readonly site: ReadBack;
  readonly counted: number | null;
  readonly onCount: (counted: number | null) => void;
}

/** How many colonies stand here, against the register. */
function ColoniesCounted({ site, counted, onCount }: ColoniesCountedProps) {
  const words = useWords();
  const registered = site.coloniesRegistered;
  return (
    <section className="stack close">
      <h2>{words.say('hive.start.count')}</h2>
      {registered !== null && (
        <Button look="wide" aria-pressed={counted === registered} onClick={() => onCount(registered)}>
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
        onChange={onCount}
      />
      {counted !== null && registered !== null && counted !== registered && (
        <p className="caution">{words.say('hive.start.count-differs', { from: registered, to: counted })}</p>
      )}
    </section>
  );
}

const weather = ['rain', 'wind', 'thunder', 'foehn', 'robbing', 'dearth'] as const;

interface WeatherNowProps {
  readonly conditions: Conditions;
  readonly onChange: (conditions: Conditions) => void;
}

/** Temperature and weather, as far as they bear on opening hives. */
function WeatherNow({ conditions, onChange }: WeatherNowProps) {
  const words = useWords();
  return (
    <>
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
        onChange={(temperatureCelsius) => onChange({ ...conditions, temperatureCelsius })}
      />
      <Several
        label={words.say('hive.start.weather')}
        options={weather.map((value) => ({ value, label: words.say(`hive.start.weather.${value}`) }))}
        chosen={weather.filter((one) => conditions[one])}
        onChange={(chosen) =>
          onChange({
            ...conditions,
            ...Object.fromEntries(weather.map((one) => [one, chosen.includes(one)])),
          })
        }
      />
    </>
  );
}
