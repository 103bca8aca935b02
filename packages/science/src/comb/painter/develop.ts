/** What a camera does to a painted picture: blur, noise, sharpening, contrast and JPEG. Planes of 0 to 255. */
import type { Chance } from '../../random/seeded.ts';
import type { PainterSettings } from './settings.ts';

export interface Planes {
  readonly width: number;
  readonly height: number;
  readonly red: Float32Array;
  readonly green: Float32Array;
  readonly blue: Float32Array;
}

/** What the camera makes of a painted scene; changes the planes. */
export function develop(planes: Planes, settings: PainterSettings, chance: Chance): void {
  // Cameras expose for the whole picture: bring the mean to a middle grey, so that `exposure` is an error of theirs.
  let total = 0;
  for (let k = 0; k < planes.red.length; k++) {
    total += 0.3 * (planes.red[k] as number) + 0.6 * (planes.green[k] as number) + 0.1 * (planes.blue[k] as number);
  }
  const gain = Math.min(2.6, (112 * planes.red.length) / Math.max(1, total)) * settings.light.exposure;
  for (const plane of [planes.red, planes.green, planes.blue]) {
    for (let k = 0; k < plane.length; k++) plane[k] = (plane[k] as number) * gain;
  }

  const { camera } = settings;
  blur(planes, (along) => camera.blur + camera.shallow * Math.abs(along - 0.5) * 2);
  if (camera.saturation !== 1) saturate(planes, camera.saturation);
  tone(planes, camera.contrast);
  if (camera.noise > 0) addNoise(planes, camera.noise, chance);
  if (camera.sharpen > 0) sharpen(planes, camera.sharpen);
  tone(planes, 1);
  if (camera.jpeg > 0) throughJpeg(planes, camera.jpeg, chance.uniform() < 0.6);
}

/** Blurs with a bell of standard deviation `sigma(y)` pixels along both directions. */
function blur(planes: Planes, sigma: (along: number) => number): void {
  const { width, height } = planes;
  const kernels = Array.from({ length: 33 }, (_, k) => {
    const s = sigma(k / 32);
    const radius = Math.max(0, Math.ceil(2.6 * s));
    const weights = new Float64Array(2 * radius + 1);
    let sum = 0;
    for (let d = -radius; d <= radius; d++) {
      weights[d + radius] = s > 0 ? Math.exp((-0.5 * d * d) / (s * s)) : 1;
      sum += weights[d + radius] as number;
    }
    for (let d = 0; d < weights.length; d++) weights[d] = (weights[d] as number) / sum;
    return weights;
  });
  const line = new Float32Array(Math.max(width, height));
  for (const plane of [planes.red, planes.green, planes.blue]) {
    for (let y = 0; y < height; y++) {
      const kernel = kernels[Math.round((y / height) * 32)] as Float64Array;
      const radius = (kernel.length - 1) / 2;
      if (radius === 0) continue;
      for (let x = 0; x < width; x++) line[x] = plane[y * width + x] as number;
      for (let x = 0; x < width; x++) {
        let sum = 0;
        for (let d = -radius; d <= radius; d++) {
          const sx = x + d < 0 ? 0 : x + d >= width ? width - 1 : x + d;
          sum += (kernel[d + radius] as number) * (line[sx] as number);
        }
        plane[y * width + x] = sum;
      }
    }
    for (let x = 0; x < width; x++) {
      for (let y = 0; y < height; y++) line[y] = plane[y * width + x] as number;
      for (let y = 0; y < height; y++) {
        const kernel = kernels[Math.round((y / height) * 32)] as Float64Array;
        const radius = (kernel.length - 1) / 2;
        if (radius === 0) continue;
        let sum = 0;
        for (let d = -radius; d <= radius; d++) {
          const sy = y + d < 0 ? 0 : y + d >= height ? height - 1 : y + d;
          sum += (kernel[d + radius] as number) * (line[sy] as number);
        }
        plane[y * width + x] = sum;
      }
    }
  }
}

/** Adds what the sensor adds; half of it shared by the colours. */
function addNoise(planes: Planes, strength: number, chance: Chance): void {
  // Normal draws are slow: a table of them, stepped through with uneven strides, is as good to the eye.
  const table = Float32Array.from({ length: 4099 }, () => chance.normal());
  let a = chance.integer(4099);
  for (let k = 0; k < planes.red.length; k++) {
    a = (a + 1 + (k % 7)) % 4099;
    const shared = (table[a] as number) * 0.7 * strength;
    planes.red[k] = (planes.red[k] as number) + shared + 0.7 * strength * (table[(a + 1361) % 4099] as number);
    planes.green[k] = (planes.green[k] as number) + shared + 0.5 * strength * (table[(a + 2711) % 4099] as number);
    planes.blue[k] = (planes.blue[k] as number) + shared + 0.9 * strength * (table[(a + 613) % 4099] as number);
  }
}

/** A halo about one pixel wide, as cameras add. */
function sharpen(planes: Planes, amount: number): void {
  const { width, height } = planes;
  for (const plane of [planes.red, planes.green, planes.blue]) {
    const from = plane.slice();
    for (let y = 1; y < height - 1; y++) {
      for (let x = 1; x < width - 1; x++) {
        const k = y * width + x;
        const around =
          0.25 *
          ((from[k - 1] as number) +
            (from[k + 1] as number) +
            (from[k - width] as number) +
            (from[k + width] as number));
        plane[k] = (from[k] as number) + amount * ((from[k] as number) - around);
      }
    }
  }
}

