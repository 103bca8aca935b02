import { readFileSync } from 'node:fs';

/** What the machine gives a command: files and standard input ("-") as text, and lines out. */
const streams = {
  read: (path: string) => readFileSync(path === '-' ? 0 : path, 'utf8'),
  out: (line: string) => void process.stdout.write(`${line}\n`),
  err: (line: string) => void process.stderr.write(`${line}\n`),
};

/** A command gets what stands after its word, and gives the exit code. */
type Run = (args: readonly string[], given: typeof streams) => Promise<number>;

/** Every command by its first word, one file each, loaded only when called. */
const commands: Readonly<Record<string, { readonly line: string; readonly load: () => Promise<Run> }>> = {
  calc: {
    line: 'compute by name: sampling, laboratory, colony, disposal',
    load: () => import('./calc.ts').then((file) => file.calc),
  },
  demo: {
    line: 'play one visit from hive to office in the invented district',
    load: () => import('./demo/demo.ts').then((file) => file.demo),
  },
  diagnose: {
    line: 'the whole reasoning on one examination, as text or JSON',
    load: () => import('./diagnose.ts').then((file) => file.diagnose),
  },
  export: {
    line: "write a server's whole record to a file",
    load: () => import('./export.ts').then((file) => file.writeExport),
  },
  verify: {
    line: 'check a record or an export: entry, chain, copy',
    load: () => import('./verify.ts').then((file) => file.verify),
  },
  read: { line: 'read comb photographs cell by cell', load: () => import('./read.ts').then((file) => file.read) },
};

const help = `combside COMMAND [ARGUMENTS]

${Object.entries(commands)
  .map(([word, { line }]) => `  ${word.padEnd(10)} ${line}`)
  .join('\n')}

combside COMMAND --help tells what a command takes.`;

const [word, ...rest] = process.argv.slice(2);
const command = word !== undefined && Object.hasOwn(commands, word) ? commands[word] : undefined;
if (word === undefined || word === '--help') {
  streams.out(help);
} else if (command === undefined) {
  streams.err(`there is no command "${word}"\n\n${help}`);
  process.exitCode = 2;
} else {
  const run = await command.load();
  process.exitCode = await run(rest, streams);
}
