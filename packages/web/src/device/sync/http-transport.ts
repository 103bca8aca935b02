import { checkpointAnswer } from '@combside/contract/checkpoint';
import { greeting } from '@combside/contract/greeting';
import { pullAnswer } from '@combside/contract/pull';
import { pushAnswer } from '@combside/contract/push';
import { protocolHeader, protocolVersion } from '@combside/contract/version';
import type { Transport } from '@combside/record/transport';
import { ask, type Schema } from '../ask/ask.ts';

/** A question without an answer for so long counts as cut; a push of many entries over a weak line takes its time. */
const patienceMilliseconds = 60_000;

/**
 * The way to the office over HTTP. The session's cookie says who asks.
 *
 * @param address where the office answers; empty for the server this page came from
 */
export function httpTransport(address = '', fetchBy: typeof fetch = fetch): Transport {
  const asked = <Answer>(schema: Schema<Answer>, path: string, message?: unknown) =>
    ask(schema, `${address}/api/${path}`, {
      message,
      headers: { [protocolHeader]: String(protocolVersion) },
      signal: AbortSignal.timeout(patienceMilliseconds),
      fetch: fetchBy,
    });

  return {
    greet: () => asked(greeting, 'greeting'),
    push: async (entries) => (await asked(pushAnswer, 'push', { entries })).results,
    pull: (scope, after, limit) => asked(pullAnswer, 'pull', { scope, after, limit }),
    checkpoint: (scope, position) => asked(checkpointAnswer, 'checkpoint', { scope, position }),
  };
}
