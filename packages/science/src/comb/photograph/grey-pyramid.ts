import { halve, type Picture, type Plane, shrinkToGrey } from './picture.ts';

/**
 * The brightness of one photograph at every size a step looks at. Each plane is made when it is first asked for, kept, and
 * handed along: no step shrinks the photograph again for itself.
 */
export class GreyPyramid {
  /** The photograph, as decoded. */
  readonly picture: Picture;
  private readonly sizes = new Map<string, Plane>();
  private readonly halves = new Map<Plane, Plane>();

  constructor(picture: Picture) {
    this.picture = picture;
  }

  /** No more than 1500 pixels across: a comb is some eighty cells wide, so a start shows unless the comb is far away. */
  get overview(): Plane {
    const longest = Math.max(this.picture.width, this.picture.height);
    return this.at(longest > 1500 ? 1400 / longest : 1);
  }

  /** Up to 3200 pixels across, for combs that are far away in a large picture. */
  get fine(): Plane {
    return this.at(Math.min(1, 3200 / Math.max(this.picture.width, this.picture.height)));
  }

  /**
   * Brightness, 0 to 255, shrunk by area.
   *
   * @param scale new size over old size, above 0, up to 1
   */
  at(scale: number): Plane {
    const width = Math.max(1, Math.round(this.picture.width * scale));
    const height = Math.max(1, Math.round(this.picture.height * scale));
    const size = `${width} x ${height}`;
    let plane = this.sizes.get(size);
    if (!plane) {
      plane = shrinkToGrey(this.picture, scale);
      this.sizes.set(size, plane);
    }
    return plane;
  }

  /** A plane of this pyramid at half its size, each pixel the mean of two by two. */
  half(plane: Plane): Plane {
    let smaller = this.halves.get(plane);
    if (!smaller) {
      smaller = halve(plane);
      this.halves.set(plane, smaller);
    }
    return smaller;
  }
}
