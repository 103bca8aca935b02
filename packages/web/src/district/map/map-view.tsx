import 'maplibre-gl/dist/maplibre-gl.css';
import { markOfResult, wordsOfMarks } from '@combside/casework/result/result-mark';
import { gravityOf, saysSuspect } from '@combside/casework/result/result-words';
import { type MapAnswer, type MapExtent, mapAnswer, mapExtent } from '@combside/contract/map';
import type { FeatureCollection } from 'geojson';
import * as maplibre from 'maplibre-gl';
import workerUrl from 'maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url';
import { useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { ask } from '../../device/ask/ask.ts';
import { Button } from '../../ui/button.tsx';
import { ResultMark } from '../../ui/result-mark.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskAddress } from '../desk-address.ts';
import { useArrivals } from '../office/arrivals.ts';
import { addBackground } from './background.ts';
import { fetchBaseMap, graticule } from './base-map.ts';
import { MapFailed } from './map-failed.tsx';
import { mapStyle } from './map-style.ts';
import { imageOfMark, mapImages } from './mark-images.ts';

// The library does not find its worker in a bundle by itself, and draws an empty map without a word.
maplibre.setWorkerUrl(workerUrl);

/** What the key explains: not looked at, then from the least to the gravest. */
const shownInKey = [null, ...[...wordsOfMarks].reverse()];

/** The apiaries on a map: single marks where they are few, heaps with their number where they are many. */
export default function MapView({ chosen }: { readonly chosen: string | null }) {
  const words = useWords();
  const desk = useDeskAddress();
  const [, go] = useLocation();
  const frame = useRef<HTMLDivElement>(null);
  const [map, setMap] = useState<maplibre.Map | null>(null);
  const [failed, setFailed] = useState(false);
  const [extent, setExtent] = useState<MapExtent | null>(null);
  const [answer, setAnswer] = useState<MapAnswer | null>(null);
  const [older, setOlder] = useState(false);
  const [bare, setBare] = useState(false);
  const open = useRef((_apiary: string) => {});
  open.current = (apiary) => go(desk.to(`/apiary/${apiary}`));

  useEffect(() => {
    const box = frame.current;
    if (!box) return;
    let left = false;
    let made: maplibre.Map | null = null;
    const make = async () => {
      const [base, holds] = await Promise.all([fetchBaseMap(), askExtent()]);
      if (left) return;
      setExtent(holds);
      made = new maplibre.Map({
        container: box,
        style: mapStyle(base),
        attributionControl: false,
        locale: { 'Map.Title': words.say('district.map') },
        dragRotate: false,
        pitchWithRotate: false,
        maxPitch: 0,
        fadeDuration: 0,
        ...(holds?.box ? { bounds: boundsOf(holds.box), fitBoundsOptions: { padding: 48, maxZoom: 13 } } : { zoom: 1 }),
      });
      made.touchZoomRotate.disableRotation();
      made.addControl(new maplibre.ScaleControl({ unit: 'metric' }), 'bottom-left');
      made.on('load', () => {
        if (left || !made) return;
        for (const { name, data, pixelRatio } of mapImages()) made.addImage(name, data, { pixelRatio });
        void addBackground(made, () => setBare(true));
        void (made.getSource('degrees') as maplibre.GeoJSONSource).setData(graticule(holds?.box ?? null));
        // A map may be empty without a word: tests ask this one what it has really drawn.
        Object.assign(box, { map: made });
        setMap(made);
      });
    };
    make().catch(() => {
      if (!left) setFailed(true);
    });
    return () => {
      left = true;
      made?.remove();
    };
  }, [words]);

  const askAgain = useRef(() => {});
  useEffect(() => {
    if (!map) return;
    let turn = 0;
    const askWindow = async () => {
      turn += 1;
      const mine = turn;
      const bounds = map.getBounds();
      const box = [
        Math.max(-180, bounds.getWest()),
        Math.max(-90, bounds.getSouth()),
        Math.min(180, bounds.getEast()),
        Math.min(90, bounds.getNorth()),
      ].map((degrees) => degrees.toFixed(6));
      try {
        const found = await ask(mapAnswer, `/api/map?box=${box.join(',')}&zoom=${map.getZoom().toFixed(2)}`);
        if (mine !== turn) return;
        setAnswer(found);
        setOlder(false);
      } catch {
        if (mine === turn) setOlder(true);
      }
    };
    askAgain.current = () => void askWindow();
    const moved = () => void askWindow();
    map.on('moveend', moved);
    void askWindow();
    return () => {
      turn = -1;
      map.off('moveend', moved);
    };
  }, [map]);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useArrivals((event) => {
    if (!['apiary', 'colony'].includes(event.about.type)) return;
    clearTimeout(timer.current);
    timer.current = setTimeout(() => askAgain.current(), 250);
  });

  useEffect(() => {
    if (!map || !answer) return;
    const source = map.getSource('apiaries') as maplibre.GeoJSONSource;
    void source.setData(featuresOf(answer, chosen, (count) => words.number(count)));
    const container = map.getContainer();
    container.dataset.shown = String(answer.apiaries);
  }, [map, answer, chosen, words]);

  useEffect(() => {
    if (!map) return;
    const click = (event: maplibre.MapMouseEvent) => {
      const near = 6;
      const { x, y } = event.point;
      const [hit] = map.queryRenderedFeatures(
        [
          [x - near, y - near],
          [x + near, y + near],
        ],
        { layers: ['marks', 'heaps'] },
      );
      if (!hit) return;
      const { apiary } = hit.properties as { apiary?: string };
      if (apiary) open.current(apiary);
      else map.easeTo({ center: event.lngLat, zoom: map.getZoom() + 2, duration: calm() ? 0 : 150 });
    };
    const over = (event: maplibre.MapMouseEvent) => {
      const hit = map.queryRenderedFeatures(event.point, { layers: ['marks', 'heaps'] });
      map.getCanvas().style.cursor = hit.length > 0 ? 'pointer' : '';
    };
    map.on('click', click);
    map.on('mousemove', over);
    return () => {
      map.off('click', click);
      map.off('mousemove', over);
    };
  }, [map]);

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

async function askExtent(): Promise<MapExtent | null> {
  try {
    return await ask(mapExtent, '/api/map/extent');
  } catch {
    return null;
  }
}

function boundsOf(box: NonNullable<MapExtent['box']>): [number, number, number, number] {
  return [box.west, box.south, box.east, box.north];
}

function calm(): boolean {
  return matchMedia('(prefers-reduced-motion: reduce)').matches;
}

function featuresOf(answer: MapAnswer, chosen: string | null, say: (count: number) => string): FeatureCollection {
  return {
    type: 'FeatureCollection',
    features: [
      ...answer.points.map((one) => ({
        type: 'Feature' as const,
        geometry: { type: 'Point' as const, coordinates: [one.longitude, one.latitude] },
        properties: {
          apiary: one.apiary,
          name: one.name,
          image: imageOfMark(markOfResult(one.mark)),
          // The gravest mark lies on top.
          weight: gravityOf(one.mark),
          chosen: one.apiary === chosen,
        },
      })),
      ...answer.heaps.map((heap) => ({
        type: 'Feature' as const,
        geometry: { type: 'Point' as const, coordinates: [heap.longitude, heap.latitude] },
        properties: {
          count: heap.apiaries,
          label: say(heap.apiaries),
          image: heap.suspect > 0 ? 'heap suspect' : 'heap',
          suspect: heap.suspect,
        },
      })),
    ],
  };
}
