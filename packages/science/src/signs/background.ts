import type { SourcedValue } from '@combside/sources/sourced-value';
import type { SignId } from './catalogue.ts';
import { band, bandOf } from './levels.ts';
import { linkOf } from './links.ts';

/** Single casualties lie in many colonies without any of the named conditions. */
const casualty = band(0.002, 0.03, {
  standing: 'common practice',
  doubts: 'A dead larva or two is no disease; how often an inspector meets one is not published.',
});

const background: Partial<Record<SignId, SourcedValue>> = {
  'age.coiled': casualty,
  'age.prepupa': casualty,
  'age.pupa': casualty,
  'post.melted': casualty,
  'col.offwhite_yellow': casualty,
  'con.watery': casualty,
  'con.dry_unfed': casualty,
  // A smell is in the nose of one person: the source calls it no reliable discriminator, so it may never weigh much.
  'odour.glue': band(0.01, 0.15, { sources: ['OSU'] }),
  'odour.sour': band(0.01, 0.15, { sources: ['OSU'] }),
  'odour.any': band(0.01, 0.15, { sources: ['OSU'] }),
  // Colonies are small, or carry mites, without any brood damage.
  few_adults: band(0.02, 0.2, { standing: 'common practice' }),
  mites: band(0.02, 0.2, { standing: 'common practice' }),
  // Called definitive for American foulbrood by its source: a high, but never an infinite, weight.
  tongue: band(0.0001, 0.001, { sources: ['NZ-TONGUE'] }),
};

/**
 * How often a colony with none of the named conditions shows the sign to an inspector: what the table says for the
 * healthy colony, else a value of ours with its reason, else the floor of "never described".
 */
export function backgroundOf(sign: SignId): SourcedValue {
  const own = background[sign];
  if (own) return own;
  const healthy = linkOf(sign, 'healthy');
  if (!healthy) return bandOf['never described'];
  return { ...bandOf[healthy.level], standing: healthy.basis, sources: healthy.sources };
}

/**
 * What a condition leaves of a sign of healthy brood when no source mentions the pair: somewhat less than all of it.
 * Expert band.
 */
export const unmentionedOfHealthyBrood: SourcedValue = band(0.5, 0.98);
