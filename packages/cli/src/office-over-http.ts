import { checkpointAnswer } from '@combside/contract/checkpoint';
import { greeting } from '@combside/contract/greeting';
import { pullAnswer } from '@combside/contract/pull';
import { pushAnswer } from '@combside/contract/push';
import { protocolHeader, protocolVersion } from '@combside/contract/version';
import { type Transport, TransportError } from '@combside/record/transport';

/** What the contract says an answer looks like. */
interface Shape<Answer> {
  parse(given: unknown): Answer;
}

/** A person signed in at an office: asks its pages and speaks the record's four questions. */
export interface SignedInOffice extends Transport {
  /** `GET` of a page, read by its shape in the contract. @throws TransportError */
  page<Answer>(path: string, shape: Shape<Answer>): Promise<Answer>;
}

/**
 * Signs in at an office over HTTP.
 *
 * @param address such as `http://127.0.0.1:4680`
 * @throws TransportError `not signed in` when name or password are refused, `no connection` when nobody answers
 */
export async function signInAt(address: string, email: string, password: string): Promise<SignedInOffice> {
  const signedIn = await ask(`${address}/api/auth/sign-in/email`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: address },
    body: JSON.stringify({ email, password }),
  });
  if (!signedIn.ok) throw new TransportError('not signed in', `${email}: the office answered ${signedIn.status}`);
  const cookie = signedIn.headers
    .getSetCookie()
    .map((one) => one.split(';')[0])
    .join('; ');
  const headers = { cookie, origin: address, [protocolHeader]: String(protocolVersion) };

  async function read<Answer>(path: string, shape: Shape<Answer>, request: RequestInit = {}): Promise<Answer> {
    const answer = await ask(`${address}${path}`, {
      ...request,
      headers: { ...headers, ...(request.body === undefined ? {} : { 'content-type': 'application/json' }) },
    });
    if (!answer.ok) {
      const failure =
        answer.status === 401 ? 'not signed in' : answer.status === 403 ? 'scope not granted' : 'office fault';
      throw new TransportError(failure, `${path}: ${answer.status} ${(await answer.text()).slice(0, 200)}`);
    }
    return shape.parse(await answer.json());
  }
  const post = <Answer>(path: string, message: unknown, shape: Shape<Answer>) =>
    read(path, shape, { method: 'POST', body: JSON.stringify(message) });

  return {
    page: (path, shape) => read(path, shape),
    greet: () => read('/api/greeting', greeting),
    push: async (entries) => (await post('/api/push', { entries }, pushAnswer)).results,
    pull: (scope, after, limit) => post('/api/pull', { scope, after, limit }, pullAnswer),
    checkpoint: (scope, position) => post('/api/checkpoint', { scope, position }, checkpointAnswer),
  };
}

async function ask(url: string, request: RequestInit): Promise<Response> {
  try {
    return await fetch(url, request);
  } catch (cause) {
    throw new TransportError('no connection', url, cause);
  }
}
