import { officeLead } from '@combside/casework/demo/people';
import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { saysSuspect } from '@combside/casework/result/results-by-gravity';
import { visitPage } from '@combside/contract/visit-page';
import { signInAt } from '../office-over-http.ts';
import { accountOf, demand, type Stage } from './stage.ts';

/** The office lead opens the visit over the wire; it must hold what the phone handed over on paper. */
export async function officeReads({ server, step }: Stage, visit: string, record: InspectionRecord): Promise<void> {
  const office = await signInAt(server.address, accountOf(server, officeLead.id), server.demo.password);
  const page = await office.page(`/api/visits/${visit}`, visitPage);
  demand('end of the visit at the office', page.visit.visit.current?.body.endedAt, record.visit.endedAt);
  const examinations = page.colonies.flatMap((one) => one.examinations);
  const opened = record.colonies.filter((one) => one.look !== null);
  demand('examinations at the office', examinations.length, opened.length);
  for (const one of opened) {
    const seen = page.colonies.find((candidate) => candidate.colony === one.id);
    const result = seen?.assessments.find((made) => made.body.visit === visit)?.body.result;
    demand(`result of colony ${one.label} at the office`, result, one.result);
  }
  const suspects = page.colonies.filter((one) => one.assessments.some((made) => saysSuspect(made.body.result)));
  step('demo.office', { name: officeLead.name, examinations: examinations.length, suspects: suspects.length });
}
