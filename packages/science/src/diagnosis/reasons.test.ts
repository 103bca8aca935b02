import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Look } from '../brood/look.ts';
import { signs } from '../signs/catalogue.ts';
import { type Evidence, emptyEvidence, type SignAnswer } from './evidence.ts';
import { broodNetwork } from './network.ts';
import { posterior } from './posterior.ts';
import { priorFrom } from './prior.ts';
import { leadingTwo, reasonsFor, strengthOf } from './reasons.ts';

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

function reason(evidence: Evidence) {
  return reasonsFor(broodNetwork, evidence, priorFrom(evidence), leadingTwo(believe(evidence).disease));
}

const seen: SignAnswer = { outcome: 'seen' };

describe('reasons', () => {
  it('are the log-odds with everything less those without the piece, worked out from the two posteriors', () => {
    const chosen = fc.subarray(
      signs.filter((sign) => !sign.id.startsWith('pattern') && !sign.id.startsWith('odour')).map((sign) => sign.id),
      { minLength: 2, maxLength: 6 },
    );
    fc.assert(
      fc.property(chosen, (ids) => {
        const evidence: Evidence = { ...emptyEvidence(look), signs: Object.fromEntries(ids.map((id) => [id, seen])) };
        const { leading, rival, reasons } = reason(evidence);
        expect(reasons).toHaveLength(ids.length);
        const all = believe(evidence).disease;
        for (const one of reasons) {
          const { [one.node as (typeof ids)[number]]: _left, ...rest } = evidence.signs;
          const without = believe({ ...evidence, signs: rest }).disease;
          for (const [disease, shift] of [
            [leading, one.forLeading],
            [rival, one.forRival],
          ] as const) {
            // The posterior's 1 - p has lost digits near 1; there the comparison says nothing.
            if (all[disease] > 0.999 || without[disease] > 0.999) continue;
            const logOdds = (p: number): number => Math.log(p) - Math.log1p(-p);
            expect(shift).toBeCloseTo(logOdds(all[disease]) - logOdds(without[disease]), 8);
          }
        }
      }),
      { seed: 160, numRuns: 40 },
    );
  });

  it('stand with the strongest first and carry their sources', () => {
    const { reasons } = reason({
      ...emptyEvidence(look),
      signs: { 'cap.sunken': seen, 'scale.hard_lower': seen, tongue: seen },
    });
    const sizes = reasons.map((one) => Math.abs(one.forLeading));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    for (const one of reasons) {
      expect(one.sources.length).toBeGreaterThan(0);
      expect(one.direction).toBe('for');
      expect(one.sentence.values.condition).toEqual({ word: 'signs.condition.american-foulbrood.name' });
    }
  });

  it('speak against what a missing sign makes less likely', () => {
    const { reasons, leading } = reason({
      ...emptyEvidence(look),
      signs: { 'cap.sunken': seen, 'cap.dark_greasy': seen, mites: { outcome: 'not seen' } },
    });
    expect(leading).toBe('varroa-damage');
    expect(reasons.find((one) => one.node === 'mites')).toMatchObject({ outcome: 'not seen', direction: 'against' });
  });

  it('have words for their size: factors of 1.2, 3 and 20 on the odds', () => {
    expect([1.1, 2, 10, 100].map((factor) => strengthOf(Math.log(factor)))).toEqual([
      'nothing',
      'weak',
      'fair',
      'strong',
    ]);
    expect(strengthOf(-Math.log(10))).toBe('fair');
  });

  it('say of what is silent why it does not count', () => {
    const { silent, reasons } = reason({
      ...emptyEvidence({ ...look, hold: 'top bar away' }),
      signs: { 'scale.hard_lower': { outcome: 'not seen' } },
    });
    expect(reasons).toEqual([]);
    expect(silent).toEqual([
      {
        node: 'scale.hard_lower',
        why: 'view-hides-it',
        sentence: { id: 'signs.silent.view-hides-it', values: { what: { word: 'signs.sign.scale.hard_lower.name' } } },
      },
    ]);
  });
});
