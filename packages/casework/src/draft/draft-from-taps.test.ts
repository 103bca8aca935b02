import { signs } from '@combside/science/signs/catalogue';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { smallSite } from '../acceptance/small-site.ts';
import { addTap, draftFrom, undo } from './draft-from-taps.ts';
import { unfinishedTests } from './examination-draft.ts';
import type { Tap } from './tap.ts';

const site = smallSite();
const colony = site.ledger.colony(site.colonies[0]);

const sign = fc.constantFrom(...signs.map((one) => one.id));
const tap: fc.Arbitrary<Tap> = fc.oneof(
  fc.record({
    tap: fc.constant('sign' as const),
    sign,
    outcome: fc.constantFrom('seen', 'not seen', 'not looked for'),
  }),
  fc.record({
    tap: fc.constant('sign count' as const),
    sign,
    count: fc.constantFrom('1-10', '11-100', 'over 100', null),
  }),
  fc.record({ tap: fc.constant('sign amount' as const), sign, amount: fc.constantFrom('slight', 'marked', null) }),
  fc.record({
    tap: fc.constant('frames seen' as const),
    box: fc.constant('lower'),
    frames: fc.integer({ min: 0, max: 12 }),
  }),
  fc.record({ tap: fc.constant('bees shaken' as const), shaken: fc.constantFrom(true, false, null) }),
  fc.record({ tap: fc.constant('hold' as const), hold: fc.constantFrom('flat', 'top bar away', null) }),
  fc.record({ tap: fc.constant('remark' as const), text: fc.string({ maxLength: 20 }) }),
  fc.record({ tap: fc.constant('sealed brood' as const), combSides: fc.constantFrom(null, 0, 0.25, 3.5) }),
  fc.constant<Tap>({ tap: 'everything looked at' }),
);
const seeded = { seed: 20261125, numRuns: 300 };

describe('the laws of a draft', () => {
  test('undo takes back exactly the last tap', () => {
    fc.assert(
      fc.property(fc.array(tap, { maxLength: 25 }), tap, (taps, last) => {
        expect(undo([...taps, last])).toEqual(taps);
        expect(draftFrom(undo([...taps, last]), colony)).toEqual(draftFrom(taps, colony));
      }),
      seeded,
    );
  });

  test('taps on different signs add up to the same draft in any order', () => {
    const onDifferentSigns = fc
      .uniqueArray(sign, { minLength: 2, maxLength: 8 })
      .chain((ids) =>
        fc.tuple(
          fc.constant(ids.map((id): Tap => ({ tap: 'sign', sign: id, outcome: 'seen' }))),
          fc.shuffledSubarray(ids, { minLength: ids.length }),
        ),
      );
    fc.assert(
      fc.property(onDifferentSigns, ([taps, order]) => {
        const shuffled = order.map((id) => taps.find((one) => one.tap === 'sign' && one.sign === id) as Tap);
        expect(draftFrom(shuffled, colony)).toEqual(draftFrom(taps, colony));
      }),
      seeded,
    );
  });

  test('what addTap accepted, draftFrom reads; what it refused, draftFrom lists and passes over', () => {
    fc.assert(
      fc.property(fc.array(tap, { maxLength: 25 }), tap, (taps, next) => {
        const added = addTap(taps, next, colony);
        const before = draftFrom(taps, colony);
        if (added.ok) expect(draftFrom(added.taps, colony)).toEqual(added.draft);
        else
          expect(draftFrom([...taps, next], colony)).toEqual({
            ...before,
            unread: [...before.unread, { index: taps.length, why: added }],
          });
      }),
      seeded,
    );
  });

  test('taps survive being stored as JSON', () => {
    fc.assert(
      fc.property(fc.array(tap, { maxLength: 25 }), (taps) => {
        expect(draftFrom(JSON.parse(JSON.stringify(taps)) as Tap[], colony)).toEqual(draftFrom(taps, colony));
      }),
      seeded,
    );
  });
});

