import { identifier } from '@combside/record/entry';
import { z } from 'zod';

/** Query of `GET /api/map`: what lies in a window. Without a district: all that are granted. */
export const mapAsked = z.strictObject({
  district: z.string().max(80).optional(),
  /** west,south,east,north in degrees; west > east crosses the 180th meridian. */
  box: z.string().regex(/^-?\d+(\.\d+)?(,-?\d+(\.\d+)?){3}$/, 'expected west,south,east,north in degrees'),
  /** Zoom of the map (each step halves what a pixel covers), which says how wide a heap is. */
  zoom: z.coerce.number().min(0).max(24),
});
export type MapAsked = z.infer<typeof mapAsked>;

/** One apiary where it stands, with the word of its gravest colony. */
export const mapPoint = z.object({
  apiary: identifier,
  name: z.string(),
  latitude: z.number(),
  longitude: z.number(),
  uncertaintyMetres: z.number().nullable(),
  mark: z.string().nullable(),
});
export type MapPoint = z.infer<typeof mapPoint>;

/** Apiaries too many to be shown one by one: their middle, how many, and in how many of them a suspicion stands. */
export const mapHeap = z.object({
  latitude: z.number(),
  longitude: z.number(),
  apiaries: z.int(),
  suspect: z.int(),
});
export type MapHeap = z.infer<typeof mapHeap>;

/** Either points or heaps: few enough to be drawn one by one, or gathered. */
export const mapAnswer = z.object({
  points: z.array(mapPoint),
  heaps: z.array(mapHeap),
  apiaries: z.int(),
});
export type MapAnswer = z.infer<typeof mapAnswer>;

/**
 * `GET /api/map/background`: what an office has set behind its apiaries, beyond the land that the program brings along: an
 * archive of tiles (PMTiles) at the server, or picture tiles at an address with {z}, {x} and {y}.
 */
export const mapBackground = z.object({
  kind: z.enum(['none', 'archive', 'tiles']),
  address: z.string().nullable(),
});
export type MapBackground = z.infer<typeof mapBackground>;

/** `GET /api/map/extent`: the window that holds every apiary granted; null where none has a position. */
export const mapExtent = z.object({
  box: z.object({ west: z.number(), south: z.number(), east: z.number(), north: z.number() }).nullable(),
  /** Apiaries without a position: they stand in the list only. */
  unplaced: z.int(),
});
export type MapExtent = z.infer<typeof mapExtent>;
