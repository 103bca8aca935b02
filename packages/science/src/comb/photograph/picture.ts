/**
 * A picture as the comb room sees it: interleaved 8-bit colour, three (RGB) or four (RGBA) bytes per pixel, row by row
 * from the top left. Alpha is ignored: whoever decodes lays transparent pictures on a plain ground first.
 */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array | Uint8ClampedArray;
}

/** One plane of numbers the size of a picture, row by row. */
export interface Plane {
  readonly width: number;
  readonly height: number;
  readonly data: Float32Array;
}

/** Bytes per pixel of the picture: 3 or 4. */
export function channelsOf(picture: Picture): 3 | 4 {
  const channels = picture.data.length / (picture.width * picture.height);
  if (channels !== 3 && channels !== 4) {
    throw new RangeError(
      `picture of ${picture.width} x ${picture.height} pixels carries ${picture.data.length} bytes; ` +
        'give 3 (RGB) or 4 (RGBA) bytes for each pixel',
    );
  }
  return channels;
}

/**
 * Checks that a picture is well formed.
 *
 * @throws RangeError when width or height is not a positive whole number, or the bytes do not fit them
 */
export function checkPicture(picture: Picture): void {
  for (const [name, value] of [
    ['width', picture.width],
    ['height', picture.height],
  ] as const) {
    if (!Number.isInteger(value) || value < 1) {
      throw new RangeError(`picture ${name} is ${value}; it must be a whole number of pixels, 1 or more`);
    }
  }
  channelsOf(picture);
}

/**
 * Shrinks a picture by averaging over the area each new pixel covers (never enlarges).
 *
 * @param scale new size over old size, 0 < scale <= 1
 * @returns three planes (red, green, blue), 0 to 255; pixel (x, y) of the result has its centre at
 *   ((x + 0.5) / scale - 0.5, ...) of the original
 */
export function shrink(picture: Picture, scale: number): { red: Plane; green: Plane; blue: Plane } {
  const channels = channelsOf(picture);
  const { width, height, data } = picture;
  const w = Math.max(1, Math.round(width * scale));
  const h = Math.max(1, Math.round(height * scale));
  const red = new Float32Array(w * h);
  const green = new Float32Array(w * h);
  const blue = new Float32Array(w * h);
  if (w === width && h === height) {
    for (let k = 0, s = 0; k < w * h; k++, s += channels) {
      red[k] = data[s] as number;
      green[k] = data[s + 1] as number;
      blue[k] = data[s + 2] as number;
    }
  } else {
    // Column by column the share of each source pixel is the same for every row, so it is worked out once.
    const stepX = width / w;
    const stepY = height / h;
    const rowRed = new Float32Array(w);
    const rowGreen = new Float32Array(w);
    const rowBlue = new Float32Array(w);
    const inverse = 1 / (stepX * stepY);
    const target = new Int32Array(width);
    const share = new Float32Array(width);
    for (let x = 0; x < width; x++) {
      const t = Math.min(w - 1, Math.floor(x / stepX));
      target[x] = t;
      share[x] = Math.min(1, (t + 1) * stepX - x);
    }
    const flush = (y: number, part: number): void => {
      const base = y * w;
      for (let x = 0; x < w; x++) {
        red[base + x] = (red[base + x] as number) + part * (rowRed[x] as number);
        green[base + x] = (green[base + x] as number) + part * (rowGreen[x] as number);
        blue[base + x] = (blue[base + x] as number) + part * (rowBlue[x] as number);
      }
    };
    for (let y = 0; y < height; y++) {
      rowRed.fill(0);
      rowGreen.fill(0);
      rowBlue.fill(0);
      let s = y * width * channels;
      for (let x = 0; x < width; x++, s += channels) {
        const t = target[x] as number;
        const a = share[x] as number;
        const r = data[s] as number;
        const g = data[s + 1] as number;
        const b = data[s + 2] as number;
        rowRed[t] = (rowRed[t] as number) + a * r;
        rowGreen[t] = (rowGreen[t] as number) + a * g;
        rowBlue[t] = (rowBlue[t] as number) + a * b;
        if (a < 1 && t + 1 < w) {
          const rest = 1 - a;
          rowRed[t + 1] = (rowRed[t + 1] as number) + rest * r;
          rowGreen[t + 1] = (rowGreen[t + 1] as number) + rest * g;
          rowBlue[t + 1] = (rowBlue[t + 1] as number) + rest * b;
        }
      }
      const t = Math.min(h - 1, Math.floor(y / stepY));
      const a = Math.min(1, (t + 1) * stepY - y);
      flush(t, a * inverse);
      if (a < 1 && t + 1 < h) flush(t + 1, (1 - a) * inverse);
    }
  }
  return {
    red: { width: w, height: h, data: red },
    green: { width: w, height: h, data: green },
    blue: { width: w, height: h, data: blue },
  };
}

