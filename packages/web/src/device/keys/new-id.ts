import { newIdentifier } from '@combside/record/identifier';
import { webChance, webClock } from './web-ports.ts';

/** A fresh identifier, by this device's clock and chance: for what an act enters before any store is open. */
export function newId(): string {
  return newIdentifier(webClock, webChance);
}
