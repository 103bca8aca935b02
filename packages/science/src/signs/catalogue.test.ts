import { source } from '@combside/sources/bibliography';
import { describe, expect, it } from 'vitest';
import { backgroundOf } from './background.ts';
import {
  conditions,
  diseaseOf,
  diseases,
  isSign,
  type SignId,
  signGroups,
  signOf,
  signs,
  signsIn,
} from './catalogue.ts';
import { drawingOf } from './drawing.ts';
import { bandOf, middleOf } from './levels.ts';
import { linkOf, links } from './links.ts';

describe('the catalogue', () => {
  it('holds 41 signs and 12 conditions, 10 of them diseases besides the stages and the healthy colony', () => {
    expect(signs).toHaveLength(41);
    expect(conditions).toHaveLength(12);
    expect(diseases).toHaveLength(10);
    expect(new Set(conditions.map(diseaseOf))).toEqual(new Set([null, ...diseases]));
  });

  it('puts every sign into one group, in the order in which groups meet the inspector', () => {
    expect(signGroups.flatMap(signsIn)).toEqual(signs);
    const order = signs.map((sign) => signGroups.indexOf(sign.group));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it('asks a dead hive and stored combs for scale and mummies, not for living brood', () => {
    for (const sign of signs) {
      if (sign.id.startsWith('scale.')) expect(sign.askedIn).toContain('stored combs');
      if (sign.group === 'cappings' || sign.group === 'pattern') expect(sign.askedIn).toEqual(['living']);
    }
  });

  it('draws every sign, no two alike', () => {
    const drawings = signs.map((sign) => JSON.stringify(drawingOf[sign.id]));
    expect(new Set(drawings).size).toBe(41);
  });

  it('knows its own ids and refuses others by name', () => {
    expect(isSign('cap.sunken')).toBe(true);
    expect(isSign('cap.rainbow')).toBe(false);
    expect(isSign('toString')).toBe(false);
    expect(() => signOf('cap.rainbow')).toThrow(/no sign "cap.rainbow"/);
  });
});

describe('the links', () => {
  it('are the 180 of the differential table, each pair once', () => {
    expect(links).toHaveLength(180);
    expect(new Set(links.map((link) => `${link.sign} ${link.condition}`)).size).toBe(180);
  });

  it('name a source that stands in the bibliography, or say common practice', () => {
    for (const link of links) {
      expect(link.sources.length > 0, `${link.sign} ${link.condition}`).toBe(link.basis === 'described');
      for (const key of link.sources) expect(source(key).title.length).toBeGreaterThan(0);
    }
  });

  // Read off the table by hand, one of each level and basis.
  it.each([
    ['scale.hard_lower', 'american-foulbrood.advanced', 'typical', 'described'],
    ['con.ropy', 'european-foulbrood', 'rare', 'described'],
    ['cap.sunken', 'chalkbrood', 'rare', 'common practice'],
    ['tongue', 'sacbrood', 'never described', 'described'],
    ['eggs.multi', 'half-moon', 'typical', 'described'],
    ['con.watery', 'american-foulbrood.early', 'sometimes', 'common practice'],
  ] as const)('say of %s under %s: %s, %s', (sign, condition, level, basis) => {
    expect(linkOf(sign, condition)).toMatchObject({ level, basis });
  });

  it('count 63 typical pairs, 56 sometimes, 25 rare and 36 never described, as the table does', () => {
    const count = (level: string): number => links.filter((link) => link.level === level).length;
    const counts = [count('typical'), count('sometimes'), count('rare'), count('never described')];
    expect(counts.reduce((sum, n) => sum + n, 0)).toBe(180);
    expect(counts).toMatchInlineSnapshot(`
      [
        63,
        56,
        25,
        36,
      ]
    `);
  });
});

describe('bands', () => {
  it('never touch 0 or 1, and the point lies in the middle on the log-odds scale', () => {
    const logit = (p: number): number => Math.log(p / (1 - p));
    for (const value of [...Object.values(bandOf), ...signs.map((sign) => backgroundOf(sign.id as SignId))]) {
      const { low, high } = value as { low: number; high: number };
      expect(low).toBeGreaterThan(0);
      expect(high).toBeLessThan(1);
      expect(logit(value.value)).toBeCloseTo((logit(low) + logit(high)) / 2, 10);
    }
  });

  it('refuse ends that are certain or crossed', () => {
    expect(() => middleOf(0, 0.5)).toThrow(/0 < low/);
    expect(() => middleOf(0.6, 0.5)).toThrow(/0 < low/);
  });
});
