import './today.css';
import { useState } from 'react';
import { Link } from 'wouter';
import { useWords } from '../../ui/words-context.tsx';
import { Screen } from '../screen/screen.tsx';
import { useDistrictApiaries, useDistrictKeepers } from './district-lists.ts';

const atMost = 50;

/** Any apiary of the districts on this phone, by its name or its keeper's. */
export function FindApiary() {
  const words = useWords();
  const apiaries = useDistrictApiaries();
  const keepers = useDistrictKeepers();
  const [wanted, setWanted] = useState('');
  if (!apiaries || !keepers) {
    return (
      <Screen title={words.say('hive.today.find')}>
        <p>{words.say('front.opening')}</p>
      </Screen>
    );
  }

  const text = wanted.trim().toLocaleLowerCase(words.language);
  const keeperOf = (keeper: string | null) => (keeper === null ? undefined : keepers.get(keeper)?.name);
  const found = [...apiaries.values()]
    .filter((apiary) =>
      `${apiary.name} ${keeperOf(apiary.keeper) ?? ''}`.toLocaleLowerCase(words.language).includes(text),
    )
    .sort((a, b) => a.name.localeCompare(b.name, words.language));
  return (
    <Screen
      title={words.say('hive.today.find')}
      foot={
        <>
          <Link className="button wide" href="/roadside">
            {words.say('roadside.open')}
          </Link>
          <Link className="button wide" href="/">
            {words.say('always.back-to', { place: words.say('hive.today.title') })}
          </Link>
        </>
      }
    >
      <label className="stack close">
        {words.say('hive.find.label')}
        <input
          className="text-input"
          type="search"
          value={wanted}
          onChange={(event) => setWanted(event.currentTarget.value)}
        />
      </label>
      {apiaries.size === 0 ? (
        <p className="caution">{words.say('hive.find.none-at-all')}</p>
      ) : found.length === 0 ? (
        <p className="quiet">{words.say('hive.find.none')}</p>
      ) : (
        found.length > atMost && (
          <p className="quiet">{words.say('hive.find.many', { shown: atMost, count: found.length })}</p>
        )
      )}
      <ul className="rows">
        {found.slice(0, atMost).map((apiary) => (
          <li key={apiary.about.id}>
            <Link className="visit-card" href={`/start/apiary/${apiary.about.id}`}>
              <span className="name">{apiary.name}</span>
              <span className="quiet">{keeperOf(apiary.keeper) ?? words.say('hive.start.keeper-unknown')}</span>
            </Link>
          </li>
        ))}
      </ul>
    </Screen>
  );
}
