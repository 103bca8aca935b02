import type { SourceId } from '@combside/sources/bibliography';
import type { ConditionId, SignId } from './catalogue.ts';
import type { Level } from './levels.ts';

/**
 * How often each condition shows each sign: our reading of descriptive wording, no measured rate. A pair that is not
 * listed is not mentioned in any source seen, which is not proof that it does not occur.
 */
export interface Link {
  readonly sign: SignId;
  readonly condition: ConditionId;
  readonly level: Level;
  /** `described`: a source describes it. `common practice`: said in the trade, no source found. */
  readonly basis: 'described' | 'common practice';
  readonly sources: readonly SourceId[];
}

type Row = readonly [condition: ConditionId, level: Level, basis: Link['basis'], sources: readonly SourceId[]];

const table: Readonly<Record<SignId, readonly Row[]>> = {
  'pattern.compact': [
    ['healthy', 'typical', 'described', ['BOOKLET', 'FACT-US']],
    ['american-foulbrood.early', 'sometimes', 'described', ['FACT-US']],
    ['american-foulbrood.advanced', 'never described', 'common practice', []],
    ['chalkbrood', 'sometimes', 'common practice', []],
    ['sacbrood', 'sometimes', 'described', ['US-SAC']],
    ['half-moon', 'never described', 'described', ['NZ-HMS']],
  ],
  'pattern.spotty': [
    ['healthy', 'rare', 'common practice', []],
    ['american-foulbrood.early', 'sometimes', 'described', ['NZ-INF']],
    ['american-foulbrood.advanced', 'typical', 'described', ['QLD-SIGN', 'EURL-AFB', 'FACT-US']],
    ['european-foulbrood', 'typical', 'described', ['BB-EFB-1.2']],
    ['chalkbrood', 'typical', 'described', ['BB-FUN-1.2']],
    ['sacbrood', 'sometimes', 'described', ['BA-SAC', 'US-SAC']],
    ['varroa-damage', 'typical', 'described', ['TX-LEAF']],
    ['chilled-or-starved', 'sometimes', 'common practice', []],
    ['stonebrood', 'typical', 'described', ['BB-FUN-2.3']],
    ['queen-failure', 'typical', 'described', ['NORF-DL']],
    ['bald-brood', 'never described', 'common practice', []],
    ['half-moon', 'typical', 'described', ['NZ-HMS']],
  ],
  'cap.sunken': [
    ['american-foulbrood.early', 'sometimes', 'described', ['FACT-US']],
    ['american-foulbrood.advanced', 'typical', 'described', ['EURL-AFB', 'BOOKLET']],
    ['european-foulbrood', 'sometimes', 'described', ['NZ-EFB', 'COMPTAB']],
    ['chalkbrood', 'rare', 'common practice', []],
    ['sacbrood', 'sometimes', 'described', ['BA-SAC']],
    ['varroa-damage', 'typical', 'described', ['NZ-PMS']],
  ],
  'cap.dark_greasy': [
    ['american-foulbrood.early', 'sometimes', 'described', ['FACT-US']],
    ['american-foulbrood.advanced', 'typical', 'described', ['EURL-AFB', 'NZ-GALL']],
    ['european-foulbrood', 'rare', 'described', ['COMPTAB']],
    ['chalkbrood', 'rare', 'common practice', []],
    ['sacbrood', 'sometimes', 'described', ['CUSH-SAC', 'BA-SAC']],
    ['varroa-damage', 'sometimes', 'described', ['NZ-PMS']],
    ['chilled-or-starved', 'sometimes', 'described', ['PEACE-CH']],
  ],
  'cap.perforated': [
    ['healthy', 'rare', 'common practice', []],
    ['american-foulbrood.early', 'sometimes', 'described', ['EURL-AFB']],
    ['american-foulbrood.advanced', 'typical', 'described', ['EURL-AFB', 'NZ-GALL']],
    ['european-foulbrood', 'sometimes', 'described', ['NZ-EFB', 'PLOS19']],
    ['chalkbrood', 'sometimes', 'described', ['BB-FUN-1.2']],
    ['sacbrood', 'typical', 'described', ['NZ-SAC', 'BIP-SAC']],
    ['varroa-damage', 'typical', 'described', ['NZ-PMS', 'PLOS19']],
    ['chilled-or-starved', 'sometimes', 'described', ['ELBKA-CH', 'PEACE-CH']],
    ['bald-brood', 'sometimes', 'described', ['BIP-BALD']],
    ['half-moon', 'sometimes', 'described', ['NZ-HMS']],
  ],
  'cap.flattened': [
    ['american-foulbrood.early', 'sometimes', 'common practice', []],
    ['chalkbrood', 'sometimes', 'described', ['BB-FUN-1.2']],
  ],
  'cap.late_unemerged': [
    ['american-foulbrood.early', 'typical', 'described', ['NZ-FRAMES']],
    ['american-foulbrood.advanced', 'typical', 'described', ['NZ-FRAMES']],
    ['chalkbrood', 'sometimes', 'common practice', []],
    ['sacbrood', 'sometimes', 'common practice', []],
  ],
  'cap.line_open': [
    ['healthy', 'rare', 'common practice', []],
    ['varroa-damage', 'rare', 'described', ['BIP-BALD']],
    ['bald-brood', 'typical', 'described', ['BB-WAX-4.1.3', 'BIP-BALD', 'CUSH-BALD']],
  ],
  'cap.domed': [
    ['american-foulbrood.early', 'never described', 'common practice', []],
    ['american-foulbrood.advanced', 'never described', 'common practice', []],
    ['queen-failure', 'typical', 'described', ['HBS-DL', 'NORF-DL']],
    ['half-moon', 'sometimes', 'described', ['NZ-HMS']],
  ],
  'age.coiled': [
    ['american-foulbrood.early', 'rare', 'described', ['CARRS', 'NZ-EFB']],
    ['american-foulbrood.advanced', 'rare', 'described', ['CARRS', 'NZ-EFB']],
    ['european-foulbrood', 'typical', 'described', ['NZ-EFB', 'MAAREC-EFB', 'COMPTAB']],
    ['sacbrood', 'rare', 'described', ['US-SAC']],
    ['varroa-damage', 'sometimes', 'described', ['TX-LEAF']],
    ['chilled-or-starved', 'sometimes', 'described', ['ELBKA-CH']],
    ['half-moon', 'typical', 'described', ['NZ-HMS']],
  ],
  'age.twisted': [
    ['american-foulbrood.early', 'never described', 'described', ['NZ-EFB']],
    ['american-foulbrood.advanced', 'never described', 'described', ['NZ-EFB']],
    ['european-foulbrood', 'typical', 'described', ['BB-EFB-1.2', 'NZ-EFB', 'WA-EFB']],
    ['varroa-damage', 'sometimes', 'described', ['NZ-PMS']],
    ['half-moon', 'typical', 'described', ['NZ-HMS']],
  ],
  'age.prepupa': [
    ['american-foulbrood.early', 'typical', 'described', ['NZ-SHAPE', 'COMPTAB']],
    ['american-foulbrood.advanced', 'typical', 'described', ['NZ-SHAPE', 'COMPTAB']],
    ['european-foulbrood', 'rare', 'described', ['BB-EFB-1.2', 'COMPTAB', 'NZ-EFB']],
    ['chalkbrood', 'typical', 'described', ['SPC-CB']],
    ['sacbrood', 'typical', 'described', ['NZ-SAC', 'US-SAC']],
    ['varroa-damage', 'typical', 'described', ['NZ-PMS']],
    ['chilled-or-starved', 'sometimes', 'described', ['ELBKA-CH']],
    ['stonebrood', 'sometimes', 'common practice', []],
  ],
  'age.pupa': [
    ['american-foulbrood.early', 'sometimes', 'described', ['NZ-SHAPE']],
    ['american-foulbrood.advanced', 'sometimes', 'described', ['NZ-SHAPE', 'COMPTAB']],
    ['european-foulbrood', 'rare', 'described', ['MAAREC-EFB', 'NZ-EFB']],
    ['sacbrood', 'never described', 'described', ['NZ-SAC']],
    ['varroa-damage', 'sometimes', 'described', ['TX-LEAF']],
    ['chilled-or-starved', 'sometimes', 'described', ['BDJ-CH']],
    ['stonebrood', 'sometimes', 'described', ['BB-FUN-2.1']],
  ],
  'age.all_together': [
    ['american-foulbrood.early', 'never described', 'described', ['ELBKA-CH']],
    ['american-foulbrood.advanced', 'never described', 'described', ['ELBKA-CH']],
    ['european-foulbrood', 'never described', 'described', ['ELBKA-CH']],
    ['chilled-or-starved', 'typical', 'described', ['ELBKA-CH', 'BDJ-CH']],
  ],
  'post.head_up': [
    ['american-foulbrood.early', 'never described', 'described', ['NZ-SAC']],
    ['american-foulbrood.advanced', 'rare', 'described', ['NZ-SAC']],
    ['sacbrood', 'typical', 'described', ['NZ-SAC', 'BB-VIR-1.1.5']],
  ],
  'post.melted': [
    ['american-foulbrood.early', 'typical', 'described', ['NZ-SHAPE', 'MAAREC-MELT']],
    ['american-foulbrood.advanced', 'typical', 'described', ['NZ-SHAPE', 'MAAREC-MELT']],
    ['european-foulbrood', 'typical', 'described', ['BB-EFB-1.2']],
    ['sacbrood', 'never described', 'described', ['NZ-SAC']],
    ['varroa-damage', 'typical', 'described', ['TX-LEAF']],
  ],
  'col.pearl': [
    ['healthy', 'typical', 'described', ['NZ-COLOUR', 'NZ-SHAPE']],
    ['bald-brood', 'typical', 'described', ['CUSH-BALD']],
  ],
  'col.offwhite_yellow': [
    ['american-foulbrood.early', 'typical', 'described', ['QLD-SIGN', 'COMPTAB']],
    ['european-foulbrood', 'typical', 'described', ['BB-EFB-1.2', 'NZ-EFB']],
    ['sacbrood', 'typical', 'described', ['NZ-SAC', 'BB-VIR-1.1.5']],
    ['varroa-damage', 'typical', 'described', ['NZ-PMS']],
    ['half-moon', 'typical', 'described', ['NZ-HMS']],
  ],
  'col.coffee': [
    ['american-foulbrood.early', 'typical', 'described', ['NZ-COLOUR']],
    ['american-foulbrood.advanced', 'typical', 'described', ['NZ-COLOUR', 'COMPTAB']],
    ['european-foulbrood', 'sometimes', 'described', ['COMPTAB', 'BB-EFB-1.2']],
    ['sacbrood', 'sometimes', 'described', ['NZ-SAC']],
    ['varroa-damage', 'rare', 'common practice', []],
  ],
  'col.grey_black_shiny': [
    ['sacbrood', 'sometimes', 'described', ['NZ-SAC']],
    ['chilled-or-starved', 'typical', 'described', ['ELBKA-CH', 'BDJ-CH']],
  ],
  'con.tracheae': [
    ['american-foulbrood.early', 'never described', 'described', ['NZ-EFB']],
    ['american-foulbrood.advanced', 'never described', 'described', ['NZ-EFB']],
    ['european-foulbrood', 'typical', 'described', ['NZ-EFB', 'BB-EFB-1.2', 'WSUF-EFB']],
    ['half-moon', 'typical', 'described', ['NZ-HMS']],
  ],
  'con.watery': [
    ['american-foulbrood.early', 'sometimes', 'common practice', []],
    ['european-foulbrood', 'typical', 'described', ['COMPTAB']],
    ['sacbrood', 'sometimes', 'described', ['MAAREC-VIR']],
    ['chilled-or-starved', 'sometimes', 'described', ['BDJ-CH']],
  ],
  'con.ropy': [
    ['healthy', 'never described', 'common practice', []],
    ['american-foulbrood.early', 'typical', 'described', ['NZ-ROPE']],
    ['american-foulbrood.advanced', 'sometimes', 'described', ['NZ-ROPE']],
    ['european-foulbrood', 'rare', 'described', ['NZ-EFB', 'QLD-INSP', 'COMPTAB']],
    ['chalkbrood', 'never described', 'common practice', []],
    ['sacbrood', 'never described', 'described', ['MAAREC-VIR']],
    ['varroa-damage', 'never described', 'described', ['NZ-PMS']],
    ['queen-failure', 'rare', 'common practice', []],
    ['bald-brood', 'never described', 'common practice', []],
  ],
  'con.sac': [
    ['american-foulbrood.early', 'never described', 'common practice', []],
    ['american-foulbrood.advanced', 'never described', 'common practice', []],
    ['sacbrood', 'typical', 'described', ['BB-VIR-1.1.5', 'NZ-SAC', 'PLOS19']],
  ],
  'con.fluff': [['chalkbrood', 'typical', 'described', ['BB-FUN-1.2', 'WSUF-CB']]],
  'con.mummy_loose': [
    ['chalkbrood', 'typical', 'described', ['BB-FUN-1.2', 'WSUF-CB', 'PLOS19']],
    ['stonebrood', 'rare', 'common practice', []],
  ],
  'con.mummy_stone': [
    ['chalkbrood', 'never described', 'described', ['BB-FUN-2.3']],
    ['stonebrood', 'typical', 'described', ['BB-FUN-2.3', 'STONE-TXT']],
  ],
  'con.dry_unfed': [
    ['chilled-or-starved', 'typical', 'described', ['CO-DRY']],
    ['queen-failure', 'sometimes', 'described', ['NEGL-DR']],
  ],
  'scale.hard_lower': [
    ['american-foulbrood.early', 'rare', 'described', ['MAAREC-SCALE']],
    ['american-foulbrood.advanced', 'typical', 'described', ['COMPTAB', 'FACT-US']],
    ['european-foulbrood', 'rare', 'common practice', []],
    ['sacbrood', 'rare', 'described', ['AR-BROOD', 'BIP-SAC']],
    ['varroa-damage', 'never described', 'described', ['NZ-PMS']],
  ],
  'scale.rubbery': [
    ['american-foulbrood.advanced', 'never described', 'described', ['COMPTAB']],
    ['european-foulbrood', 'typical', 'described', ['BB-EFB-1.2', 'COMPTAB', 'TX-LEAF']],
  ],
  'scale.mouth': [
    ['european-foulbrood', 'sometimes', 'described', ['COMPTAB']],
    ['varroa-damage', 'sometimes', 'described', ['NZ-PMS']],
    ['half-moon', 'typical', 'described', ['NZ-HMS']],
  ],
  'scale.gondola': [
    ['american-foulbrood.advanced', 'never described', 'described', ['COMPTAB']],
    ['sacbrood', 'typical', 'described', ['PLOS19', 'BIP-SAC']],
  ],
  tongue: [
    ['american-foulbrood.early', 'rare', 'described', ['NZ-TONGUE', 'QLD-SIGN']],
    ['american-foulbrood.advanced', 'rare', 'described', ['QLD-SIGN', 'EURL-AFB']],
    ['european-foulbrood', 'never described', 'described', ['NZ-EFB']],
    ['chalkbrood', 'never described', 'described', ['NZ-TONGUE']],
    ['sacbrood', 'never described', 'described', ['NZ-SAC']],
    ['varroa-damage', 'never described', 'described', ['NZ-TONGUE']],
    ['half-moon', 'never described', 'described', ['NZ-TONGUE']],
  ],
  'odour.glue': [
    ['american-foulbrood.early', 'rare', 'described', ['OWIKI', 'NNECTAR']],
    ['american-foulbrood.advanced', 'sometimes', 'described', ['FACT-US', 'COMPTAB', 'OSU']],
  ],
  'odour.sour': [
    ['european-foulbrood', 'sometimes', 'described', ['COMPTAB', 'WA-EFB']],
    ['half-moon', 'sometimes', 'described', ['NZ-HMS']],
  ],
  'odour.any': [
    ['healthy', 'never described', 'common practice', []],
    ['american-foulbrood.early', 'rare', 'described', ['OWIKI']],
    ['american-foulbrood.advanced', 'sometimes', 'described', ['FACT-US', 'OSU']],
    ['european-foulbrood', 'sometimes', 'described', ['WA-EFB', 'PLOS19']],
    ['varroa-damage', 'sometimes', 'described', ['TX-LEAF']],
    ['chilled-or-starved', 'sometimes', 'described', ['PEACE-CH', 'BDJ-CH']],
    ['half-moon', 'sometimes', 'described', ['NZ-HMS']],
  ],
  mites: [
    ['american-foulbrood.early', 'sometimes', 'common practice', []],
    ['american-foulbrood.advanced', 'sometimes', 'common practice', []],
    ['varroa-damage', 'typical', 'described', ['TX-LEAF', 'PLOS19']],
  ],
  'eggs.multi': [
    ['healthy', 'rare', 'common practice', []],
    ['american-foulbrood.early', 'never described', 'described', ['NZ-HMS']],
    ['american-foulbrood.advanced', 'never described', 'described', ['NZ-HMS']],
    ['european-foulbrood', 'never described', 'described', ['NZ-HMS']],
    ['varroa-damage', 'never described', 'described', ['NZ-HMS']],
    ['queen-failure', 'typical', 'described', ['NORF-DL', 'HBS-DL']],
    ['half-moon', 'typical', 'described', ['NZ-HMS']],
  ],
  'floor.mummies': [['chalkbrood', 'typical', 'described', ['BB-FUN-1.2', 'PLOS19']]],
  moth: [['bald-brood', 'typical', 'described', ['BB-WAX-4.1.3', 'BIP-BALD']]],
  few_adults: [
    ['american-foulbrood.advanced', 'sometimes', 'described', ['BOOKLET']],
    ['varroa-damage', 'typical', 'described', ['TX-LEAF']],
    ['chilled-or-starved', 'typical', 'described', ['ELBKA-CH']],
    ['bald-brood', 'sometimes', 'described', ['BIP-BALD']],
  ],
};

/** All 180 links of the differential table. */
export const links: readonly Link[] = (Object.entries(table) as [SignId, readonly Row[]][]).flatMap(([sign, rows]) =>
  rows.map(([condition, level, basis, sources]) => ({ sign, condition, level, basis, sources })),
);

/** What the table says about one sign under one condition; undefined when no source mentions the pair. */
export function linkOf(sign: SignId, condition: ConditionId): Link | undefined {
  return links.find((link) => link.sign === sign && link.condition === condition);
}
