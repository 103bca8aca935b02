import type { Checkpoint, Greeting, Page, Transport } from '@combside/record/transport';
import type { Visitor } from './test-house.ts';

/** The record's transport over the server's addresses, as a phone's HTTP client would speak it, without a socket. */
export function appTransport(visitor: Visitor): Transport {
  const said = async (answer: Response): Promise<never> => {
    throw new Error(`${answer.status} ${await answer.text()}`);
  };
  return {
    greet: async () => {
      const answer = await visitor.get('/api/greeting');
      return answer.status === 200 ? ((await answer.json()) as Greeting) : said(answer);
    },
    push: (entries) => visitor.push(entries),
    pull: async (scope, after, limit) => {
      const answer = await visitor.post('/api/pull', { scope, after, limit });
      return answer.status === 200 ? ((await answer.json()) as Page) : said(answer);
    },
    checkpoint: async (scope, position) => {
      const answer = await visitor.post('/api/checkpoint', { scope, position });
      return answer.status === 200 ? ((await answer.json()) as Checkpoint) : said(answer);
    },
  };
}
