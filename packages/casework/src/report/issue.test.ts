import { createHash } from 'node:crypto';
import { loadPack } from '@combside/law/load-pack';
import { expect, test } from 'vitest';
import { arrival, smallSite, startAt } from '../acceptance/small-site.ts';
import type { Tap } from '../draft/tap.ts';
import { tapsFromExamination } from '../draft/taps-from-examination.ts';
import { closeColony } from '../examine/close-colony.ts';
import { correctExamination } from '../examine/correct-examination.ts';
import { changeApiary } from '../register/apiary.ts';
import { handOver } from './hand-over.ts';
import { outdatedSince } from './issue.ts';
import { makeInspectionRecord } from './make-inspection-record.ts';

const pack = await loadPack('quillmoor');
const hasher = { sha256: async (bytes: Uint8Array) => new Uint8Array(createHash('sha256').update(bytes).digest()) };
const examinedAt = '2027-05-04T09:30:00.000Z';
const firstGiven = '2027-05-04T10:00:00.000Z';
const secondGiven = '2027-05-05T09:00:00.000Z';

/** A visit with one colony closed, and what may happen to its result. */
function visited() {
  const site = smallSite();
  const visit = site.newId();
  site.carryOut(startAt(site, visit), arrival);
  const [colony] = site.colonies;
  const examinationId = site.newId();
  const state = () => site.ledger.colony(colony);
  site.carryOut(
    closeColony({
      taps: [{ tap: 'everything looked at' }],
      colony: state(),
      visit: site.ledger.visit(visit),
      pack,
      closing: 'nothing seen',
      suspected: [],
      observedAt: examinedAt,
      examinationId,
    }),
    examinedAt,
  );
  const record = async () => {
    const made = await makeInspectionRecord(
      {
        visit: site.ledger.visit(visit),
        apiary: site.ledger.apiary(site.apiary),
        keeper: null,
        colonies: site.ledger.coloniesOf(site.apiary),
        pack,
        inspector: { name: 'Invented Inspector', office: '', warrant: null },
        authority: '',
        timeZone: 'Etc/UTC',
      },
      hasher,
    );
    if ('reason' in made) throw new Error(made.reason);
    return made;
  };
  return {
    site,
    record,
    outdated: () => outdatedSince(site.ledger.visit(visit), site.ledger.coloniesOf(site.apiary)),
    async give(receiver: string, handedOverAt: string) {
      const { contentHash } = (await record()).proof;
      const said = { how: 'signed on the screen', signaturePath: 'M0 0L9 9', contentHash } as const;
      site.carryOut(handOver({ visit: site.ledger.visit(visit), receiver, handedOverAt, ...said }), handedOverAt);
    },
    correct(light: 'torch' | 'shade', correctedAt: string) {
      const [examined] = state().examinations;
      if (!examined) throw new Error('nothing was sealed');
      const taps: Tap[] = [
        ...tapsFromExamination(examined.body, state().assessments[0]?.body ?? null, state()),
        { tap: 'light', light },
      ];
      site.carryOut(
        correctExamination({
          taps,
          colony: state(),
          visit: site.ledger.visit(visit),
          pack,
          closing: 'nothing seen',
          suspected: [],
          corrects: examinationId,
          reason: 'the wrong line was tapped',
          by: site.inspector,
          correctedAt,
        }),
        correctedAt,
      );
    },
  };
}

test('the first result replaces none, and stays the first when it is handed over', async () => {
  const { record, give, outdated } = visited();
  expect((await record()).issue).toEqual({ number: 1, replaces: null, handedOver: false });
  await give('Invented Keeper', firstGiven);
  const after = await record();
  expect(after.issue).toEqual({ number: 1, replaces: null, handedOver: true });
  expect(after.signatures.map((one) => one.name)).toEqual(['Invented Keeper']);
  expect(outdated()).toBeNull();
});

test('corrected before it was handed over, it is still the first', async () => {
  const { record, correct } = visited();
  correct('torch', '2027-05-04T09:40:00.000Z');
  expect((await record()).issue).toEqual({ number: 1, replaces: null, handedOver: false });
});

test('corrected after it was handed over, the next one replaces it, unsigned, and is counted on', async () => {
  const { record, give, correct, outdated } = visited();
  await give('Invented Keeper', firstGiven);
  const first = await record();
  correct('torch', '2027-05-05T07:00:00.000Z');
  expect(outdated()).toBe(firstGiven);
  const second = await record();
  expect(second.issue).toEqual({ number: 2, replaces: firstGiven, handedOver: false });
  expect(second.signatures).toEqual([]);
  expect(second.proof.contentHash).not.toBe(first.proof.contentHash);
  await give('Invented Neighbour', secondGiven);
  expect(outdated()).toBeNull();
  const given = await record();
  expect(given.issue).toEqual({ number: 2, replaces: firstGiven, handedOver: true });
  expect(given.proof.contentHash).toBe(second.proof.contentHash);
  expect(given.signatures.map((one) => one.name)).toEqual(['Invented Neighbour']);
  correct('shade', '2027-05-06T07:00:00.000Z');
  expect((await record()).issue).toEqual({ number: 3, replaces: secondGiven, handedOver: false });
});

test('a change of the register alone makes no paper old', async () => {
  const { site, record, give } = visited();
  await give('Invented Keeper', firstGiven);
  const before = await record();
  site.carryOut(changeApiary(site.ledger.apiary(site.apiary), { name: 'Renamed Bank' }), secondGiven);
  const after = await record();
  expect(after.proof.contentHash).not.toBe(before.proof.contentHash);
  expect(after.issue).toEqual({ number: 1, replaces: null, handedOver: true });
});
