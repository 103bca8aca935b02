import { batchLimit, pushResult } from '@combside/record/transport';
import { z } from 'zod';

/** Largest message the server takes, in bytes: 500 entries with room to spare. */
export const largestMessage = 8 * 1024 * 1024;

/**
 * `POST /api/push`: entries of the devices of whoever is signed in, each chain in order. Duplicates are harmless. Each
 * entry is judged by itself, its shape too, so that an unreadable one spoils none of the others.
 */
export const push = z.strictObject({ entries: z.array(z.unknown()).max(batchLimit) });
export type Push = z.infer<typeof push>;

/** One result for each entry, in the same order. */
export const pushAnswer = z.object({ results: z.array(pushResult) });
export type PushAnswer = z.infer<typeof pushAnswer>;
