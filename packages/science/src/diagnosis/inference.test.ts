import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Inference, type Observation, type SignChances } from './inference.ts';
import reference from './reference/inference.json' with { type: 'json' };

/**
 * Brute force from the definition, sharing nothing with the implementation: every joint state, every combination of
 * grades that the causes present may produce, each noticed or not; the highest noticed grade is what shows.
 */
function bruteForce(levels: number[], prior: number[][], observations: Observation[]): number[] {
  const states = levels.reduce((product, count) => product * count, 1);
  const weights = Array.from({ length: states }, (_, state) => {
    const at: number[] = [];
    let rest = state;
    for (const count of levels) {
      at.push(rest % count);
      rest = Math.floor(rest / count);
    }
    let weight = at.reduce((product, level, v) => product * (prior[v]?.[level] as number), 1);
    for (const observation of observations) weight *= chanceOfShowing(at, observation);
    return weight;
  });
  const total = weights.reduce((sum, w) => sum + w, 0);
  return weights.map((w) => w / total);
}

function chanceOfShowing(at: number[], { sign, grade, noticed }: Observation): number {
  const present = sign.causes.filter((cause) => at[cause.variable] === cause.level);
  if (sign.takenAway) {
    const shown =
      present.reduce((share, cause) => share * (cause.reach[0] as number), sign.background[0] as number) *
      (noticed[0] as number);
    return grade === 0 ? 1 - shown : shown;
  }
  let sum = 0;
  const produce = (i: number, highest: number, chance: number): void => {
    const reaches = [sign.background, ...present.map((cause) => cause.reach)];
    const reach = reaches[i];
    if (reach === undefined) {
      if (grade === 'seen' ? highest > 0 : highest === grade) sum += chance;
      return;
    }
    let nothing = 1 - (reach[0] as number);
    reach.forEach((atLeast, g) => {
      const exactly = atLeast - (reach[g + 1] ?? 0);
      const seen = noticed[g] as number;
      nothing += exactly * (1 - seen);
      produce(i + 1, Math.max(highest, g + 1), chance * exactly * seen);
    });
    produce(i + 1, highest, chance * nothing);
  };
  produce(0, 0, 1);
  return sum;
}

const probability = fc.double({ min: 0.01, max: 0.99, noNaN: true });

const smallNetwork = fc.array(fc.integer({ min: 2, max: 3 }), { minLength: 1, maxLength: 4 }).chain((levels) => {
  const cause = (grades: number) =>
    fc
      .tuple(
        fc.integer({ min: 0, max: levels.length - 1 }),
        fc.integer({ min: 1, max: 2 }),
        fc.array(probability, { minLength: grades, maxLength: grades }),
      )
      .map(([variable, level, shares]) => ({
        variable,
        level: Math.min(level, (levels[variable] as number) - 1),
        reach: shares.map((_, g) => shares.slice(0, g + 1).reduce((product, p) => product * p, 1)),
      }));
  const observation = fc.integer({ min: 1, max: 3 }).chain((grades) =>
    fc
      .record({
        background: fc.array(probability, { minLength: grades, maxLength: grades }),
        causes: fc.array(cause(grades), { maxLength: 3 }),
        takenAway: grades === 1 ? fc.boolean() : fc.constant(false),
        grade: fc.oneof(fc.integer({ min: 0, max: grades }), fc.constant('seen' as const)),
        noticed: fc.array(fc.double({ min: 0.05, max: 1, noNaN: true }), { minLength: grades, maxLength: grades }),
      })
      .map(({ background, causes, takenAway, grade, noticed }): Observation => {
        // One arrow from each level at most, as in the network.
        const once = causes.filter(
          (one, i) => causes.findIndex((c) => c.variable === one.variable && c.level === one.level) === i,
        );
        return {
          sign: {
            takenAway,
            background: background.map((_, g) => background.slice(0, g + 1).reduce((product, p) => product * p, 1)),
            causes: once,
          },
          grade,
          noticed,
        };
      }),
  );
  const rows = fc.tuple(
    ...levels.map((count) =>
      fc
        .array(fc.double({ min: 0.05, max: 1, noNaN: true }), { minLength: count, maxLength: count })
        .map((row) => row.map((p) => p / row.reduce((sum, q) => sum + q, 0))),
    ),
  );
  return fc.record({ levels: fc.constant(levels), prior: rows, observations: fc.array(observation, { maxLength: 4 }) });
});

