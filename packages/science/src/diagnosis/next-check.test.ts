import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Look } from '../brood/look.ts';
import { type SignId, signs } from '../signs/catalogue.ts';
import { checks } from './checks.ts';
import { type Evidence, emptyEvidence, type SignAnswer } from './evidence.ts';
import { broodNetwork } from './network.ts';
import { type CheckSettings, defaultCheckSettings, nextChecks } from './next-check.ts';
import { chanceOfAny, posterior } from './posterior.ts';
import { priorFrom } from './prior.ts';
import type { TestId } from './test-figures.ts';

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
const seen: SignAnswer = { outcome: 'seen' };
const kits: CheckSettings = {
  ...defaultCheckSettings,
  kitsAtHand: ['lateral-flow-afb', 'lateral-flow-efb', 'lamp-afb', 'holst-milk'],
};

function next(evidence: Evidence, settings: CheckSettings = kits) {
  return nextChecks(broodNetwork, evidence, priorFrom(evidence), notifiable, settings);
}

const possible = (evidence: Evidence, settings?: CheckSettings): string[] =>
  next(evidence, settings).atHive.map((one) => one.check);
const whyNot = (evidence: Evidence, check: string, settings?: CheckSettings): string | undefined =>
  next(evidence, settings).notPossible.find((one) => one.check === check)?.why;

