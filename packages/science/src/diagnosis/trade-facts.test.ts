import { describe, expect, it } from 'vitest';
import type { Look } from '../brood/look.ts';
import { type DiseaseId, type SignId, signs } from '../signs/catalogue.ts';
import { assessLook, defaultSettings, type WholeAssessment } from './assess.ts';
import { type Evidence, emptyEvidence, nothingKnown, type RopeTest, type SignAnswer } from './evidence.ts';
import { broodNetwork } from './network.ts';
import { posterior } from './posterior.ts';
import { priorFrom } from './prior.ts';
import { sortEvidence } from './sort-evidence.ts';

/**
 * The eight trade facts (T) and fifteen behaviours (B) the reasoning must show. Each names its source or says "common
 * practice, no source". What is asked is what the engine does, not a measured truth.
 */

const fullLook: Look = {
  depth: 'full',
  framesHeld: 10,
  framesSeen: 10,
  sides: 'both',
  beesShaken: true,
  light: 'sun over the shoulder',
  hold: 'top bar toward the viewer',
  cellsOpened: 20,
  cellsSuspicious: 20,
  sealedBroodCombSides: 8,
};

const few: SignAnswer = { outcome: 'seen', count: '1-10' };
const some: SignAnswer = { outcome: 'seen', count: '11-100' };
const many: SignAnswer = { outcome: 'seen', count: 'over 100' };
const marked: SignAnswer = { outcome: 'seen', amount: 'marked' };
const notSeen: SignAnswer = { outcome: 'not seen' };

function look(change: Partial<Look>): Look {
  return { ...fullLook, ...change };
}

function evidenceOf(given: Evidence['signs'], more: Partial<Evidence> = {}): Evidence {
  return { ...emptyEvidence(fullLook), signs: given, ...more };
}

function chance(disease: DiseaseId, evidence: Evidence): number {
  return posterior(broodNetwork, evidence, priorFrom(evidence)).disease[disease];
}

const foulbrood = (evidence: Evidence): number => chance('american-foulbrood', evidence);

function odds(p: number): number {
  return p / (1 - p);
}

/** How much the odds of American foulbrood change from one examination to the other. */
function ratio(from: Evidence, to: Evidence): number {
  return odds(foulbrood(to)) / odds(foulbrood(from));
}

function rope(change: Partial<RopeTest> = {}): RopeTest {
  return { tissue: 'moist brown', stick: 'rough and dry', threadMillimetres: 0, snapsBack: null, ...change };
}

const adviceIds = (assessment: WholeAssessment): string[] => assessment.advice.map((one) => one.id);
const stateIds = (assessment: WholeAssessment): string[] => assessment.states.map((one) => one.id);
const leading = (assessment: WholeAssessment): string | undefined => assessment.diseases[0]?.disease;

function everySign(given: SignAnswer): Evidence['signs'] {
  return Object.fromEntries(signs.filter((sign) => !sign.ofHealthyBrood).map((sign) => [sign.id, given]));
}

