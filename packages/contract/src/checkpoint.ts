import { checkpoint, scopeName } from '@combside/record/transport';
import { z } from 'zod';

/** `POST /api/checkpoint`: the office's signed word on a scope at a position that it has given out. */
export const checkpointAsked = z.strictObject({ scope: scopeName, position: z.int().min(0) });
export type CheckpointAsked = z.infer<typeof checkpointAsked>;

export const checkpointAnswer = checkpoint;
export type CheckpointAnswer = z.infer<typeof checkpointAnswer>;
