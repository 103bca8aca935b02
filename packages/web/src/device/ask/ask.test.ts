import { districts } from '@combside/contract/districts';
import { TransportError } from '@combside/record/transport';
import { describe, expect, test } from 'vitest';
import { keptFaults } from '../../app/faults.ts';
import { ask, type Manner, send } from './ask.ts';
import { NotAnswered } from './not-answered.ts';

const hazel = { district: 'Hazel', invented: true, apiaries: 3, colonies: 9, visits: 2 };

function answering(answer: () => Response | Promise<Response>) {
  const asked: { address: string; options: RequestInit }[] = [];
  const fetchBy = (async (address: string, options: RequestInit) => {
    asked.push({ address, options });
    return answer();
  }) as typeof fetch;
  return { asked, fetch: fetchBy };
}

async function refusalOf(answer: () => Response | Promise<Response>): Promise<NotAnswered> {
  const error = await ask(districts, '/api/districts', answering(answer)).catch((thrown: unknown) => thrown);
  if (!(error instanceof NotAnswered)) throw new Error('it was answered');
  return error;
}

describe('asking the office', () => {
  test('gives what was said, without the fields that this program does not know', async () => {
    const { fetch, asked } = answering(() => Response.json({ districts: [{ ...hazel, bees: 7 }], newer: true }));
    expect(await ask(districts, '/api/districts', { fetch })).toEqual({ districts: [hazel] });
    expect(asked[0]?.address).toBe('/api/districts');
    expect(asked[0]?.options.method).toBeUndefined();
  });

  test('a message is sent as JSON', async () => {
    const { fetch, asked } = answering(() => new Response('done'));
    const manner: Manner = { message: { hashes: [] }, headers: { 'x-of': 'us' }, fetch };
    expect(await (await send('/api/photographs/held', manner)).text()).toBe('done');
    const { method, body, headers } = asked[0]?.options ?? {};
    expect([method, body]).toEqual(['POST', '{"hashes":[]}']);
    expect(Object.fromEntries(new Headers(headers))).toEqual({ 'content-type': 'application/json', 'x-of': 'us' });
  });

  test.each([
    [400, 'wrong address', 'office fault'],
    [401, 'not signed in', 'not signed in'],
    [403, 'not granted', 'scope not granted'],
    [404, 'not there', 'office fault'],
    [409, 'office fault', 'office fault'],
    [426, 'newer program needed', 'program too old'],
    [429, 'too many tries', 'office fault'],
    [500, 'office fault', 'office fault'],
    [503, 'office fault', 'office fault'],
  ])('the answer %i means %s, and to the exchange %s', async (status, outcome, failure) => {
    const error = await refusalOf(() => new Response('{}', { status }));
    expect([error.outcome, error.failure]).toEqual([outcome, failure]);
    expect(error).toBeInstanceOf(TransportError);
  });

  test('no answer, and one that breaks off, mean no connection', async () => {
    expect((await refusalOf(() => Promise.reject(new TypeError('fetch failed')))).outcome).toBe('no connection');
    expect((await refusalOf(() => new Response('{"districts": ['))).outcome).toBe('no connection');
  });

  test('an answer of another shape is not understood, and the fault names the field and nothing that stood there', async () => {
    const error = await refusalOf(() => Response.json({ districts: [hazel, { ...hazel, apiaries: 'a secret' }] }));
    expect([error.outcome, error.failure]).toEqual(['not understood', 'office fault']);
    const fault = keptFaults().at(-1);
    expect(fault?.name).toBe('AnswerNotUnderstood districts.*.apiaries invalid_type');
    expect(JSON.stringify(fault)).not.toContain('secret');
  });
});