describe('trade facts', () => {
  it('T1: no thread with scale there does not lower foulbrood; no thread from fresh or part-dry remains says nothing (NZ-ROPE)', () => {
    const scale = evidenceOf({ 'scale.hard_lower': some });
    expect(ratio(scale, { ...scale, ropeTests: [rope({ tissue: 'dry scale' })] })).toBe(1);
    expect(ratio(scale, { ...scale, ropeTests: [rope(), rope(), rope()] })).toBe(1);
    expect(ratio(scale, { ...scale, signs: { ...scale.signs, 'con.ropy': notSeen } })).toBe(1);
    const caps = evidenceOf({ 'cap.sunken': some });
    for (const tissue of ['too fresh', 'part dry', 'dry scale'] as const) {
      expect(ratio(caps, { ...caps, ropeTests: [rope({ tissue })] }), tissue).toBe(1);
    }
    // The same test on the right remains does speak, so the silence above is not for want of a link.
    expect(ratio(caps, { ...caps, ropeTests: [rope(), rope(), rope()] })).toBeLessThan(0.8);
  });

  it('T2: "no scale" with the top bar away says nothing; with bees on or in poor light next to nothing (QLD-SIGN)', () => {
    const noScale: Evidence['signs'] = { 'scale.hard_lower': notSeen };
    const seenUnder = (change: Partial<Look>): number => {
      const before = emptyEvidence(look(change));
      return ratio(before, { ...before, signs: noScale });
    };
    expect(seenUnder({ hold: 'top bar away' })).toBe(1);
    expect(seenUnder({ beesShaken: false, light: 'poor' })).toBeGreaterThan(0.7);
    expect(seenUnder({})).toBeLessThan(0.7);
    const { silent } = sortEvidence(broodNetwork, { ...emptyEvidence(look({ hold: 'top bar away' })), signs: noScale });
    expect(silent).toEqual([{ node: 'scale.hard_lower', why: 'view-hides-it' }]);
  });

  it('T3: scale in quantity: at least 35 days, in words "often months", the upper end open (bound MAAREC-SCALE, BOOKLET; months: common practice, no source)', () => {
    const { timeSinceOnset } = assessLook(evidenceOf({ 'scale.hard_lower': many }));
    expect(timeSinceOnset).toMatchObject({
      atLeastDays: 35,
      atLeastBetween: [35, 42],
      atMostDays: null,
      oftenMonths: true,
    });
    expect(assessLook(evidenceOf({ 'scale.hard_lower': few })).timeSinceOnset).toMatchObject({
      atLeastDays: 35,
      oftenMonths: false,
    });
  });

  it('T4: sunken dark caps alone leave several conditions open and ask for cells to be opened (BB-FUN-1.2, NZ-PMS, BA-SAC, NZ-EFB; chalkbrood: common practice, no source)', () => {
    const evidence = evidenceOf(
      { 'cap.sunken': some, 'cap.dark_greasy': some },
      { look: look({ cellsOpened: 0, cellsSuspicious: 40 }) },
    );
    const assessment = assessLook(evidence);
    for (const disease of [
      'american-foulbrood',
      'european-foulbrood',
      'chalkbrood',
      'sacbrood',
      'varroa-damage',
    ] as const) {
      expect(chance(disease, evidence), disease).toBeGreaterThan(0.02);
      expect(chance(disease, evidence), disease).toBeLessThan(0.95);
    }
    expect(assessment.next.atHive[0]?.check).toBe('open-cells');
    expect(adviceIds(assessment)).toContain('keep-opening-cells');
  });

  it('T5: yellow slumped larvae without a thread: both foulbroods kept, a laboratory asked to separate them (QLD-SIGN, QLD-INSP, NZ-EFB, ABJ22; the statement itself: common practice, no source)', () => {
    const evidence = evidenceOf(
      { 'col.offwhite_yellow': few, 'post.melted': few },
      { ropeTests: [rope({ tissue: 'too fresh' })] },
    );
    const prior = priorFrom(evidence).diseases;
    const before = (id: DiseaseId): number => prior.find((one) => one.disease === id)?.value.value as number;
    for (const disease of ['american-foulbrood', 'european-foulbrood'] as const) {
      expect(chance(disease, evidence), disease).toBeGreaterThan(2 * before(disease));
    }
    const advice = assessLook(evidence).advice.find((one) => one.id === 'laboratory-to-separate');
    expect(advice?.sentence.values).toEqual({
      one: { word: 'signs.condition.american-foulbrood.name' },
      other: { word: 'signs.condition.european-foulbrood.name' },
    });
  });

  it('T6: no caps over the remains does not lower foulbrood, since bees uncap (BOOKLET, FACT-US); loose scale lowers it (MAAREC-SCALE, FACT-US)', () => {
    const remains = evidenceOf({ 'col.coffee': some, 'post.melted': some });
    const without = { ...remains, signs: { ...remains.signs, 'cap.sunken': notSeen, 'cap.dark_greasy': notSeen } };
    expect(ratio(remains, without)).toBe(1);
    const dark = evidenceOf({ 'col.coffee': some, 'cap.sunken': some });
    expect(ratio(dark, { ...dark, signs: { ...dark.signs, 'scale.gondola': some } })).toBeLessThan(0.7);
    expect(ratio(dark, { ...dark, signs: { ...dark.signs, 'scale.rubbery': some } })).toBeLessThan(0.7);
  });

  it('T7: a smell speaks weakly for foulbrood, its absence not at all (FACT-US, OWIKI, NNECTAR; "not reliable": OSU)', () => {
    const nothing = emptyEvidence(fullLook);
    const smelt = ratio(nothing, evidenceOf({ 'odour.glue': { outcome: 'seen' } }));
    expect(smelt).toBeGreaterThan(1.2);
    expect(smelt).toBeLessThan(10);
    const notSmelt = ratio(nothing, evidenceOf({ 'odour.glue': notSeen }));
    expect(notSmelt).toBeGreaterThan(0.9);
    expect(notSmelt).toBeLessThanOrEqual(1);
  });

  it('T8: little sealed brood: "too little brood to judge" and a wide doubt (common practice, no source)', () => {
    const assessment = assessLook({
      ...emptyEvidence(look({ sealedBroodCombSides: 0.1, cellsOpened: 2, cellsSuspicious: null })),
      signs: everySign(notSeen),
    });
    expect(stateIds(assessment)[0]).toBe('too-little-brood');
    expect(assessment.couldHaveMissed.tooLittleBrood).toBe(true);
    const enough = assessLook({ ...emptyEvidence(fullLook), signs: everySign(notSeen) });
    expect(stateIds(enough)).toEqual(['nothing-seen']);
    const missed = (one: WholeAssessment): number => one.couldHaveMissed.rows[1]?.chance as number;
    expect(missed(assessment)).toBeGreaterThan(10 * missed(enough));
  });
});