test('a draft is prefilled with hive type and brood frames present, and with nothing that was looked at', () => {
  expect(draftFrom([], colony)).toEqual({
    colony: site.colonies[0],
    label: '1',
    hiveType: 'langstroth-deep',
    boxes: [{ box: 'lower', framesHeld: 9, framesSeen: null, sides: null }],
    hiveState: 'living',
    depth: null,
    beesShaken: null,
    light: null,
    hold: null,
    sealedBroodCombSides: null,
    signs: [],
    ropeTests: [],
    ropeForm: { tissue: null, stick: null, threadMillimetres: null, snapsBack: null, colour: null, place: null },
    tests: [],
    testForm: { test: null, result: null, batch: '', expires: null },
    honeyPositive: null,
    priorChanges: [],
    finds: [],
    medicines: { asked: false, answer: null, lastOn: null, what: '' },
    combChanges: { asked: false, answer: null, lastOn: null, what: '' },
    measurements: [],
    remarks: '',
    suspects: [],
    correctionReason: '',
    photographs: [],
    unread: [],
  });
});

test('a test half filled in is kept and is no evidence; kept as a test, it leaves an empty form but for the stick', () => {
  const nothing = draftFrom([], colony);
  const form = { ...nothing.ropeForm, stick: 'rough and dry', tissue: 'moist brown' } as const;
  const half = draftFrom([{ tap: 'rope form', form }], colony);
  expect(half).toEqual({ ...nothing, ropeForm: form });
  expect(unfinishedTests(half)).toEqual(['rope test']);
  // A stick in the hand is no test begun.
  expect(unfinishedTests(draftFrom([{ tap: 'rope form', form: { ...form, tissue: null } }], colony))).toEqual([]);
  const test = {
    box: 'lower',
    frame: null,
    side: null,
    tissue: 'moist brown',
    stick: 'rough and dry',
    threadMillimetres: 20,
    snapsBack: null,
    colour: null,
  } as const;
  const kept = draftFrom(
    [
      { tap: 'rope form', form: { ...form, threadMillimetres: 20 } },
      { tap: 'rope test', test },
    ],
    colony,
  );
  expect(kept.ropeTests).toEqual([test]);
  expect(kept.ropeForm).toEqual({ ...nothing.ropeForm, stick: 'rough and dry' });
  expect(unfinishedTests(kept)).toEqual([]);
  // A frame that is no longer there takes the place away, not the answers.
  const gone = { box: 'upper', frame: 1, side: 'a' } as const;
  expect(draftFrom([{ tap: 'rope form', form: { ...form, place: gone } }], colony).ropeForm).toEqual(form);
});

test('a batch is typed as one tap, and choosing what came of the test is another', () => {
  const form = { test: 'lateral-flow-afb', result: null, batch: '', expires: null } as const;
  let taps: readonly Tap[] = [];
  for (const next of [
    form,
    { ...form, batch: 'I' },
    { ...form, batch: 'IN' },
    { ...form, batch: 'IN', result: 'positive' },
  ] as const) {
    const added = addTap(taps, { tap: 'test form', form: next }, colony);
    if (!added.ok) throw new Error(added.reason);
    taps = added.taps;
  }
  expect(taps.map((tap) => tap.tap === 'test form' && tap.form.batch)).toEqual(['', 'IN', 'IN']);
  expect(unfinishedTests(draftFrom(taps, colony))).toEqual(['test']);
  expect(draftFrom(taps, colony).tests).toEqual([]);
});

test('typing a remark letter by letter is one tap, which undo takes back whole', () => {
  let taps: readonly Tap[] = [{ tap: 'light', light: 'torch' }];
  for (const text of ['w', 'wa', 'wax']) {
    const added = addTap(taps, { tap: 'remark', text }, colony);
    if (!added.ok) throw new Error(added.reason);
    taps = added.taps;
  }
  expect(taps).toEqual([
    { tap: 'light', light: 'torch' },
    { tap: 'remark', text: 'wax' },
  ]);
  expect(draftFrom(undo(taps), colony).remarks).toBe('');
});

