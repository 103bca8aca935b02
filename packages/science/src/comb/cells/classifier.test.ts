import { describe, expect, it } from 'vitest';
import { seeded } from '../../random/seeded.ts';
import { featureCount } from './cell-features.ts';
import { classShares, outputCount, readNetwork, writeNetwork } from './classifier.ts';
import { classifierWeights } from './classifier-weights.ts';

describe('classifier', () => {
  it('fits features and classes, and stays far below a megabyte', () => {
    const network = readNetwork(classifierWeights);
    expect(network.layers[0]?.inputs).toBe(featureCount);
    expect(network.layers.at(-1)?.outputs).toBe(outputCount);
    expect(JSON.stringify(classifierWeights).length).toBeLessThan(1_000_000);
  });

  it('comes back from writing within half a step of each weight', () => {
    const chance = seeded(3);
    const layer = {
      inputs: 5,
      outputs: 4,
      weights: Float32Array.from({ length: 20 }, () => chance.normal()),
      bias: Float32Array.from({ length: 4 }, () => chance.normal()),
    };
    const written = writeNetwork({ layers: [layer] });
    const back = readNetwork(written).layers[0];
    for (let k = 0; k < 20; k++) {
      const step = written.layers[0]?.steps[Math.floor(k / 5)] as number;
      expect(Math.abs((back?.weights[k] as number) - (layer.weights[k] as number))).toBeLessThanOrEqual(0.51 * step);
    }
  });

  it('gives shares that sum to one, whatever the features', () => {
    const network = readNetwork(classifierWeights);
    const chance = seeded(4);
    const out = new Float32Array(outputCount);
    for (let n = 0; n < 20; n++) {
      classShares(
        network,
        Float32Array.from({ length: featureCount }, () => 3 * chance.normal()),
        out,
      );
      expect(out.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 4);
      expect(Math.min(...out)).toBeGreaterThanOrEqual(0);
    }
  });

  it('says that damaged weights are damaged', () => {
    const [first, ...rest] = classifierWeights.layers;
    if (!first) throw new Error('no layer');
    expect(() => readNetwork({ layers: [{ ...first, weights: first.weights.slice(0, 100) }, ...rest] })).toThrow(
      /layer 0 .* damaged/,
    );
  });
});
