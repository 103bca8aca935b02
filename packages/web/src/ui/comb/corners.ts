export interface Corner {
  readonly x: number;
  readonly y: number;
}

/** The comb's corners in pixels of the upright picture: clockwise from the top left one. */
export type Corners = readonly [Corner, Corner, Corner, Corner];

/** Their names, in the same order. */
export const cornerNames = ['top-left', 'top-right', 'bottom-right', 'bottom-left'] as const;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where the corners stand before anybody knows better: so far from each edge, as a share of the picture. */
const inset = 0.1;
/** The reading refuses pictures of a shorter side (`science/comb/read-comb.ts`), and so parts of one. */
const shortestSide = 96;
/** A smaller share of the picture is taken for a slip of the finger. A setting of ours. */
const smallestShare = 0.01;

/** Corners of which only the first four are taken: null when there are fewer. */
export function cornersOf(places: readonly Corner[]): Corners | null {
  const [one, two, three, four] = places;
  return one && two && three && four ? [one, two, three, four] : null;
}

/** Corners to begin with: a rectangle a little within the picture. */
export function insetCorners({ width, height }: Size): Corners {
  const [left, top] = [inset * (width - 1), inset * (height - 1)];
  const [right, bottom] = [width - 1 - left, height - 1 - top];
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

/** The corners with one of them at another place, kept within the picture. */
export function withCorner(corners: Corners, which: number, to: Corner, { width, height }: Size): Corners {
  const place = { x: Math.min(Math.max(to.x, 0), width - 1), y: Math.min(Math.max(to.y, 0), height - 1) };
  return corners.map((corner, n) => (n === which ? place : corner)) as unknown as Corners;
}

/** Which of the corners is nearest to a place, 0 to 3. */
export function nearestCorner(corners: Corners, { x, y }: Corner): number {
  const far = corners.map((corner) => Math.hypot(corner.x - x, corner.y - y));
  return far.indexOf(Math.min(...far));
}

/**
 * Why nothing can be read between these corners: their lines do not go once around a part, clockwise and without a dent
 * (no flat comb, however tilted, looks so), or what lies between them is too small.
 */
export function cornersTrouble(corners: Corners, { width, height }: Size): 'crossed' | 'too-small' | null {
  const bends = corners.map((corner, n) => {
    const next = corners[(n + 1) % 4] as Corner;
    const after = corners[(n + 2) % 4] as Corner;
    return (next.x - corner.x) * (after.y - next.y) - (next.y - corner.y) * (after.x - next.x);
  });
  if (bends.some((bend) => bend <= 0)) return 'crossed';
  const twiceArea = corners.reduce((sum, corner, n) => {
    const next = corners[(n + 1) % 4] as Corner;
    return sum + corner.x * next.y - next.x * corner.y;
  }, 0);
  const across = Math.max(...corners.map((one) => one.x)) - Math.min(...corners.map((one) => one.x));
  const down = Math.max(...corners.map((one) => one.y)) - Math.min(...corners.map((one) => one.y));
  const small = twiceArea / 2 < smallestShare * width * height || Math.min(across, down) < shortestSide;
  return small ? 'too-small' : null;
}
