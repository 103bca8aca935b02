import type { Map as DrawnMap, MapMouseEvent } from 'maplibre-gl';
import { useEffect, useRef } from 'react';

/**
 * Opens the apiary whose mark is clicked, goes nearer where a heap is, and shows by the pointer what can be clicked.
 *
 * @param map null until it stands
 */
export function useMapPointer(map: DrawnMap | null, openApiary: (apiary: string) => void): void {
  const open = useRef(openApiary);
  open.current = openApiary;
  useEffect(() => {
    if (!map) return;
    const click = (event: MapMouseEvent) => {
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
    const over = (event: MapMouseEvent) => {
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
}

function calm(): boolean {
  return matchMedia('(prefers-reduced-motion: reduce)').matches;
}
