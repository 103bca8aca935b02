import { createHash } from 'node:crypto';
import { loadPack } from '@combside/law/load-pack';
import { canonicalBytes } from '@combside/record/canonical';
import type { AssessmentBody } from '@combside/record/kinds/assessment';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { MovementBody } from '@combside/record/kinds/movement';
import { kinds } from '@combside/record/kinds/registry';
import { describe, expect, test } from 'vitest';
import type { Done } from '../act.ts';
import { recordCleanDown } from '../examine/clean-down.ts';
import { closeColony } from '../examine/close-colony.ts';
import { endVisit } from '../examine/end-visit.ts';
import { startVisit } from '../examine/start-visit.ts';
import { visitsToMake } from '../plan/today.ts';
import { standingAt } from '../register/standing-at.ts';
import { makeInspectionRecord, shortForm } from '../report/make-inspection-record.ts';
import { saysSuspect } from '../result/results-by-gravity.ts';
import { carriedOut } from './carried-out.ts';
import { type DemoDistrict, demoDistrictFrom, weighingOnce } from './district.ts';
import { asInspector, demoAuthority, demoTimeZone, inspectorOfTheDay } from './people.ts';
import { walkthrough } from './walkthrough.ts';
import { demoSizes } from './world.ts';

const hasher = { sha256: async (bytes: Uint8Array) => new Uint8Array(createHash('sha256').update(bytes).digest()) };
const pack = await loadPack('quillmoor');
const today = '2027-05-11';
// What a look comes to hangs on nothing but the look (its own tests), so a second play need not reckon it again.
const weigh = weighingOnce();
const play = () => demoDistrictFrom({ today, seed: 7, pack, hasher, weigh });
const district = await play();
const { truth, ledger } = district;

const ids = (type: string) => [
  ...new Set(district.sown.filter((one) => one.proposal.about.type === type).map((one) => one.proposal.about.id)),
];
const bodies = <Body>(kind: string) =>
  district.sown
    .filter((one) => one.proposal.kind === kind)
    .map((one) => ({ colony: one.proposal.about.id, body: one.proposal.body as Body }));

describe('the invented district', () => {
  test('has the size of a small district', () => {
    expect(ids('keeper')).toHaveLength(demoSizes.keepers);
    expect(ids('apiary')).toHaveLength(demoSizes.apiaries);
    expect(ids('colony')).toHaveLength(demoSizes.colonies);
    expect(bodies('examination').length).toBeGreaterThan(500);
    expect(ledger.coloniesOf(truth.journey.apiary)).toHaveLength(6);
  });

  test('says that it is invented wherever a place or a person is named', () => {
    for (const id of ids('apiary')) expect(ledger.apiary(id).apiary.current?.body.addressWords).toContain('(invented)');
    for (const id of ids('keeper')) expect(ledger.keeper(id).keeper.current?.body.addressWords).toContain('invented');
  });

  test('holds only bodies of the shape of their kinds, in the order of clocks', () => {
    for (const { proposal } of district.sown) {
      const kind = kinds.get(proposal.kind);
      expect(kind?.body.safeParse(proposal.body).success, `${proposal.kind} ${proposal.id}`).toBe(true);
    }
    const times = district.sown.map((one) => one.at);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(new Set(district.sown.map((one) => one.proposal.id)).size).toBe(district.sown.length);
  });

  test('is the same for the same seed and date', async () => {
    const digest = (one: DemoDistrict) => createHash('sha256').update(canonicalBytes(one.sown)).digest('hex');
    expect(digest(await play())).toBe(digest(district));
  });

  test('nobody is at two places at once', () => {
    const visits = ids('visit').map((id) => ledger.visit(id).visit.current?.body);
    const spans = visits.flatMap((one) =>
      one?.startedAt && one.endedAt ? [{ who: one.inspector, from: one.startedAt, to: one.endedAt }] : [],
    );
    expect(spans.length).toBeGreaterThan(100);
    for (const a of spans) {
      const overlapping = spans.filter((b) => a !== b && a.who === b.who && a.from < b.to && b.from < a.to);
      expect(overlapping, `${a.who} ${a.from}`).toEqual([]);
    }
  });
});

