/** Mean radius of the earth in metres (IUGG mean radius R1, 6371.0088 km, from memory). */
const earthRadius = 6_371_008.8;

export interface Point {
  /** WGS 84, degrees. */
  readonly latitude: number;
  readonly longitude: number;
}

/** Distance over a sphere in metres (haversine); within 0.6 % of that over the ellipsoid. */
export function metresBetween(a: Point, b: Point): number {
  const radians = Math.PI / 180;
  const latitudes = Math.sin(((b.latitude - a.latitude) * radians) / 2) ** 2;
  const longitudes = Math.sin(((b.longitude - a.longitude) * radians) / 2) ** 2;
  const inside = latitudes + Math.cos(a.latitude * radians) * Math.cos(b.latitude * radians) * longitudes;
  return 2 * earthRadius * Math.asin(Math.min(1, Math.sqrt(inside)));
}
