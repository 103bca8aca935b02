import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { isSuspect, type PaperWords } from './phrases.ts';

/**
 * The usual cautions of work that can hurt. Fire and caustics come up only where something is suspected.
 * Stings: PENRITH; a full deep box of 36 kg: BOX-KG; soda and spores: APNOTES (keys of packages/sources). The rest is
 * common practice, no source.
 */
export function cautionWords(record: InspectionRecord, words: PaperWords): string[] {
  return [
    words.say('papers.cautions.stings'),
    words.say('papers.cautions.lifting'),
    ...(record.colonies.some(isSuspect)
      ? [words.say('papers.cautions.fire'), words.say('papers.cautions.caustics'), words.say('papers.clean-down.soda')]
      : []),
    words.say('papers.cautions.drugs'),
    words.say('papers.cautions.law'),
  ];
}
