/** Finds cells near a place without looking at all of them. */
export class PlaceIndex {
  private readonly bins = new Map<number, number[]>();
  private readonly side: number;

  constructor(side: number) {
    this.side = side;
  }

  add(x: number, y: number): void {
    const k = this.bin(x, y);
    const list = this.bins.get(k);
    if (list) list.push(x, y);
    else this.bins.set(k, [x, y]);
  }

  /** Distance to the nearest place added, if one is within about a bin's side; else infinity. */
  nearest(x: number, y: number): number {
    let best = Number.POSITIVE_INFINITY;
    for (let oy = -1; oy <= 1; oy++) {
      for (let ox = -1; ox <= 1; ox++) {
        const list = this.bins.get(this.bin(x + ox * this.side, y + oy * this.side));
        if (!list) continue;
        for (let k = 0; k < list.length; k += 2) {
          const dx = (list[k] as number) - x;
          const dy = (list[k + 1] as number) - y;
          const d = dx * dx + dy * dy;
          if (d < best) best = d;
        }
      }
    }
    return Math.sqrt(best);
  }

  private bin(x: number, y: number): number {
    // Small enough for whole numbers the engine keeps without a box: pictures are thousands of bins across at most.
    return (Math.floor(x / this.side) + 1024) * 32_768 + Math.floor(y / this.side) + 1024;
  }
}
