import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Look } from '../brood/look.ts';
import { diseases, type SignId, signs } from '../signs/catalogue.ts';
import { assessLook } from './assess.ts';
import { type Evidence, emptyEvidence, nothingKnown, type SignAnswer } from './evidence.ts';
import { Inference } from './inference.ts';
import {
  type MeasuredPattern,
  mostAPhotographSays,
  patternLikelihood,
  shownBeyondError,
  speaksForCompact,
} from './measured-pattern.ts';
import { broodNetwork } from './network.ts';
import { posterior } from './posterior.ts';
import { priorFrom } from './prior.ts';
import { sortEvidence } from './sort-evidence.ts';

const look: Look = {
  depth: 'full',
  framesHeld: 10,
  framesSeen: 10,
  sides: 'both',
  beesShaken: true,
  light: 'torch',
  hold: 'top bar toward the viewer',
  cellsOpened: 20,
  cellsSuspicious: 20,
  sealedBroodCombSides: 8,
};

function believe(evidence: Evidence) {
  return posterior(broodNetwork, evidence, priorFrom(evidence));
}

const measured = fc.record({
  solidness: fc.double({ min: 0, max: 1, noNaN: true }),
  standardError: fc.double({ min: 0.02, max: 0.15, noNaN: true }),
  sides: fc.integer({ min: 1, max: 20 }),
});

const others = signs.map((sign) => sign.id).filter((id) => !id.startsWith('pattern'));
const seenAmong: fc.Arbitrary<Partial<Record<SignId, SignAnswer>>> = fc
  .array(fc.tuple(fc.constantFrom(...others), fc.boolean()), { maxLength: 6 })
  .map((all) => Object.fromEntries(all.map(([id, seen]) => [id, { outcome: seen ? 'seen' : 'not seen' }])));

const looks = fc.constantFrom<Look>(
  look,
  { ...look, depth: 'part', framesSeen: 4 },
  { ...look, beesShaken: false, light: 'poor' },
  { ...look, sealedBroodCombSides: 1 },
);

describe('the likelihood of a measured pattern', () => {
  it('holds no grade likelier than another by more than the setting, and is greatest at 1', () => {
    fc.assert(
      fc.property(measured, (one) => {
        const likelihood = patternLikelihood(one);
        expect(Math.max(...likelihood)).toBeCloseTo(1, 12);
        expect(Math.min(...likelihood)).toBeGreaterThanOrEqual(1 / mostAPhotographSays - 1e-12);
      }),
      { seed: 301, numRuns: 500 },
    );
  });

  it('speaks for no gaps at the solidness counted on a healthy comb, for a marked pattern at half', () => {
    // Counted by eye on one healthy comb: 221 of 232 decided cells sealed, 0.953.
    const healthy = patternLikelihood({ solidness: 0.953, standardError: 0.03, sides: 1 });
    expect(healthy[0]).toBe(1);
    expect(healthy[0]).toBeGreaterThan(healthy[1]);
    const gaps = patternLikelihood({ solidness: 0.5, standardError: 0.03, sides: 1 });
    expect(gaps[2]).toBe(1);
    expect(gaps[2]).toBeGreaterThan(gaps[1]);
    expect(gaps[1]).toBeGreaterThan(gaps[0]);
  });

  it('falls for gaps as the solidness rises', () => {
    let before = Number.POSITIVE_INFINITY;
    for (let solidness = 0; solidness <= 1; solidness += 0.02) {
      const [none, , marked] = patternLikelihood({ solidness, standardError: 0.03, sides: 1 });
      expect(marked / none).toBeLessThanOrEqual(before + 1e-12);
      before = marked / none;
    }
  });

  it('in the joint is the sum over the grades, by the definition', () => {
    const inference = new Inference([2, 3, 2]);
    const sign = {
      takenAway: false,
      background: [0.1, 0.02],
      causes: [
        { variable: 0, level: 1, reach: [0.6, 0.2] },
        { variable: 1, level: 2, reach: [0.8, 0.5] },
      ],
    };
    const noticed = [0.5, 0.9];
    const weights = [0.4, 1, 0.7];
    const together = inference.likelihood({ sign, grade: weights, noticed });
    const single = [0, 1, 2].map((grade) => Float64Array.from(inference.likelihood({ sign, grade, noticed })));
    for (let s = 0; s < inference.states; s++) {
      const sum = weights.reduce((total, weight, g) => total + weight * (single[g]?.[s] ?? Number.NaN), 0);
      expect(together[s]).toBeCloseTo(sum, 14);
      expect(single.reduce((total, one) => total + (one[s] ?? Number.NaN), 0)).toBeCloseTo(1, 14);
    }
    expect(() => inference.likelihood({ sign, grade: [1, 1], noticed })).toThrow(RangeError);
    const flat = inference.joint(
      [
        [0.7, 0.3],
        [0.8, 0.1, 0.1],
        [0.5, 0.5],
      ],
      [{ sign, grade: [1, 1, 1], noticed }],
    );
    const none = inference.joint(
      [
        [0.7, 0.3],
        [0.8, 0.1, 0.1],
        [0.5, 0.5],
      ],
      [],
    );
    for (let s = 0; s < inference.states; s++) expect(flat.joint[s]).toBeCloseTo(none.joint[s] ?? Number.NaN, 14);
  });
});