describe('what to look at next', () => {
  it('offers only what is possible: a rope test needs moist brown remains (NZ-ROPE)', () => {
    const nothing = emptyEvidence(look);
    expect(whyNot(nothing, 'rope-test')).toBe('no-moist-remains');
    const brown = { ...nothing, signs: { 'col.coffee': seen } };
    expect(possible(brown)).toContain('rope-test');
    const dry = { ...nothing, signs: { 'scale.hard_lower': seen } };
    expect(whyNot(dry, 'rope-test')).toBe('no-moist-remains');
    expect(whyNot(dry, 'lateral-flow-afb')).toBe('too-far-dried');
    // The milk test works on scale, unlike the rope test (HOLST).
    expect(possible(dry)).toContain('holst-milk');
  });

  it('asks dead hives and stored combs for scale, not for living brood', () => {
    for (const hive of ['dead', 'stored combs'] as const) {
      const offered = possible(emptyEvidence({ ...look, hold: null }, hive));
      expect(offered).toContain('scale-search');
      expect(offered).not.toContain('open-cells');
      expect(whyNot(emptyEvidence(look, hive), 'culture-bees-afb')).toBe('no-bees');
    }
  });

  it('offers a kit only to who carries it, and nothing twice', () => {
    const brown: Evidence = { ...emptyEvidence(look), signs: { 'col.coffee': seen } };
    expect(whyNot(brown, 'lateral-flow-afb', defaultCheckSettings)).toBe('kit-not-at-hand');
    const tested: Evidence = { ...brown, tests: [{ test: 'lateral-flow-afb', result: 'negative' }] };
    expect(whyNot(tested, 'lateral-flow-afb')).toBe('done');
    expect(whyNot({ ...brown, signs: { ...brown.signs, mites: seen } }, 'look-for-mites')).toBe('done');
  });

  it('keeps the laboratory apart, in days', () => {
    const { inLaboratory, atHive } = next({ ...emptyEvidence(look), signs: { 'col.coffee': seen } });
    expect(inLaboratory.length).toBeGreaterThan(3);
    for (const one of inLaboratory) {
      expect(one.lossAvoidedPerMinute).toBeNull();
      expect(one.cost).toBeGreaterThanOrEqual(1);
    }
    for (const one of atHive) expect(one.lossAvoidedPerMinute).toBeCloseTo(one.lossAvoided / one.cost, 12);
  });

  it('never finds that knowing more costs: loss avoided and doubt removed are at least 0 (property)', () => {
    const chosen = fc.subarray(
      signs.map((sign) => sign.id),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(chosen, fc.constantFrom('seen', 'not seen'), (ids, outcome) => {
        const evidence: Evidence = {
          ...emptyEvidence(look),
          signs: Object.fromEntries(ids.map((id) => [id, { outcome }])) as Evidence['signs'],
        };
        const { atHive, inLaboratory, notPossible } = next(evidence);
        for (const one of [...atHive, ...inLaboratory]) {
          expect(one.lossAvoided).toBeGreaterThanOrEqual(0);
          expect(one.doubtRemoved).toBeGreaterThanOrEqual(0);
          expect(one.chancePositive).toBeGreaterThanOrEqual(0);
          expect(one.chancePositive).toBeLessThanOrEqual(1);
        }
        expect(atHive.length + inLaboratory.length + notPossible.length).toBe(checks.length);
      }),
      { seed: 170, numRuns: 25 },
    );
  });

  it('reckons the loss avoided by a kit as the definition says (two outcomes, worked out from the posteriors)', () => {
    const signs = { 'col.coffee': seen, 'post.head_up': seen, 'con.sac': seen };
    const evidence: Evidence = { ...emptyEvidence(look), signs };
    const prior = priorFrom(evidence);
    const losses = { missed: 200, falseAlarm: 10, misnamed: 0, doubtOfMissed: 1 };
    const settings: CheckSettings = { ...kits, losses };
    const test: TestId = 'lateral-flow-afb';
    const chance = (one: Evidence): { p: number; log: number } => {
      const { joint, logEvidence } = posterior(broodNetwork, one, prior);
      return { p: chanceOfAny(broodNetwork, joint, notifiable), log: logEvidence };
    };
    const loss = (p: number): number => Math.min(p * losses.missed, (1 - p) * losses.falseAlarm);
    const now = chance(evidence);
    const positive = chance({ ...evidence, tests: [{ test, result: 'positive' }] });
    const negative = chance({ ...evidence, tests: [{ test, result: 'negative' }] });
    const chancePositive = Math.exp(positive.log - now.log);
    expect(chancePositive + Math.exp(negative.log - now.log)).toBeCloseTo(1, 10);
    const expected = loss(now.p) - chancePositive * loss(positive.p) - (1 - chancePositive) * loss(negative.p);
    const found = next(evidence, settings).atHive.find((one) => one.check === test);
    expect(expected).toBeGreaterThan(0.05);
    expect(found?.lossAvoided).toBeCloseTo(expected, 9);
    expect(found?.chancePositive).toBeCloseTo(chancePositive, 9);
  });

  it('goes by the settings: a check that costs ten times as much falls behind', () => {
    const evidence: Evidence = {
      ...emptyEvidence({ ...look, cellsOpened: 0, cellsSuspicious: 40 }),
      signs: { 'cap.sunken': seen },
    };
    const [first] = possible(evidence);
    const dear = { ...kits, costs: { [first as string]: 60 } } as CheckSettings;
    expect(possible(evidence, dear)[0]).not.toBe(first);
  });

  it('offers a better look again where the first could hardly have shown it', () => {
    const poor: Look = { ...look, hold: 'top bar away', light: 'poor' };
    const evidence: Evidence = {
      ...emptyEvidence(poor),
      signs: { 'scale.hard_lower': { outcome: 'not seen' }, 'col.coffee': seen },
    };
    expect(possible(evidence)).toContain('scale-search');
    const searched: Evidence = { ...evidence, look };
    expect(whyNot(searched, 'scale-search')).toBe('done');
  });

  it('has a source or says that minutes are our estimate, and reveals only signs of the catalogue', () => {
    const known = new Set<SignId>(signs.map((sign) => sign.id));
    for (const check of checks) {
      expect(check.cost.value).toBeGreaterThan(0);
      expect(check.cost.standing).toBe('setting');
      for (const sign of check.reveals) expect(known.has(sign)).toBe(true);
    }
  });

  it('refuses losses and costs that cannot be', () => {
    const evidence = emptyEvidence(look);
    const losses = { ...defaultCheckSettings.losses, missed: -1 };
    expect(() => next(evidence, { ...kits, losses })).toThrow(/losses.missed/);
    expect(() => next(evidence, { ...kits, costs: { 'open-cells': 0 } })).toThrow(/above 0/);
  });
});
