import { describe, expect, it } from 'vitest';
import type { Look } from '../brood/look.ts';
import { seeded } from '../random/seeded.ts';
import { diseases } from '../signs/catalogue.ts';
import { drawFactor, drawProbability, drawRate } from './bands.ts';
import { couldHaveMissed, limitsOf, tooLittleBrood } from './could-have-missed.ts';
import { type Evidence, emptyEvidence, nothingKnown } from './evidence.ts';
import { intervalOf, intervals } from './intervals.ts';
import { broodNetwork } from './network.ts';
import { posterior } from './posterior.ts';
import { priorFrom } from './prior.ts';

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
const notifiable = ['american-foulbrood', 'european-foulbrood'] as const;
const caps: Evidence = { ...emptyEvidence(look), signs: { 'cap.sunken': { outcome: 'seen', count: '11-100' } } };

function intervalsOf(evidence: Evidence, settings = {}) {
  return intervals(broodNetwork, evidence, priorFrom(evidence), notifiable, settings);
}

describe('the middle of the draws', () => {
  it('is the 5th and the 95th of a hundred (uniform draws: 0.05 and 0.95 within what 4,000 draws allow)', () => {
    const chance = seeded(3);
    const { low, high, lowBetween, highBetween } = intervalOf(
      Float64Array.from({ length: 4000 }, () => chance.uniform()),
    );
    const allowed = 4 * Math.sqrt((0.05 * 0.95) / 4000);
    expect(Math.abs(low - 0.05)).toBeLessThan(allowed);
    expect(Math.abs(high - 0.95)).toBeLessThan(allowed);
    expect(lowBetween[0]).toBeLessThan(low);
    expect(highBetween[1]).toBeGreaterThan(high);
  });

  it('says how far its own ends may still move: the true ends lie in between in about 95 of 100 runs', () => {
    let held = 0;
    for (let run = 0; run < 400; run++) {
      const chance = seeded(run);
      const { lowBetween } = intervalOf(Float64Array.from({ length: 400 }, () => chance.uniform()));
      if (lowBetween[0] <= 0.05 && 0.05 <= lowBetween[1]) held++;
    }
    expect(held / 400).toBeGreaterThan(0.92);
    expect(held / 400).toBeLessThanOrEqual(1);
  });
});

describe('draws from bands', () => {
  it('stay inside, and their median is the point value of an expert band', () => {
    const chance = seeded(5);
    const value = broodNetwork.nodes.find((node) => node.id === 'cap.sunken');
    const shows = value?.kind === 'sign' ? value.arrows[0]?.shows : undefined;
    if (!shows) throw new Error('no arrow to draw from');
    const drawn = Array.from({ length: 4001 }, () => drawProbability(shows, chance)).sort((a, b) => a - b);
    expect(drawn[0] as number).toBeGreaterThanOrEqual(shows.low as number);
    expect(drawn.at(-1) as number).toBeLessThanOrEqual(shows.high as number);
    expect(Math.abs((drawn[2000] as number) - shows.value)).toBeLessThan(0.02);
  });

  it('follow the counts where there are counts (Jeffreys: mean (x + 1/2) / (n + 1))', () => {
    const chance = seeded(6);
    const rate = {
      value: { value: 2 / 56, unit: 'probability', standing: 'published', sources: [] },
      counts: { positive: 2, of: 56 },
    } as const;
    const mean = Array.from({ length: 20_000 }, () => drawRate(rate, chance)).reduce((sum, p) => sum + p, 0) / 20_000;
    expect(Math.abs(mean - 2.5 / 57)).toBeLessThan(0.001);
  });

  it('of a factor without ends give the factor', () => {
    const value = { value: 2.64, unit: 'odds factor', standing: 'published', sources: [] } as const;
    expect(drawFactor(value, seeded(1))).toBe(2.64);
  });
});

