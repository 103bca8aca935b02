import type { MovementBody } from '@combside/record/kinds/movement';
import { describe, expect, test } from 'vitest';
import { arrival, hive, siteBody, smallSite } from '../acceptance/small-site.ts';
import { changeApiary, moveApiary, newApiary, unregisteredSite } from './apiary.ts';
import { changeColony, newColony } from './colony.ts';
import { changeKeeper } from './keeper.ts';
import { changeMovement, newMovement, recordMovement, sayWhetherItHappened } from './movement.ts';
import { proposeChange } from './propose-change.ts';
import { acceptApiaryChange, openProposals, settleContested } from './settle.ts';
import { withReason } from './with-reason.ts';

test('a change replaces what was seen, and names the fields', () => {
  const site = smallSite();
  const before = site.ledger.keeper(site.keeper).keeper.current?.written.entry;
  const act = site.carryOut(changeKeeper(site.ledger.keeper(site.keeper), { telephone: '1' }), arrival);
  expect(act.changed).toEqual(['telephone']);
  expect(act.proposals[0]?.replaces).toEqual([before]);
  expect(site.ledger.keeper(site.keeper).keeper).toMatchObject({
    current: { body: { telephone: '1' } },
    contested: [],
  });
});

test('changes that did not see each other are contested until somebody settles them', () => {
  const site = smallSite();
  const seenByBoth = site.ledger.apiary(site.apiary);
  const one = changeApiary(seenByBoth, { name: 'North Bank' });
  const other = changeApiary(seenByBoth, { name: 'South Bank' });
  site.carryOut(one, arrival);
  site.carryOut(other, arrival);
  const contested = site.ledger.apiary(site.apiary);
  expect(contested.apiary.current?.body.name).toBe('South Bank');
  const loser = contested.apiary.contested[0];
  expect(loser?.body.name).toBe('North Bank');
  expect(settleContested(contested, 'nowhere')).toMatchObject({ reason: 'casework.refused.not-in-register' });
  site.carryOut(settleContested(contested, loser?.written.entry ?? ''), arrival);
  const settled = site.ledger.apiary(site.apiary);
  expect(settled.apiary).toMatchObject({ current: { body: { name: 'North Bank' } }, contested: [] });
  expect(settleContested(settled, '')).toMatchObject({ reason: 'casework.refused.nothing-contested' });
});

test('a proposed change stays open until the register answers it', () => {
  const site = smallSite();
  const state = () => site.ledger.apiary(site.apiary);
  site.carryOut(
    proposeChange(state(), { field: 'coloniesRegistered', to: 4, visit: null, reason: 'counted' }),
    arrival,
  );
  const [open] = openProposals(state());
  expect(open?.body).toMatchObject({ from: 3, to: 4 });
  if (!open) throw new Error('one proposal is open');
  site.carryOut(acceptApiaryChange(state(), open), '2027-05-05T09:00:00.000Z');
  expect(state().apiary.current?.body.coloniesRegistered).toBe(4);
  expect(openProposals(state())).toEqual([]);
});

describe('refused', () => {
  const site = smallSite();
  const apiary = site.ledger.apiary(site.apiary);
  const colonies = site.ledger.coloniesOf(site.apiary);
  const colony = site.ledger.colony(site.colonies[0]);
  test.each([
    ['nothing changed', changeApiary(apiary, { name: 'Test Bank' }), 'casework.refused.nothing-changed'],
    ['a body out of shape', newApiary(site.newId(), { ...siteBody, name: '' }), 'casework.refused.shape'],
    [
      'a label twice at one apiary',
      newColony({ id: site.newId(), body: hive(site.apiary, '2'), at: apiary, colonies }),
      'casework.refused.label-taken',
    ],
    [
      'a hive nobody knows',
      changeColony(colony, { hiveType: 'skep-of-gold' }, colonies),
      'casework.refused.unknown-hive-type',
    ],
    [
      'a field that is not there',
      proposeChange(apiary, { field: 'mood', to: 'good', visit: null, reason: '' }),
      'casework.refused.unknown-field',
    ],
    [
      'a field that is no plain value',
      proposeChange(apiary, { field: 'position', to: null, visit: null, reason: '' }),
      'casework.refused.unknown-field',
    ],
    [
      'a value that cannot be',
      proposeChange(apiary, { field: 'coloniesRegistered', to: -1, visit: null, reason: '' }),
      'casework.refused.shape',
    ],
    [
      'the same district',
      moveApiary(apiary, colonies, { district: 'quillmoor', position: null, reason: 'sold', entryId: site.newId() }),
      'casework.refused.same-district',
    ],
    [
      'a move without a reason',
      moveApiary(apiary, colonies, { district: 'fellmoor', position: null, reason: ' ', entryId: site.newId() }),
      'casework.refused.reason-missing',
    ],
    [
      'a roadside site without a position',
      unregisteredSite({
        id: site.newId(),
        name: 'Roadside',
        district: 'quillmoor',
        position: null,
        addressWords: '',
        coloniesCounted: 4,
        seenOn: '2027-05-04',
      }),
      'casework.refused.position-missing',
    ],
  ])('%s', (_, act, reason) => {
    expect(act).toMatchObject({ ok: false, reason });
  });
});

