import type { Language } from './language.ts';

/** A wording that Combside never shows, and why. */
export interface Unsayable {
  readonly pattern: RegExp;
  readonly why: string;
  /** Fit for those who run the program at a terminal, and for nobody else. */
  readonly fitAtTerminal?: true;
}

const untrue = 'a look cannot show it; write what was seen and how';
const soda = 'washing soda cleans but does not kill spores';
const plain = 'not a word of the trade; say what happens';

/** Wordings that would claim too much, or that a keeper would not understand. Checked over every message. */
export const unsayable: Record<Language, readonly Unsayable[]> = {
  en: [
    { pattern: /\bhealthy\b/i, why: untrue },
    { pattern: /\bclear(ed|ance)?\b/i, why: `${untrue}; a suspicion is lifted, a restriction released` },
    { pattern: /\b(all clean|disease[- ]free|free (of|from) disease)\b/i, why: untrue },
    { pattern: /soda.*(disinfect|steril)|(disinfect|steril).*soda/i, why: soda },
    { pattern: /\bOK(ay)?\b/i, why: 'a button says what happens' },
    { pattern: /\b(manager|dashboard|workflow|user|admin|item|entity)\b/i, why: plain, fitAtTerminal: true },
    {
      pattern:
        /\b(sync\w*|uploads?|uploaded|downloads?|cache\w*|database|payload|submit\w*|log ?in|offline|online|invalid)\b/i,
      why: plain,
      fitAtTerminal: true,
    },
    { pattern: /\b(please|oops|sorry|successful(ly)?)\b/i, why: 'padding' },
  ],
  de: [
    { pattern: /\bgesund(e[rsnm]?)?\b/i, why: untrue },
    { pattern: /\b(seuchenfrei|krankheitsfrei|unbedenklich|sauber)\b/i, why: untrue },
    { pattern: /soda.*(desinfi|steril)|(desinfi|steril).*soda/i, why: soda },
    { pattern: /\bOK(ay)?\b/i, why: 'a button says what happens' },
    { pattern: /\b(manager|dashboard|workflow|benutzer|nutzer|admin)\b/i, why: plain, fitAtTerminal: true },
    {
      pattern: /(synchron|datenbank)|\b(upload|download|cache|einloggen|login|offline|online|ungültige?[rsnm]?)\b/i,
      why: plain,
      fitAtTerminal: true,
    },
    { pattern: /\b(bitte|leider|erfolgreich)\b/i, why: 'padding' },
  ],
};

/** The wordings a text must not have, with their reasons; none when it is fit to be read. */
export function unsayableIn(language: Language, text: string): Unsayable[] {
  return unsayable[language].filter((one) => one.pattern.test(text));
}
