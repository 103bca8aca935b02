import { checkpointAnswer } from '@combside/contract/checkpoint';
import { greeting } from '@combside/contract/greeting';
import { pullAnswer } from '@combside/contract/pull';
import { pushAnswer } from '@combside/contract/push';
import { protocolHeader, protocolVersion } from '@combside/contract/version';
import { type Transport, TransportError } from '@combside/record/transport';

/** A schema of the contract, as far as it is used here. */
interface Shape<T> {
  safeParse(
    said: unknown,
  ): { success: true; data: T } | { success: false; error: { issues: readonly { message: string }[] } };
}

/** A question without an answer for so long counts as cut; a push of many entries over a weak line takes its time. */
const patienceMilliseconds = 60_000;

/**
 * The way to the office over HTTP. The session's cookie says who asks.
 *
 * @param address where the office answers; empty for the server this page came from
 */
export function httpTransport(address = '', ask: typeof fetch = fetch): Transport {
  async function asked<T>(shape: Shape<T>, path: string, message?: unknown): Promise<T> {
    let answer: Response;
    try {
      answer = await ask(`${address}/api/${path}`, {
        method: message === undefined ? 'GET' : 'POST',
        headers: { 'content-type': 'application/json', [protocolHeader]: String(protocolVersion) },
        body: message === undefined ? null : JSON.stringify(message),
        signal: AbortSignal.timeout(patienceMilliseconds),
        cache: 'no-store',
      });
    } catch (cause) {
      throw new TransportError('no connection', path, cause);
    }
    if (!answer.ok) throw failureOf(answer, path);
    let said: unknown;
    try {
      said = await answer.json();
    } catch (cause) {
      throw new TransportError('no connection', `${path}: the answer broke off`, cause);
    }
    const read = shape.safeParse(said);
    if (!read.success) throw new TransportError('office fault', `${path}: ${read.error.issues[0]?.message ?? ''}`);
    return read.data;
  }

  return {
    greet: () => asked(greeting, 'greeting'),
    push: async (entries) => (await asked(pushAnswer, 'push', { entries })).results,
    pull: (scope, after, limit) => asked(pullAnswer, 'pull', { scope, after, limit }),
    checkpoint: (scope, position) => asked(checkpointAnswer, 'checkpoint', { scope, position }),
  };
}

function failureOf(answer: Response, path: string): TransportError {
  const where = `${path}: ${answer.status}`;
  if (answer.status === 401) return new TransportError('not signed in', where);
  if (answer.status === 403) return new TransportError('scope not granted', where);
  if (answer.status === 426) return new TransportError('program too old', where);
  return new TransportError('office fault', where);
}