/**
 * Brightness of a picture, shrunk as by `shrink`; the colours are never held, which matters for twelve million pixels.
 *
 * @param scale new size over old size, 0 < scale <= 1
 */
export function shrinkToGrey(picture: Picture, scale: number): Plane {
  const channels = channelsOf(picture);
  const { width, height, data } = picture;
  const w = Math.max(1, Math.round(width * scale));
  const h = Math.max(1, Math.round(height * scale));
  const grey = new Float32Array(w * h);
  if (w === width && h === height) {
    for (let k = 0, s = 0; k < grey.length; k++, s += channels) {
      grey[k] = 0.299 * (data[s] as number) + 0.587 * (data[s + 1] as number) + 0.114 * (data[s + 2] as number);
    }
    return { width: w, height: h, data: grey };
  }
  const stepX = width / w;
  const stepY = height / h;
  const inverse = 1 / (stepX * stepY);
  const row = new Float32Array(w + 1);
  const target = new Int32Array(width);
  const share = new Float32Array(width);
  for (let x = 0; x < width; x++) {
    const t = Math.min(w - 1, Math.floor(x / stepX));
    target[x] = t;
    share[x] = Math.min(1, (t + 1) * stepX - x);
  }
  for (let y = 0; y < height; y++) {
    row.fill(0);
    for (let x = 0, s = y * width * channels; x < width; x++, s += channels) {
      const value = 0.299 * (data[s] as number) + 0.587 * (data[s + 1] as number) + 0.114 * (data[s + 2] as number);
      const t = target[x] as number;
      const a = share[x] as number;
      row[t] = (row[t] as number) + a * value;
      row[t + 1] = (row[t + 1] as number) + (1 - a) * value;
    }
    const t = Math.min(h - 1, Math.floor(y / stepY));
    const a = Math.min(1, (t + 1) * stepY - y);
    const base = t * w;
    for (let x = 0; x < w; x++) grey[base + x] = (grey[base + x] as number) + a * inverse * (row[x] as number);
    if (a < 1 && t + 1 < h) {
      const next = base + w;
      for (let x = 0; x < w; x++) grey[next + x] = (grey[next + x] as number) + (1 - a) * inverse * (row[x] as number);
    }
  }
  return { width: w, height: h, data: grey };
}

/** Brightness of each pixel, 0 to 255: the weights of ITU-R BT.601 (from memory), as JPEG uses them. */
export function brightness(colour: { red: Plane; green: Plane; blue: Plane }): Plane {
  const { width, height } = colour.red;
  const data = new Float32Array(width * height);
  const r = colour.red.data;
  const g = colour.green.data;
  const b = colour.blue.data;
  for (let k = 0; k < data.length; k++) {
    data[k] = 0.299 * (r[k] as number) + 0.587 * (g[k] as number) + 0.114 * (b[k] as number);
  }
  return { width, height, data };
}

