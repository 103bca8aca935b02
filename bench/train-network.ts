/*
 * Teaches a small network of rectified layers by Adam (Kingma and Ba 2015; from memory), one sample after the other in
 * one process, so that the same samples and chance give the same weights to the last bit.
 */
import type { Network } from '../packages/science/src/comb/cells/classifier.ts';
import type { Chance } from '../packages/science/src/random/seeded.ts';
import type { Sample } from './comb-samples.ts';

export interface Course {
  /** Sizes of all layers, from the number of values of a sample to the number of outputs. */
  readonly sizes: readonly number[];
  readonly rounds: number;
  /** How many values at the end of a sample describe the picture, not the cell: shaken by themselves. */
  readonly ofThePicture: number;
}

const batch = 64;
const firstRate = 0.0015;
const decay = 0.02;
/** Share of belief that is never given to the right output, so that the network does not become too sure. */
const smoothing = 0.04;

interface Layer {
  readonly inputs: number;
  readonly outputs: number;
  readonly weights: Taught;
  readonly bias: Taught;
  /** What the layer gave for the sample at hand, and how the loss falls with it. */
  readonly given: Float32Array;
  readonly slope: Float32Array;
}

/** Values being taught: with the sum of their slopes over a batch, and its running mean and square. */
interface Taught {
  readonly values: Float32Array;
  readonly slopes: Float32Array;
  readonly mean: Float32Array;
  readonly square: Float32Array;
  readonly decay: number;
}

/** @param told receives loss and share right after each round */
export function trainNetwork(
  samples: readonly Sample[],
  course: Course,
  chance: Chance,
  told: (round: number, loss: number, right: number) => void,
): Network {
  const layers = course.sizes.slice(1).map((outputs, k): Layer => {
    const inputs = course.sizes[k] as number;
    const start = Float32Array.from({ length: inputs * outputs }, () => chance.normal() * Math.sqrt(2 / inputs));
    return {
      inputs,
      outputs,
      weights: taught(start, decay),
      bias: taught(new Float32Array(outputs), 0),
      given: new Float32Array(outputs),
      slope: new Float32Array(outputs),
    };
  });
  const input = new Float32Array(course.sizes[0] as number);
  const order = Int32Array.from({ length: samples.length }, (_, k) => k);
  const steps = course.rounds * Math.ceil(order.length / batch);
  let step = 0;
  for (let round = 1; round <= course.rounds; round++) {
    shuffle(order, chance);
    let loss = 0;
    let right = 0;
    for (let start = 0; start < order.length; start += batch) {
      const end = Math.min(order.length, start + batch);
      for (let s = start; s < end; s++) {
        const sample = samples[order[s] as number] as Sample;
        shake(sample.views[chance.integer(sample.views.length)] as Float32Array, course.ofThePicture, chance, input);
        forward(layers, input);
        const { missed, best } = lossOf(layers.at(-1) as Layer, sample.label);
        loss += missed;
        if (best === sample.label) right++;
        backward(layers, input);
      }
      step++;
      const rate = firstRate * (0.5 + 0.5 * Math.cos((Math.PI * step) / steps));
      for (const layer of layers) {
        learn(layer.weights, end - start, step, rate);
        learn(layer.bias, end - start, step, rate);
      }
    }
    told(round, loss / order.length, right / order.length);
  }
  return {
    layers: layers.map(({ inputs, outputs, weights, bias }) => ({
      inputs,
      outputs,
      weights: weights.values,
      bias: bias.values,
    })),
  };
}

function taught(values: Float32Array, fade: number): Taught {
  const blank = (): Float32Array => new Float32Array(values.length);
  return { values, slopes: blank(), mean: blank(), square: blank(), decay: fade };
}

/** Light and noise differ between pictures: contrast of the cell and the figures of the picture are shaken a little. */
function shake(view: Float32Array, ofThePicture: number, chance: Chance, input: Float32Array): void {
  const gain = 1 + 0.12 * chance.normal();
  const own = input.length - ofThePicture;
  for (let i = 0; i < own; i++) input[i] = gain * (view[i] as number);
  for (let i = own; i < input.length; i++) input[i] = (view[i] as number) + 0.15 * chance.normal();
}

