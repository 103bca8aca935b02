import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { markOfResult } from '@combside/casework/result/result-mark';
import { saySentence } from '@combside/words/sentence';
import type { ColonyState } from '../drawings/state-mark.ts';
import { cautionWords } from './cautions.ts';
import { capital, type PaperWords, replacesWords, whenWords } from './phrases.ts';
import { stillOpenWords } from './still-open.ts';
import { summaryOf } from './summary.ts';

/** The result without a printer: the words of the paper, to be shown large on a screen and signed there. */
export interface SpokenShortForm {
  readonly title: string;
  /** Apiary, day and time. */
  readonly place: string;
  readonly when: string;
  /** Which earlier result this one replaces; null on the first. */
  readonly replaces: string | null;
  readonly mark: ColonyState | null;
  readonly summary: readonly string[];
  readonly whatItSays: string;
  readonly colonies: readonly { readonly label: string; readonly mark: ColonyState; readonly result: string }[];
  readonly stillOpen: readonly string[];
  readonly nextSteps: readonly string[];
  readonly cautions: readonly string[];
  readonly contentHash: string;
}

/** Speaks the short form. It shares every sentence with the paper, so both say the same. */
export function spokenShortForm(record: InspectionRecord, words: PaperWords): SpokenShortForm {
  const summary = summaryOf(record, words);
  return {
    title: words.say('papers.inspection.title'),
    place: record.apiary.name,
    when: whenWords(words, record.visit),
    replaces: replacesWords(words, record),
    mark: summary.mark,
    summary: summary.sentences,
    whatItSays: words.say('papers.inspection.what-it-says'),
    colonies: record.colonies.map((one) => ({
      label: one.label,
      mark: markOfResult(one.result),
      result: capital(words.say(`casework.result.${one.result}`)),
    })),
    stillOpen: stillOpenWords(record, words),
    nextSteps: record.nextSteps.map((step) =>
      saySentence<'papers' | 'casework' | 'signs'>(words, step, record.visit.timeZone),
    ),
    cautions: cautionWords(record, words),
    contentHash: record.proof.contentHash,
  };
}
