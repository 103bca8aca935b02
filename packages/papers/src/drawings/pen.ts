export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where a point of a thing's own coordinates lies in the drawing. */
export type Placement = (x: number, y: number) => Point;

/** Nothing moved. */
export const asIs: Placement = (x, y) => ({ x, y });

/** Turned by `degrees` (clockwise on the page), scaled, and moved so that the own point (0, 0) falls on (x, y). */
export function placed(x: number, y: number, degrees = 0, scale = 1): Placement {
  const cos = Math.cos((degrees * Math.PI) / 180) * scale;
  const sin = Math.sin((degrees * Math.PI) / 180) * scale;
  return (u, v) => ({ x: x + u * cos - v * sin, y: y + u * sin + v * cos });
}

/** One placement inside another. */
export function within(outer: Placement, inner: Placement): Placement {
  return (x, y) => {
    const between = inner(x, y);
    return outer(between.x, between.y);
  };
}

const places = (value: number): string => String(Math.round(value * 100) / 100);

/** Builds one SVG path of absolute M, L, C and Z from a thing's own coordinates. */
export class Pen {
  #path = '';
  readonly #place: Placement;

  constructor(place: Placement = asIs) {
    this.#place = place;
  }

  #write(command: string, points: readonly (readonly [number, number])[]): this {
    const written = points.map(([x, y]) => {
      const at = this.#place(x, y);
      return `${places(at.x)} ${places(at.y)}`;
    });
    this.#path += `${command}${written.join(' ')}`;
    return this;
  }

  move(x: number, y: number): this {
    return this.#write('M', [[x, y]]);
  }

  line(...points: readonly (readonly [number, number])[]): this {
    for (const point of points) this.#write('L', [point]);
    return this;
  }

  curve(a: readonly [number, number], b: readonly [number, number], end: readonly [number, number]): this {
    return this.#write('C', [a, b, end]);
  }

  /** A smooth line through all points (Catmull-Rom, so no point is missed). `closed` joins the last to the first. */
  through(points: readonly (readonly [number, number])[], closed = false): this {
    const count = points.length;
    const at = (index: number): readonly [number, number] =>
      points[closed ? (index + count) % count : Math.max(0, Math.min(count - 1, index))] as readonly [number, number];
    this.#write('M', [at(0)]);
    for (let i = 0; i < (closed ? count : count - 1); i += 1) {
      const [before, from, to, after] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
      this.curve(
        [from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6],
        [to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6],
        to,
      );
    }
    return closed ? this.close() : this;
  }

  ellipse(x: number, y: number, rx: number, ry: number = rx): this {
    const kx = rx * 0.5523;
    const ky = ry * 0.5523;
    return this.move(x + rx, y)
      .curve([x + rx, y + ky], [x + kx, y + ry], [x, y + ry])
      .curve([x - kx, y + ry], [x - rx, y + ky], [x - rx, y])
      .curve([x - rx, y - ky], [x - kx, y - ry], [x, y - ry])
      .curve([x + kx, y - ry], [x + rx, y - ky], [x + rx, y])
      .close();
  }

  box(x: number, y: number, width: number, height: number): this {
    return this.move(x, y)
      .line([x + width, y], [x + width, y + height], [x, y + height])
      .close();
  }

  close(): this {
    this.#path += 'Z';
    return this;
  }

  get d(): string {
    return this.#path;
  }
}
