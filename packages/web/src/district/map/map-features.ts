import { markOfResult } from '@combside/casework/result/result-mark';
import { gravityOf } from '@combside/casework/result/results-by-gravity';
import type { MapAnswer } from '@combside/contract/map';
import type { FeatureCollection } from 'geojson';
import { imageOfMark } from './mark-images.ts';

/**
 * Apiaries and heaps as the map takes them.
 *
 * @param chosen id of the apiary that is open
 * @param say writes a number
 */
export function featuresOf(
  answer: MapAnswer,
  chosen: string | null,
  say: (count: number) => string,
): FeatureCollection {
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
