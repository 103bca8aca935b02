import { writesIn } from '../office/author.ts';
import type { Office } from '../office/office.ts';
import { everyoneScope, type Transport, TransportError } from '../transport.ts';

/**
 * A transport without a wire: asks an office in the same process, with everything passing through JSON text as it would
 * outside.
 *
 * @param office which of several office processes answers, asked anew each time
 * @param person who is signed in
 * @param granted scopes beside `everyone`, asked anew each time
 */
export function loopback(office: () => Office, person: string, granted: () => readonly string[]): Transport {
  const scopes = () => [everyoneScope, ...granted()];
  const mayRead = (scope: string) => {
    if (!scopes().includes(scope)) throw new TransportError('scope not granted', scope);
  };
  return {
    greet: async () => throughJson(office().greet(scopes())),
    push: async (entries) =>
      throughJson(await office().push(throughJson(entries), { person, mayWrite: writesIn(scopes()) })),
    async pull(scope, after, limit) {
      mayRead(scope);
      return throughJson(await office().pull(scope, after, limit));
    },
    async checkpoint(scope, position) {
      mayRead(scope);
      return throughJson(await office().checkpoint(scope, position));
    },
  };
}

function throughJson<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}
