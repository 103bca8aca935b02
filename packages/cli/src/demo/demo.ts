import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { type RunningServer, startServer } from '@combside/server/start';
import { chooseLanguage } from '@combside/words/language';
import { loadWords } from '@combside/words/load-words';
import type { Streams } from '../calc.ts';
import { play } from './play.ts';
import { setStage } from './stage.ts';

export const usage = `combside demo [--language en|de] [--paper FILE]

Plays the main journey of the invented district for real: an office on a database of its own, a phone, a visit of six
colonies without signal, the written result as PDF, and the office reading what the phone sent. Leaves with 0 only when
every step truly worked.`;

/** Runs `combside demo`. @returns the exit code */
export async function demo(args: readonly string[], streams: Streams): Promise<number> {
  let asked: { language?: string; paper?: string; help?: boolean };
  try {
    asked = parseArgs({
      args: [...args],
      options: { language: { type: 'string' }, paper: { type: 'string' }, help: { type: 'boolean' } },
    }).values;
  } catch (error) {
    streams.err(`${(error as Error).message}\n\n${usage}`);
    return 2;
  }
  if (asked.help) {
    streams.out(usage);
    return 0;
  }
  const words = await loadWords(chooseLanguage([asked.language ?? 'en']), ['demo', 'casework', 'signs', 'papers']);
  const folder = await mkdtemp(join(tmpdir(), 'combside-demo-'));
  const paper = asked.paper ?? join(tmpdir(), 'combside-demo-result.pdf');
  let server: RunningServer | null = null;
  try {
    streams.out(words.say('demo.title'));
    server = await startServer({ data: join(folder, 'data'), port: 0 });
    await play(setStage(words, streams.out, { paper, server }));
    streams.out(words.say('demo.all-worked'));
    return 0;
  } catch (error) {
    streams.err(words.say('demo.failed', { reason: (error as Error).message }));
    return 1;
  } finally {
    await server?.stop();
    await rm(folder, { recursive: true, force: true });
  }
}
