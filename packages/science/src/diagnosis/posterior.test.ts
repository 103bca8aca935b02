import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Look } from '../brood/look.ts';
import { type DiseaseId, type SignId, signs } from '../signs/catalogue.ts';
import { linkOf } from '../signs/links.ts';
import { type Evidence, emptyEvidence, nothingKnown, type SignAnswer, type TestResult } from './evidence.ts';
import { broodNetwork, levelsOf } from './network.ts';
import { chanceOfAny, inferenceOf, type Posterior, pointWeighing, posterior, weigh } from './posterior.ts';
import { pointWeights, priorFrom } from './prior.ts';
import { sortEvidence } from './sort-evidence.ts';
import { testIds } from './test-figures.ts';

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

function believe(evidence: Evidence): Posterior {
  return posterior(broodNetwork, evidence, priorFrom(evidence));
}

const answer = (id: SignId): fc.Arbitrary<SignAnswer> => {
  const sign = signs.find((one) => one.id === id) as (typeof signs)[number];
  const seen: fc.Arbitrary<SignAnswer> =
    sign.measure === 'cells'
      ? fc.constantFrom('1-10', '11-100', 'over 100').map((count) => ({ outcome: 'seen', count }) as SignAnswer)
      : sign.measure === 'degree'
        ? fc.constantFrom('slight', 'marked').map((amount) => ({ outcome: 'seen', amount }) as SignAnswer)
        : fc.constant({ outcome: 'seen' } as const);
  return fc.oneof(fc.constant({ outcome: 'not seen' } as const), fc.constant({ outcome: 'seen' } as const), seen);
};

const ids = signs.map((sign) => sign.id);
const answers = fc
  .subarray(ids, { minLength: 0, maxLength: 41 })
  .chain((chosen) => fc.tuple(...chosen.map((id) => answer(id).map((given) => [id, given] as const))))
  .map((entries) => entries as (readonly [SignId, SignAnswer])[]);

const looks: fc.Arbitrary<Look> = fc.record({
  depth: fc.constantFrom('full', 'part', 'tops', 'outside', 'laboratory only'),
  framesHeld: fc.constantFrom(10, 11, null),
  framesSeen: fc.constantFrom(3, 7, 10, null),
  sides: fc.constantFrom('both', 'one', null),
  beesShaken: fc.constantFrom(true, false, null),
  light: fc.constantFrom('sun over the shoulder', 'torch', 'shade', 'poor', null),
  hold: fc.constantFrom('top bar toward the viewer', 'top bar away', 'flat', null),
  cellsOpened: fc.constantFrom(0, 10, 50, null),
  cellsSuspicious: fc.constantFrom(0, 20, 900, null),
  sealedBroodCombSides: fc.constantFrom(0, 1, 8, null),
});

const testResults: fc.Arbitrary<TestResult[]> = fc.array(
  fc.record({ test: fc.constantFrom(...testIds), result: fc.constantFrom('positive', 'negative', 'failed') }),
  { maxLength: 4 },
);

