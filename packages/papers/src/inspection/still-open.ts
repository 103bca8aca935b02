import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { saySentence } from '@combside/words/sentence';
import { isSuspect, type PaperWords } from './phrases.ts';
import { labels } from './summary.ts';

/** Everything that is open after the visit. A suspicion is open until the authority decides, whatever else was done. */
export function stillOpenWords(record: InspectionRecord, words: PaperWords): string[] {
  const suspects = record.colonies.filter(isSuspect);
  return [
    ...(suspects.length > 0
      ? [words.say('papers.open.suspicion', { count: suspects.length, colonies: labels(words, suspects) })]
      : []),
    ...(record.specimens.length > 0 ? [words.say('papers.open.laboratory', { count: record.specimens.length })] : []),
    ...record.stillOpen.map((one) => saySentence<'papers' | 'casework' | 'signs'>(words, one, record.visit.timeZone)),
  ];
}
