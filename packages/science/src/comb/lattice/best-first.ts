/** A queue that gives the highest rank first (binary heap). */
export class BestFirst<T> {
  private items: { item: T; rank: number }[] = [];

  push(item: T, rank: number): void {
    const heap = this.items;
    heap.push({ item, rank });
    let k = heap.length - 1;
    while (k > 0) {
      const up = (k - 1) >> 1;
      if ((heap[up] as { rank: number }).rank >= rank) break;
      [heap[k], heap[up]] = [heap[up] as { item: T; rank: number }, heap[k] as { item: T; rank: number }];
      k = up;
    }
  }

  pop(): T | undefined {
    const heap = this.items;
    const top = heap[0];
    const last = heap.pop();
    if (!top || !last) return undefined;
    if (heap.length > 0) {
      heap[0] = last;
      let k = 0;
      for (;;) {
        const l = 2 * k + 1;
        const r = l + 1;
        let best = k;
        if (l < heap.length && (heap[l] as { rank: number }).rank > (heap[best] as { rank: number }).rank) best = l;
        if (r < heap.length && (heap[r] as { rank: number }).rank > (heap[best] as { rank: number }).rank) best = r;
        if (best === k) break;
        [heap[k], heap[best]] = [heap[best] as { item: T; rank: number }, heap[k] as { item: T; rank: number }];
        k = best;
      }
    }
    return top.item;
  }

  clear(): void {
    this.items = [];
  }
}
