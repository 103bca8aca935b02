import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import type { PaperDefinition } from '../layout/paper-definition.ts';
import type { PaperWords } from './phrases.ts';
import { cleanDownSection } from './sections/clean-down.ts';
import { foundSection } from './sections/found.ts';
import { glanceSection } from './sections/glance.ts';
import { headSection } from './sections/head.ts';
import { missedSection } from './sections/missed.ts';
import { notSeenSection } from './sections/not-seen.ts';
import { openSection } from './sections/open.ts';
import { planSection } from './sections/plan.ts';
import { proofSection } from './sections/proof.ts';
import { remarksSection } from './sections/remarks.ts';
import { signaturesSection } from './sections/signatures.ts';
import { specimensSection } from './sections/specimens.ts';
import { visitSection } from './sections/visit.ts';

/**
 * The written result of a visit, as a paper: first what it came to, then the visit, the colonies, what was found, what
 * is open and what comes next. No probability, no other keeper, no more than was seen.
 */
export function inspectionPaper(record: InspectionRecord, words: PaperWords): PaperDefinition {
  const day = words.dayOf(record.visit.startedAt, record.visit.timeZone);
  const apiary = record.apiary.name;
  const title = words.say('papers.inspection.title-at', { apiary, day });
  const hash = record.proof.contentHash.slice(0, 16);
  return {
    title,
    author: record.authority || record.inspector.name,
    language: words.language,
    instant: Date.parse(record.visit.endedAt ?? record.visit.startedAt),
    header: record.invented ? `${title} · ${words.say('papers.invented-short')}` : title,
    footer: words.say('papers.inspection.footer', { apiary, day, hash }),
    pageOf: (page, pages) => words.say('papers.page', { page, pages }),
    blocks: [
      ...headSection(record, words),
      ...visitSection(record, words),
      ...planSection(record, words),
      ...glanceSection(record, words),
      ...foundSection(record, words),
      ...notSeenSection(record, words),
      ...missedSection(record, words),
      ...specimensSection(record, words),
      ...remarksSection(record, words),
      ...cleanDownSection(record, words),
      ...openSection(record, words),
      ...signaturesSection(record, words),
      ...proofSection(record, words),
    ],
  };
}
