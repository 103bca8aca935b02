import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noLook } from '../brood/look.ts';
import { type Evidence, emptyEvidence } from './evidence.ts';
import { lengthenedWindow, timeSinceOnset } from './time-since-onset.ts';

const evidence = (change: Partial<Evidence>): Evidence => ({ ...emptyEvidence(noLook), ...change });
const seen = { outcome: 'seen' } as const;

describe('time since onset', () => {
  it('is open at the upper end, always, and has no bound without a sign of foulbrood', () => {
    expect(timeSinceOnset(evidence({}))).toBeNull();
    expect(timeSinceOnset(evidence({ signs: { 'con.mummy_loose': seen } }))).toBeNull();
    for (const signs of [{ 'cap.sunken': seen }, { 'con.ropy': seen }, { 'scale.hard_lower': seen }]) {
      expect(timeSinceOnset(evidence({ signs }))?.atMostDays).toBeNull();
    }
  });

  it('takes days for dead or ropy brood and weeks for scale (GEN05, BOOKLET, MAAREC-SCALE)', () => {
    expect(timeSinceOnset(evidence({ signs: { 'cap.sunken': seen } }))?.atLeastDays).toBe(5);
    const rope = { tissue: 'moist brown', stick: 'rough and dry', threadMillimetres: 25, snapsBack: true } as const;
    expect(timeSinceOnset(evidence({ ropeTests: [rope] }))).toMatchObject({ atLeastDays: 5, basis: ['ropy-remains'] });
    expect(timeSinceOnset(evidence({ signs: { 'cap.sunken': seen, 'scale.hard_lower': seen } }))).toMatchObject({
      atLeastDays: 35,
      basis: ['dead-brood', 'scale'],
    });
  });

  it('says "often months" of much scale or of scale on three frames, and draws no bound from it', () => {
    const much = timeSinceOnset(evidence({ signs: { 'scale.hard_lower': { outcome: 'seen', count: 'over 100' } } }));
    expect(much).toMatchObject({ oftenMonths: true, atLeastDays: 35 });
    const spread = timeSinceOnset(evidence({ signs: { 'scale.hard_lower': { outcome: 'seen', frames: 3 } } }));
    expect(spread).toMatchObject({ oftenMonths: true, basis: ['scale', 'spread-over-frames'] });
  });

  it('may lengthen a tracing window and never shortens one', () => {
    const scale = timeSinceOnset(evidence({ signs: { 'scale.hard_lower': seen } }));
    fc.assert(
      fc.property(fc.double({ min: 0, max: 4000, noNaN: true }), (days) => {
        expect(lengthenedWindow(days, scale)).toBeGreaterThanOrEqual(days);
        expect(lengthenedWindow(days, null)).toBe(days);
      }),
      { seed: 42, numRuns: 100 },
    );
    expect(lengthenedWindow(10, scale)).toBe(42);
    expect(() => lengthenedWindow(-1, scale)).toThrow(/from 0/);
  });
});
