import { parseArgs } from 'node:util';
import { exportRecord } from '@combside/server/check';
import { chooseLanguage } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';

/** What `combside export` takes, shown by `--help` and after a mistake. */
export const usage = `combside export FILE [--data FOLDER]

Writes the whole record of a server's folder (./data; DATABASE_URL names an agency's own PostgreSQL) to FILE: lines of
JSON, with a manifest of their SHA-256 signed by the office at the end. Check it with combside verify FILE. It holds
personal data: keep it as you keep the record. Photographs are not in it.
Leaves with 0, with 2 when it could not be written or understood.`;

interface Streams {
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
}

/**
 * Runs `combside export`. (The word cannot name a function, so its function is named after what it does.)
 *
 * @param args what stands after `export`
 * @returns the exit code
 */
export async function writeExport(args: readonly string[], streams: Streams): Promise<number> {
  let values: { data?: string; help?: boolean };
  let positionals: string[];
  try {
    ({ values, positionals } = parseArgs({
      args: [...args],
      options: { data: { type: 'string' }, help: { type: 'boolean' } },
      allowPositionals: true,
    }));
  } catch (error) {
    streams.err(`${error instanceof Error ? error.message : String(error)}\n\n${usage}`);
    return 2;
  }
  const [path] = positionals;
  if (values.help) {
    streams.out(usage);
    return 0;
  }
  if (path === undefined || positionals.length > 1) {
    streams.err(`give one FILE\n\n${usage}`);
    return 2;
  }
  try {
    const url = process.env.DATABASE_URL;
    const place = { data: values.data ?? './data', ...(url ? { databaseUrl: url } : {}) };
    const { entries, bytes, sha256 } = await exportRecord(place, path);
    const language = chooseLanguage([(process.env.LC_ALL || process.env.LANG || 'en').replace('_', '-')]);
    const words = await loadWords(language, ['check']);
    streams.out(words.say('check.exported', { entries, path, bytes, hash: sha256 }));
    return 0;
  } catch (error) {
    streams.err(error instanceof Error ? error.message : String(error));
    return 2;
  }
}