test('what would be suspected on closing is kept, the last answer alone', () => {
  const afb: Tap = { tap: 'suspects', conditions: ['american-foulbrood'] };
  expect(draftFrom([afb], colony).suspects).toEqual(['american-foulbrood']);
  expect(draftFrom([afb, { tap: 'suspects', conditions: [] }], colony).suspects).toEqual([]);
});

const seen = (id: string): Tap => ({ tap: 'sign', sign: id, outcome: 'seen' });
const at = { box: 'lower', frame: 4, side: 'a' } as const;

test.each<[string, Tap[], Tap, string]>([
  ['a sign nobody knows', [], seen('cap.golden'), 'casework.refused.unknown-sign'],
  [
    'a find nobody knows',
    [],
    { tap: 'find', find: 'dragon', outcome: 'seen', amount: null },
    'casework.refused.unknown-find',
  ],
  [
    'a suspicion of what nobody knows',
    [],
    { tap: 'suspects', conditions: ['gloom'] },
    'casework.refused.unknown-condition',
  ],
  ['a tap nobody knows', [], { tap: 'dance' } as unknown as Tap, 'casework.refused.unknown-word'],
  ['a box that is not there', [], { tap: 'frames seen', box: 'attic', frames: 1 }, 'casework.refused.unknown-box'],
  [
    'more frames than are held',
    [],
    { tap: 'frames seen', box: 'lower', frames: 10 },
    'casework.refused.more-frames-than-held',
  ],
  ['half a frame', [], { tap: 'frames seen', box: 'lower', frames: 2.5 }, 'casework.refused.number-out-of-range'],
  [
    'a count without the sign',
    [],
    { tap: 'sign count', sign: 'cap.sunken', count: '1-10' },
    'casework.refused.count-needs-seen',
  ],
  [
    'cells of a smell',
    [seen('odour.glue')],
    { tap: 'sign count', sign: 'odour.glue', count: '1-10' },
    'casework.refused.sign-is-not-counted',
  ],
  [
    'a grade of counted cells',
    [seen('cap.sunken')],
    { tap: 'sign amount', sign: 'cap.sunken', amount: 'slight' },
    'casework.refused.sign-is-not-graded',
  ],
  [
    'more affected than opened',
    [seen('col.coffee')],
    { tap: 'cells at', sign: 'col.coffee', place: at, cellsOpened: 3, cellsAffected: 4 },
    'casework.refused.more-affected-than-opened',
  ],
  [
    'a frame beyond the last',
    [seen('col.coffee')],
    { tap: 'cells at', sign: 'col.coffee', place: { ...at, frame: 10 }, cellsOpened: 3, cellsAffected: 1 },
    'casework.refused.frame-not-there',
  ],
  [
    'a thread longer than a comb',
    [],
    {
      tap: 'rope test',
      test: {
        ...at,
        tissue: 'moist brown',
        stick: 'rough and dry',
        threadMillimetres: 400,
        snapsBack: null,
        colour: null,
      },
    },
    'casework.refused.number-out-of-range',
  ],
  ['a third of a comb side', [], { tap: 'sealed brood', combSides: 1 / 3 }, 'casework.refused.number-out-of-range'],
  [
    'a measurement nobody knows',
    [],
    { tap: 'measurement', what: 'mood', value: 3 },
    'casework.refused.unknown-measurement',
  ],
  [
    'a name from the object itself',
    [],
    { tap: 'measurement', what: 'toString', value: 3 },
    'casework.refused.unknown-measurement',
  ],
  [
    'an answer nobody asked for',
    [],
    { tap: 'medicines', answer: { asked: false, answer: 'yes', lastOn: null, what: '' } },
    'casework.refused.shape',
  ],
  ['a line that is gone', [], { tap: 'rope test removed', index: 0 }, 'casework.refused.no-such-line'],
])('refuses %s', (_, before, next, reason) => {
  const added = addTap(before, next, colony);
  expect(added).toMatchObject({ ok: false, reason });
});