describe('laws of the posterior', () => {
  it('has 3 x 2^9 = 1536 joint states: one disease in two stages, nine that are there or not', () => {
    expect(levelsOf(broodNetwork)).toEqual([3, 2, 2, 2, 2, 2, 2, 2, 2, 2]);
    expect(inferenceOf(broodNetwork).states).toBe(1536);
  });

  it('B15: with no evidence the prior comes back exactly, whatever the look', () => {
    fc.assert(
      fc.property(looks, (look) => {
        const evidence = emptyEvidence(look);
        const prior = priorFrom(evidence);
        const believed = posterior(broodNetwork, evidence, prior);
        for (const one of prior.diseases) expect(believed.disease[one.disease]).toBe(one.value.value);
      }),
      { seed: 15, numRuns: 50 },
    );
  });

  it('B15: what comes back as the prior is what the joint says too (within 1e-14)', () => {
    const evidence = emptyEvidence(fullLook);
    const prior = priorFrom(evidence);
    const { joint } = inferenceOf(broodNetwork).joint(pointWeights(prior), []);
    const marginals = inferenceOf(broodNetwork).marginals(joint);
    prior.diseases.forEach((one, v) => {
      expect(1 - (marginals[v]?.[0] as number)).toBeCloseTo(one.value.value, 14);
    });
  });

  it('B15: the order in which signs, rope tests and tests are entered does not matter, to the last digit', () => {
    fc.assert(
      fc.property(answers, looks, testResults, fc.nat(), (entered, look, tests, turn) => {
        const make = (list: typeof entered, results: TestResult[]): Evidence => ({
          ...emptyEvidence(look),
          signs: Object.fromEntries(list),
          tests: results,
        });
        const k = entered.length === 0 ? 0 : turn % entered.length;
        const turned = [...entered.slice(k), ...entered.slice(0, k)].reverse();
        const one = believe(make(entered, tests));
        const other = believe(make(turned, [...tests].reverse()));
        expect(other.disease).toEqual(one.disease);
        expect(other.none).toBe(one.none);
      }),
      { seed: 151, numRuns: 150 },
    );
  });

  it('taking a piece of evidence away again leaves what was there before', () => {
    fc.assert(
      fc.property(answers, looks, (entered, look) => {
        fc.pre(entered.length > 0);
        const before: Evidence = { ...emptyEvidence(look), signs: Object.fromEntries(entered.slice(1)) };
        const withMore: Evidence = { ...before, signs: Object.fromEntries(entered) };
        const first = (entered[0] as (typeof entered)[number])[0];
        const { [first]: _removed, ...rest } = withMore.signs;
        expect(believe({ ...withMore, signs: rest }).disease).toEqual(believe(before).disease);
      }),
      { seed: 152, numRuns: 100 },
    );
  });

  it('never reaches 0 or 1, and the stages of foulbrood add up', () => {
    fc.assert(
      fc.property(answers, looks, testResults, (entered, look, tests) => {
        const believed = believe({ ...emptyEvidence(look), signs: Object.fromEntries(entered), tests });
        for (const p of [...Object.values(believed.disease), believed.none]) {
          expect(p).toBeGreaterThan(0);
          expect(p).toBeLessThan(1);
        }
        const { early, advanced } = believed.foulbroodStage;
        expect(early + advanced).toBeCloseTo(believed.disease['american-foulbrood'], 10);
        const any = chanceOfAny(broodNetwork, believed.joint, ['american-foulbrood', 'european-foulbrood']);
        expect(any).toBeGreaterThanOrEqual(believed.disease['american-foulbrood'] - 1e-12);
        expect(any).toBeLessThanOrEqual(
          believed.disease['american-foulbrood'] + believed.disease['european-foulbrood'] + 1e-12,
        );
      }),
      { seed: 153, numRuns: 150 },
    );
  });

  it('rises with the count where a sign has a single cause', () => {
    const columns = [
      'european-foulbrood',
      'chalkbrood',
      'sacbrood',
      'stonebrood',
      'queen-failure',
      'bald-brood',
    ] as const;
    const single = signs.flatMap((sign) => {
      const causes = broodNetwork.nodes.find((node) => node.id === sign.id);
      if (causes?.kind !== 'sign' || causes.takenAway || sign.measure === 'none') return [];
      const named = new Set(causes.arrows.map((arrow) => arrow.condition));
      const [only] = named;
      return named.size === 1 ? [{ sign, cause: only as (typeof columns)[number] }] : [];
    });
    // Fluff, sacs, boat-shaped and rubbery scale, mummies on the floor, moth, dead of all ages: more than a handful.
    expect(single.length).toBeGreaterThanOrEqual(6);
    for (const { sign, cause } of single) {
      expect(linkOf(sign.id, cause)).toBeDefined();
      const grades: SignAnswer[] =
        sign.measure === 'cells'
          ? [
              { outcome: 'seen', count: '1-10' },
              { outcome: 'seen', count: '11-100' },
              { outcome: 'seen', count: 'over 100' },
            ]
          : [
              { outcome: 'seen', amount: 'slight' },
              { outcome: 'seen', amount: 'marked' },
            ];
      const run = [{ outcome: 'not seen' } as SignAnswer, ...grades].map(
        (given) => believe({ ...emptyEvidence(fullLook), signs: { [sign.id]: given } }).disease[cause],
      );
      const prior = believe(emptyEvidence(fullLook)).disease[cause];
      expect(run[0] as number, `${sign.id} not seen`).toBeLessThan(prior);
      for (let i = 1; i < run.length; i++) {
        expect(run[i] as number, `${sign.id} grade ${i}`).toBeGreaterThan(run[i - 1] as number);
      }
      expect(run[1] as number, `${sign.id} seen`).toBeGreaterThan(prior);
    }
  });

  it('explains away: mummies lower foulbrood given dark sunken caps, never below the prior', () => {
    const counts = fc.constantFrom('1-10', '11-100', 'over 100', undefined);
    const seen = (count: string | undefined): SignAnswer =>
      (count === undefined ? { outcome: 'seen' } : { outcome: 'seen', count }) as SignAnswer;
    fc.assert(
      fc.property(counts, counts, counts, looks, (sunken, dark, mummies, look) => {
        const foulbrood = (given: Evidence['signs']): number =>
          believe({ ...emptyEvidence(look), signs: given }).disease['american-foulbrood'];
        const caps = { 'cap.sunken': seen(sunken), 'cap.dark_greasy': seen(dark) };
        const prior = foulbrood({});
        const alone = foulbrood(caps);
        const both = foulbrood({ ...caps, 'con.mummy_loose': seen(mummies) });
        expect(alone).toBeGreaterThan(prior);
        expect(both).toBeLessThan(alone);
        expect(both).toBeGreaterThan(prior);
      }),
      { seed: 154, numRuns: 200 },
    );
  });

  it('mummies alone leave foulbrood where it was (no shared sign, nothing to explain)', () => {
    const evidence: Evidence = { ...emptyEvidence(fullLook), signs: { 'con.mummy_loose': { outcome: 'seen' } } };
    const prior = priorFrom(evidence).diseases[0]?.value.value as number;
    expect(believe(evidence).disease['american-foulbrood']).toBeCloseTo(prior, 12);
  });

  it('agrees with the mixture written out over both kinds of luck (brute force on the full network, 1e-12)', () => {
    fc.assert(
      fc.property(answers, fc.option(fc.double({ min: 0, max: 1, noNaN: true })), (entered, solidness) => {
        fc.pre(entered.length > 0);
        const evidence: Evidence = {
          ...emptyEvidence(fullLook),
          signs: Object.fromEntries(entered),
          ...(solidness === null ? {} : { measuredPattern: { solidness, standardError: 0.04, sides: 2 } }),
        };
        const prior = priorFrom(evidence);
        const { items } = sortEvidence(broodNetwork, evidence);
        fc.pre(items.length > 0);
        const weighing = pointWeighing(broodNetwork, evidence, prior, items);
        const { joint, logEvidence } = weigh(inferenceOf(broodNetwork), weighing);
        const expected = enumerate(weighing);
        const total = expected.reduce((sum, w) => sum + w, 0);
        expected.forEach((w, s) => {
          expect(Math.abs((joint[s] as number) - w / total)).toBeLessThan(1e-12);
        });
        expect(Math.abs(logEvidence - Math.log(total))).toBeLessThan(1e-8 * Math.max(1, Math.abs(logEvidence)));
      }),
      { seed: 155, numRuns: 20 },
    );
  });
});

