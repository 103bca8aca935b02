/** Tells whether a point lies in a polygon (even-odd rule). */
export function polygonTest(corners: readonly (readonly [number, number])[]): (x: number, y: number) => boolean {
  if (corners.length < 3) throw new RangeError(`a region needs three corners or more, got ${corners.length}`);
  return (x, y) => {
    let inside = false;
    for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
      const [xi, yi] = corners[i] as readonly [number, number];
      const [xj, yj] = corners[j] as readonly [number, number];
      if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside;
    }
    return inside;
  };
}
