import './today.css';
import { unregisteredSite } from '@combside/casework/register/apiary';
import { metresBetween } from '@combside/casework/register/distance';
import type { PhotographReference } from '@combside/record/kinds/examination';
import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { dayInZone } from '../../app/day-in-zone.ts';
import { useWrite } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { Stepper } from '../../ui/stepper.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';
import { useHiveDevice } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { useDistrictApiaries } from './district-lists.ts';
import { type Position, usePosition } from './use-position.ts';

/** From here on it is said how unsure a position is, in metres. */
const unsureFrom = 50;

/** A registered apiary so near may be the one found, in metres. */
const nearMetres = 150;

/** Hives at the roadside that no register knows: where they stand, a photograph, and that is enough. */
export function Roadside() {
  const words = useWords();
  const device = useHiveDevice();
  const [turn, setTurn] = useState(0);
  const measured = usePosition(turn);
  const { position } = measured;
  const [photographs, setPhotographs] = useState<readonly PhotographReference[]>([]);
  const [counted, setCounted] = useState<number | null>(null);
  const [directions, setDirections] = useState('');
  const [district, setDistrict] = useState(
    device.session.districts.length === 1 ? (device.session.districts[0] ?? '') : null,
  );
  const keeping = useWrite((id: string) => {
    const now = device.now();
    const day = dayInZone(now, device.timeZone);
    return unregisteredSite({
      id,
      name: words.say('roadside.name', {
        day: words.day(day, 'short'),
        time: words.clockTime(now, device.timeZone),
      }),
      district: district ?? '',
      position: position && { ...position, how: 'measured on site' },
      addressWords: directions.trim(),
      coloniesCounted: counted,
      seenOn: day,
      photographs,
    });
  });
  const [kept, setKept] = useState<string | null>(null);

  const keep = async () => {
    const id = device.book.newId();
    if (await keeping.write(id)) setKept(id);
  };

  const back = (
    <Link className="button wide" href="/">
      {words.say('always.back-to', { place: words.say('hive.today.title') })}
    </Link>
  );
  if (kept !== null) {
    return (
      <Screen
        title={words.say('roadside.title')}
        foot={
          <>
            <Link className="button wide" href={`/start/apiary/${kept}`}>
              {words.say('roadside.visit')}
            </Link>
            {back}
          </>
        }
      >
        <p role="status">
          <strong>{words.say('roadside.kept')}</strong>
        </p>
        {position && <Where position={position} />}
      </Screen>
    );
  }
  return (
    <Screen
      title={words.say('roadside.title')}
      foot={
        <>
          <WriteTrouble writing={keeping} />
          <Button
            look="main act"
            disabled={!position || district === null || keeping.state === 'busy'}
            onClick={() => void keep()}
          >
            {words.say('roadside.keep')}
          </Button>
          {back}
        </>
      }
    >
      <p className="caution">{words.say('roadside.safety')}</p>
      <section className="stack close" aria-labelledby="where-title">
        <h2 id="where-title">{words.say('roadside.where')}</h2>
        <div role="status" className="stack close">
          {measured.state === 'finding' && <p>{words.say('roadside.finding')}</p>}
          {measured.state === 'denied' && <p className="caution">{words.say('roadside.denied')}</p>}
          {measured.state === 'failed' && <p className="caution">{words.say('roadside.failed')}</p>}
          {position && <Where position={position} />}
        </div>
        {measured.state !== 'finding' && (
          <Button look="wide" onClick={() => setTurn(turn + 1)}>
            {words.say('roadside.again')}
          </Button>
        )}
        {position && <Near position={position} />}
      </section>
      {device.session.districts.length > 1 && (
        <Choice
          label={words.say('roadside.district')}
          options={device.session.districts.map((value) => ({ value, label: value }))}
          chosen={district}
          onChoose={setDistrict}
        />
      )}
      <Pictures photographs={photographs} onTaken={(one) => setPhotographs((before) => [...before, one])} />
      <Stepper
        label={words.say('roadside.count')}
        value={counted}
        from={0}
        to={500}
        start={1}
        unstated={words.say('roadside.count.unstated')}
        less={words.say('always.less')}
        more={words.say('always.more')}
        onChange={setCounted}
      />
      <label className="stack close">
        {words.say('roadside.words')}
        <input
          className="text-input"
          value={directions}
          maxLength={500}
          onChange={(event) => setDirections(event.currentTarget.value)}
        />
      </label>
    </Screen>
  );
}

