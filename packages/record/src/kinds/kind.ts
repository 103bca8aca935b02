import type { z } from 'zod';
import type { EntityType } from '../entry.ts';

/**
 * One kind of entry: its shape, and the named steps that lift an older version to the newest.
 * A kind file holds everything about its kind; golden entries of every version ever shipped stay in `golden/`.
 */
export interface Kind<Body = unknown> {
  readonly kind: string;
  readonly version: number;
  /** Entity types it may be about; `any` for notes and corrections. */
  readonly about: readonly EntityType[] | 'any';
  /** True where the body may be erased (personal data) without losing a finding; a correction is as erasable as what it corrects. */
  readonly erasable: boolean | 'as corrected';
  readonly body: z.ZodType<Body>;
  /** Who may write it: `office` kinds count only in the office's own chain. */
  readonly writer: 'anyone' | 'office';
  /** How the fold puts its entries into the state of their entity. */
  readonly fold: Folding<Body>;
  /** `steps[n]` lifts a body of version n + 1 to version n + 2; each has a name that says what changed. */
  readonly steps: readonly KindStep[];
}

/**
 * `register`: one value at a time, the newest that nobody superseded; `list`: every entry stands beside the others,
 * oldest first by clock unless `newestFirstBy` names the instant to sort by; the rest act on other entries of the entity.
 * `into` is the field of the state.
 */
export type Folding<Body> =
  | { readonly as: 'register'; readonly into: string }
  // A method, so that a table may hold kinds of different bodies.
  | { readonly as: 'list'; readonly into: string; newestFirstBy?(body: Body): string }
  | { readonly as: 'correction' | 'erasure' | 'clock flag' };

export interface KindStep {
  readonly name: string;
  readonly lift: (body: unknown) => unknown;
}
