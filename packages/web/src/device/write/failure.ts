import { TransportError } from '@combside/record/transport';

/** Why a write failed, as far as a person can do something about it; each has its remedy in `words`. */
export type WriteFailure = 'storage full' | 'store closed' | 'no answer' | 'other';

/** Sorts what a write threw by its remedy. */
export function failureOf(thrown: unknown): WriteFailure {
  if (thrown instanceof TransportError) return 'no answer';
  if (thrown instanceof DOMException) {
    if (thrown.name === 'QuotaExceededError') return 'storage full';
    // What IndexedDB says of a database that was closed under the program.
    if (thrown.name === 'InvalidStateError') return 'store closed';
  }
  return 'other';
}
