import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { packIds } from '@combside/law/load-pack';
import type { Words } from '@combside/words/words';
import { readBackground } from './http/background.ts';
import { isLoopback } from './loopback.ts';
import type { ServerOptions } from './server-options.ts';
import { clockFrom } from './store/node-ports.ts';

type StartOptions = Omit<ServerOptions, 'attemptsPerMinute' | 'say' | 'words'> & {
  readonly demo: boolean;
  /** The demo was asked for where others could come in by its printed passwords, or over a database given: it is not planted. */
  readonly demoWithheld?: true;
};

/**
 * Reads what was typed after the program's name.
 *
 * @param databaseUrl the agency's own PostgreSQL, from the environment
 * @returns the options, or the sentence that says what is wrong with them
 */
export function readOptions(
  args: readonly string[],
  databaseUrl: string | undefined,
  words: Words<'server'>,
): StartOptions | string {
  const text = { type: 'string' } as const;
  const known = {
    data: text,
    port: text,
    host: text,
    address: text,
    pack: text,
    web: text,
    map: text,
    clock: text,
    demo: { type: 'boolean' },
  } as const;
  let values: { [name in Exclude<keyof typeof known, 'demo'>]?: string } & { demo?: boolean };
  try {
    ({ values } = parseArgs({ args: [...args], options: known, strict: true }));
  } catch {
    const option = args.find(
      (arg) => arg.startsWith('-') && !((arg.replace(/^--/, '').split('=')[0] as string) in known),
    );
    return option
      ? words.say('server.option-unknown', { option })
      : words.say('server.option-value', { option: args.at(-2) ?? '', value: args.at(-1) ?? '' });
  }
  const port = Number(values.port ?? '4680');
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    return words.say('server.option-value', { option: '--port', value: values.port ?? '' });
  }
  if (values.address !== undefined && !/^https?:\/\/[^/]+$/.test(values.address)) {
    return words.say('server.option-value', { option: '--address', value: values.address });
  }
  if (values.pack !== undefined && !(packIds as readonly string[]).includes(values.pack)) {
    return words.say('server.option-value', { option: '--pack', value: values.pack });
  }
  if (readBackground(values.map) === null) {
    return words.say('server.option-value', { option: '--map', value: values.map ?? '' });
  }
  const began = values.clock === undefined ? undefined : instantAsked(values.clock);
  if (began === null) return words.say('server.option-value', { option: '--clock', value: values.clock ?? '' });
  // A record that others write in must bear the true time.
  const isOwn = isLoopback(values.host ?? '127.0.0.1') && values.address === undefined && !databaseUrl;
  if (began !== undefined && !isOwn) return words.say('server.clock-refused');
  return {
    data: values.data ?? './data',
    port,
    demo: values.demo === true && isOwn,
    ...(values.demo === true && !isOwn ? { demoWithheld: true } : {}),
    ...(values.pack === undefined ? {} : { pack: values.pack }),
    ...(values.map === undefined ? {} : { map: values.map }),
    ...(values.web === undefined ? {} : { web: resolve(values.web) }),
    ...(values.host === undefined ? {} : { host: values.host }),
    ...(values.address === undefined ? {} : { address: values.address }),
    ...(began === undefined ? {} : { clock: clockFrom(began) }),
    ...(databaseUrl ? { databaseUrl } : {}),
  };
}

/** Milliseconds of an instant written out with its offset from UTC; null for anything else, which a zone would have to complete. */
function instantAsked(text: string): number | null {
  const isWhole = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d([.]\d{1,3})?)?(Z|[+-]\d\d:\d\d)$/.test(text);
  const instant = isWhole ? Date.parse(text) : Number.NaN;
  return Number.isNaN(instant) ? null : instant;
}