describe('a measured pattern among the evidence', () => {
  it('never raises American foulbrood, or any condition, over what an answer on the pattern could', () => {
    fc.assert(
      fc.property(measured, seenAmong, looks, (pattern, given, how) => {
        const base: Evidence = { ...emptyEvidence(how), signs: given };
        const photographed = believe({ ...base, measuredPattern: pattern }).disease;
        const answers: SignAnswer[] = [
          { outcome: 'not seen' },
          { outcome: 'seen', amount: 'slight' },
          { outcome: 'seen', amount: 'marked' },
        ];
        const tapped = answers.map(
          (answer) => believe({ ...base, signs: { ...given, 'pattern.spotty': answer } }).disease,
        );
        for (const disease of diseases) {
          const most = Math.max(...tapped.map((one) => one[disease]));
          expect(photographed[disease], disease).toBeLessThanOrEqual(most * (1 + 1e-9) + 1e-12);
        }
      }),
      { seed: 302, numRuns: 150 },
    );
  });

  it('alone makes neither a suspicion nor a sign seen, however many gaps there are', () => {
    const bad: MeasuredPattern = { solidness: 0.1, standardError: 0.02, sides: 20 };
    const with_ = assessLook({ ...emptyEvidence(look), measuredPattern: bad });
    const without = assessLook(emptyEvidence(look));
    expect(with_.states).toEqual(without.states);
    expect(with_.states[0]?.id).toBe('nothing-seen');
    expect(with_.next.first).toEqual([]);
    const odds = (p: number): number => p / (1 - p);
    const foulbrood = (whole: typeof with_): number =>
      whole.diseases.find((one) => one.disease === 'american-foulbrood')?.point ?? Number.NaN;
    expect(odds(foulbrood(with_)) / odds(foulbrood(without))).toBeLessThan(mostAPhotographSays);
    expect(odds(foulbrood(with_)) / odds(foulbrood(without))).toBeGreaterThan(1);
  });

  it('is shown as measured, as an expert band, with its error', () => {
    const { reasons } = assessLook({
      ...emptyEvidence(look),
      measuredPattern: { solidness: 0.62, standardError: 0.031, sides: 2 },
    });
    expect(reasons.reasons).toHaveLength(1);
    expect(reasons.reasons[0]).toMatchObject({ node: 'pattern-measured', outcome: 'measured', expertBand: true });
    expect(reasons.reasons[0]?.sentence.values).toMatchObject({ solid: 62, error: 3, sides: 2 });
    expect(['nothing', 'weak']).toContain(reasons.reasons[0]?.strength);
  });

  it.each(['pattern.spotty', 'pattern.compact'] as const)('is silent when %s was said at the combs', (sign) => {
    for (const outcome of ['seen', 'not seen'] as const) {
      const base: Evidence = { ...emptyEvidence(look), signs: { [sign]: { outcome } } };
      const both: Evidence = { ...base, measuredPattern: { solidness: 0.4, standardError: 0.03, sides: 1 } };
      expect(sortEvidence(broodNetwork, both).silent).toContainEqual({
        node: 'pattern-measured',
        why: 'photograph-beside-the-eye',
      });
      expect(believe(both).disease).toEqual(believe(base).disease);
    }
  });

  it('is silent in a dead hive, without lifted combs, and while medicine may hide gaps', () => {
    const solid = { solidness: 0.97, standardError: 0.03, sides: 1 };
    const why = (evidence: Evidence) => sortEvidence(broodNetwork, evidence).silent.map((one) => one.why);
    expect(why({ ...emptyEvidence(look, 'dead'), measuredPattern: solid })).toEqual(['not-asked-in-this-hive']);
    expect(why({ ...emptyEvidence({ ...look, depth: 'tops' }), measuredPattern: solid })).toEqual([
      'photograph-without-look',
    ]);
    const circumstances = { ...nothingKnown, daysSinceMedicine: 5, maskingDays: 42 };
    expect(why({ ...emptyEvidence(look), circumstances, measuredPattern: solid })).toEqual(['photograph-masked']);
    const gaps = { ...solid, solidness: 0.5 };
    expect(why({ ...emptyEvidence(look), circumstances, measuredPattern: gaps })).toEqual([]);
  });

  it('shows something beyond its error only where the likelihood leans the same way', () => {
    // The bands: without a spotty pattern 0.88 to 0.97, with a slight one 0.70 to 0.88.
    const of = (solidness: number, standardError: number) => shownBeyondError({ solidness, standardError, sides: 1 });
    expect([of(0.95, 0.05), of(0.92, 0.05), of(0.85, 0.05), of(0.82, 0.05)]).toEqual(['compact', null, null, 'spotty']);
    fc.assert(
      fc.property(measured, (one) => {
        const shown = shownBeyondError(one);
        if (shown !== null) expect(speaksForCompact(one)).toBe(shown === 'compact');
      }),
      { seed: 20271 },
    );
  });

  it('must be a measurement', () => {
    const wrong = (change: Partial<MeasuredPattern>) => () =>
      assessLook({
        ...emptyEvidence(look),
        measuredPattern: { solidness: 0.9, standardError: 0.03, sides: 1, ...change },
      });
    expect(wrong({ solidness: 1.2 })).toThrow('measuredPattern.solidness');
    expect(wrong({ standardError: 0 })).toThrow('measuredPattern.standardError');
    expect(wrong({ sides: 0.5 })).toThrow('measuredPattern.sides');
  });
});