/** Every joint state weighed by plain products, the two kinds of luck added: an enumeration that shares no shortcut. */
function enumerate({ weights, items, chances, eye, look }: ReturnType<typeof pointWeighing>): number[] {
  const levels = weights.map((row) => row.length);
  const states = levels.reduce((product, count) => product * count, 1);
  const w = 1 - lightCaseMissed(look, eye);
  const onCombs = items.some((item) => item.onCombs) && w > 0;
  return Array.from({ length: states }, (_, state) => {
    const at: number[] = [];
    let rest = state;
    for (const count of levels) {
      at.push(rest % count);
      rest = Math.floor(rest / count);
    }
    const prior = at.reduce((product, level, v) => product * (weights[v]?.[level] as number), 1);
    const under = (reached: boolean): number =>
      items.reduce((product, item, i) => {
        const sign = chances[i] as (typeof chances)[number];
        const d = item.noticed(eye);
        const least = item.grade === 0 || typeof item.grade === 'object' ? 0 : 0.02;
        const noticed =
          item.onCombs && onCombs
            ? d.map((p) => Math.max(least, reached ? Math.min(1, p / w) : Math.max(0, (p - w) / (1 - w))))
            : d;
        const present = sign.causes.filter((cause) => at[cause.variable] === cause.level);
        if (sign.takenAway) {
          const shown =
            present.reduce((share, cause) => share * (cause.reach[0] as number), sign.background[0] as number) *
            (noticed[0] as number);
          return product * (item.grade === 0 ? 1 - shown : shown);
        }
        const atMost = (grade: number): number =>
          [sign.background, ...present.map((cause) => cause.reach)].reduce((all, reach) => {
            let above = 0;
            for (let g = grade; g < reach.length; g++) {
              above += ((reach[g] as number) - (reach[g + 1] ?? 0)) * (noticed[g] as number);
            }
            return all * (1 - above);
          }, 1);
        const { grade } = item;
        if (grade === 0) return product * atMost(0);
        if (grade === 'seen') return product * (1 - atMost(0));
        const exactly = (g: number): number => (g === 0 ? atMost(0) : atMost(g) - atMost(g - 1));
        if (typeof grade === 'object') return product * grade.reduce((sum, weight, g) => sum + weight * exactly(g), 0);
        return product * exactly(grade);
      }, prior);
    return onCombs ? w * under(true) + (1 - w) * under(false) : under(true);
  });
}

