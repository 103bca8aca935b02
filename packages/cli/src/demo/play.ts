import { stat, writeFile } from 'node:fs/promises';
import { dutiesOwed } from '@combside/casework/assess/duties-owed';
import { demoDistrict, demoTimeZone, inspectorOfTheDay } from '@combside/casework/demo/people';
import { walkthrough } from '@combside/casework/demo/walkthrough';
import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { inspectionPdf } from '@combside/papers/inspection/inspection-pdf';
import { readPaperFonts } from '@combside/papers/layout/node-fonts';
import { verifyChain } from '@combside/record/chain';
import { hasher, verifier } from '../node-ports.ts';
import { Journey, type PlannedVisit } from './journey.ts';
import { officeReads } from './office-reads.ts';
import { openPhone, type Phone } from './phone.ts';
import { demand, type Stage, spoken } from './stage.ts';

/** The whole story, from the planted office to what the office reads. @throws when something is not as it has to be */
export async function play(stage: Stage): Promise<void> {
  await plantOffice(stage);
  const phone = await openPhone(stage);
  await fillPhone(stage, phone);
  const next = await chooseVisit(stage, phone);

  stage.step('demo.signal-lost');
  phone.cutOff();
  const before = await waitingOn(phone);
  const journey = new Journey(stage, phone, next);
  for (const one of walkthrough) await journey.take(one);
  const record = await journey.result();
  await makePaper(stage, record);
  await tellWhatIsOwed(stage, phone, journey);
  await verifySealed(stage, phone, before);

  await findSignal(stage, phone);
  await officeReads(stage, next.visit, record);
}

async function plantOffice({ words, server, step, detail }: Stage): Promise<void> {
  step('demo.server', { address: server.address });
  const entries = (await server.plantDemo()) ?? 0;
  demand('entries planted', entries > 0, true);
  detail(words.say('demo.planted', { entries, accounts: server.demo.accounts.length }));
}

/** Brings the district to the phone while there is a network. */
async function fillPhone({ step }: Stage, phone: Phone): Promise<void> {
  const first = await phone.meetOffice();
  const apiaries = await phone.book.summaries('apiary');
  demand('faults of the first exchange', first.faults.length, 0);
  demand('district confirmed by the office', first.confirmed.includes(`district/${demoDistrict}`), true);
  step('demo.phone', { name: inspectorOfTheDay.name, fetched: first.fetched, apiaries: apiaries.length });
}

async function chooseVisit({ words, step }: Stage, phone: Phone): Promise<PlannedVisit> {
  const today = await phone.today();
  const [next] = today;
  if (!next?.plannedFor) throw new Error('nothing is planned for today');
  step('demo.today', {
    visits: today.length,
    apiary: next.name,
    time: words.clockTime(next.plannedFor, demoTimeZone),
    reason: words.sayOne('casework.visit-reason.*', next.reason) ?? next.reason,
  });
  return { ...next, plannedFor: next.plannedFor };
}

/** The written result, made on the phone without a network. */
async function makePaper({ words, paper, step, detail }: Stage, record: InspectionRecord): Promise<void> {
  const pdf = await inspectionPdf(record, words, await readPaperFonts());
  await writeFile(paper, pdf);
  const { size } = await stat(paper);
  demand('bytes of the PDF', size, pdf.length);
  demand('beginning of the PDF', Buffer.from(pdf.subarray(0, 5)).toString('latin1'), '%PDF-');
  step('demo.paper', { bytes: size, path: paper });
  detail(words.say('demo.fingerprint', { hash: record.proof.contentHash }));
  for (const one of record.nextSteps) detail(spoken(words, one));
}

async function tellWhatIsOwed({ words, detail }: Stage, phone: Phone, journey: Journey): Promise<void> {
  for (const one of dutiesOwed(await journey.colonies(), phone.pack, new Date(journey.clock).toISOString())) {
    detail(
      words.say('demo.duty', {
        duty: words.say(`casework.duty.${one.duty}`),
        owedBy: words.say(`casework.owed-by.${one.owedBy}`),
        when: one.due
          ? words.say('casework.duty.due', { due: words.dayAndTime(one.due, demoTimeZone) })
          : words.say(`casework.promptness.${one.promptness ?? 'the law names no time'}`),
        article: one.article,
      }),
    );
  }
}

/** What the visit sealed on the phone, and that its chain holds. @param before entries that waited before the visit */
async function verifySealed({ words, step, detail }: Stage, phone: Phone, before: number): Promise<void> {
  const waiting = await waitingOn(phone);
  step('demo.sealed', { entries: waiting - before, waiting });
  demand('entries sealed', waiting > before, true);
  const { device } = await phone.book.identity();
  const chain = await phone.store.chain(device, 1, 100_000);
  const faults = await verifyChain({ hasher, verifier }, chain, { erased: new Set(), office: null });
  demand('faults of the chain', faults.length, 0);
  detail(words.say('demo.chain', { faults: faults.length }));
}

async function findSignal({ step }: Stage, phone: Phone): Promise<void> {
  const waiting = await waitingOn(phone);
  const sent = await phone.meetOffice();
  demand('entries refused', sent.refused.length, 0);
  demand('entries still waiting', sent.waiting, 0);
  demand('faults of the exchange', sent.faults.length, 0);
  demand('entries sent', sent.sent, waiting);
  step('demo.signal-found', { sent: sent.sent, refused: sent.refused.length, waiting: sent.waiting });
}

async function waitingOn(phone: Phone): Promise<number> {
  return (await phone.store.outbox(1000)).length;
}
