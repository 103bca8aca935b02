import { toHex } from './bytes.ts';
import type { Chance, WallClock } from './ports.ts';

/**
 * A UUID of version 7 (RFC 9562, section 5.7): 48 bits of milliseconds, then 74 bits of chance. Sorts by time of
 * making, roughly; never used to decide an order.
 */
export function newIdentifier(clock: WallClock, chance: Chance): string {
  const bytes = chance.bytes(16);
  let milliseconds = Math.max(0, Math.floor(clock.now()));
  for (let i = 5; i >= 0; i--) {
    bytes[i] = milliseconds % 256;
    milliseconds = Math.floor(milliseconds / 256);
  }
  bytes[6] = 0x70 | ((bytes[6] ?? 0) & 0x0f);
  bytes[8] = 0x80 | ((bytes[8] ?? 0) & 0x3f);
  const hex = toHex(bytes);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}
