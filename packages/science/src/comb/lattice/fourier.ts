/**
 * The two-dimensional discrete Fourier transform of a square tile, in place (radix 2, Cooley and Tukey).
 *
 * @param size side of the tile, a power of two
 * @returns a function that transforms real and imaginary parts (size x size each), without scaling
 */
export function tileTransform(size: number): (real: Float64Array, imaginary: Float64Array) => void {
  if (size < 2 || (size & (size - 1)) !== 0) throw new RangeError(`tile side ${size} is not a power of two`);
  const cosine = new Float64Array(size / 2);
  const sine = new Float64Array(size / 2);
  for (let k = 0; k < size / 2; k++) {
    cosine[k] = Math.cos((2 * Math.PI * k) / size);
    sine[k] = -Math.sin((2 * Math.PI * k) / size);
  }
  const bits = Math.log2(size);
  const reversed = new Int32Array(size);
  for (let k = 0; k < size; k++) {
    let r = 0;
    for (let b = 0; b < bits; b++) if (k & (1 << b)) r |= 1 << (bits - 1 - b);
    reversed[k] = r;
  }

  const line = (re: Float64Array, im: Float64Array, start: number): void => {
    for (let k = 0; k < size; k++) {
      const r = reversed[k] as number;
      if (r > k) {
        const a = start + k;
        const b = start + r;
        const tr = re[a] as number;
        re[a] = re[b] as number;
        re[b] = tr;
        const ti = im[a] as number;
        im[a] = im[b] as number;
        im[b] = ti;
      }
    }
    for (let half = 1; half < size; half <<= 1) {
      const turn = size / (2 * half);
      for (let block = 0; block < size; block += 2 * half) {
        for (let k = 0; k < half; k++) {
          const c = cosine[k * turn] as number;
          const s = sine[k * turn] as number;
          const a = start + block + k;
          const b = a + half;
          const br = re[b] as number;
          const bi = im[b] as number;
          const tr = br * c - bi * s;
          const ti = br * s + bi * c;
          const ar = re[a] as number;
          const ai = im[a] as number;
          re[b] = ar - tr;
          im[b] = ai - ti;
          re[a] = ar + tr;
          im[a] = ai + ti;
        }
      }
    }
  };

  const columnReal = new Float64Array(size);
  const columnImaginary = new Float64Array(size);
  return (real, imaginary) => {
    for (let y = 0; y < size; y++) line(real, imaginary, y * size);
    // Columns are copied out: numbers a whole row apart fall on the same few lines of the processor's cache.
    for (let x = 0; x < size; x++) {
      for (let y = 0, k = x; y < size; y++, k += size) {
        columnReal[y] = real[k] as number;
        columnImaginary[y] = imaginary[k] as number;
      }
      line(columnReal, columnImaginary, 0);
      for (let y = 0, k = x; y < size; y++, k += size) {
        real[k] = columnReal[y] as number;
        imaginary[k] = columnImaginary[y] as number;
      }
    }
  };
}
