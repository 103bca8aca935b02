import { entry, instant } from '@combside/record/entry';
import { z } from 'zod';

/** `GET /api/register/entries/<type>/<id>`: all entries about one thing, so that a device that changes it can name them. */
export const entriesOfOne = z.object({ items: z.array(z.object({ entry, receivedAt: instant })) });
export type EntriesOfOne = z.infer<typeof entriesOfOne>;
