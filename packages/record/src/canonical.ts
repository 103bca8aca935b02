import canonicalize from 'canonicalize';
import { utf8 } from './bytes.ts';
import { RecordError } from './errors.ts';

// JSON.stringify writes half a character (a lone surrogate) as an escape; an odd run of backslashes tells it from the
// same letters typed by a person. RFC 8785, section 3.2.2.2 asks for an error.
const halfCharacter = /(?<!\\)(?:\\\\)*\\ud[89a-f]/;

/**
 * The one byte form of a JSON value (RFC 8785: keys sorted by UTF-16 units, numbers as ECMAScript writes them, no
 * blanks). Two devices that hold the same value get the same bytes, hence the same hash.
 *
 * @throws RecordError `bad bytes` for what JSON cannot say: not-a-number, infinity, half a character, nothing at all
 */
export function canonicalBytes(value: unknown): Uint8Array<ArrayBuffer> {
  let text: string | undefined;
  try {
    text = canonicalize(value);
  } catch (cause) {
    throw new RecordError('bad bytes', 'a number is not finite', cause);
  }
  if (text === undefined) throw new RecordError('bad bytes', 'there is no value to write');
  if (halfCharacter.test(text)) throw new RecordError('bad bytes', 'half a character; delete it and type it again');
  return utf8(text);
}
