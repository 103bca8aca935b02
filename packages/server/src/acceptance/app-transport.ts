import { checkpointAnswer } from '@combside/contract/checkpoint';
import { greeting } from '@combside/contract/greeting';
import { pullAnswer } from '@combside/contract/pull';
import type { Transport } from '@combside/record/transport';
import type { z } from 'zod';
import type { Visitor } from './test-house.ts';

/** The record's transport over the server's addresses, as a phone's HTTP client would speak it, without a socket. */
export function appTransport(visitor: Visitor): Transport {
  const read = async <Schema extends z.ZodType>(schema: Schema, answer: Response): Promise<z.infer<Schema>> => {
    if (answer.status !== 200) throw new Error(`${answer.status} ${await answer.text()}`);
    return schema.parse(await answer.json());
  };
  return {
    greet: async () => read(greeting, await visitor.get('/api/greeting')),
    push: (entries) => visitor.push(entries),
    pull: async (scope, after, limit) => read(pullAnswer, await visitor.post('/api/pull', { scope, after, limit })),
    checkpoint: async (scope, position) =>
      read(checkpointAnswer, await visitor.post('/api/checkpoint', { scope, position })),
  };
}
