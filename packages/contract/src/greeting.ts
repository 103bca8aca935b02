import { greeting as recordGreeting } from '@combside/record/transport';
import type { z } from 'zod';

/** `GET /api/greeting`: the office's device and key, its clock, and the scopes whoever asks may read. */
export const greeting = recordGreeting;
export type Greeting = z.infer<typeof greeting>;
