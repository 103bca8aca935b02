import { parse, type Token } from '@messageformat/parser';
import type { Formats } from './formats.ts';

/** What may be put into a message: text as it stands, or a number, which is written the way the language writes it. */
export type Value = string | number;

export type Values = Readonly<Record<string, Value>>;

/** A message taken apart, ready to be spoken many times. */
export type Message = readonly Token[];

/**
 * Takes an ICU message apart. Allowed are plain arguments, `plural`, `selectordinal` and `select`; dates, units and
 * formatted numbers are put into words before they are handed in (see formats.ts), because they need a time zone or a
 * number of decimals that the message cannot know.
 *
 * @param id named in the error, so that the author finds the line
 * @throws SyntaxError when the message cannot be read, or asks for a formatter
 */
export function readMessage(id: string, text: string): Message {
  let tokens: Token[];
  try {
    tokens = parse(text, { strict: true });
  } catch (cause) {
    throw new SyntaxError(`message "${id}" is not a readable ICU message: ${(cause as Error).message}`, { cause });
  }
  refuseFormatters(id, tokens);
  return tokens;
}

function refuseFormatters(id: string, tokens: readonly Token[]): void {
  for (const token of tokens) {
    if (token.type === 'function') {
      throw new SyntaxError(
        `message "${id}" formats {${token.arg}, ${token.key}} by itself; write {${token.arg}} and hand in the formatted text`,
      );
    }
    if ('cases' in token) for (const one of token.cases) refuseFormatters(id, one.tokens);
  }
}

/**
 * Every argument of a message with the kinds of use it is put to: `count` -> `plural`, `name` -> `text`.
 * A translation must take the same arguments in the same roles as the reference.
 */
export function argumentsOf(message: Message): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  const walk = (tokens: readonly Token[]): void => {
    for (const token of tokens) {
      if (!('arg' in token)) continue;
      const role = token.type === 'argument' ? 'text' : token.type;
      const roles = found.get(token.arg) ?? new Set<string>();
      found.set(token.arg, roles.add(role));
      if ('cases' in token) for (const one of token.cases) walk(one.tokens);
    }
  };
  walk(message);
  return found;
}

/**
 * Speaks a message: puts the values in.
 *
 * @throws RangeError when a value is missing, is not a finite number, or no case of a `select` fits
 */
export function speak(id: string, message: Message, values: Values, formats: Formats): string {
  return message.map((token) => speakToken(id, token, values, formats, undefined)).join('');
}

function speakToken(id: string, token: Token, values: Values, formats: Formats, counted: number | undefined): string {
  if (token.type === 'content') return token.value;
  // In strict reading a `#` stands only inside a plural, so there is always something counted.
  if (token.type === 'octothorpe') return formats.number(counted as number);

  const value = values[token.arg];
  if (value === undefined) {
    throw new RangeError(
      `message "${id}" needs a value for {${token.arg}}; given: ${Object.keys(values).join(', ') || 'none'}`,
    );
  }
  if (token.type === 'argument' || token.type === 'function') {
    return typeof value === 'number' ? formats.number(value) : value;
  }

  if (token.type === 'select') {
    const chosen =
      token.cases.find((one) => one.key === String(value)) ?? token.cases.find((one) => one.key === 'other');
    if (!chosen) throw new RangeError(`message "${id}" has no case "${value}" of {${token.arg}} and no case "other"`);
    return chosen.tokens.map((inner) => speakToken(id, inner, values, formats, counted)).join('');
  }

  if (typeof value !== 'number') {
    throw new RangeError(`message "${id}" counts {${token.arg}}, so it needs a number and not "${value}"`);
  }
  const remaining = value - (token.pluralOffset ?? 0);
  const category = formats.pluralCategory(remaining, token.type === 'selectordinal' ? 'ordinal' : 'cardinal');
  const chosen =
    token.cases.find((one) => one.key === `=${value}`) ??
    token.cases.find((one) => one.key === category) ??
    token.cases.find((one) => one.key === 'other');
  if (!chosen) throw new RangeError(`message "${id}" has no case "${category}" of {${token.arg}} and no case "other"`);
  return chosen.tokens.map((inner) => speakToken(id, inner, values, formats, remaining)).join('');
}
