import { describe, expect, it } from 'vitest';
import { type LaboratoryLimits, meaningOfLoad } from './laboratory-limits.ts';
import { meaningOfResult } from './meaning-of-result.ts';
import { plateCount, sporesAssumingRecovery } from './plate-count.ts';
import { chanceOfCarrierInSample, loadInPool } from './pooled-load.ts';
import { predictiveValues } from './predictive-values.ts';

const plate = (colonies: number | null, dilution = 1, millilitres = 0.1) => ({ colonies, dilution, millilitres });
const common = { unit: 'g', countable: null, confidence: 0.95 } as const;

describe('plate counts (worked cases from first principles; weighted mean as in ISO 7218, from memory)', () => {
  it('honey direct: 36 colonies on 0.3 ml, 10 g in 20 ml, are 240 CFU/g with a limit of 6.7', () => {
    const count = plateCount({
      ...common,
      plates: [plate(12), plate(15), plate(9)],
      suspensionMillilitres: 20,
      amount: 10,
    });
    expect(count.load).toBeCloseTo(240, 9);
    expect(count.detectionLimit).toBeCloseTo(6.6667, 4);
    expect(count.reading).toBe('counted');
    // 36 colonies: 95 % about 25 to 50 (exact Poisson limits 25.2 and 49.8 from R 4.2.2, qgamma).
    expect((count.lower ?? 0) / (240 / 36)).toBeCloseTo(25.214, 3);
    expect((count.upper ?? 0) / (240 / 36)).toBeCloseTo(49.839, 3);
  });

  it('honey concentrated: pellet of 10 g in 1 ml, 24 colonies on 0.1 ml, are 24 CFU/g with a limit of 1', () => {
    const count = plateCount({ ...common, plates: [plate(24)], suspensionMillilitres: 1, amount: 10 });
    expect(count.load).toBeCloseTo(24, 9);
    expect(count.detectionLimit).toBeCloseTo(1, 9);
  });

  it('tenfold series: 210, 190 at 10^-2 and 22, 18 at 10^-3 are 2.0e5 CFU/ml', () => {
    const plates = [plate(210, 0.01), plate(190, 0.01), plate(22, 0.001), plate(18, 0.001)];
    const count = plateCount({ ...common, plates, suspensionMillilitres: 1, amount: 1, unit: 'ml' });
    expect(count.perMillilitre).toBeCloseTo(200_000, 6);
    expect(count.millilitresExamined).toBeCloseTo(0.0022, 12);
  });

  it('bees: 84 colonies on 0.2 ml, 100 bees in 20 ml, are 84 CFU/bee with a limit of 1', () => {
    const count = plateCount({
      ...common,
      plates: [plate(40), plate(44)],
      suspensionMillilitres: 20,
      amount: 100,
      unit: 'bee',
    });
    expect(count.load).toBeCloseTo(84, 9);
    expect(count.detectionLimit).toBeCloseTo(1, 9);
  });

  it('none grown on 3 plates of 0.1 ml: below about 3 colonies, here 20 CFU/g, never zero', () => {
    const count = plateCount({
      ...common,
      plates: [plate(0), plate(0), plate(0)],
      suspensionMillilitres: 20,
      amount: 10,
    });
    expect(count.reading).toBe('none grown');
    expect(count.upper).toBeCloseTo(19.97, 2);
    expect(count.upper).toBeGreaterThan(count.detectionLimit);
  });

  it('keeps to the counting limits the laboratory states, and says which plates it left out', () => {
    const countable = { lowest: 15, highest: 300 };
    const plates = [plate(null, 0.1), plate(640, 0.01), plate(61, 0.001), plate(7, 0.0001)];
    const count = plateCount({ ...common, countable, plates, suspensionMillilitres: 1, amount: 1 });
    expect(count.used).toEqual([2]);
    expect(count.leftOut).toEqual([0, 1, 3]);
    expect(count.load).toBeCloseTo(61 / 0.0001, 3);
    const few = plateCount({ ...common, countable, plates: [plate(4), plate(6)], suspensionMillilitres: 1, amount: 1 });
    expect(few.reading).toBe('below counting range');
    expect(few.load).toBeCloseTo(50, 9);
    const many = plateCount({
      ...common,
      countable,
      plates: [plate(null), plate(900, 0.1)],
      suspensionMillilitres: 1,
      amount: 1,
    });
    expect(many).toMatchObject({ reading: 'too many to count', load: null, upper: null });
    expect(many.lower).toBeCloseTo(30_000, 6);
  });

  it('refuses what no plate can show, naming the field', () => {
    const base = { ...common, suspensionMillilitres: 20, amount: 10 };
    expect(() => plateCount({ ...base, plates: [plate(1.5)] })).toThrow('plates[0].colonies must be a whole number');
    expect(() => plateCount({ ...base, plates: [plate(3, 2)] })).toThrow('plates[0].dilution');
    expect(() => plateCount({ ...base, plates: [] })).toThrow('plates must be a list of at least one item');
    expect(() => plateCount({ ...base, amount: 0, plates: [plate(3)] })).toThrow('amount must be a number above 0');
  });

  it('turns CFU into spores only by a stated recovery', () => {
    expect(sporesAssumingRecovery({ load: 240, recovery: 0.1 }).spores).toBeCloseTo(2400, 9);
    expect(() => sporesAssumingRecovery({ load: 240, recovery: 0 })).toThrow('recovery');
  });
});

