/*
 * Trains the cell classifier of science/comb on painted combs of the tuning family and writes its weights.
 *
 *   npx tsx bench/comb-train.ts [pictures] [epochs]
 *
 * Everything follows from the seeds below: the same call gives the same weights. The held-out family is never touched.
 */
import { writeFileSync } from 'node:fs';
import { CellView, featureCount } from '../packages/science/src/comb/cell-features.ts';
import {
  type Network,
  outputCount,
  outputNumber,
  outputs,
  writeNetwork,
} from '../packages/science/src/comb/classifier.ts';
import { findLattice } from '../packages/science/src/comb/lattice.ts';
import { type LatticeCell, neighbourSteps } from '../packages/science/src/comb/lattice-growth.ts';
import { paintComb } from '../packages/science/src/comb/painter/paint-comb.ts';
import { drawSettings } from '../packages/science/src/comb/painter/settings.ts';
import { seeded } from '../packages/science/src/random/seeded.ts';

const pictures = Number(process.argv[2] ?? 300);
const epochs = Number(process.argv[3] ?? 14);
const firstSeed = 10_000;
const hidden = [72, 32];
const chance = seeded(20_260);

const samples: Float32Array[] = [];
const labels: number[] = [];
const perClass = 45;

console.log(`painting ${pictures} combs`);
for (let n = 0; n < pictures; n++) {
  const seed = firstSeed + n;
  const settings = drawSettings('tuning', seed);
  const painted = paintComb(settings, seed);
  const lattice = findLattice(painted);
  if (lattice.cells.length < 20) continue;
  const view = new CellView(painted, lattice.pitch);
  const present = new Set(lattice.cells.map((cell) => `${cell.column},${cell.row}`));
  const places: LatticeCell[] = [...lattice.cells];
  for (const cell of lattice.cells) {
    for (const [dc, dr] of neighbourSteps) {
      const key = `${cell.column + dc},${cell.row + dr}`;
      if (present.has(key)) continue;
      present.add(key);
      const x = cell.x + dc * cell.ax + dr * cell.bx;
      const y = cell.y + dc * cell.ay + dr * cell.by;
      const margin = 0.45 * lattice.pitch;
      if (x < margin || y < margin || x > painted.width - margin || y > painted.height - margin) continue;
      places.push({ ...cell, column: cell.column + dc, row: cell.row + dr, x, y, seen: 0.1 * chance.uniform() });
    }
  }
  const buckets: number[][] = Array.from({ length: outputCount }, () => []);
  places.forEach((place, k) => {
    let nearest = Number.POSITIVE_INFINITY;
    let truth = painted.cells[0];
    for (const cell of painted.cells) {
      const d = Math.hypot(cell.x - place.x, cell.y - place.y) / cell.pitch;
      if (d < nearest) {
        nearest = d;
        truth = cell;
      }
    }
    if (!truth) return;
    if (nearest > 0.55) (buckets[outputNumber('no cell')] as number[]).push(k);
    else if (nearest < 0.33) {
      // Half-covered mouths teach nothing clear.
      if (truth.covered > 0.3 && truth.covered <= 0.5) return;
      // An egg that cannot be seen teaches only to guess: in small pictures its cell looks empty.
      const unseenEgg = truth.stage === 'egg' && truth.pitch < 18;
      const brood = truth.stage === 'egg' ? 'egg' : 'larva';
      const name = truth.class !== 'egg-or-larva' ? truth.class : unseenEgg ? 'open-empty' : brood;
      (buckets[outputNumber(name)] as number[]).push(k);
    }
  });
  buckets.forEach((bucket, label) => {
    for (let k = bucket.length - 1; k > 0; k--) {
      const o = chance.integer(k + 1);
      [bucket[k], bucket[o]] = [bucket[o] as number, bucket[k] as number];
    }
    for (const k of bucket.slice(0, perClass)) {
      const place = places[k] as LatticeCell;
      const shaken = {
        ...place,
        x: place.x + 0.04 * lattice.pitch * chance.normal(),
        y: place.y + 0.04 * lattice.pitch * chance.normal(),
      };
      const out = new Float32Array(featureCount);
      view.features(shaken, out, chance.integer(6), chance.uniform() < 0.5);
      samples.push(out);
      labels.push(label);
    }
  });
  if (n % 25 === 24) console.log(`${n + 1} combs, ${samples.length} cells`);
}
const counts = new Array(outputCount).fill(0) as number[];
for (const label of labels) counts[label] = (counts[label] as number) + 1;
console.log(outputs.map((name, k) => `${name} ${counts[k]}`).join(', '));