test('a sign counts, keeps its count when seen again, and loses it when not seen', () => {
  const counted: Tap[] = [
    seen('col.coffee'),
    { tap: 'sign count', sign: 'col.coffee', count: '11-100' },
    { tap: 'cells at', sign: 'col.coffee', place: at, cellsOpened: 12, cellsAffected: 9 },
  ];
  const looked = {
    sign: 'col.coffee',
    outcome: 'seen',
    count: '11-100',
    amount: null,
    places: [{ ...at, cellsOpened: 12, cellsAffected: 9 }],
  };
  expect(draftFrom(counted, colony).signs).toEqual([looked]);
  expect(draftFrom([...counted, seen('col.coffee')], colony).signs).toEqual([looked]);
  expect(draftFrom([...counted, { tap: 'sign', sign: 'col.coffee', outcome: 'not seen' }], colony).signs).toEqual([
    { sign: 'col.coffee', outcome: 'not seen', count: null, amount: null, places: [] },
  ]);
  expect(draftFrom([...counted, { tap: 'sign', sign: 'col.coffee', outcome: 'not looked for' }], colony).signs).toEqual(
    [],
  );
});

test('frames found standing there correct the record for this look, and a box found there joins it', () => {
  const draft = draftFrom(
    [
      { tap: 'frames held', box: 'lower', frames: 8 },
      { tap: 'frames held', box: 'upper', frames: 6 },
      { tap: 'frames seen', box: 'upper', frames: 6 },
    ],
    colony,
  );
  expect(draft.boxes).toEqual([
    { box: 'lower', framesHeld: 8, framesSeen: null, sides: null },
    { box: 'upper', framesHeld: 6, framesSeen: 6, sides: null },
  ]);
});

describe('tests read at the hive', () => {
  const kit = {
    test: 'lateral-flow-afb',
    material: 'diseased cell',
    result: 'positive' as const,
    readOn: '2027-05-04',
    batch: 'INV-0042',
    expires: '2028-01-31',
  };
  const start = draftFrom([], colony);
  const add = (tap: Tap) => addTap([], tap, colony);

  test('are kept, taken away, and refused when a word or a day is not one', () => {
    expect(start.tests).toEqual([]);
    expect(draftFrom([{ tap: 'test', test: kit }], colony).tests).toEqual([kit]);
    expect(
      draftFrom(
        [
          { tap: 'test', test: kit },
          { tap: 'test removed', index: 0 },
        ],
        colony,
      ).tests,
    ).toEqual([]);
    for (const change of [{ test: 'culture-bees-afb' }, { material: 'bees' }, { result: 'perhaps' as 'positive' }]) {
      expect(add({ tap: 'test', test: { ...kit, ...change } })).toMatchObject({
        reason: 'casework.refused.unknown-word',
      });
    }
    for (const expires of ['soon', '2027-02-29']) {
      expect(add({ tap: 'test', test: { ...kit, expires } })).toMatchObject({ reason: 'casework.refused.shape' });
    }
    expect(add({ tap: 'test removed', index: 0 })).toMatchObject({ reason: 'casework.refused.no-such-line' });
  });

  test('a prior is changed with a reason, strictly between never and always, and taken back', () => {
    const change = { value: 0.4, low: 0.2, high: 0.6, reason: 'wet spring' };
    const changed: Tap = { tap: 'prior', condition: 'chalkbrood', change };
    expect(draftFrom([changed], colony).priorChanges).toEqual([{ condition: 'chalkbrood', ...change }]);
    expect(draftFrom([changed, { ...changed, change: null }], colony).priorChanges).toEqual([]);
    for (const wrong of [{ value: 0 }, { value: 1 }, { value: Number.NaN }, { low: 0.5 }, { reason: ' ' }]) {
      expect(add({ ...changed, change: { ...change, ...wrong } })).toMatchObject({ reason: 'casework.refused.shape' });
    }
    expect(add({ ...changed, condition: 'chalk' })).toMatchObject({ reason: 'casework.refused.unknown-condition' });
  });
});
