/** `combside diagnose FILE|-`: the whole reasoning on one examination. */
import { assessExamination, notifiableDiseases } from '@combside/casework/assess/assess-examination';
import { loadPack, packIds } from '@combside/law/load-pack';
import type { Pack } from '@combside/law/pack';
import { assessLook, defaultSettings } from '@combside/science/diagnosis/assess';
import { type Language, languages } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import { type Read, readInput } from './diagnose-input.ts';
import type { Diagnosis } from './diagnose-output.ts';
import { diagnoseSchema } from './diagnose-schema.ts';
import { diagnosisInWords } from './diagnose-text.ts';

/** Where the command reads and writes; given, so that tests need no process. */
export interface Streams {
  /** The whole text of a file, or of standard input for "-". */
  readonly read: (path: string) => string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

/** The rules taken when none are named: those of the invented place. */
const usualPack = 'quillmoor';

/**
 * Runs `combside diagnose`.
 *
 * @param args what stands after `diagnose`
 * @returns the exit code: 0, 1 when the input was refused, 2 when the command was not understood
 */
export async function diagnose(args: readonly string[], streams: Streams): Promise<number> {
  const asked = understood(args);
  const words = await loadWords(asked.language, ['reasoning', 'signs', 'casework']);
  const usage = words.say('reasoning.command.usage', {
    packs: packIds.join(', '),
    pack: usualPack,
    languages: languages.join(', '),
  });
  if (asked.help) {
    streams.out(usage);
    return 0;
  }
  if (asked.wrong !== null) {
    streams.err(`${asked.wrong}\n\n${usage}`);
    return 2;
  }
  if (asked.schema) {
    streams.out(JSON.stringify(diagnoseSchema(), null, 2));
    return 0;
  }
  try {
    const pack = await loadPack(asked.pack);
    const found = diagnosed(readInput(parsed(streams, asked.path)), pack);
    streams.out(asked.json ? JSON.stringify(found, null, 2) : diagnosisInWords(found, pack, words));
    return 0;
  } catch (error) {
    streams.err(error instanceof Error ? error.message : String(error));
    return 1;
  }
}

/** What the reasoning says of what was read, under this law. */
export function diagnosed(read: Read, pack: Pack): Diagnosis {
  const about = { id: pack.id, version: pack.version, invented: pack.invented };
  if (read.as === 'evidence') {
    const settings = { ...defaultSettings, notifiable: notifiableDiseases(pack) };
    const assessment = assessLook(read.evidence, settings);
    return { readAs: 'evidence', pack: about, result: null, suspicionRule: null, setAside: [], assessment };
  }
  const { examination } = read;
  const assessed = assessExamination({
    examination,
    colony: null,
    visit: examination.visit,
    pack,
    suspectedByInspector: [],
  });
  const rule = assessed.suspicion?.rule ?? null;
  return {
    readAs: 'examination',
    pack: about,
    result: assessed.result,
    suspicionRule: rule && { id: rule.id, condition: rule.condition, article: rule.article },
    setAside: [...assessed.setAside],
    assessment: assessed.reasoning,
  };
}

interface DiagnoseOptions {
  readonly json: boolean;
  readonly help: boolean;
  readonly schema: boolean;
  readonly language: Language;
  readonly pack: string;
  readonly path: string;
  /** What was not understood, or null. */
  readonly wrong: string | null;
}

function understood(args: readonly string[]): DiagnoseOptions {
  let asked: DiagnoseOptions = {
    json: false,
    help: false,
    schema: false,
    language: 'en',
    pack: usualPack,
    path: '-',
    wrong: null,
  };
  const paths: string[] = [];
  for (let i = 0; i < args.length; i++) {
    const arg = args[i] as string;
    if (arg === '--json') asked = { ...asked, json: true };
    else if (arg === '--help') asked = { ...asked, help: true };
    else if (arg === '--schema') asked = { ...asked, schema: true };
    else if (arg === '--language') {
      const named = args[++i] ?? '';
      const language = languages.find((one) => one === named);
      asked = language ? { ...asked, language } : { ...asked, wrong: `--language ${named}: ${languages.join(', ')}` };
    } else if (arg === '--pack') {
      const named = args[++i] ?? '';
      const known = (packIds as readonly string[]).includes(named);
      asked = known ? { ...asked, pack: named } : { ...asked, wrong: `--pack ${named}: ${packIds.join(', ')}` };
    } else if (arg.startsWith('--')) asked = { ...asked, wrong: arg };
    else paths.push(arg);
  }
  const [path = '-', second] = paths;
  return second === undefined ? { ...asked, path } : { ...asked, wrong: second };
}

function parsed(streams: Streams, path: string): unknown {
  const where = path === '-' ? 'standard input' : path;
  const reason = (cause: unknown) => (cause instanceof Error ? cause.message : String(cause));
  let text: string;
  try {
    text = streams.read(path);
  } catch (cause) {
    throw new Error(`cannot read ${where}: ${reason(cause)}`, { cause });
  }
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw new Error(`${where} does not hold one JSON object: ${reason(cause)}`, { cause });
  }
}