describe('its story', () => {
  const suspect = bodies<AssessmentBody>('assessment').filter((one) => saysSuspect(one.body.result));
  const apiaryOf = (colony: string) => ledger.colony(colony).colony.current?.body.apiary ?? '';

  test('the outbreak was missed by a narrow look and found later at its source, not yet at the journey’s apiary', () => {
    const [first, second, journey] = truth.outbreak as readonly [string, string, string];
    const early = bodies<ExaminationBody>('examination').filter(
      (one) => one.body.apiary === first && one.body.depth === 'part',
    );
    expect(early.length).toBeGreaterThan(0);
    expect(early.every((one) => one.body.claim === 'nothing seen')).toBe(true);
    const found = new Set(suspect.map((one) => apiaryOf(one.colony)));
    expect(found).toContain(first);
    expect(found).toContain(second);
    expect(found).not.toContain(journey);
  });

  test('the office was told how it travelled, but for the robbing', () => {
    const told = bodies<MovementBody>('movement').map(({ body }) => [body.from, body.to, body.what, body.how]);
    const [first, second, journey] = truth.outbreak;
    expect(told).toEqual([
      [first, second, 'colonies', 'moved'],
      [first, journey, 'nuclei', 'sold'],
    ]);
    expect(truth.spread.filter((one) => one.by === 'robbing')).toHaveLength(1);
  });

  test('one suspicion was a wrong lead: no foulbrood was ever there', () => {
    const there = suspect.filter((one) => apiaryOf(one.colony) === truth.wrongLead);
    expect(there).toHaveLength(1);
    const foul = truth.conditions.filter((one) => one.condition.startsWith('american-foulbrood'));
    expect(foul.map((one) => apiaryOf(one.colony))).not.toContain(truth.wrongLead);
  });

  test('every suspicion by a pack’s rule is a true one, since no look-alike drew a thread or left hard scale', () => {
    const foul = new Set(
      truth.conditions.filter((one) => one.condition.startsWith('american-foulbrood')).map((one) => one.colony),
    );
    const byRule = suspect.filter((one) => one.body.basis === 'pack rule');
    expect(byRule.length).toBeGreaterThan(1);
    for (const one of byRule) expect(foul).toContain(one.colony);
  });

  test('look-alikes were seen, and not suspected', () => {
    for (const { apiary } of truth.lookAlikes) {
      const seen = bodies<ExaminationBody>('examination').filter(
        (one) => one.body.apiary === apiary && one.body.claim === 'signs seen',
      );
      expect(seen.length, apiary).toBeGreaterThan(0);
      expect(suspect.map((one) => apiaryOf(one.colony))).not.toContain(apiary);
    }
  });

  test('dead hives and stored combs were found, and the register followed', () => {
    const states = ids('colony').map((id) => ledger.colony(id).colony.current?.body.hiveState);
    expect(states).toContain('dead');
    expect(states).toContain('stored combs');
  });
});

