import { type MapAnswer, mapAnswer } from '@combside/contract/map';
import type { Map as DrawnMap } from 'maplibre-gl';
import { useEffect, useRef, useState } from 'react';
import { ask } from '../../device/ask/ask.ts';
import { useArrivals } from '../office/arrivals.ts';
import { Calmly } from '../office/calmly.ts';
import { restBetweenAskings } from '../office/use-asked-again.ts';

/**
 * What lies in the window of the map, asked for again when the map was moved and when an arrival touches it. The last answer
 * stays in sight meanwhile, whatever window it was of.
 *
 * @param map null until it stands
 * @returns `older`: what is shown is not of now, since the office did not answer
 */
export function useMapWindow(map: DrawnMap | null): { readonly answer: MapAnswer | null; readonly older: boolean } {
  const [answer, setAnswer] = useState<MapAnswer | null>(null);
  const [older, setOlder] = useState(false);
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
  const [calmly] = useState(() => new Calmly(restBetweenAskings, () => askAgain.current()));
  useEffect(() => () => calmly.stop(), [calmly]);
  useArrivals((event) => {
    if (['apiary', 'colony'].includes(event.about.type)) calmly.act();
  });
  return { answer, older };
}