// The network, with Adam (Kingma and Ba 2015; from memory).
const sizes = [featureCount, ...hidden, outputCount];
const layers = sizes.slice(1).map((outputs, k) => {
  const inputs = sizes[k] as number;
  const weights = Float32Array.from({ length: inputs * outputs }, () => chance.normal() * Math.sqrt(2 / inputs));
  return {
    inputs,
    outputs,
    weights,
    bias: new Float32Array(outputs),
    gw: new Float32Array(inputs * outputs),
    gb: new Float32Array(outputs),
    mw: new Float32Array(inputs * outputs),
    vw: new Float32Array(inputs * outputs),
    mb: new Float32Array(outputs),
    vb: new Float32Array(outputs),
  };
});
const order = Int32Array.from({ length: samples.length }, (_, k) => k);
const batch = 64;
const smoothing = 0.04;
const acts = sizes.map((size) => new Float32Array(size));
const deltas = sizes.map((size) => new Float32Array(size));
let step = 0;
const steps = epochs * Math.ceil(order.length / batch);
for (let epoch = 0; epoch < epochs; epoch++) {
  for (let k = order.length - 1; k > 0; k--) {
    const o = chance.integer(k + 1);
    const t = order[k] as number;
    order[k] = order[o] as number;
    order[o] = t;
  }
  let loss = 0;
  let right = 0;
  for (let start = 0; start < order.length; start += batch) {
    const end = Math.min(order.length, start + batch);
    for (const layer of layers) {
      layer.gw.fill(0);
      layer.gb.fill(0);
    }
    for (let s = start; s < end; s++) {
      const sample = samples[order[s] as number] as Float32Array;
      const label = labels[order[s] as number] as number;
      const input = acts[0] as Float32Array;
      // Light and noise differ between pictures: shake brightness, contrast and colour a little.
      const gain = 1 + 0.12 * chance.normal();
      for (let i = 0; i < input.length; i++) input[i] = gain * (sample[i] as number);
      for (let i = input.length - 9; i < input.length; i++) input[i] = (sample[i] as number) + 0.15 * chance.normal();
      layers.forEach((layer, l) => {
        const from = acts[l] as Float32Array;
        const to = acts[l + 1] as Float32Array;
        for (let o = 0; o < layer.outputs; o++) {
          let sum = layer.bias[o] as number;
          const row = o * layer.inputs;
          for (let i = 0; i < layer.inputs; i++) sum += (layer.weights[row + i] as number) * (from[i] as number);
          to[o] = l === layers.length - 1 || sum > 0 ? sum : 0;
        }
      });
      const top = acts[acts.length - 1] as Float32Array;
      let largest = Number.NEGATIVE_INFINITY;
      let best = 0;
      for (let o = 0; o < outputCount; o++) {
        if ((top[o] as number) > largest) {
          largest = top[o] as number;
          best = o;
        }
      }
      if (best === label) right++;
      let total = 0;
      for (let o = 0; o < outputCount; o++) total += Math.exp((top[o] as number) - largest);
      const delta = deltas[deltas.length - 1] as Float32Array;
      for (let o = 0; o < outputCount; o++) {
        const share = Math.exp((top[o] as number) - largest) / total;
        const wanted = (o === label ? 1 - smoothing : 0) + smoothing / outputCount;
        delta[o] = share - wanted;
        if (o === label) loss -= Math.log(share + 1e-12);
      }
      for (let l = layers.length - 1; l >= 0; l--) {
        const layer = layers[l] as (typeof layers)[number];
        const from = acts[l] as Float32Array;
        const up = deltas[l + 1] as Float32Array;
        const down = deltas[l] as Float32Array;
        if (l > 0) down.fill(0);
        for (let o = 0; o < layer.outputs; o++) {
          const d = up[o] as number;
          if (d === 0) continue;
          layer.gb[o] = (layer.gb[o] as number) + d;
          const row = o * layer.inputs;
          if (l > 0) {
            for (let i = 0; i < layer.inputs; i++) {
              layer.gw[row + i] = (layer.gw[row + i] as number) + d * (from[i] as number);
              down[i] = (down[i] as number) + d * (layer.weights[row + i] as number);
            }
          } else {
            for (let i = 0; i < layer.inputs; i++) {
              layer.gw[row + i] = (layer.gw[row + i] as number) + d * (from[i] as number);
            }
          }
        }
        if (l > 0) for (let i = 0; i < layer.inputs; i++) if ((from[i] as number) <= 0) down[i] = 0;
      }
    }
    step++;
    const rate = 0.0015 * (0.5 + 0.5 * Math.cos((Math.PI * step) / steps));
    const c1 = 1 - 0.9 ** step;
    const c2 = 1 - 0.999 ** step;
    const size = end - start;
    for (const layer of layers) {
      const update = (w: Float32Array, g: Float32Array, m: Float32Array, v: Float32Array, decay: number): void => {
        for (let k = 0; k < w.length; k++) {
          const grad = (g[k] as number) / size;
          const mk = 0.9 * (m[k] as number) + 0.1 * grad;
          const vk = 0.999 * (v[k] as number) + 0.001 * grad * grad;
          m[k] = mk;
          v[k] = vk;
          w[k] = (w[k] as number) * (1 - rate * decay) - (rate * (mk / c1)) / (Math.sqrt(vk / c2) + 1e-8);
        }
      };
      update(layer.weights, layer.gw, layer.mw, layer.vw, 0.02);
      update(layer.bias, layer.gb, layer.mb, layer.vb, 0);
    }
  }
  console.log(
    `epoch ${epoch + 1}: loss ${(loss / order.length).toFixed(4)}, right ${(right / order.length).toFixed(4)}`,
  );
}

const network: Network = { layers };
const written = writeNetwork(network);
const text = `// Written by bench/comb-train.ts from painted combs (tuning family, seeds ${firstSeed} to ${firstSeed + pictures - 1}, ${samples.length} cells, ${epochs} rounds). Do not edit.
import type { WrittenNetwork } from './classifier.ts';

export const classifierWeights: WrittenNetwork = ${JSON.stringify(written)};
`;
writeFileSync(new URL('../packages/science/src/comb/classifier-weights.ts', import.meta.url), text);
console.log(`weights written: ${text.length} characters`);
