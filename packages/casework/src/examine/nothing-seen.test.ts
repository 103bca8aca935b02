import { describe, expect, test } from 'vitest';
import { smallSite } from '../acceptance/small-site.ts';
import { draftFrom } from '../draft/draft-from-taps.ts';
import { lookStated } from '../draft/look-stated.ts';
import type { Tap } from '../draft/tap.ts';
import { fullClaim, lesserClaim, signsOfTheOrdinaryLook } from './nothing-seen.ts';

const site = smallSite();
const draft = (...taps: Tap[]) => draftFrom(taps, site.ledger.colony(site.colonies[0]));

describe('the big button', () => {
  test('states every brood frame of the colony’s own record, both sides, shaken', () => {
    expect(fullClaim(draft())).toMatchObject({
      ok: true,
      sentence: 'casework.claim.full',
      values: { frames: 9 },
      depth: 'full',
      boxes: [{ box: 'lower', framesHeld: 9, framesSeen: 9, sides: 'both' }],
      beesShaken: true,
    });
  });

  test('claims no scale unless the top bar was toward the viewer, and no cell that was not opened', () => {
    const without = fullClaim(draft());
    const withHold = fullClaim(draft({ tap: 'hold', hold: 'top bar toward the viewer' }));
    expect(without.ok && without.signsNotSeen).not.toContain('scale.hard_lower');
    expect(withHold.ok && withHold.signsNotSeen).toContain('scale.hard_lower');
    expect(without.ok && without.signsNotSeen).not.toContain('con.ropy');
    expect(without.ok && without.signsNotSeen).not.toContain('col.coffee');
    expect(without.ok && without.signsNotSeen).toContain('cap.sunken');
  });

  test('in a dead hive states the hold, and asks for scale, not for brood', () => {
    const claim = fullClaim(draft({ tap: 'hive state', state: 'dead' }));
    expect(claim).toMatchObject({
      ok: true,
      sentence: 'casework.claim.full-dead-hive',
      hold: 'top bar toward the viewer',
      beesShaken: null,
    });
    expect(claim.ok && claim.signsNotSeen).toContain('scale.hard_lower');
    expect(claim.ok && claim.signsNotSeen).not.toContain('age.coiled');
  });

  test.each<[string, Tap[], string]>([
    ['a sign was seen', [{ tap: 'sign', sign: 'cap.perforated', outcome: 'seen' }], 'casework.refused.sign-was-seen'],
    [
      'a thread was drawn',
      [
        {
          tap: 'rope test',
          test: {
            box: 'lower',
            frame: 1,
            side: 'a',
            tissue: 'moist brown',
            stick: 'rough and dry',
            threadMillimetres: 12,
            snapsBack: true,
            colour: 'coffee',
          },
        },
      ],
      'casework.refused.rope-was-drawn',
    ],
    [
      'fewer frames were stated',
      [{ tap: 'frames seen', box: 'lower', frames: 4 }],
      'casework.refused.less-looked-at-already',
    ],
    ['bees were left on', [{ tap: 'bees shaken', shaken: false }], 'casework.refused.less-looked-at-already'],
    ['only the outside was looked at', [{ tap: 'depth', depth: 'outside' }], 'casework.refused.less-looked-at-already'],
    ['no frames are known', [{ tap: 'frames held', box: 'lower', frames: 0 }], 'casework.refused.frames-not-known'],
  ])('is refused when %s', (_, taps, reason) => {
    expect(fullClaim(draft(...taps))).toMatchObject({ ok: false, reason });
  });

  test('brood in good order does not stand in its way', () => {
    expect(fullClaim(draft({ tap: 'sign', sign: 'pattern.compact', outcome: 'seen' })).ok).toBe(true);
  });
});

describe('less than that', () => {
  const part: Tap[] = [
    { tap: 'frames seen', box: 'lower', frames: 4 },
    { tap: 'sides', box: 'lower', sides: 'one' },
    { tap: 'bees shaken', shaken: false },
  ];

  test('states what was looked at and no more', () => {
    expect(lesserClaim(draft(...part))).toMatchObject({
      ok: true,
      sentence: 'casework.claim.part',
      values: { seen: 4, frames: 9, sides: 'one', shaken: 'no' },
      depth: 'part',
    });
  });

  test('claims no sign at all from outside', () => {
    expect(lesserClaim(draft({ tap: 'depth', depth: 'outside' }))).toMatchObject({
      ok: true,
      sentence: 'casework.claim.outside',
      signsNotSeen: [],
    });
  });

  test.each<[string, Tap[], string]>([
    ['nothing is stated', [], 'casework.refused.look-not-stated'],
    ['the sides are not stated', [part[0] as Tap, part[2] as Tap], 'casework.refused.look-not-stated'],
    [
      'no frame was looked at',
      [
        { tap: 'frames seen', box: 'lower', frames: 0 },
        { tap: 'bees shaken', shaken: false },
      ],
      'casework.refused.nothing-looked-at',
    ],
    ['all was looked at', [{ tap: 'everything looked at' }], 'casework.refused.look-was-full'],
    [
      'a sign was seen',
      [...part, { tap: 'sign', sign: 'cap.sunken', outcome: 'seen' }],
      'casework.refused.sign-was-seen',
    ],
  ])('is refused when %s', (_, taps, reason) => {
    expect(lesserClaim(draft(...taps))).toMatchObject({ ok: false, reason });
  });

  test('in a dead hive the hold has to be stated, since no other shows scale', () => {
    const dead: Tap[] = [{ tap: 'hive state', state: 'dead' }, part[0] as Tap, part[1] as Tap];
    expect(lookStated(draft(...dead))).toMatchObject({ ok: false, reason: 'casework.refused.hold-not-stated' });
  });
});

test('the ordinary look asks only what this state of the hive can show', () => {
  expect(signsOfTheOrdinaryLook('stored combs', 'top bar toward the viewer')).not.toContain('pattern.spotty');
  expect(signsOfTheOrdinaryLook('living', 'top bar toward the viewer')).not.toContain('pattern.compact');
});