/** A picture of half the size, RGB, each pixel the rounded mean of two by two; an odd last row or column is left off. */
export function halvePicture(picture: Picture): Picture {
  const channels = channelsOf(picture);
  const { width, data } = picture;
  const w = width >> 1;
  const h = picture.height >> 1;
  const out = new Uint8Array(w * h * 3);
  const row = width * channels;
  for (let y = 0, t = 0; y < h; y++) {
    for (let x = 0, s = 2 * y * row; x < w; x++, s += 2 * channels, t += 3) {
      const r = s + channels;
      const below = s + row;
      const corner = below + channels;
      out[t] =
        ((data[s] as number) + (data[r] as number) + (data[below] as number) + (data[corner] as number) + 2) >> 2;
      out[t + 1] =
        ((data[s + 1] as number) +
          (data[r + 1] as number) +
          (data[below + 1] as number) +
          (data[corner + 1] as number) +
          2) >>
        2;
      out[t + 2] =
        ((data[s + 2] as number) +
          (data[r + 2] as number) +
          (data[below + 2] as number) +
          (data[corner + 2] as number) +
          2) >>
        2;
    }
  }
  return { width: w, height: h, data: out };
}

/** Halves a plane by averaging two by two. */
export function halve(plane: Plane): Plane {
  const w = plane.width >> 1;
  const h = plane.height >> 1;
  const data = new Float32Array(w * h);
  const from = plane.data;
  for (let y = 0; y < h; y++) {
    let a = 2 * y * plane.width;
    let b = a + plane.width;
    for (let x = 0; x < w; x++, a += 2, b += 2) {
      data[y * w + x] =
        0.25 * ((from[a] as number) + (from[a + 1] as number) + (from[b] as number) + (from[b + 1] as number));
    }
  }
  return { width: w, height: h, data };
}

/**
 * Mean over a square window, edges clamped: running sums down each column and across them, so the cost does not depend
 * on the radius.
 *
 * @param radius half the side, whole pixels, 0 or more
 */
export function windowMean(plane: Plane, radius: number): Plane {
  const { width, height, data } = plane;
  const out = new Float32Array(width * height);
  // Sum of each column over the rows in the window.
  const columns = new Float64Array(width);
  let rows = 0;
  for (let y = 0; y < Math.min(height, radius); y++) {
    const base = y * width;
    for (let x = 0; x < width; x++) columns[x] = (columns[x] as number) + (data[base + x] as number);
    rows++;
  }
  for (let y = 0; y < height; y++) {
    if (y + radius < height) {
      const base = (y + radius) * width;
      for (let x = 0; x < width; x++) columns[x] = (columns[x] as number) + (data[base + x] as number);
      rows++;
    }
    if (y - radius - 1 >= 0) {
      const base = (y - radius - 1) * width;
      for (let x = 0; x < width; x++) columns[x] = (columns[x] as number) - (data[base + x] as number);
      rows--;
    }
    let sum = 0;
    let across = 0;
    for (let x = 0; x < Math.min(width, radius); x++) {
      sum += columns[x] as number;
      across++;
    }
    const base = y * width;
    for (let x = 0; x < width; x++) {
      if (x + radius < width) {
        sum += columns[x + radius] as number;
        across++;
      }
      if (x - radius - 1 >= 0) {
        sum -= columns[x - radius - 1] as number;
        across--;
      }
      out[base + x] = sum / (across * rows);
    }
  }
  return { width, height, data: out };
}

/** Value of a plane between its pixels (bilinear, edges clamped). */
export function valueAt(plane: Plane, x: number, y: number): number {
  const { width, height, data } = plane;
  const cx = x < 0 ? 0 : x > width - 1 ? width - 1 : x;
  const cy = y < 0 ? 0 : y > height - 1 ? height - 1 : y;
  const x0 = Math.floor(cx);
  const y0 = Math.floor(cy);
  const x1 = x0 + 1 < width ? x0 + 1 : x0;
  const y1 = y0 + 1 < height ? y0 + 1 : y0;
  const fx = cx - x0;
  const fy = cy - y0;
  const top = (data[y0 * width + x0] as number) * (1 - fx) + (data[y0 * width + x1] as number) * fx;
  const bottom = (data[y1 * width + x0] as number) * (1 - fx) + (data[y1 * width + x1] as number) * fx;
  return top * (1 - fy) + bottom * fy;
}