test('a label may be used again once its colony is gone', () => {
  const site = smallSite();
  const colonies = () => site.ledger.coloniesOf(site.apiary);
  site.carryOut(changeColony(site.ledger.colony(site.colonies[1]), { hiveState: 'gone' }, colonies()), arrival);
  expect(
    newColony({
      id: site.newId(),
      body: hive(site.apiary, '2'),
      at: site.ledger.apiary(site.apiary),
      colonies: colonies(),
    }).ok,
  ).toBe(true);
});

test('a roadside site needs no owner', () => {
  const site = smallSite();
  const id = site.newId();
  const act = site.carryOut(
    unregisteredSite({
      id,
      name: 'Roadside',
      district: 'quillmoor',
      position: siteBody.position,
      addressWords: 'by the ford',
      coloniesCounted: 4,
      seenOn: '2027-05-04',
    }),
    arrival,
  );
  expect(act.findings.map((one) => one.id)).toEqual(['casework.register.owner-not-known']);
  expect(site.ledger.apiary(id).apiary.current?.body).toMatchObject({
    keeper: null,
    coloniesRegistered: 4,
    lastConfirmedOn: '2027-05-04',
  });
});

test('a move to another district keeps the position unless a new one is given, and says why', () => {
  const site = smallSite();
  site.carryOut(
    moveApiary(site.ledger.apiary(site.apiary), [], {
      district: 'fellmoor',
      position: null,
      reason: 'sold with the land',
      entryId: site.newId(),
    }),
    arrival,
  );
  const state = site.ledger.apiary(site.apiary);
  expect(state.apiary.current?.body).toMatchObject({ district: 'fellmoor', position: siteBody.position });
  expect(state.reasons[0]?.body).toEqual({
    explains: state.apiary.current?.written.entry,
    text: 'sold with the land',
  });
});

