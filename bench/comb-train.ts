/*
 * Trains the cell classifier of science/comb on painted combs of the tuning family and writes its weights.
 *
 *   npx tsx bench/comb-train.ts [combs] [rounds] [file]
 *
 * Without arguments it writes the weights in place again, byte for byte: everything follows from the seeds below, in one
 * process (Node 20; another release may round a sine or a power otherwise). The held-out family is never touched.
 */
import { writeFileSync } from 'node:fs';
import { featureCount } from '../packages/science/src/comb/cells/cell-features.ts';
import {
  outputCount,
  outputNumber,
  outputs,
  type WrittenNetwork,
  writeNetwork,
} from '../packages/science/src/comb/cells/classifier.ts';
import { seeded } from '../packages/science/src/random/seeded.ts';
import { type Sample, samplesOf } from './comb-samples.ts';
import { trainNetwork } from './train-network.ts';

const combs = Number(process.argv[2] ?? 600);
const rounds = Number(process.argv[3] ?? 24);
const file = process.argv[4] ?? new URL('../packages/science/src/comb/cells/classifier-weights.ts', import.meta.url);
const firstSeed = 10_000;
const hidden = [72, 32];
/** The last values of a cell describe the picture around it (cell-features.ts). */
const ofThePicture = 9;

const samples: Sample[] = [];
const pick = seeded(20_260);
console.log(`painting ${combs} combs`);
for (let n = 0; n < combs; n++) {
  samples.push(...samplesOf(firstSeed + n, pick));
  if (n % 25 === 24) console.log(`${n + 1} combs, ${samples.length} cells`);
}
const counts = outputs.map((name, k) => `${name} ${samples.filter((one) => one.label === k).length}`);
console.log(counts.join(', '));

const network = trainNetwork(
  samples,
  { sizes: [featureCount, ...hidden, outputCount], rounds, ofThePicture },
  seeded(20_261),
  (round, loss, right) => console.log(`round ${round}: loss ${loss.toFixed(4)}, right ${right.toFixed(4)}`),
);

const written = withEdgeRare(writeNetwork(network));
const title =
  `// Written by bench/comb-train.ts from painted combs (tuning family, seeds ${firstSeed} to ${firstSeed + combs - 1}, ` +
  `${samples.length} cells, ${rounds} rounds). Do not edit.`;
const text = [
  title,
  "import type { WrittenNetwork } from './classifier.ts';",
  '',
  'export const classifierWeights: WrittenNetwork = {',
  '  layers: [',
  ...written.layers.flatMap((layer) => [
    '    {',
    `      inputs: ${layer.inputs},`,
    `      outputs: ${layer.outputs},`,
    ...listed('steps', layer.steps),
    ...listed('bias', layer.bias),
    '      weights:',
    `        '${layer.weights}',`,
    '    },',
  ]),
  '  ],',
  '};',
  '',
].join('\n');
writeFileSync(file, text);
console.log(`weights written: ${text.length} characters`);

/**
 * Up to as many places beyond the edge are taken of a comb as cells of a class, far more than a reader meets: "no cell" is
 * made half as likely. Chosen on the tuning family, where capped honey was taken for the end of the comb.
 */
function withEdgeRare({ layers }: WrittenNetwork): WrittenNetwork {
  const edge = outputNumber('no cell');
  return {
    layers: layers.map((layer, l) =>
      l < layers.length - 1
        ? layer
        : { ...layer, bias: layer.bias.map((b, o) => (o === edge ? Number((b - Math.LN2).toPrecision(6)) : b)) },
    ),
  };
}

/** A list of numbers laid out as the formatter of the house leaves it: on one line, or filled to 120 characters. */
function listed(name: string, values: readonly number[]): string[] {
  const single = `      ${name}: [${values.join(', ')}],`;
  if (single.length <= 120) return [single];
  const lines: string[] = [];
  let line = '       ';
  for (const value of values) {
    if (line.length + ` ${value},`.length > 120) {
      lines.push(line);
      line = '       ';
    }
    line += ` ${value},`;
  }
  return [`      ${name}: [`, ...lines, line, '      ],'];
}
