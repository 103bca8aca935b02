/*
 * Which class a cell belongs to: a small network of two hidden layers over the features of `cell-features.ts`, trained
 * on painted combs of the tuning family only (bench/comb-train.ts; seed and figures in the room's README). Beside the
 * classes it knows "no cell": places beyond the edge of the comb that the lattice ran on to.
 */
import type { DecidedClass } from './cell-classes.ts';

/** A network: layers of weights (row by row, one row per output), rectified between layers, shares at the end. */
export interface Network {
  readonly layers: readonly {
    readonly inputs: number;
    readonly outputs: number;
    readonly weights: Float32Array;
    readonly bias: Float32Array;
  }[];
}

/** How a network is written down: weights as whole numbers -127 to 127, base 64, with a step per output. */
export interface WrittenNetwork {
  readonly layers: readonly {
    readonly inputs: number;
    readonly outputs: number;
    readonly steps: readonly number[];
    readonly bias: readonly number[];
    readonly weights: string;
  }[];
}

/** What the outputs of the classifier stand for, in order. Eggs and larvae are one class but two outputs. */
export const outputs = [
  'sealed-worker-brood',
  'sealed-drone-brood',
  'sealed-honey',
  'open-empty',
  'egg',
  'larva',
  'nectar',
  'pollen',
  'hidden',
  'no cell',
] as const;

/** How many outputs the classifier has. */
export const outputCount = outputs.length;

/** The place of an output in the order. */
export function outputNumber(name: (typeof outputs)[number]): number {
  return outputs.indexOf(name);
}

/** The class an output belongs to; none for "no cell". */
export function classOfOutput(name: (typeof outputs)[number]): DecidedClass | undefined {
  if (name === 'no cell') return undefined;
  return name === 'egg' || name === 'larva' ? 'egg-or-larva' : name;
}

const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** @throws RangeError when the text does not hold the weights its sizes promise */
export function readNetwork(written: WrittenNetwork): Network {
  const value = new Int16Array(128).fill(-1);
  for (let k = 0; k < 64; k++) value[digits.charCodeAt(k)] = k;
  return {
    layers: written.layers.map(({ inputs, outputs, steps, bias, weights }, number) => {
      const bytes = new Int8Array(inputs * outputs);
      let n = 0;
      let bits = 0;
      let held = 0;
      for (let k = 0; k < weights.length && n < bytes.length; k++) {
        const v = value[weights.charCodeAt(k) & 127] as number;
        if (v < 0) break;
        held = (held << 6) | v;
        bits += 6;
        if (bits >= 8) {
          bits -= 8;
          bytes[n++] = (held >> bits) & 255;
          held &= (1 << bits) - 1;
        }
      }
      if (n < bytes.length || steps.length !== outputs || bias.length !== outputs) {
        throw new RangeError(`layer ${number} of the cell classifier is damaged: ${n} of ${bytes.length} weights`);
      }
      const plain = new Float32Array(inputs * outputs);
      for (let o = 0; o < outputs; o++) {
        for (let i = 0; i < inputs; i++) {
          plain[o * inputs + i] = (bytes[o * inputs + i] as number) * (steps[o] as number);
        }
      }
      return { inputs, outputs, weights: plain, bias: Float32Array.from(bias) };
    }),
  };
}

/** Writes a network down (rounding its weights to 255 steps per output). */
export function writeNetwork(network: Network): WrittenNetwork {
  return {
    layers: network.layers.map(({ inputs, outputs, weights, bias }) => {
      const steps: number[] = [];
      const bytes = new Uint8Array(inputs * outputs);
      for (let o = 0; o < outputs; o++) {
        let largest = 1e-9;
        for (let i = 0; i < inputs; i++) largest = Math.max(largest, Math.abs(weights[o * inputs + i] as number));
        const step = largest / 127;
        steps.push(Number(step.toPrecision(6)));
        for (let i = 0; i < inputs; i++) {
          bytes[o * inputs + i] = Math.round((weights[o * inputs + i] as number) / step) & 255;
        }
      }
      let text = '';
      for (let k = 0; k < bytes.length; k += 3) {
        const three = ((bytes[k] as number) << 16) | ((bytes[k + 1] ?? 0) << 8) | (bytes[k + 2] ?? 0);
        for (let d = 3; d >= 0; d--) text += digits[(three >> (6 * d)) & 63];
      }
      return { inputs, outputs, steps, bias: [...bias].map((b) => Number(b.toPrecision(6))), weights: text };
    }),
  };
}

/**
 * Shares (summing to 1) of each output for one cell.
 *
 * @param features as filled by `CellView.features`
 */
export function classShares(network: Network, features: Float32Array, out: Float32Array): void {
  let now: Float32Array = features;
  network.layers.forEach((layer, number) => {
    const next = scratch(number, layer.outputs);
    const { inputs, outputs, weights, bias } = layer;
    const last = number === network.layers.length - 1;
    for (let o = 0; o < outputs; o++) {
      const row = o * inputs;
      // Four running sums, because a single one waits for itself at every step.
      let s0 = bias[o] as number;
      let s1 = 0;
      let s2 = 0;
      let s3 = 0;
      let i = 0;
      for (; i + 3 < inputs; i += 4) {
        s0 += (weights[row + i] as number) * (now[i] as number);
        s1 += (weights[row + i + 1] as number) * (now[i + 1] as number);
        s2 += (weights[row + i + 2] as number) * (now[i + 2] as number);
        s3 += (weights[row + i + 3] as number) * (now[i + 3] as number);
      }
      for (; i < inputs; i++) s0 += (weights[row + i] as number) * (now[i] as number);
      const sum = s0 + s1 + s2 + s3;
      next[o] = last || sum > 0 ? sum : 0;
    }
    now = next;
  });
  let top = Number.NEGATIVE_INFINITY;
  for (let o = 0; o < outputCount; o++) top = Math.max(top, now[o] as number);
  let total = 0;
  for (let o = 0; o < outputCount; o++) {
    const e = Math.exp((now[o] as number) - top);
    out[o] = e;
    total += e;
  }
  for (let o = 0; o < outputCount; o++) out[o] = (out[o] as number) / total;
}

const scratches: Float32Array[] = [];
function scratch(number: number, size: number): Float32Array {
  const held = scratches[number];
  if (held && held.length >= size) return held;
  const made = new Float32Array(size);
  scratches[number] = made;
  return made;
}
