import type { SourceId } from '@combside/sources/bibliography';

/** How many colonies of an apiary a place wants opened. */
export interface OpeningRule {
  readonly id: string;
  /** For apiaries up to so many colonies (null: any more) this share is opened, rounded up. In rising order. */
  readonly bands: readonly { readonly upTo: number | null; readonly share: number }[];
  /** At least so many, or all where fewer stand there. */
  readonly least: number;
  /** Whether a suspicion at the site makes it all of them. */
  readonly allWhenSuspect: boolean;
  readonly sources: readonly SourceId[];
  readonly standing: 'published' | 'setting';
}

/** Rules seen in print, from the most to open to the least, and the one an office may choose without a law of its own. */
export const openingRules: readonly OpeningRule[] = [
  {
    id: 'every colony',
    bands: [{ upTo: null, share: 1 }],
    least: 0,
    allWhenSuspect: true,
    sources: ['OH-RULE', 'ZUG-ZONE'],
    standing: 'published',
  },
  {
    id: 'ten, then half',
    bands: [
      { upTo: 10, share: 1 },
      { upTo: null, share: 0.5 },
    ],
    least: 0,
    allWhenSuspect: true,
    sources: ['PROT-US'],
    standing: 'published',
  },
  {
    id: 'falling shares',
    bands: [
      { upTo: 10, share: 1 },
      { upTo: 20, share: 0.5 },
      { upTo: 50, share: 0.33 },
      { upTo: null, share: 0.2 },
    ],
    least: 0,
    allWhenSuspect: true,
    sources: ['NJ-2:24'],
    standing: 'published',
  },
  {
    id: 'one in twenty, ten at least',
    bands: [{ upTo: null, share: 0.05 }],
    least: 10,
    allWhenSuspect: false,
    sources: ['FL-5B-54'],
    standing: 'published',
  },
];

/** The rule taken where nobody chose one. */
export const usualOpeningRule = openingRules[1] as OpeningRule;

/** @returns the rule of this id, or the usual one when no rule has it */
export function openingRule(id: string): OpeningRule {
  return openingRules.find((one) => one.id === id) ?? usualOpeningRule;
}
