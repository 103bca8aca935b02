import { demoTimeZone } from '@combside/casework/demo/people';
import type { RunningServer } from '@combside/server/start';
import type { WordId } from '@combside/words/rooms';
import { type Sentence, saySentence } from '@combside/words/sentence';
import type { Words } from '@combside/words/words';

type DemoRoom = 'demo' | 'casework' | 'signs' | 'papers';
export type DemoWords = Words<DemoRoom>;

/** What the steps share. */
export interface Stage {
  readonly words: DemoWords;
  /** Prints the line of the next step, with its number. */
  readonly step: (id: WordId<'demo'>, values?: Record<string, string | number>) => void;
  /** Prints a line under the step. */
  readonly detail: (text: string) => void;
  /** Where the written result is put. */
  readonly paper: string;
  readonly server: RunningServer;
}

/** Sets the stage over a server that runs. @param out prints a line */
export function setStage(
  words: DemoWords,
  out: (line: string) => void,
  { paper, server }: { readonly paper: string; readonly server: RunningServer },
): Stage {
  let number = 0;
  return {
    words,
    paper,
    server,
    step: (id, values = {}) => {
      number += 1;
      out(words.say('demo.step', { number, what: words.say(id, values) }));
    },
    // Set in under its step: the blanks belong to the terminal, not to the words.
    detail: (text) => out(`   ${text}`),
  };
}

/** The address of the account that the demonstration has for a person. */
export function accountOf(server: RunningServer, person: string): string {
  const account = server.demo.accounts.find((one) => one.person === person);
  if (!account) throw new Error(`the demo has no account for ${person}`);
  return account.email;
}

/** A sentence of the reasoning, of an act or of a paper. */
export function spoken(words: DemoWords, sentence: Sentence<'signs' | 'casework'>): string {
  return saySentence<DemoRoom>(words, sentence, demoTimeZone);
}

/** Ends the demonstration when something is not as it has to be. */
export function demand<Value>(what: string, found: Value, expected: Value): void {
  if (!Object.is(found, expected)) {
    throw new Error(`${what}: expected ${JSON.stringify(expected)}, found ${JSON.stringify(found)}`);
  }
}
