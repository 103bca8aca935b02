import { lazy, Suspense, useEffect, useId, useState } from 'react';
import { Choice } from '../../ui/choice.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskAddress } from '../desk-address.ts';
import { MapFailed } from '../map/map-failed.tsx';
import { PlacesList } from './places-list.tsx';
import { SearchHits } from './search-hits.tsx';

// The map and its library are fetched only when somebody wants to see it.
const MapView = lazy(() => import('../map/map-view.tsx').catch(() => ({ default: MapFailed })));

/** So long after the last key the office is asked, in milliseconds. */
const pause = 180;

interface PlacesProps {
  /** The apiary whose page is open. */
  readonly chosen: string | null;
}

/** The middle of the desk: apiaries as a list or a map, the same things, and one search over everything. */
export function Places({ chosen }: PlacesProps) {
  const words = useWords();
  const desk = useDeskAddress();
  const id = useId();
  const [text, setText] = useState(desk.search);
  const { search } = desk;
  useEffect(() => setText(search), [search]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only what is typed starts the clock
  useEffect(() => {
    if (text.trim() === search) return;
    // Whoever has gone elsewhere meanwhile is not fetched back.
    const here = location.pathname;
    const timer = setTimeout(() => {
      if (location.pathname === here) desk.change({ search: text.trim() });
    }, pause);
    return () => clearTimeout(timer);
  }, [text]);

  return (
    // With no page open beside it, this is what the screen is about.
    // biome-ignore lint/a11y/useAriaPropsSupportedByRole: either role is a landmark, and takes its name from the heading
    <div role={chosen === null ? 'main' : 'region'} className="places" aria-labelledby={`${id}-title`}>
      <div className="places-head">
        <h2 id={`${id}-title`}>{words.say('district.places')}</h2>
        <Choice
          label={words.say('district.places.shown-as')}
          options={[
            { value: 'list', label: words.say('district.places.list') },
            { value: 'map', label: words.say('district.places.map') },
          ]}
          chosen={desk.show}
          onChoose={(show) => desk.change({ show })}
        />
        <label className="places-search">
          <span>{words.say('district.places.search')}</span>
          <input
            type="search"
            className="text-input"
            value={text}
            autoComplete="off"
            onChange={(event) => setText(event.target.value)}
          />
        </label>
      </div>
      {search !== '' && <SearchHits text={search} chosen={chosen} />}
      {desk.show === 'map' ? (
        <Suspense fallback={<p className="quiet">{words.say('district.map.loading')}</p>}>
          <MapView chosen={chosen} />
        </Suspense>
      ) : (
        search === '' && <PlacesList chosen={chosen} />
      )}
    </div>
  );
}
