import type { ReadingPart } from '@combside/casework/comb/propose-reading';
import type { Limit, Refusal } from '@combside/science/comb/comb-result';
import type { ReadStage } from '@combside/science/comb/read-comb';
import type { Decoded, DecodeProblem } from './decode-picture.ts';

/** What came of a photograph. */
export type ReadPhotograph =
  | { readonly verdict: 'read'; readonly part: ReadingPart }
  | { readonly verdict: 'refused'; readonly reasons: readonly (Refusal | Limit | DecodeProblem)[] };

/** Corners that a person set, in pixels as stored: only what lies between them is read. Null for the whole photograph. */
export type SetCorners = ReadingPart['reader']['region'];

/** What is to be done with a photograph: read it, or look for the corners of the frame round the comb. */
export type Job = { readonly job: 'read'; readonly corners: SetCorners } | { readonly job: 'find corners' };

/** What the page asks of the worker, once: a file, or its pixels where a worker cannot decode files. */
export type ReadingRequest = ({ readonly photograph: Blob } | { readonly decoded: Decoded }) & Job;

/** What the worker tells, in the order in which it happens; the last is `done`, `corners`, `failed` or `cannot decode`. */
export type ReadingMessage =
  | { readonly tell: 'progress'; readonly stage: ReadStage | 'opening'; readonly done: number }
  | { readonly tell: 'done'; readonly read: ReadPhotograph }
  /** Corners in pixels as stored, clockwise from the top left as the picture is seen; null when no frame was found. */
  | { readonly tell: 'corners'; readonly found: SetCorners }
  /** This browser's workers have no canvas: the page has to decode the file. */
  | { readonly tell: 'cannot decode' }
  | { readonly tell: 'failed'; readonly why: string };
