import { source } from '@combside/sources/bibliography';
import { describe, expect, it } from 'vitest';
import { figureOf, likelihoodRatios, predictiveValues, testFigures, testIds } from './test-figures.ts';

const share = (positive: number, of: number): number => positive / of;

describe('published figures of tests', () => {
  it('41: culture of more than 100 bees found 21 of 21 clinical colonies (LF05)', () => {
    expect(figureOf('culture-bees-afb').sensitivity.counts).toEqual({ positive: 21, of: 21 });
  });

  it('42: 82 % and 77 % of sign-free colonies of affected operations are positive: LR+ 1.22 and 1.30 (LF05, arithmetic)', () => {
    expect(likelihoodRatios(1, 0.82).positive).toBeCloseTo(1.22, 2);
    expect(likelihoodRatios(1, 0.77).positive).toBeCloseTo(1.3, 2);
  });

  it('42: what the network uses stays within 1.2 to 1.3, after moving 21 of 21 off certainty (LF05)', () => {
    const { sensitivity, falsePositive } = figureOf('culture-bees-afb');
    const inOperation = falsePositive['operation affected'].value.value;
    expect(inOperation).toBe(0.82);
    for (const share of [0.82, 0.77]) {
      const ratio = likelihoodRatios(sensitivity.value.value, share).positive;
      expect(Math.round(ratio * 10) / 10).toBeGreaterThanOrEqual(1.2);
      expect(Math.round(ratio * 10) / 10).toBeLessThanOrEqual(1.3);
    }
  });

  it('43: 18 of 18, 2 of 56 = 3.6 %, 12 of 46 = 26.1 %, 120 in all; LR+ 22 to 28 against unexposed hives (HK89, arithmetic)', () => {
    expect(18 + 56 + 46).toBe(120);
    const { falsePositive } = figureOf('culture-bees-afb');
    expect(falsePositive['none known'].counts).toEqual({ positive: 2, of: 56 });
    expect(falsePositive['apiary affected'].counts).toEqual({ positive: 12, of: 46 });
    expect(falsePositive['none known'].value.value).toBeCloseTo(0.036, 3);
    expect(falsePositive['apiary affected'].value.value).toBeCloseTo(0.261, 3);
    expect(likelihoodRatios(share(18, 18), share(2, 56)).positive).toBeCloseTo(28, 6);
    expect(likelihoodRatios(share(18.5, 19), share(2.5, 57)).positive).toBeCloseTo(22.2, 1);
    const used = figureOf('culture-bees-afb').sensitivity.value.value;
    const ratio = likelihoodRatios(used, falsePositive['none known'].value.value).positive;
    expect(ratio).toBeGreaterThan(22);
    expect(ratio).toBeLessThan(28);
  });

  it('45: LAMP 98.41 % and 100 %, LR- 0.016 (LAMP23, arithmetic)', () => {
    expect(figureOf('lamp-afb').sensitivity.value.value).toBe(0.9841);
    expect(1 - 0.9841).toBeCloseTo(0.016, 3);
    expect(share(62, 63)).toBeCloseTo(0.9841, 4);
  });

  it('46: with 99 % in place of 100 % a positive LAMP is worth 49.8 % at 1 % and 83.8 % at 5 % (arithmetic)', () => {
    const figure = figureOf('lamp-afb');
    const falsePositive = figure.falsePositive['none known'].value.value;
    expect(falsePositive).toBe(0.01);
    // The first is 49.85 %, so the value printed to one decimal depends on the rounding of its parts: within 0.1 %.
    expect(Math.abs(predictiveValues(0.01, 0.9841, falsePositive).positive - 0.498)).toBeLessThan(0.001);
    expect(Math.abs(predictiveValues(0.05, 0.9841, falsePositive).positive - 0.838)).toBeLessThan(0.001);
  });

  it('47: the European foulbrood kit, 96 % of 184 and about 1 % false positives: worth 49 % at 1 % (TOM09, arithmetic)', () => {
    const figure = figureOf('lateral-flow-efb');
    expect(figure.sensitivity.value.value).toBe(0.96);
    expect(figure.sensitivity.value.sampleSize).toBe(184);
    expect(predictiveValues(0.01, 0.96, figure.falsePositive['none known'].value.value).positive).toBeCloseTo(0.49, 2);
  });

  it('48: 68 of 76 is 89.47 % (the low end used), 75 of 77 is 97.40 % for microscopy (LFD21, rebuilt)', () => {
    expect(share(68, 76)).toBeCloseTo(0.8947, 4);
    expect(share(75, 77)).toBeCloseTo(0.974, 4);
    expect(figureOf('microscopy-brood-efb').sensitivity.value.value).toBeCloseTo(0.974, 4);
    // Wilson 80.6-94.6 % of 68 of 76 in the reading of the trial: its lower end is the lower end of the band.
    expect(figureOf('lateral-flow-efb').sensitivity.value.low).toBe(0.806);
  });

  it('49: qPCR against the eye, 93.5 % and 58.6 %: LR+ 2.26, LR- 0.111 (EFB-RT, arithmetic)', () => {
    const figure = figureOf('qpcr-bees-efb');
    const ratios = likelihoodRatios(figure.sensitivity.value.value, figure.falsePositive['none known'].value.value);
    expect(ratios.positive).toBeCloseTo(2.26, 2);
    expect(ratios.negative).toBeCloseTo(0.111, 3);
  });

  it.each([
    ['50', 'pcr-honey-efb', 13 / 15, 16 / 19, 13 / 16, 29 / 34],
    ['51', 'pcr-debris-efb', 15 / 21, 12 / 15, 15 / 18, 27 / 36],
    ['52', 'pcr-bees-efb', 16 / 16, 15 / 18, 16 / 19, 31 / 34],
  ] as const)(
    '%s: %s, its counts give the printed predictive value and accuracy (EFB-DEB, rebuilt)',
    (_, id, se, sp, ppv, accuracy) => {
      const figure = figureOf(id);
      const sick = figure.sensitivity.counts as { positive: number; of: number };
      const well = figure.falsePositive['none known'].counts as { positive: number; of: number };
      expect(share(sick.positive, sick.of)).toBeCloseTo(se, 12);
      expect(1 - share(well.positive, well.of)).toBeCloseTo(sp, 12);
      expect(share(sick.positive, sick.positive + well.positive)).toBeCloseTo(ppv, 12);
      expect(share(sick.positive + well.of - well.positive, sick.of + well.of)).toBeCloseTo(accuracy, 12);
    },
  );

  it('60: the milk test takes longer than its 10 to 20 minutes of waiting, and has no published figure (HOLST)', () => {
    expect(testFigures['holst-milk'].cost.value).toBeGreaterThanOrEqual(20);
    expect(testFigures['holst-milk'].published).toBe(false);
  });

  it('mark every figure as published with a source, or as an expert band with its ends; none is 0 or 1', () => {
    expect(testIds.length).toBeGreaterThan(10);
    for (const id of testIds) {
      const figure = figureOf(id);
      for (const { value, counts } of [figure.sensitivity, ...Object.values(figure.falsePositive)]) {
        expect(value.value, id).toBeGreaterThan(0);
        expect(value.value, id).toBeLessThan(1);
        for (const key of value.sources) expect(source(key).title.length).toBeGreaterThan(0);
        if (value.standing === 'published') expect(value.sources.length, id).toBeGreaterThan(0);
        else if (!counts) {
          expect(value.low, id).toBeGreaterThan(0);
          expect(value.high, id).toBeLessThan(1);
        }
      }
      expect(figure.published, id).toBe(figure.sensitivity.value.standing === 'published');
    }
  });

  it('refuse chances out of range', () => {
    expect(() => likelihoodRatios(1.2, 0.1)).toThrow(/sensitivity/);
    expect(() => likelihoodRatios(0.9, 0)).toThrow(/false-positive/);
    expect(() => predictiveValues(0, 0.9, 0.1)).toThrow(/prevalence/);
  });
});