describe('exact inference', () => {
  it('agrees with brute force over every state and every combination of produced grades, within 1e-12', () => {
    fc.assert(
      fc.property(smallNetwork, ({ levels, prior, observations }) => {
        const { joint } = new Inference(levels).joint(prior, observations);
        const expected = bruteForce(levels, prior, observations);
        expected.forEach((p, state) => {
          expect(Math.abs((joint[state] as number) - p)).toBeLessThan(1e-12);
        });
      }),
      { seed: 41012, numRuns: 400 },
    );
  });

  // R 4.2.2, reference/inference.R with its seed: random networks, and two of the shape of the brood network (3 x 2^9).
  it.each(reference.cases)('agrees with R on $name within 1e-12', ({ levels, prior, findings, marginals, none }) => {
    const inference = new Inference(levels);
    const { joint } = inference.joint(prior, findings as Observation[]);
    const ours = inference.marginals(joint);
    marginals.forEach((row, v) => {
      row.forEach((p, level) => {
        expect(Math.abs((ours[v]?.[level] as number) - p), `variable ${v} level ${level}`).toBeLessThan(1e-12);
      });
    });
    expect(Math.abs((joint[0] as number) - none)).toBeLessThan(1e-12);
  });

  it('compares with R a full-size network and more than one seen sign, so that the agreement means something', () => {
    const full = reference.cases.filter((one) => one.levels.length === 10);
    expect(full.length).toBeGreaterThanOrEqual(2);
    for (const one of full)
      expect(one.findings.filter((observation) => observation.grade !== 0).length).toBeGreaterThan(3);
  });

  it('gives the grades of a sign probabilities that add up to 1 under every state', () => {
    fc.assert(
      fc.property(smallNetwork, ({ levels, observations }) => {
        const inference = new Inference(levels);
        for (const observation of observations) {
          const grades = observation.sign.background.length;
          const sums = new Float64Array(inference.states);
          for (let grade = 0; grade <= grades; grade++) {
            inference.likelihood({ ...observation, grade }).forEach((p, s) => {
              sums[s] = (sums[s] as number) + p;
            });
          }
          for (const sum of sums) expect(sum).toBeCloseTo(1, 12);
        }
      }),
      { seed: 41013, numRuns: 100 },
    );
  });

  it('keeps its digits where every cause is rare (closed form 1 - (1 - a)(1 - b), a = b = 1e-9)', () => {
    const sign: SignChances = {
      takenAway: false,
      background: [1e-9],
      causes: [{ variable: 0, level: 1, reach: [1e-9] }],
    };
    const likelihood = new Inference([2]).likelihood({ sign, grade: 'seen', noticed: [1] });
    expect((likelihood[1] as number) / (2e-9 - 1e-18)).toBeCloseTo(1, 14);
  });

  it('does not run out of exponent with three hundred signs seen', () => {
    const sign: SignChances = {
      takenAway: false,
      background: [1e-3],
      causes: [{ variable: 0, level: 1, reach: [2e-3] }],
    };
    const observations = Array.from({ length: 300 }, () => ({ sign, grade: 'seen' as const, noticed: [1] }));
    const { joint, logEvidence } = new Inference([2, 2]).joint(
      [
        [0.5, 0.5],
        [0.5, 0.5],
      ],
      observations,
    );
    expect(joint.every((p) => Number.isFinite(p))).toBe(true);
    expect(logEvidence).toBeCloseTo(Math.log(0.5) + 300 * Math.log(1e-3 + 2e-3 - 2e-6), 6);
  });

  it('says what does not fit', () => {
    expect(() => new Inference([1])).toThrow(/at least two/);
    expect(() => new Inference(new Array(23).fill(2))).toThrow(/too many/);
    expect(() => new Inference([2]).joint([], [])).toThrow(/does not fit/);
    const sign: SignChances = { takenAway: false, background: [0.1], causes: [] };
    expect(() => new Inference([2]).likelihood({ sign, grade: 2, noticed: [1] })).toThrow(/grades 0 to 1/);
  });
});