describe('intervals', () => {
  it('repeat themselves for the same seed, and stay within what the draws allow for another', () => {
    const one = intervalsOf(caps, { seed: 11 });
    expect(intervalsOf(caps, { seed: 11 })).toEqual(one);
    const other = intervalsOf(caps, { seed: 99 });
    expect(other).not.toEqual(one);
    // Each end was said to lie within its own bounds; two runs may differ by about both.
    for (const disease of diseases) {
      const here = one.disease[disease];
      const there = other.disease[disease];
      const allowed = here.lowBetween[1] - here.lowBetween[0] + there.lowBetween[1] - there.lowBetween[0] + 0.01;
      expect(Math.abs(here.low - there.low), disease).toBeLessThan(allowed);
    }
  });

  it('hold the point value, and widen no further with four times the draws (convergence)', () => {
    const believed = posterior(broodNetwork, caps, priorFrom(caps));
    const quick = intervalsOf(caps);
    const slow = intervalsOf(caps, { draws: 1600 });
    for (const disease of diseases) {
      expect(believed.disease[disease]).toBeGreaterThan(quick.disease[disease].low);
      expect(believed.disease[disease]).toBeLessThan(quick.disease[disease].high);
    }
    expect(slow.widestEnd).toBeLessThan(quick.widestEnd);
    expect(quick.draws).toBe(400);
  });

  it('do not change with the order in which signs were entered', () => {
    const signs = {
      'cap.sunken': { outcome: 'seen' },
      'con.sac': { outcome: 'seen' },
      tongue: { outcome: 'not seen' },
    } as const;
    const turned = { tongue: signs.tongue, 'con.sac': signs['con.sac'], 'cap.sunken': signs['cap.sunken'] };
    expect(intervalsOf({ ...caps, signs: turned })).toEqual(intervalsOf({ ...caps, signs }));
  });

  it('are those of the prior when nothing was looked for: narrow where the district counted many colonies', () => {
    const counted: Evidence = {
      ...emptyEvidence(look),
      circumstances: {
        ...nothingKnown,
        district: [{ disease: 'american-foulbrood', confirmed: 40, examined: 4000, about: 'spring' }],
      },
    };
    const { low, high } = intervalsOf(counted).disease['american-foulbrood'];
    // Beta(40.5, 3960.5): 5 % and 95 % points 0.007666 and 0.012857 (R 4.2.2: qbeta(c(.05, .95), 40.5, 3960.5)).
    expect(Math.abs(low - 0.007666)).toBeLessThan(0.0006);
    expect(Math.abs(high - 0.012857)).toBeLessThan(0.0006);
    const guessed = intervalsOf(emptyEvidence(look)).disease['american-foulbrood'];
    expect(guessed.high - guessed.low).toBeGreaterThan(5 * (high - low));
  });

  it('refuse too few draws', () => {
    expect(() => intervalsOf(caps, { draws: 10 })).toThrow(/40 or more/);
  });
});

describe('what a look could have missed', () => {
  it('misses less the more cells are sick, within the interval, and never with certainty', () => {
    const { rows } = couldHaveMissed(look);
    expect(rows.map((row) => row.cells)).toEqual([1, 5, 50, 500]);
    rows.forEach((row, i) => {
      expect(row.chance).toBeGreaterThan(0);
      expect(row.chance).toBeLessThan(1);
      expect(row.low).toBeLessThanOrEqual(row.chance);
      expect(row.high).toBeGreaterThanOrEqual(row.chance);
      if (i > 0) expect(row.chance).toBeLessThan(rows[i - 1]?.chance as number);
    });
  });

  it('cannot show anything from outside', () => {
    const { rows, limits } = couldHaveMissed({ ...look, depth: 'outside' });
    expect(rows.map((row) => row.chance)).toEqual([1, 1, 1, 1]);
    expect(limits).toEqual(['no-combs-seen']);
  });

  it('names every limit that was stated, and what was not stated', () => {
    expect(limitsOf(look)).toEqual([]);
    expect(
      limitsOf({
        depth: 'part',
        framesHeld: 10,
        framesSeen: 3,
        sides: 'one',
        beesShaken: false,
        light: 'poor',
        hold: 'top bar away',
        cellsOpened: 0,
        cellsSuspicious: null,
        sealedBroodCombSides: 0.1,
      }),
    ).toEqual([
      'not-every-frame',
      'one-side-only',
      'bees-left-on',
      'poor-light',
      'top-bar-away',
      'no-cells-opened',
      'little-sealed-brood',
    ]);
    expect(limitsOf({ ...look, beesShaken: null, light: null, hold: null, sealedBroodCombSides: null })).toEqual([
      'shaking-not-said',
      'light-not-said',
      'hold-not-said',
      'sealed-brood-not-said',
    ]);
  });

  it('T8: judges too little brood by what was in sight', () => {
    expect(tooLittleBrood({ ...look, sealedBroodCombSides: 0.2 })).toBe(true);
    expect(tooLittleBrood({ ...look, sealedBroodCombSides: 0.5 })).toBe(false);
    expect(tooLittleBrood({ ...look, depth: 'part', framesSeen: 3, sealedBroodCombSides: 0.5 })).toBe(true);
    expect(tooLittleBrood({ ...look, sealedBroodCombSides: null })).toBe(false);
  });
});
