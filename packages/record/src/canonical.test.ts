import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase64Url, fromHex, toBase64Url, toHex, utf8 } from './bytes.ts';
import { canonicalBytes } from './canonical.ts';

const text = (value: unknown) => new TextDecoder().decode(canonicalBytes(value));

describe('canonical bytes', () => {
  test('the example of RFC 8785, sections 3.2.2 and 3.2.4', () => {
    const value = JSON.parse(`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
      "literals": [null, true, false]
    }`);
    // The octets printed in section 3.2.4.
    const printed =
      '7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a5b3333333333333333332e333333333333332c31652b33302c342e352c302e3030322c31652d32375d2c22737472696e67223a22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f227d';
    expect(toHex(canonicalBytes(value))).toBe(printed);
  });

  test('keys are sorted by UTF-16 units: the example of RFC 8785, section 3.2.3', () => {
    const value = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    };
    expect(Object.keys(JSON.parse(text(value)) as object).slice(1)).toEqual([
      '\r',
      '\u0080',
      '\u00f6',
      '\u20ac',
      '\ud83d\ude00',
      '\ufb33',
    ]);
    expect(text(value).indexOf('"1"')).toBeGreaterThan(text(value).indexOf('\\r'));
  });

  test.each([
    // RFC 8785, appendix B.
    [-0, '0'],
    [5e-324, '5e-324'],
    [1.7976931348623157e308, '1.7976931348623157e+308'],
    [9007199254740992, '9007199254740992'],
    [295147905179352830000, '295147905179352830000'],
    [9.999999999999997e22, '9.999999999999997e+22'],
    [1e23, '1e+23'],
    [333333333.3333332, '333333333.3333332'],
    [1424953923781206.2, '1424953923781206.2'],
  ])('number %d', (number, printed) => {
    expect(text(number)).toBe(printed);
  });

  test('what JSON cannot say is an error', () => {
    for (const value of [Number.NaN, { a: [Number.POSITIVE_INFINITY] }, undefined, 'half \ud83d', { '\udc00': 1 }]) {
      expect(() => canonicalBytes(value)).toThrow('bad bytes');
    }
    expect(text('typed \\ud83d')).toBe('"typed \\\\ud83d"');
  });

  test('the order of keys does not matter, and nothing is lost', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const wellFormed = JSON.parse(JSON.stringify(value).replace(/\\ud[89a-f][0-9a-f]{2}/g, '?')) as unknown;
        expect(JSON.parse(text(wellFormed))).toEqual(JSON.parse(JSON.stringify(wellFormed)));
        expect(text(reversed(wellFormed))).toBe(text(wellFormed));
      }),
      { seed: 8785, numRuns: 300 },
    );
  });
});

function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (value === null || typeof value !== 'object') return value;
  const entries = Object.entries(value).reverse();
  return Object.fromEntries(entries.map(([key, inner]) => [key, reversed(inner)]));
}

describe('bytes and text', () => {
  test('UTF-8, hexadecimal and base64url agree with the platform', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.uint8Array(), (string, bytes) => {
        expect(utf8(string)).toEqual(new Uint8Array(new TextEncoder().encode(string)));
        expect(toHex(bytes)).toBe(Buffer.from(bytes).toString('hex'));
        expect(toBase64Url(bytes)).toBe(Buffer.from(bytes).toString('base64url'));
        expect(fromHex(toHex(bytes))).toEqual(bytes);
        expect(fromBase64Url(toBase64Url(bytes))).toEqual(bytes);
      }),
      { seed: 3629, numRuns: 300 },
    );
  });

  test('text that encodes no bytes is an error', () => {
    for (const wrong of ['A', 'AB', 'A=', 'AAA ', 'é', 'AAAAA'])
      expect(() => fromBase64Url(wrong)).toThrow('bad bytes');
    for (const wrong of ['a', 'AB', 'zz']) expect(() => fromHex(wrong)).toThrow('bad bytes');
  });
});