/** The look of these tests, written out: ten frames of ten, three cells on two frames, each cell noticed with the eye's chance. */
function lightCaseMissed(look: Look, eye: { cell: number; lapse: number }): number {
  expect(look).toEqual(fullLook);
  return eye.lapse + (1 - eye.lapse) * (1 - eye.cell) ** 3;
}

describe('what is known beforehand', () => {
  const foulbrood = (circumstances: Partial<Evidence['circumstances']>, more: Partial<Evidence> = {}): number => {
    const evidence: Evidence = {
      ...emptyEvidence(fullLook),
      ...more,
      circumstances: { ...nothingKnown, ...circumstances },
    };
    return priorFrom(evidence).diseases[0]?.value.value as number;
  };

  it('takes counts of the district where there are any (half a case added: 3 of 200 is 3.5 of 201)', () => {
    const district = [{ disease: 'american-foulbrood' as DiseaseId, confirmed: 3, examined: 200, about: 'spring' }];
    expect(foulbrood({ district })).toBeCloseTo(3.5 / 201, 12);
  });

  it('raises foulbrood for an earlier case, a traced contact, positive honey (x 2.64, BEL01) and an open suspicion', () => {
    const plain = foulbrood({});
    const odds = (p: number): number => p / (1 - p);
    expect(odds(foulbrood({ honeyPositive: true })) / odds(plain)).toBeCloseTo(2.64, 9);
    expect(foulbrood({ earlierCaseAtApiary: true })).toBeGreaterThan(plain);
    expect(foulbrood({ contactOfCase: true })).toBeGreaterThan(plain);
    expect(foulbrood({}, { earlier: [{ daysAgo: 20, suspect: true, answered: 'not yet' }] })).toBeGreaterThan(plain);
    expect(foulbrood({}, { earlier: [{ daysAgo: 20, suspect: true, answered: 'negative' }] })).toBe(plain);
  });

  it('lets the inspector change it, with a reason, and keeps the steps that led there', () => {
    const priorChanges = [
      { disease: 'american-foulbrood' as DiseaseId, value: 0.3, reason: 'three cases within a mile' },
    ];
    const evidence: Evidence = { ...emptyEvidence(fullLook), circumstances: { ...nothingKnown, priorChanges } };
    const [one] = priorFrom(evidence).diseases;
    expect(one?.value.value).toBe(0.3);
    expect(one?.steps.map((step) => step.id)).toEqual(['assumed', 'changed-by-hand']);
    expect(believe(evidence).disease['american-foulbrood']).toBe(0.3);
  });

  it('marks what tells of other keepers', () => {
    const district = [{ disease: 'american-foulbrood' as DiseaseId, confirmed: 3, examined: 200, about: 'spring' }];
    const evidence: Evidence = {
      ...emptyEvidence(fullLook),
      circumstances: { ...nothingKnown, district, contactOfCase: true },
    };
    const steps = priorFrom(evidence).diseases[0]?.steps ?? [];
    expect(steps.map((step) => step.concernsOthers)).toEqual([true, true]);
  });
});
