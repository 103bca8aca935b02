/** How a photograph as stored lies to the one a person sees: a camera held on its side stores it lying. */
export interface Turn {
  /** EXIF orientation, 1 to 8. */
  readonly orientation: number;
  /** Pixels as stored. */
  readonly width: number;
  readonly height: number;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Size of the upright picture. */
export function uprightSize({ orientation, width, height }: Turn): { readonly width: number; readonly height: number } {
  return orientation >= 5 ? { width: height, height: width } : { width, height };
}

/** A pixel as stored, in the upright picture. Pixels are counted from 0, whole numbers at their middle. */
export function toUpright({ orientation, width, height }: Turn, { x, y }: Point): Point {
  const right = width - 1 - x;
  const up = height - 1 - y;
  switch (orientation) {
    case 2:
      return { x: right, y };
    case 3:
      return { x: right, y: up };
    case 4:
      return { x, y: up };
    case 5:
      return { x: y, y: x };
    case 6:
      return { x: up, y: x };
    case 7:
      return { x: up, y: right };
    case 8:
      return { x: y, y: right };
    default:
      return { x, y };
  }
}

/** The other way round: a pixel of the upright picture as it is stored. */
export function toStored(turn: Turn, point: Point): Point {
  const { width, height } = uprightSize(turn);
  // Each turn undoes itself, but for the two quarter turns, which undo one another.
  const back = turn.orientation === 6 ? 8 : turn.orientation === 8 ? 6 : turn.orientation;
  return toUpright({ orientation: back, width, height }, point);
}
