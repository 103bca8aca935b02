import { type MapExtent, mapExtent } from '@combside/contract/map';
import * as maplibre from 'maplibre-gl';
import workerUrl from 'maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url';
import { type RefObject, useEffect, useRef, useState } from 'react';
import { ask } from '../../device/ask/ask.ts';
import { useWords } from '../../ui/words-context.tsx';
import { addBackground } from './background.ts';
import { fetchBaseMap, graticule } from './base-map.ts';
import { mapStyle } from './map-style.ts';
import { mapImages } from './mark-images.ts';

// The library does not find its worker in a bundle by itself, and draws an empty map without a word.
maplibre.setWorkerUrl(workerUrl);

/** The map as it is drawn: land, lines of degrees and what the office has set behind; no apiaries yet. */
export interface DrawnMap {
  /** Where it is drawn. */
  readonly frame: RefObject<HTMLDivElement | null>;
  /** Null until it stands. */
  readonly map: maplibre.Map | null;
  /** The window that holds every apiary; null while that is not known. */
  readonly extent: MapExtent | null;
  readonly failed: boolean;
  /** What the office has set behind its apiaries did not come. */
  readonly bare: boolean;
}

/** Draws the map, once for each language. */
export function useDrawnMap(): DrawnMap {
  const words = useWords();
  const frame = useRef<HTMLDivElement>(null);
  const [map, setMap] = useState<maplibre.Map | null>(null);
  const [failed, setFailed] = useState(false);
  const [extent, setExtent] = useState<MapExtent | null>(null);
  const [bare, setBare] = useState(false);

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

  return { frame, map, extent, failed, bare };
}

async function askExtent(): Promise<MapExtent | null> {
  try {
    return await ask(mapExtent, '/api/map/extent');
  } catch {
    return null;
  }
}

/** A window as the map takes it. */
export function boundsOf(box: NonNullable<MapExtent['box']>): [number, number, number, number] {
  return [box.west, box.south, box.east, box.north];
}
