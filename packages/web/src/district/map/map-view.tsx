import 'maplibre-gl/dist/maplibre-gl.css';
import { wordsOfMarks } from '@combside/casework/result/result-mark';
import { saysSuspect } from '@combside/casework/result/results-by-gravity';
import type { GeoJSONSource } from 'maplibre-gl';
import { useEffect } from 'react';
import { useLocation } from 'wouter';
import { Button } from '../../ui/button.tsx';
import { ResultMark } from '../../ui/result-mark.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskAddress } from '../desk-address.ts';
import { MapFailed } from './map-failed.tsx';
import { featuresOf } from './map-features.ts';
import { boundsOf, useDrawnMap } from './use-drawn-map.ts';
import { useMapPointer } from './use-map-pointer.ts';
import { useMapWindow } from './use-map-window.ts';

/** What the key explains: not looked at, then from the least to the gravest. */
const shownInKey = [null, ...[...wordsOfMarks].reverse()];

/** The apiaries on a map: single marks where they are few, heaps with their number where they are many. */
export default function MapView({ chosen }: { readonly chosen: string | null }) {
  const words = useWords();
  const desk = useDeskAddress();
  const [, go] = useLocation();
  const { frame, map, extent, failed, bare } = useDrawnMap();
  const { answer, older } = useMapWindow(map);
  useMapPointer(map, (apiary) => go(desk.to(`/apiary/${apiary}`)));

  useEffect(() => {
    if (!map || !answer) return;
    const source = map.getSource('apiaries') as GeoJSONSource;
    void source.setData(featuresOf(answer, chosen, (count) => words.number(count)));
    const container = map.getContainer();
    container.dataset.shown = String(answer.apiaries);
  }, [map, answer, chosen, words]);

  if (failed) return <MapFailed />;
  const suspects = answer
    ? answer.points.filter((one) => saysSuspect(one.mark)).length +
      answer.heaps.reduce((sum, heap) => sum + heap.suspect, 0)
    : 0;
  return (
    <div className="map-view">
      <div ref={frame} className="map-frame" />
      <div className="map-told" aria-live="polite">
        {older && (
          <p className="finding owed">{words.say(answer ? 'district.map.older' : 'district.map.unanswered')}</p>
        )}
        {bare && <p className="quiet">{words.say('district.map.background.failed')}</p>}
        {answer && <p>{words.say('district.map.told', { count: answer.apiaries, suspect: suspects })}</p>}
        {!answer && !older && <p className="quiet">{words.say('district.map.loading')}</p>}
        {extent && extent.unplaced > 0 && (
          <p className="quiet">{words.say('district.map.unplaced', { count: extent.unplaced })}</p>
        )}
      </div>
      <div className="map-foot">
        {extent?.box && (
          <Button
            onClick={() =>
              extent.box && map?.fitBounds(boundsOf(extent.box), { padding: 48, maxZoom: 13, duration: 0 })
            }
          >
            {words.say('district.map.whole')}
          </Button>
        )}
        <p className="quiet">
          {words.say('district.map.keys')} {words.say('district.map.source')}
        </p>
      </div>
      <details>
        <summary>{words.say('district.map.marks')}</summary>
        <ul className="map-key">
          {shownInKey.map((result) => (
            <li key={result ?? 'none'} className="mark">
              <ResultMark result={result} />
              {sayWord(words, 'casework.result.*', result ?? 'not opened')}
            </li>
          ))}
          <li>{words.say('district.map.mark.heap')}</li>
          <li>{words.say('district.map.mark.heap-suspect')}</li>
        </ul>
      </details>
    </div>
  );
}