describe('a movement', () => {
  const site = smallSite();
  const here = site.ledger.apiary(site.apiary);
  const body: MovementBody = {
    from: site.apiary,
    to: null,
    what: 'nuclei',
    quantity: 2,
    colonies: [],
    how: 'sold',
    earliest: '2027-05-01',
    latest: '2027-05-03',
    knownBy: 'told by the keeper',
    happened: true,
  };
  const enter = (
    change: Partial<MovementBody> = {},
    ends: Parameters<typeof newMovement>[2] = { from: here, to: null },
  ) => newMovement(site.newId(), { ...body, ...change }, ends);

  test('needs only one end', () => {
    expect(enter().ok).toBe(true);
  });

  test.each([
    ['neither end', enter({ from: null }, { from: null, to: null }), 'casework.refused.movement-nowhere'],
    ['the same end twice', enter({ to: site.apiary }, { from: here, to: here }), 'casework.refused.movement-nowhere'],
    ['an apiary that is not the one shown', enter({ from: site.keeper }), 'casework.refused.not-in-register'],
    ['days the wrong way round', enter({ latest: '2027-04-30' }), 'casework.refused.days-exchanged'],
    ['no nuclei at all', enter({ quantity: 0 }), 'casework.refused.shape'],
  ])('is refused with %s', (_, act, reason) => {
    expect(act).toMatchObject({ ok: false, reason });
  });

  const today = '2027-05-04';
  /** The small site, and beside it a second apiary at which one colony stands, called as told. */
  const twoSites = (label: string) => {
    const two = smallSite();
    const [there, stranger] = [two.newId(), two.newId()];
    two.carryOut(newApiary(there, { ...siteBody, name: 'Other Bank' }), arrival);
    two.carryOut(
      newColony({ id: stranger, body: hive(there, label), at: two.ledger.apiary(there), colonies: [] }),
      arrival,
    );
    const record = (change: Partial<MovementBody>) => {
      const said: MovementBody = {
        ...body,
        from: two.apiary,
        what: 'colonies',
        quantity: null,
        how: 'moved',
        ...change,
      };
      return recordMovement(two.newId(), said, {
        ends: { from: two.ledger.apiary(two.apiary), to: said.to === null ? null : two.ledger.apiary(said.to) },
        named: said.colonies.map((id) => two.ledger.colony(id)),
        there: said.to === null ? [] : two.ledger.coloniesOf(said.to),
        today,
      });
    };
    return { ...two, there, stranger, record };
  };

  test('takes the colonies that are named along, with the same reason', () => {
    const { colonies, there, record, carryOut, newId, ledger } = twoSites('9');
    const act = record({ to: there, colonies: [colonies[0], colonies[2]] });
    carryOut(withReason(act, 'to the heather', newId), arrival);
    const standing = (id: string) => ledger.colony(id).colony.current?.body.apiary;
    expect(colonies.map((id) => standing(id) === there)).toEqual([true, false, true]);
    const moved = ledger.colony(colonies[0]);
    expect(moved.reasons.map((one) => one.body)).toEqual([
      { explains: moved.colony.current?.written.entry, text: 'to the heather' },
    ]);
  });

  test('to a place outside the register leaves the colonies named gone', () => {
    const { colonies, record, carryOut, ledger } = twoSites('9');
    carryOut(record({ how: 'sold', colonies: [colonies[1]] }), arrival);
    expect(ledger.colony(colonies[1]).colony.current?.body.hiveState).toBe('gone');
    expect(record({ colonies: [colonies[1]] })).toMatchObject({ reason: 'casework.refused.colony-gone' });
  });

  test.each([
    ['a day still to come', { latest: '2027-05-05' }, 'casework.refused.day-to-come'],
    ['fewer than are named', { quantity: 1, colonies: ['0', '1'] }, 'casework.refused.fewer-than-named'],
    ['a colony that stands elsewhere', { colonies: ['stranger'] }, 'casework.refused.colony-elsewhere'],
    ['a label in use where it went', { to: 'there', colonies: ['0'] }, 'casework.refused.label-taken'],
  ] as const)('is not recorded with %s', (_, change, reason) => {
    const two = twoSites('1');
    const idOf = (name: string) => (name === 'stranger' ? two.stranger : (two.colonies[Number(name)] ?? ''));
    const said = {
      ...change,
      ...('to' in change ? { to: two.there } : {}),
      colonies: 'colonies' in change ? change.colonies.map(idOf) : [],
    };
    expect(two.record(said)).toMatchObject({ ok: false, reason });
  });

  test('entered in error is taken back, stays with its history, and can stand again', () => {
    const { apiary, ledger, carryOut, newId } = twoSites('9');
    const id = newId();
    carryOut(newMovement(id, { ...body, from: apiary }, { from: ledger.apiary(apiary), to: null }), arrival);
    const state = () => ledger.movement(id);
    expect(sayWhetherItHappened(state(), true)).toMatchObject({ reason: 'casework.refused.nothing-changed' });
    carryOut(withReason(sayWhetherItHappened(state(), false), 'the wrong apiary', newId), '2027-05-05T09:00:00.000Z');
    expect(state().movement.current?.body).toEqual({ ...body, from: apiary, happened: false });
    expect(state().movement.contested).toEqual([]);
    expect(state().reasons.map((one) => one.body.text)).toEqual(['the wrong apiary']);
    carryOut(sayWhetherItHappened(state(), true), '2027-05-06T09:00:00.000Z');
    expect(state().movement.current?.body.happened).toBe(true);
    expect(state().movement.history).toHaveLength(3);
  });

  test('is changed when more is known, and the change replaces what was seen', () => {
    const { apiary, there, ledger, carryOut, newId } = twoSites('9');
    const id = newId();
    const ends = { from: ledger.apiary(apiary), to: null };
    carryOut(newMovement(id, { ...body, from: apiary }, ends), arrival);
    const state = () => ledger.movement(id);
    const both = { ...ends, to: ledger.apiary(there) };
    expect(changeMovement(state(), {}, { ends, today })).toMatchObject({ reason: 'casework.refused.nothing-changed' });
    expect(changeMovement(state(), { to: there }, { ends, today })).toMatchObject({ ok: false });
    const act = carryOut(
      changeMovement(state(), { to: there, quantity: 3 }, { ends: both, today }),
      '2027-05-05T09:00:00.000Z',
    );
    expect(act.changed).toEqual(['quantity', 'to']);
    expect(state().movement).toMatchObject({ current: { body: { to: there, quantity: 3 } }, contested: [] });
    expect(state().movement.history).toHaveLength(2);
  });
});