function forward(layers: readonly Layer[], input: Float32Array): void {
  let from = input;
  layers.forEach((layer, l) => {
    const { inputs, outputs, given } = layer;
    const weights = layer.weights.values;
    for (let o = 0; o < outputs; o++) {
      const row = o * inputs;
      // Four running sums, because a single one waits for itself at every step.
      let s0 = layer.bias.values[o] as number;
      let s1 = 0;
      let s2 = 0;
      let s3 = 0;
      let i = 0;
      for (; i + 3 < inputs; i += 4) {
        s0 += (weights[row + i] as number) * (from[i] as number);
        s1 += (weights[row + i + 1] as number) * (from[i + 1] as number);
        s2 += (weights[row + i + 2] as number) * (from[i + 2] as number);
        s3 += (weights[row + i + 3] as number) * (from[i + 3] as number);
      }
      for (; i < inputs; i++) s0 += (weights[row + i] as number) * (from[i] as number);
      const sum = s0 + s1 + s2 + s3;
      given[o] = l === layers.length - 1 || sum > 0 ? sum : 0;
    }
    from = given;
  });
}

/** Loss of the last layer for the right output; leaves its slope. */
function lossOf(last: Layer, label: number): { missed: number; best: number } {
  const { given, slope, outputs } = last;
  let best = 0;
  for (let o = 1; o < outputs; o++) if ((given[o] as number) > (given[best] as number)) best = o;
  const largest = given[best] as number;
  let total = 0;
  for (let o = 0; o < outputs; o++) total += Math.exp((given[o] as number) - largest);
  let missed = 0;
  for (let o = 0; o < outputs; o++) {
    const share = Math.exp((given[o] as number) - largest) / total;
    slope[o] = share - ((o === label ? 1 - smoothing : 0) + smoothing / outputs);
    if (o === label) missed = -Math.log(share + 1e-12);
  }
  return { missed, best };
}

/** Carries the slope of the last layer down, and adds what it means for all weights. */
function backward(layers: readonly Layer[], input: Float32Array): void {
  for (let l = layers.length - 1; l >= 0; l--) {
    const layer = layers[l] as Layer;
    const below = layers[l - 1];
    const from = below?.given ?? input;
    const { inputs, outputs, slope } = layer;
    const { values, slopes } = layer.weights;
    below?.slope.fill(0);
    for (let o = 0; o < outputs; o++) {
      const d = slope[o] as number;
      if (d === 0) continue;
      layer.bias.slopes[o] = (layer.bias.slopes[o] as number) + d;
      const row = o * inputs;
      for (let i = 0; i < inputs; i++) slopes[row + i] = (slopes[row + i] as number) + d * (from[i] as number);
      if (!below) continue;
      const down = below.slope;
      for (let i = 0; i < inputs; i++) down[i] = (down[i] as number) + d * (values[row + i] as number);
    }
    if (below) for (let i = 0; i < inputs; i++) if ((from[i] as number) <= 0) below.slope[i] = 0;
  }
}

/** One step of Adam, with the weights fading a little; empties the slopes. */
function learn(one: Taught, size: number, step: number, rate: number): void {
  const { values, slopes, mean, square } = one;
  const young = 1 - 0.9 ** step;
  const youngSquare = 1 - 0.999 ** step;
  for (let k = 0; k < values.length; k++) {
    const slope = (slopes[k] as number) / size;
    const m = 0.9 * (mean[k] as number) + 0.1 * slope;
    const v = 0.999 * (square[k] as number) + 0.001 * slope * slope;
    mean[k] = m;
    square[k] = v;
    values[k] =
      (values[k] as number) * (1 - rate * one.decay) - (rate * (m / young)) / (Math.sqrt(v / youngSquare) + 1e-8);
  }
  slopes.fill(0);
}

function shuffle(order: Int32Array, chance: Chance): void {
  for (let k = order.length - 1; k > 0; k--) {
    const o = chance.integer(k + 1);
    const held = order[k] as number;
    order[k] = order[o] as number;
    order[o] = held;
  }
}
