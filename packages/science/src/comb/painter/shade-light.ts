/** Light over a painted comb, and the two shapes every shading needs. Lengths in pitches. */

export interface Light {
  /** Way of the sunlight over the comb per pitch of depth. */
  readonly u: number;
  readonly v: number;
  /** Towards the light, for slopes: horizontal part and height. */
  readonly towardsU: number;
  readonly towardsV: number;
  readonly up: number;
}

/** Distance from the middle of a regular hexagon in units of its half width. */
export function hexagon(u: number, v: number): number {
  return Math.max(Math.abs(u), Math.abs(0.5 * u + 0.8660254 * v), Math.abs(-0.5 * u + 0.8660254 * v));
}

/** 0 up to `low`, 1 from `high` on, smooth between. */
export function ease(low: number, high: number, x: number): number {
  const t = x <= low ? 0 : x >= high ? 1 : (x - low) / (high - low);
  return t * t * (3 - 2 * t);
}
