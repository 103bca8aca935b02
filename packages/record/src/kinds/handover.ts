import { z } from 'zod';
import { instant } from '../entry.ts';
import type { Kind } from './kind.ts';

/** The written result was handed over: how, when, to whom, and the hash of what was handed over. */
export const handoverBody = z.strictObject({
  handedOverAt: instant,
  how: z.enum(['paper shared', 'signed on the screen', 'read out', 'left at the site', 'refused']),
  receiver: z.string().max(200),
  /** The drawn signature as a path in a 300 x 100 box, empty when there is none. */
  signaturePath: z.string().max(20_000),
  /** SHA-256 of the content that was shown or printed. */
  contentHash: z.string().regex(/^[0-9a-f]{64}$/),
});
export type HandoverBody = z.infer<typeof handoverBody>;

export const handover: Kind<HandoverBody> = {
  kind: 'handover',
  version: 1,
  about: ['visit'],
  erasable: true,
  body: handoverBody,
  writer: 'anyone',
  fold: { as: 'list', into: 'handovers' },
  steps: [],
};
