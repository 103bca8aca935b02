import { calculate, calculationNamed, calculations, explain } from '@combside/science/calculations/registry';
import type { CautionId } from '@combside/science/disposal/cautions';
import { citation } from '@combside/sources/bibliography';
import { loadWords } from '@combside/words/load-words';

/** What `combside calc` takes, shown by `--help` and after a mistake. */
export const usage = `combside calc NAME [FILE|-]            inputs object as JSON in, result object as JSON out
combside calc NAME --explain [FILE|-]  formula, source and the steps with their numbers
combside calc NAME --help              the fields NAME takes
combside calc --batch [FILE|-]         lines of {id, function, inputs} in, lines of {id, result} or {id, error} out
combside calc --list                   every name with a line

FILE or - (the default) is standard input. Fractions are 0 to 1, never per cent; null means not known.
Leaves with 0, with 1 when an input was refused (in a batch: any line), with 2 when the command was not understood.`;

/** Where the command reads, and writes line by line; given, so that tests need no process. */
export interface Streams {
  /** The whole text of a file, or of standard input for "-". */
  readonly read: (path: string) => string;
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
}

/** Something about the command line itself was not understood. */
class UsageError extends Error {}

/**
 * Runs `combside calc`.
 *
 * @param args what stands after `calc`
 * @param streams see `Streams`
 * @returns the exit code: 0, 1 when an input was refused, 2 when the command was not understood
 */
export async function calc(args: readonly string[], streams: Streams): Promise<number> {
  try {
    return await obey(args, streams);
  } catch (error) {
    if (error instanceof UsageError) {
      streams.err(`${error.message}\n\n${usage}`);
      return 2;
    }
    streams.err(messageOf(error));
    return 1;
  }
}

async function obey(args: readonly string[], streams: Streams): Promise<number> {
  const flags = args.filter((arg) => arg.startsWith('--'));
  const words = args.filter((arg) => !arg.startsWith('--'));
  const [flag, ...more] = flags;
  if (more.length > 0) throw new UsageError(`one option at a time, not ${flags.join(' and ')}`);
  switch (flag) {
    case '--list':
      expectAtMost(words, 0);
      streams.out(listed());
      return 0;
    case '--batch':
      expectAtMost(words, 1);
      return batch(read(streams, words[0]), streams);
    case undefined:
    case '--explain':
    case '--help': {
      const [name, path] = words;
      if (name === undefined) {
        if (flag !== '--help') throw new UsageError('which calculation?');
        streams.out(usage);
        return 0;
      }
      expectAtMost(words, 2);
      if (flag === '--help') {
        streams.out(described(name));
        return 0;
      }
      calculationNamed(name);
      const inputs = parsed(read(streams, path), path ?? '-');
      streams.out(flag === '--explain' ? await explained(name, inputs) : JSON.stringify(calculate(name, inputs)));
      return 0;
    }
    default:
      throw new UsageError(`there is no option ${flag}`);
  }
}

function expectAtMost(words: readonly string[], count: number): void {
  if (words.length > count) throw new UsageError(`did not expect "${words[count]}"`);
}

const messageOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

function read(streams: Streams, path = '-'): string {
  try {
    return streams.read(path);
  } catch (cause) {
    throw new Error(`cannot read ${path === '-' ? 'standard input' : path}: ${messageOf(cause)}`, { cause });
  }
}

function parsed(text: string, path: string): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    const where = path === '-' ? 'standard input' : path;
    throw new Error(`${where} does not hold one JSON object of inputs: ${messageOf(cause)}`, { cause });
  }
}

function listed(): string {
  const widest = Math.max(...Object.keys(calculations).map((name) => name.length));
  const rooms = [...new Set(Object.values(calculations).map(({ room }) => room))];
  const shelf = (room: string) =>
    Object.entries(calculations)
      .filter(([, one]) => one.room === room)
      .map(([name, one]) => `  ${name.padEnd(widest)}  ${one.line}`);
  return rooms.flatMap((room) => [room, ...shelf(room)]).join('\n');
}

function described(name: string): string {
  const { line, formula, inputs } = calculationNamed(name);
  const fields = Object.entries(inputs).map(([field, what]) => `  ${field}: ${what}`);
  return [`${name}: ${line}`, `formula: ${formula}`, 'inputs:', ...fields].join('\n');
}

async function explained(name: string, inputs: unknown): Promise<string> {
  const { line, formula, sources, steps, result } = explain(name, inputs);
  const cited = sources.map((id) => `  ${citation(id)}`);
  return [
    ...(await cautionsOf(result)),
    `${name}: ${line}`,
    `formula: ${formula}`,
    ...(cited.length > 0 ? ['source:', ...cited] : ['source: arithmetic']),
    'steps:',
    ...steps.map((step, i) => `  ${i + 1}. ${step}`),
    `result: ${JSON.stringify(result)}`,
  ].join('\n');
}

/** What must be said before a figure of disposal, in sentences. */
async function cautionsOf(result: object): Promise<string[]> {
  if (!('cautions' in result)) return [];
  const words = await loadWords('en', ['disposal']);
  return (result.cautions as readonly CautionId[]).map((id) => `! ${words.say(`disposal.caution.${id}`)}`);
}

/** One line in, one line out, in order; a line that fails does not stop the others. */
function batch(text: string, streams: Streams): number {
  let refused = 0;
  text.split('\n').forEach((line, index) => {
    if (line.trim() === '') return;
    let id: unknown = index + 1;
    try {
      const asked: unknown = JSON.parse(line);
      if (typeof asked !== 'object' || asked === null || Array.isArray(asked)) {
        throw new RangeError('the line must be an object {id, function, inputs}');
      }
      const { id: given, function: name, inputs } = asked as Record<string, unknown>;
      if (given !== undefined) id = given;
      if (typeof name !== 'string') throw new RangeError('function must be the name of a calculation');
      streams.out(JSON.stringify({ id, result: calculate(name, inputs) }));
    } catch (error) {
      refused += 1;
      streams.out(JSON.stringify({ id, error: messageOf(error) }));
    }
  });
  return refused > 0 ? 1 : 0;
}
