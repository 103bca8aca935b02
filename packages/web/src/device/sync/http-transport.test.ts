import { protocolHeader, protocolVersion } from '@combside/contract/version';
import type { TransportError } from '@combside/record/transport';
import { describe, expect, test } from 'vitest';
import { httpTransport } from './http-transport.ts';

const page = { scope: 'everyone', items: [], more: false };

function answering(answer: () => Response | Promise<Response>) {
  const asked: { address: string; options: RequestInit }[] = [];
  const ask = (async (address: string, options: RequestInit) => {
    asked.push({ address, options });
    return answer();
  }) as typeof fetch;
  return { transport: httpTransport('https://office.invalid', ask), asked };
}

async function failureOf(answer: () => Response | Promise<Response>): Promise<string> {
  try {
    await answering(answer).transport.pull('everyone', 0, 10);
  } catch (error) {
    return (error as TransportError).failure;
  }
  return 'none';
}

describe('the way to the office over HTTP', () => {
  test('asks in the words of the contract', async () => {
    const { transport, asked } = answering(() => Response.json(page));
    expect(await transport.pull('everyone', 7, 10)).toEqual(page);
    expect(asked[0]?.address).toBe('https://office.invalid/api/pull');
    expect(asked[0]?.options.method).toBe('POST');
    expect(JSON.parse(String(asked[0]?.options.body))).toEqual({ scope: 'everyone', after: 7, limit: 10 });
    expect(new Headers(asked[0]?.options.headers).get(protocolHeader)).toBe(String(protocolVersion));
  });

  test.each([
    [401, 'not signed in'],
    [403, 'scope not granted'],
    [426, 'program too old'],
    [409, 'office fault'],
    [500, 'office fault'],
    [503, 'office fault'],
  ])('the answer %i means: %s', async (status, failure) => {
    expect(await failureOf(() => new Response('{}', { status }))).toBe(failure);
  });

  test('no answer, and an answer that breaks off, mean no connection', async () => {
    expect(await failureOf(() => Promise.reject(new TypeError('fetch failed')))).toBe('no connection');
    expect(await failureOf(() => new Response('{"scope": "every'))).toBe('no connection');
  });

  test('an answer of another shape is the office’s fault', async () => {
    expect(await failureOf(() => Response.json({ ...page, items: [{ position: 0 }] }))).toBe('office fault');
  });
});