/** Colour drawn towards grey (amount below 1) or away from it. */
function saturate(planes: Planes, amount: number): void {
  for (let k = 0; k < planes.red.length; k++) {
    const r = planes.red[k] as number;
    const g = planes.green[k] as number;
    const b = planes.blue[k] as number;
    const grey = 0.3 * r + 0.6 * g + 0.1 * b;
    planes.red[k] = grey + amount * (r - grey);
    planes.green[k] = grey + amount * (g - grey);
    planes.blue[k] = grey + amount * (b - grey);
  }
}

/** Contrast about middle grey, and clipping. */
function tone(planes: Planes, contrast: number): void {
  for (const plane of [planes.red, planes.green, planes.blue]) {
    for (let k = 0; k < plane.length; k++) {
      const v = 118 + contrast * ((plane[k] as number) - 118);
      plane[k] = v < 0 ? 0 : v > 255 ? 255 : v;
    }
  }
}

// Quantisation tables of ITU-T T.81 Annex K (from memory), luminance and chrominance.
const lumaTable = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51,
  87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101,
  72, 92, 95, 98, 112, 100, 103, 99,
];
const chromaTable = [
  17, 18, 24, 47, 99, 99, 99, 99, 18, 21, 26, 66, 99, 99, 99, 99, 24, 26, 56, 99, 99, 99, 99, 99, 47, 66, 99, 99, 99,
  99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99,
  99, 99, 99, 99, 99, 99,
];

/** Leaves the picture as it would come back from a JPEG of this quality (colour at full or half resolution). */
function throughJpeg(planes: Planes, quality: number, halfColour: boolean): void {
  const { width, height } = planes;
  const factor = quality < 50 ? 5000 / quality : 200 - 2 * quality;
  const scaledTable = (table: readonly number[]): Float64Array =>
    Float64Array.from(table, (q) => Math.min(255, Math.max(1, Math.floor((q * factor + 50) / 100))));
  const luma = new Float32Array(width * height);
  const blueness = new Float32Array(width * height);
  const redness = new Float32Array(width * height);
  for (let k = 0; k < luma.length; k++) {
    const r = planes.red[k] as number;
    const g = planes.green[k] as number;
    const b = planes.blue[k] as number;
    luma[k] = 0.299 * r + 0.587 * g + 0.114 * b - 128;
    blueness[k] = -0.168736 * r - 0.331264 * g + 0.5 * b;
    redness[k] = 0.5 * r - 0.418688 * g - 0.081312 * b;
  }
  blocks(luma, width, height, scaledTable(lumaTable));
  for (const plane of [blueness, redness]) {
    if (!halfColour) {
      blocks(plane, width, height, scaledTable(chromaTable));
      continue;
    }
    const w = Math.ceil(width / 2);
    const h = Math.ceil(height / 2);
    const small = new Float32Array(w * h);
    const counts = new Uint8Array(w * h);
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        const s = (y >> 1) * w + (x >> 1);
        small[s] = (small[s] as number) + (plane[y * width + x] as number);
        counts[s] = (counts[s] as number) + 1;
      }
    }
    for (let k = 0; k < small.length; k++) small[k] = (small[k] as number) / (counts[k] as number);
    blocks(small, w, h, scaledTable(chromaTable));
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) plane[y * width + x] = small[(y >> 1) * w + (x >> 1)] as number;
    }
  }
  const clip = (v: number): number => (v < 0 ? 0 : v > 255 ? 255 : v);
  for (let k = 0; k < luma.length; k++) {
    const y = (luma[k] as number) + 128;
    const cb = blueness[k] as number;
    const cr = redness[k] as number;
    planes.red[k] = clip(y + 1.402 * cr);
    planes.green[k] = clip(y - 0.344136 * cb - 0.714136 * cr);
    planes.blue[k] = clip(y + 1.772 * cb);
  }
}

const cosines = Float64Array.from({ length: 64 }, (_, k) => {
  const x = k & 7;
  const u = k >> 3;
  return (u === 0 ? Math.SQRT1_2 : 1) * 0.5 * Math.cos(((2 * x + 1) * u * Math.PI) / 16);
});

function blocks(plane: Float32Array, width: number, height: number, table: Float64Array): void {
  const block = new Float64Array(64);
  const half = new Float64Array(64);
  for (let top = 0; top < height; top += 8) {
    for (let left = 0; left < width; left += 8) {
      for (let y = 0; y < 8; y++) {
        const sy = Math.min(height - 1, top + y);
        for (let x = 0; x < 8; x++) block[y * 8 + x] = plane[sy * width + Math.min(width - 1, left + x)] as number;
      }
      turnBlock(block, half, false);
      for (let k = 0; k < 64; k++) {
        const q = table[k] as number;
        block[k] = Math.round((block[k] as number) / q) * q;
      }
      turnBlock(block, half, true);
      for (let y = 0; y < 8 && top + y < height; y++) {
        for (let x = 0; x < 8 && left + x < width; x++)
          plane[(top + y) * width + left + x] = block[y * 8 + x] as number;
      }
    }
  }
}

function turnBlock(block: Float64Array, half: Float64Array, back: boolean): void {
  for (let r = 0; r < 8; r++) {
    for (let u = 0; u < 8; u++) {
      let sum = 0;
      for (let x = 0; x < 8; x++)
        sum += (block[r * 8 + x] as number) * (back ? (cosines[x * 8 + u] as number) : (cosines[u * 8 + x] as number));
      half[r * 8 + u] = sum;
    }
  }
  for (let c = 0; c < 8; c++) {
    for (let v = 0; v < 8; v++) {
      let sum = 0;
      for (let y = 0; y < 8; y++)
        sum += (half[y * 8 + c] as number) * (back ? (cosines[y * 8 + v] as number) : (cosines[v * 8 + y] as number));
      block[v * 8 + c] = sum;
    }
  }
}