function Where({ position }: { readonly position: Position }) {
  const words = useWords();
  const metres = words.unit(position.uncertaintyMetres, 'm');
  return (
    <>
      <p>
        {words.say('roadside.found', {
          latitude: words.number(position.latitude, 5),
          longitude: words.number(position.longitude, 5),
          metres,
        })}
      </p>
      {position.uncertaintyMetres > unsureFrom && <p className="caution">{words.say('roadside.unsure', { metres })}</p>}
    </>
  );
}

/** The registered apiary nearest to here, when it is near enough to be this one. */
function Near({ position }: { readonly position: Position }) {
  const words = useWords();
  const apiaries = useDistrictApiaries();
  let nearest: { id: string; name: string; metres: number } | null = null;
  for (const { about, name, latitude, longitude, mergedInto } of apiaries?.values() ?? []) {
    if (latitude === null || longitude === null || mergedInto !== null) continue;
    const metres = metresBetween(position, { latitude, longitude });
    if (metres <= nearMetres + position.uncertaintyMetres && metres < (nearest?.metres ?? Number.POSITIVE_INFINITY)) {
      nearest = { id: about.id, name, metres };
    }
  }
  if (!nearest) return null;
  return (
    <div className="caution stack close">
      <p>{words.say('roadside.near', { name: nearest.name, metres: words.unit(Math.round(nearest.metres), 'm') })}</p>
      <Link className="button wide" href={`/start/apiary/${nearest.id}`}>
        {words.say('roadside.near.it-is')}
      </Link>
    </div>
  );
}

interface PicturesProps {
  readonly photographs: readonly PhotographReference[];
  readonly onTaken: (photograph: PhotographReference) => void;
}

/** Photographs of the place, kept on the phone at once. */
function Pictures({ photographs, onTaken }: PicturesProps) {
  const words = useWords();
  const device = useHiveDevice();
  const chooser = useRef<HTMLInputElement>(null);
  const [failed, setFailed] = useState(false);
  const [shown, setShown] = useState<string | null>(null);
  useEffect(() => () => (shown === null ? undefined : URL.revokeObjectURL(shown)), [shown]);
  const add = async (files: FileList | null) => {
    setFailed(false);
    try {
      for (const file of files ?? []) {
        onTaken(await device.photographs.keep(file, device.now()));
        setShown(URL.createObjectURL(file));
      }
    } catch {
      setFailed(true);
    }
  };
  return (
    <section className="stack close" aria-labelledby="photograph-title">
      <h2 id="photograph-title">{words.say('roadside.photograph')}</h2>
      <input
        ref={chooser}
        className="visually-hidden"
        type="file"
        accept="image/*"
        capture="environment"
        tabIndex={-1}
        aria-label={words.say('roadside.photograph.take')}
        onChange={(event) => void add(event.currentTarget.files)}
      />
      <Button look="wide" onClick={() => chooser.current?.click()}>
        {words.say(photographs.length === 0 ? 'roadside.photograph.take' : 'roadside.photograph.again')}
      </Button>
      {failed && <p className="caution">{words.say('hive.colony.photograph-failed')}</p>}
      {shown && <img className="site-picture" src={shown} alt={words.say('roadside.photograph.of')} />}
      <p role="status">{photographs.length > 0 && words.say('roadside.photograph.kept')}</p>
    </section>
  );
}