describe('pools', () => {
  it('five parts, one at 6 CFU/g: 1.2 CFU/g, caught at a limit of 1 and missed at 2', () => {
    expect(loadInPool({ load: 6, parts: 5, detectionLimit: 1 })).toMatchObject({ poolLoad: 1.2, reachesLimit: true });
    expect(loadInPool({ load: 6, parts: 5, detectionLimit: 2 })).toMatchObject({
      reachesLimit: false,
      leastLoadCaught: 10,
    });
  });

  it('bees to take: figures of the statistics and European foulbrood papers (BB-STAT-2.2, BB-EFB-4) and arithmetic', () => {
    const percent = (carrierShare: number, bees: number) =>
      Number((100 * chanceOfCarrierInSample({ carrierShare, bees }).probability).toFixed(1));
    expect(percent(0.05, 20)).toBe(64.2); // the paper prints 65
    expect(percent(0.05, 30)).toBe(78.5); // the paper prints 78
    expect(percent(0.5, 5)).toBe(96.9);
    expect(percent(0.05, 60)).toBe(95.4);
    expect(percent(0.1, 30)).toBe(95.8);
    expect([0.01, 0.02, 0.05].map((p) => percent(p, 100))).toEqual([63.4, 86.7, 99.4]);
  });
});

describe('limits of the laboratory that reported', () => {
  const limits: LaboratoryLimits = {
    laboratory: 'Invented laboratory for tests',
    method: 'culture',
    material: 'brood-nest honey',
    unit: 'g',
    statedOn: '2026-03-01',
    source: 'invented for this test',
    classes: [
      { name: 'none', from: 0 },
      { name: 'low', from: 1 },
      { name: 'high', from: 500 },
    ],
  };
  const report = {
    load: 240,
    lower: 168,
    upper: 332,
    unit: 'g',
    material: 'brood-nest honey',
    method: 'culture',
    limits,
  } as const;

  it('reads the load by them and says where they come from', () => {
    expect(meaningOfLoad(report)).toEqual({
      outcome: 'classed',
      className: 'low',
      possibleClasses: ['low'],
      limitsFrom: 'Invented laboratory for tests, stated 2026-03-01: invented for this test',
    });
  });

  it('names every class the interval reaches into', () => {
    const meaning = meaningOfLoad({ ...report, upper: 700 });
    expect(meaning).toMatchObject({ outcome: 'class not certain', className: 'low', possibleClasses: ['low', 'high'] });
  });

  it('has no limits of its own', () => {
    expect(meaningOfLoad({ ...report, limits: null })).toMatchObject({ outcome: 'no limits stored', className: null });
  });

  it('refuses limits for another unit, material or method: nothing is converted', () => {
    expect(() => meaningOfLoad({ ...report, unit: 'bee' })).toThrow('unit must be that of the limits');
    expect(() => meaningOfLoad({ ...report, material: 'adult bees' })).toThrow('material');
    expect(() => meaningOfLoad({ ...report, method: 'PCR' })).toThrow('method');
    expect(() => meaningOfLoad({ ...report, limits: { ...limits, statedOn: 'March' } })).toThrow('statedOn');
  });
});

describe('meaning of a result for the colony at hand', () => {
  it('published figures', () => {
    const ppv = (sensitivity: number, specificity: number, prevalence: number) =>
      predictiveValues({ sensitivity, specificity, prevalence });
    // LAMP23: Se 98.41 %, Sp taken as 99 %: PPV 49.85 % at 1 %, 83.8 % at 5 % prevalence.
    expect(ppv(0.9841, 0.99, 0.01).positivePredictiveValue).toBeCloseTo(0.4985, 4);
    expect(ppv(0.9841, 0.99, 0.05).positivePredictiveValue).toBeCloseTo(0.838, 3);
    expect(ppv(0.9841, 1, 0.05).likelihoodRatioNegative).toBeCloseTo(0.016, 3);
    // TOM09: 96 % and false positives about 1 %: PPV 49 % at 1 % prevalence.
    expect(ppv(0.96, 0.99, 0.01).positivePredictiveValue).toBeCloseTo(0.49, 2);
    // EFB-RT: Se 93.5 %, Sp 58.6 %: LR+ 2.26, LR- 0.111.
    expect(ppv(0.935, 0.586, 0.1).likelihoodRatioPositive).toBeCloseTo(2.26, 2);
    expect(ppv(0.935, 0.586, 0.1).likelihoodRatioNegative).toBeCloseTo(0.111, 3);
    // LF05: 82 % and 77 % of sign-free colonies positive: LR+ 1.22 and 1.30.
    expect(ppv(1, 0.18, 0.1).likelihoodRatioPositive).toBeCloseTo(1.22, 2);
    expect(ppv(1, 0.23, 0.1).likelihoodRatioPositive).toBeCloseTo(1.3, 2);
    // EFB-DEB (reconstructed counts): PPV 13/16, 15/18, 16/19 from the shares tested.
    expect(ppv(13 / 15, 16 / 19, 15 / 34).positivePredictiveValue).toBeCloseTo(0.813, 3);
    expect(ppv(15 / 21, 12 / 15, 21 / 36).positivePredictiveValue).toBeCloseTo(0.833, 3);
    expect(ppv(1, 15 / 18, 16 / 34).positivePredictiveValue).toBeCloseTo(0.842, 3);
  });

  it('carries the bands of prior and test to the answer', () => {
    const meaning = meaningOfResult({
      result: 'negative',
      prior: { low: 0.01, value: 0.05, high: 0.2 },
      sensitivity: { low: 0.845, value: 1, high: 1 },
      specificity: { low: 0.18, value: 0.2, high: 0.96 },
    });
    expect(meaning.probability).toBe(0);
    expect(meaning.low).toBe(0);
    expect(meaning.high).toBeCloseTo((0.2 * 0.155) / (0.2 * 0.155 + 0.8 * 0.18), 12);
  });
});
