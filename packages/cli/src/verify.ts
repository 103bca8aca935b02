import { parseArgs } from 'node:util';
import { type Depth, depths, type Verdict, verifyDatabase, verifyExport } from '@combside/server/check';
import { chooseLanguage } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import type { Words } from '@combside/words/words';

/** What `combside verify` takes, shown by `--help` and after a mistake. */
export const usage = `combside verify [FILE] [--data FOLDER] [--depth ${depths.join('|')}] [--key KEY] [--json]

Without FILE the record in a server's own folder (./data) is checked, whether the server runs or not; DATABASE_URL names
an agency's own PostgreSQL. With FILE an export is checked, by the office's key you give, else by the key in the file.
  entry   each body against its hash, each signature against its key
  chain   also every chain: no gap, no fork, each link right, each device vouched for by the office
  copy    also that nothing is missing before the heads the office signed (the default)
Leaves with 0 when the record holds, with 1 when it does not, with 2 when it could not be read or understood.`;

/** Lines shown before the rest is only counted. */
const findingsShown = 20;

interface Streams {
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
}

/**
 * Runs `combside verify`.
 *
 * @param args what stands after `verify`
 * @returns the exit code
 */
export async function verify(args: readonly string[], streams: Streams): Promise<number> {
  const asked = read(args);
  if (typeof asked === 'string') {
    (asked === usage ? streams.out : streams.err)(asked);
    return asked === usage ? 0 : 2;
  }
  let verdict: Verdict;
  try {
    const url = process.env.DATABASE_URL;
    verdict =
      asked.file === undefined
        ? await verifyDatabase({ data: asked.data, ...(url ? { databaseUrl: url } : {}) }, asked.depth)
        : await verifyExport(asked.file, asked.depth, asked.key);
  } catch (error) {
    streams.err(error instanceof Error ? error.message : String(error));
    return 2;
  }
  if (asked.json) streams.out(JSON.stringify(verdict, null, 2));
  else {
    const language = chooseLanguage([(process.env.LC_ALL || process.env.LANG || 'en').replace('_', '-')]);
    const words = await loadWords(language, ['check']);
    for (const line of told(verdict, words, asked.file !== undefined && asked.key === undefined)) streams.out(line);
  }
  return verdict.holds ? 0 : 1;
}

/** The verdict as a person reads it. */
export function told(verdict: Verdict, words: Words<'check'>, keyOfItsOwn: boolean): string[] {
  const { entries, chains, refused, erased, findings } = verdict;
  const lines = [
    verdict.depth === 'copy'
      ? words.say('check.depth.copy', { at: verdict.checkpointAt ?? '' })
      : words.say(`check.depth.${verdict.depth}`),
    words.say('check.counted', { entries, chains, refused, erased }),
    words.say('check.key', { key: verdict.officeKey }),
  ];
  if (keyOfItsOwn) lines.push(words.say('check.key-of-its-own'));
  if (verdict.holds) return [...lines, words.say('check.holds')];
  lines.push(words.say('check.fails', { findings: findings.length }));
  for (const { device, seq, fault } of findings.slice(0, findingsShown)) {
    const line =
      seq === 0 ? words.say('check.of-the-whole', { fault }) : words.say('check.finding', { device, seq, fault });
    lines.push(`  ${line}`);
  }
  const more = findings.length - findingsShown;
  if (more > 0) lines.push(`  ${words.say('check.more', { count: more })}`);
  return lines;
}

interface VerifyOptions {
  readonly file: string | undefined;
  readonly data: string;
  readonly depth: Depth;
  readonly key: string | undefined;
  readonly json: boolean;
}

/** @returns what was asked, the usage when it was asked for, or what could not be understood */
function read(args: readonly string[]): VerifyOptions | string {
  const text = { type: 'string' } as const;
  const yes = { type: 'boolean' } as const;
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      options: { data: text, depth: text, key: text, json: yes, help: yes },
      allowPositionals: true,
    });
    if (values.help) return usage;
    const depth = (values.depth ?? 'copy') as Depth;
    if (!depths.includes(depth)) return `there is no depth "${values.depth}"\n\n${usage}`;
    if (positionals.length > 1) return `one FILE at a time\n\n${usage}`;
    return {
      file: positionals[0],
      data: values.data ?? './data',
      depth,
      key: values.key,
      json: values.json ?? false,
    };
  } catch (error) {
    return `${error instanceof Error ? error.message : String(error)}\n\n${usage}`;
  }
}