describe('the main journey', () => {
  test('stands first among today’s visits', () => {
    const visits = ids('visit').map((id) => ledger.visit(id));
    const apiaries = ids('apiary').map((id) => ledger.apiary(id));
    const day = { start: `${today}T00:00:00.000Z`, end: `${today}T23:59:59.999Z` };
    const mine = visitsToMake({ visits, apiaries, inspector: inspectorOfTheDay.id, day });
    expect(mine.filter((one) => one.state === 'today').map((one) => one.name)[0]).toBe('Hazel Bank');
    expect(mine.map((one) => one.visit)).toContain(district.planned[0]);
  });

  test('walked through by its taps gives four looks without signs, one suspect colony, one dead hive with scale', async () => {
    const visit = district.planned[0] as string;
    const { apiary, colonies } = truth.journey;
    let clock = Date.UTC(2027, 4, 11, 9);
    const at = () => new Date(clock).toISOString();
    const write = (act: Done) =>
      ledger.write({ author: inspectorOfTheDay.id, device: inspectorOfTheDay.device.id, at: clock }, act.proposals);
    const standing = () => standingAt(apiary, ledger.coloniesOf(apiary));
    for (const step of walkthrough) {
      clock += 10 * 60_000;
      if (step.step === 'start') {
        write(
          carriedOut(
            startVisit({
              visit,
              planned: ledger.visit(visit),
              apiary: ledger.apiary(apiary),
              colonies: standing(),
              inspector: inspectorOfTheDay.id,
              reason: 'contact',
              power: 'consent',
              startedAt: at(),
              conditions: step.conditions,
              answers: step.answers,
              people: [],
              coloniesCounted: step.coloniesCounted,
            }),
          ),
        );
      } else if (step.step === 'colony') {
        write(
          carriedOut(
            closeColony({
              taps: step.taps,
              colony: ledger.colony(colonies[step.label] as string),
              visit: ledger.visit(visit),
              pack,
              closing: step.closing,
              suspected: step.suspected,
              observedAt: at(),
              examinationId: ledger.newId(clock),
            }),
          ),
        );
      } else if (step.step === 'clean down') {
        write(
          carriedOut(
            recordCleanDown({
              visit: ledger.visit(visit),
              colonies: standing(),
              after: step.after === null ? null : (colonies[step.after] as string),
              doneAt: at(),
              gloves: 'changed',
              tool: 'flamed',
              phone: 'wiped',
              wentOnAfterWarning: false,
              remarks: '',
            }),
          ),
        );
      } else {
        write(
          carriedOut(
            endVisit({
              visit: ledger.visit(visit),
              apiary: ledger.apiary(apiary),
              colonies: standing(),
              drafts: {},
              endedAt: at(),
              leftOpen: {},
            }),
          ),
        );
      }
    }
    const keeper = ledger.apiary(apiary).apiary.current?.body.keeper as string;
    const record = await makeInspectionRecord(
      {
        visit: ledger.visit(visit),
        apiary: ledger.apiary(apiary),
        keeper: ledger.keeper(keeper),
        colonies: standing(),
        pack,
        inspector: asInspector(inspectorOfTheDay),
        authority: demoAuthority,
        timeZone: demoTimeZone,
      },
      hasher,
    );
    if ('reason' in record) throw new Error(record.reason);
    expect(record.colonies.map((one) => [one.label, one.hiveState, one.result])).toEqual([
      ['1', 'living', 'nothing seen with this look'],
      ['2', 'living', 'nothing seen with this look'],
      ['3', 'living', 'nothing seen with this look'],
      ['4', 'living', 'suspect'],
      ['5', 'living', 'nothing seen with this look'],
      ['6', 'dead', 'suspect'],
    ]);
    expect(colonies['4']).toBe(truth.journey.suspect);
    expect(colonies['6']).toBe(truth.journey.dead);
    expect(record.invented).toBe(true);
    expect(record.stillOpen).toEqual([]);
    expect(record.nextSteps.map((one) => one.id)).toEqual([
      'casework.next.close-hive',
      'casework.next.specimen',
      'casework.next.specimen',
      'casework.next.move-nothing',
      'casework.next.reported',
      'casework.next.not-confirmed',
      'casework.next.dead-hive',
      'casework.next.nothing-seen',
      'casework.next.keep-looking',
      'casework.next.tools',
      'casework.next.law-first',
    ]);
    // On a paper handed over stands no probability, and nobody else.
    const text = JSON.stringify(record);
    expect(text).not.toMatch(/probability|interval|differential/);
    for (const id of ids('keeper')) {
      if (id !== keeper) expect(text).not.toContain(ledger.keeper(id).keeper.current?.body.name);
    }
    // The fingerprint is that of the content without its number and signatures, made here by other code.
    const { signatures: _, issue, proof, ...content } = record;
    expect(issue.number).toBe(1);
    const expected = createHash('sha256')
      .update(canonicalBytes({ ...content, proof: { entries: proof.entries } }))
      .digest('hex');
    expect(proof.contentHash).toBe(expected);
    expect(shortForm(record)).toMatchObject({ apiary: 'Hazel Bank', contentHash: expected });
  });
});