describe('behaviours', () => {
  it('B1: a tongue puts foulbrood far ahead and still asks for further cells and a specimen; no tongue changes almost nothing (NZ-TONGUE, QLD-SIGN)', () => {
    const assessment = assessLook(evidenceOf({ tongue: few }));
    expect(leading(assessment)).toBe('american-foulbrood');
    const [first, second] = assessment.diseases;
    expect(odds(first?.point as number) / odds(second?.point as number)).toBeGreaterThan(5);
    expect(adviceIds(assessment)).toEqual(expect.arrayContaining(['second-cell', 'laboratory-sample']));
    const without = ratio(emptyEvidence(fullLook), evidenceOf({ tongue: notSeen }));
    expect(without).toBeGreaterThan(0.95);
    expect(without).toBeLessThan(1);
  });

  it('B2: mummies in a hundred cells, 900 chewed caps unopened: chalkbrood, and foulbrood not excluded (NZ-FRAMES)', () => {
    const evidence = evidenceOf(
      { 'con.mummy_loose': some, 'cap.perforated': many },
      { look: look({ cellsOpened: 100, cellsSuspicious: 1000 }) },
    );
    const assessment = assessLook(evidence);
    expect(leading(assessment)).toBe('chalkbrood');
    const prior = priorFrom(evidence).diseases[0]?.value.value as number;
    expect(foulbrood(evidence)).toBeGreaterThanOrEqual(prior);
    expect(adviceIds(assessment)).toEqual(expect.arrayContaining(['keep-opening-cells', 'question-stays-open']));
    expect(assessment.couldHaveMissed.limits).toContain('cells-left-unopened');
  });

  it('B3: caps as over foulbrood, remains that do not thread, mites: mite damage leads, foulbrood kept, treat, wait 20 days, look again (NZ-PMS, NZ-COLLECT)', () => {
    const evidence = evidenceOf(
      { 'cap.sunken': some, 'cap.dark_greasy': some, 'cap.perforated': some, mites: marked },
      { ropeTests: [rope(), rope()] },
    );
    const assessment = assessLook(evidence);
    expect(leading(assessment)).toBe('varroa-damage');
    expect(foulbrood(evidence)).toBeGreaterThan(priorFrom(evidence).diseases[0]?.value.value as number);
    const advice = assessment.advice.find((one) => one.id === 'treat-mites-and-look-again');
    expect(advice?.sentence.values).toEqual({ days: 20 });
  });

  it('B4: coiled yellow larvae, tracheae, several eggs: half-moon above European foulbrood, a laboratory to separate (NZ-HMS)', () => {
    const assessment = assessLook(
      evidenceOf({ 'age.coiled': some, 'col.offwhite_yellow': some, 'con.tracheae': some, 'eggs.multi': some }),
    );
    const order = assessment.diseases.map((one) => one.disease);
    expect(order.indexOf('half-moon')).toBeLessThan(order.indexOf('european-foulbrood'));
    const separate = assessment.advice.filter((one) => one.id === 'laboratory-to-separate');
    expect(separate.map((one) => one.sentence.values)).toContainEqual({
      one: { word: 'signs.condition.european-foulbrood.name' },
      other: { word: 'signs.condition.half-moon.name' },
    });
  });

  it('B5: brown prepupa, raised dark head, tough skin with its segments: sacbrood leads, the rope test is asked next (NZ-SAC)', () => {
    const assessment = assessLook(
      evidenceOf({
        'col.coffee': few,
        'age.prepupa': few,
        'post.head_up': few,
        'con.sac': few,
        'post.melted': notSeen,
      }),
    );
    expect(leading(assessment)).toBe('sacbrood');
    expect(assessment.next.atHive[0]?.check).toBe('rope-test');
  });

  it('B6: open and sealed brood dead alike at the edge after frost: chilled brood leads (ELBKA-CH)', () => {
    expect(leading(assessLook(evidenceOf({ 'age.all_together': marked, 'col.grey_black_shiny': some })))).toBe(
      'chilled-or-starved',
    );
  });

  it('B7: live pupae in a line and frass: bald brood; foulbrood low (BB-WAX-4.1.3)', () => {
    const evidence = evidenceOf({ 'cap.line_open': some, moth: marked });
    expect(leading(assessLook(evidence))).toBe('bald-brood');
    expect(foulbrood(evidence)).toBeLessThan(0.02);
  });

  it('B8: no sign with the bees on and three frames of ten is a look too narrow, never "nothing seen" (NZ-SHAKE, NZ-FRAMES)', () => {
    const narrow = look({ depth: 'part', framesSeen: 3, beesShaken: false, cellsOpened: 0 });
    const evidence = { ...emptyEvidence(narrow), signs: everySign(notSeen) };
    const assessment = assessLook(evidence);
    expect(stateIds(assessment)).toEqual(['look-too-narrow']);
    expect(assessment.couldHaveMissed.limits).toEqual(
      expect.arrayContaining(['not-every-frame', 'bees-left-on', 'no-cells-opened']),
    );
    expect(assessment.couldHaveMissed.rows[1]?.chance).toBeGreaterThan(0.5);
    expect(adviceIds(assessment)).toContain('look-at-every-frame');
    // Forty signs not seen by such a look are not forty pieces of evidence.
    const full = { ...emptyEvidence(fullLook), signs: everySign(notSeen) };
    expect(foulbrood(evidence)).toBeGreaterThan(20 * foulbrood(full));
  });

  it('B9: no sign and a positive culture of bees: contaminated, not clinical; look again; not called diseased (LF05, STE20)', () => {
    const evidence: Evidence = {
      ...emptyEvidence(fullLook),
      signs: everySign(notSeen),
      tests: [{ test: 'culture-bees-afb', result: 'positive' }],
      circumstances: { ...nothingKnown, exposure: 'operation affected' },
    };
    const assessment = assessLook(evidence);
    expect(stateIds(assessment)[0]).toBe('contaminated-not-clinical');
    expect(foulbrood(evidence)).toBeLessThan(0.02);
    expect(adviceIds(assessment)).toContain('look-again-contaminated');
  });

  it('B9: in an affected operation a positive culture moves the odds by 1.2 to 1.3, elsewhere by 22 to 28 (LF05, HK89)', () => {
    const shift = (exposure: Evidence['circumstances']['exposure']): number => {
      const before: Evidence = { ...emptyEvidence(fullLook), circumstances: { ...nothingKnown, exposure } };
      return ratio(before, { ...before, tests: [{ test: 'culture-bees-afb', result: 'positive' }] });
    };
    expect(Math.round(10 * shift('operation affected')) / 10).toBe(1.2);
    expect(shift('none known')).toBeGreaterThan(22);
    expect(shift('none known')).toBeLessThan(28);
  });

  it('B10: signs gone at the second look, suspect at the first: remains suspect, and foulbrood stays above its prior (NZ-INF)', () => {
    const evidence: Evidence = {
      ...emptyEvidence(fullLook),
      signs: everySign(notSeen),
      earlier: [{ daysAgo: 14, suspect: true, answered: 'not yet' }],
    };
    const assessment = assessLook(evidence);
    expect(stateIds(assessment)[0]).toBe('remains-suspect');
    expect(adviceIds(assessment)).toContain('specimen-though-signs-gone');
    const same: Evidence = { ...evidence, earlier: [] };
    expect(foulbrood(evidence)).toBeGreaterThan(5 * foulbrood(same));
    expect(
      stateIds(assessLook({ ...evidence, earlier: [{ daysAgo: 14, suspect: true, answered: 'negative' }] })),
    ).not.toContain('remains-suspect');
  });

  it('B11: a thread of 12 mm on a wet grass stem asks for a rough dry stick (NZ-ROPE)', () => {
    const wet = rope({ stick: 'smooth or wet', threadMillimetres: 12, snapsBack: true });
    expect(adviceIds(assessLook(evidenceOf({ 'col.coffee': few }, { ropeTests: [wet] })))).toContain(
      'repeat-with-rough-dry-stick',
    );
    expect(
      adviceIds(assessLook(evidenceOf({ 'col.coffee': few }, { ropeTests: [{ ...wet, stick: 'rough and dry' }] }))),
    ).not.toContain('repeat-with-rough-dry-stick');
  });

  it('B12: a thread of 12 mm and a coiled larva in an open cell keep European foulbrood high (NZ-EFB)', () => {
    const evidence = evidenceOf(
      { 'age.coiled': some },
      { ropeTests: [rope({ threadMillimetres: 12, snapsBack: true })] },
    );
    expect(chance('european-foulbrood', evidence)).toBeGreaterThan(0.5);
    expect(chance('european-foulbrood', evidence)).toBeGreaterThan(foulbrood(evidence));
    expect(foulbrood(evidence)).toBeGreaterThan(0.05);
  });

  it('6, 7: 15 mm favours American foulbrood and keeps European; 30 mm speaks more; 9 mm is no positive (NZ-ROPE, DOR-EFB, NZ-EFB)', () => {
    const after = (threadMillimetres: number): Evidence =>
      evidenceOf({}, { ropeTests: [rope({ threadMillimetres, snapsBack: true })] });
    const nothing = emptyEvidence(fullLook);
    expect(foulbrood(after(15))).toBeGreaterThan(chance('european-foulbrood', after(15)));
    expect(chance('european-foulbrood', after(15))).toBeGreaterThan(2 * chance('european-foulbrood', nothing));
    expect(foulbrood(after(30))).toBeGreaterThan(foulbrood(after(15)));
    expect(foulbrood(after(50))).toBe(foulbrood(after(30)));
    expect(foulbrood(after(9))).toBeLessThan(foulbrood(nothing));
    expect(foulbrood(after(10))).toBeGreaterThan(foulbrood(nothing));
    expect(foulbrood({ ...nothing, ropeTests: [rope({ threadMillimetres: 25, snapsBack: false })] })).toBe(
      foulbrood(nothing),
    );
  });

  it('67: a short thread is looked at again over six months (NZ-ROPE); 66: mite damage after 20 days (NZ-COLLECT)', () => {
    const assessment = assessLook(evidenceOf({ 'col.coffee': few }, { ropeTests: [rope({ threadMillimetres: 6 })] }));
    expect(assessment.advice.find((one) => one.id === 'recheck-short-thread')?.sentence.values).toEqual({ months: 6 });
  });

  it('B13: a reason that rests on an unsourced number says so, and every condition carries its interval', () => {
    const assessment = assessLook(evidenceOf({ 'cap.sunken': some }));
    expect(assessment.reasons.reasons.map((one) => one.expertBand)).toEqual([true]);
    expect(assessment.standing.expertBands).toBeGreaterThan(0);
    for (const one of assessment.diseases) {
      expect(one.interval.low).toBeLessThan(one.interval.high);
      expect(one.interval.low).toBeGreaterThan(0);
      expect(one.interval.high).toBeLessThan(1);
    }
    const [foulbroodNow] = assessment.diseases.filter((one) => one.disease === 'american-foulbrood');
    expect(foulbroodNow?.point).toBeGreaterThan(foulbroodNow?.interval.low as number);
    expect(foulbroodNow?.point).toBeLessThan(foulbroodNow?.interval.high as number);
  });

  it('B14: stonebrood suspected: respirator, do not shake (BB-FUN-2.1)', () => {
    const cautions = assessLook(evidenceOf({ 'con.mummy_stone': few })).cautions.map((one) => one.id);
    expect(cautions).toEqual(expect.arrayContaining(['respirator', 'do-not-shake']));
    expect(assessLook(emptyEvidence(fullLook)).cautions.map((one) => one.id)).not.toContain('respirator');
  });
});

