import type { SourcedValue } from '@combside/sources/sourced-value';
import type { ConditionId } from './catalogue.ts';
import { band } from './levels.ts';

/** How much of a sign a condition shows when it shows it at all. */
export interface Amount {
  /** Chance of more than 10 cells (or "marked" instead of "slight"), given the sign is there. */
  readonly many: SourcedValue;
  /** Chance of more than 100 cells, given more than 10. */
  readonly mostly: SourcedValue;
}

const fewCells = { sources: ['FACT-US', 'BOOKLET'] } as const;

/**
 * Expert bands: no source gives counts by condition. Only the order is sourced: an early case of American foulbrood
 * has few dead cells; severe cases of the others are described in the same wording as advanced foulbrood.
 */
export const amountOf: Readonly<Record<ConditionId, Amount>> = {
  healthy: { many: band(0.02, 0.15), mostly: band(0.02, 0.15) },
  'american-foulbrood.early': { many: band(0.1, 0.4, fewCells), mostly: band(0.05, 0.2, fewCells) },
  'american-foulbrood.advanced': { many: band(0.7, 0.95), mostly: band(0.3, 0.7) },
  'european-foulbrood': { many: band(0.5, 0.85), mostly: band(0.2, 0.5) },
  chalkbrood: { many: band(0.4, 0.85), mostly: band(0.2, 0.5) },
  sacbrood: { many: band(0.3, 0.7), mostly: band(0.1, 0.35) },
  'varroa-damage': { many: band(0.5, 0.85), mostly: band(0.2, 0.5) },
  'chilled-or-starved': { many: band(0.6, 0.95), mostly: band(0.2, 0.6) },
  stonebrood: { many: band(0.2, 0.6), mostly: band(0.1, 0.35) },
  'queen-failure': { many: band(0.7, 0.95), mostly: band(0.3, 0.7) },
  'bald-brood': { many: band(0.3, 0.7), mostly: band(0.05, 0.25) },
  'half-moon': { many: band(0.5, 0.85), mostly: band(0.2, 0.5) },
};
