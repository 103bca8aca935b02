import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { type PaperFonts, renderPdf } from '../layout/pdf.ts';
import { inspectionPaper } from './inspection-paper.ts';
import type { PaperWords } from './phrases.ts';

/**
 * The written result as PDF, on a phone or on a server. It brings pdfkit with it: import it only when a paper is asked
 * for, `await import('@combside/papers/inspection/inspection-pdf')`.
 */
export async function inspectionPdf(
  record: InspectionRecord,
  words: PaperWords,
  fonts: PaperFonts,
): Promise<Uint8Array> {
  return renderPdf(inspectionPaper(record, words), fonts);
}