describe('states', () => {
  it('reads "masked, no conclusion" inside the masking period of the pack, and the absences say nothing', () => {
    const evidence: Evidence = {
      ...emptyEvidence(fullLook),
      signs: everySign(notSeen),
      circumstances: { ...nothingKnown, daysSinceMedicine: 10, maskingDays: 42 },
    };
    const assessment = assessLook(evidence);
    expect(stateIds(assessment)[0]).toBe('masked');
    expect(foulbrood(evidence)).toBe(priorFrom(evidence).diseases[0]?.value.value);
    expect(assessment.advice.find((one) => one.id === 'look-again-after-masking')?.sentence.values).toEqual({
      days: 32,
    });
    const later = { ...evidence, circumstances: { ...evidence.circumstances, daysSinceMedicine: 43 } };
    expect(stateIds(assessLook(later))).toEqual(['nothing-seen']);
  });

  it('asks a dead hive for scale, not for brood, and leaves brood signs entered as not seen aside', () => {
    const evidence: Evidence = {
      ...emptyEvidence(fullLook, 'dead'),
      signs: { 'cap.sunken': notSeen, 'scale.hard_lower': some },
    };
    const assessment = assessLook(evidence);
    expect(assessment.notLookedFor).not.toContain('cap.perforated' satisfies SignId);
    expect(assessment.notLookedFor).toContain('scale.gondola' satisfies SignId);
    expect(assessment.reasons.silent.map((one) => one.why)).toContain('not-asked-in-this-hive');
    expect(leading(assessment)).toBe('american-foulbrood');
  });

  it('puts closing, standing still and the specimen first once suspicion stands, and only then', () => {
    const evidence = evidenceOf({ 'scale.hard_lower': some });
    const steps = (stands: boolean): string[] =>
      assessLook({ ...evidence, suspicionStands: stands }).next.first.map((one) => one.step);
    expect(steps(false)).toEqual([]);
    expect(steps(true).slice(0, 3)).toEqual(['close-the-hive', 'move-nothing', 'take-a-specimen']);
    expect(stateIds(assessLook({ ...evidence, suspicionStands: true }))[0]).toBe('suspicion-stands');
  });

  it('takes what is notifiable from the pack', () => {
    const evidence = evidenceOf({ 'con.mummy_loose': some });
    const under = (notifiable: DiseaseId[]): number =>
      assessLook(evidence, { ...defaultSettings, notifiable }).notifiable.point;
    expect(under(['american-foulbrood'])).toBeCloseTo(foulbrood(evidence), 12);
    expect(under(['american-foulbrood', 'chalkbrood'])).toBeGreaterThan(0.9);
    expect(under([])).toBe(0);
  });

  it('leaves an expired kit and a failed test out, and says so', () => {
    const expired = {
      test: 'lateral-flow-afb',
      result: 'positive',
      readOn: '2026-06-02',
      expires: '2026-05-31',
    } as const;
    const failed = { test: 'lamp-afb', result: 'failed' } as const;
    const evidence = evidenceOf({}, { tests: [expired, failed] });
    expect(foulbrood(evidence)).toBe(priorFrom(evidence).diseases[0]?.value.value);
    expect(assessLook(evidence).reasons.silent.map((one) => one.why)).toEqual(['kit-expired', 'test-failed']);
    const inDate = { ...expired, readOn: '2026-05-31' };
    expect(foulbrood(evidenceOf({}, { tests: [inDate] }))).toBeGreaterThan(0.05);
  });

  it('is plain data: what comes back survives JSON', () => {
    const assessment = assessLook(
      evidenceOf({ 'cap.sunken': some }, { frameCounts: [{ frame: '1', cellsAffected: 12 }] }),
    );
    expect(JSON.parse(JSON.stringify(assessment))).toEqual(assessment);
    expect(assessment.severity?.sum).toBe(2);
  });

  it('refuses evidence that cannot be, saying where', () => {
    const bad =
      (change: Partial<Evidence>): (() => unknown) =>
      () =>
        assessLook({ ...emptyEvidence(fullLook), ...change });
    expect(bad({ signs: { 'cap.rainbow': notSeen } as unknown as Evidence['signs'] })).toThrow(/cap\.rainbow/);
    expect(bad({ signs: { moth: few } })).toThrow(/not counted in cells/);
    expect(bad({ ropeTests: [rope({ threadMillimetres: 900 })] })).toThrow(/ropeTests\[0\]/);
    expect(bad({ tests: [{ test: 'lamp-afb', result: 'positive', readOn: '2/6/26' }] })).toThrow(/YYYY-MM-DD/);
    const changed = (value: number, reason: string): Evidence['circumstances'] => ({
      ...nothingKnown,
      priorChanges: [{ disease: 'chalkbrood', value, reason }],
    });
    expect(bad({ circumstances: changed(1, 'sure') })).toThrow(/strictly between 0 and 1/);
    expect(bad({ circumstances: changed(0.4, ' ') })).toThrow(/say why/);
  });
});
