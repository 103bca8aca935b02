import { loadPack } from '@combside/law/load-pack';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import { checkEvidence } from '@combside/science/diagnosis/evidence';
import { describe, expect, test } from 'vitest';
import { evidenceFrom } from './evidence.ts';

const pack = await loadPack('quillmoor');
const id = '01900000-0000-7000-8000-000000000001';
const notAsked = { asked: false, answer: null, lastOn: null, what: '' };
const base: ExaminationBody = {
  visit: id,
  apiary: id,
  observedAt: '2027-05-04T09:30:00.000Z',
  hiveState: 'living',
  depth: 'full',
  claim: 'signs seen',
  boxes: [
    { box: 'lower', framesHeld: 9, framesSeen: 9, sides: 'both' },
    { box: 'upper', framesHeld: 8, framesSeen: 0, sides: 'one' },
  ],
  beesShaken: true,
  light: null,
  hold: null,
  sealedBroodCombSides: null,
  signs: [],
  ropeTests: [],
  tests: [],
  finds: [],
  medicines: notAsked,
  combChanges: notAsked,
  measurements: [],
  remarks: '',
  photographs: [],
};
const from = (change: Partial<ExaminationBody>) =>
  evidenceFrom({ ...base, ...change }, { colony: null, pack, suspicionStands: false });

describe('an examination as evidence', () => {
  test('adds boxes up, and lets a box nobody looked into not make the look one-sided', () => {
    const { evidence } = from({});
    expect(evidence.look).toMatchObject({ framesHeld: 17, framesSeen: 9, sides: 'both' });
    checkEvidence(evidence);
  });

  test('says nothing of a sign that was not looked for', () => {
    const { evidence } = from({
      signs: [{ sign: 'cap.sunken', outcome: 'not seen', count: null, amount: null, places: [] }],
    });
    expect(evidence.signs).toEqual({ 'cap.sunken': { outcome: 'not seen' } });
  });

  test('sets a sign of a newer version aside and names it', () => {
    const { evidence, setAside } = from({
      signs: [{ sign: 'cap.iridescent', outcome: 'seen', count: null, amount: null, places: [] }],
    });
    expect(setAside).toEqual(['cap.iridescent']);
    expect(evidence.signs).toEqual({});
  });

  test('counts opened cells once per place, frames by those affected, and the sound frames beside them', () => {
    const at = (frame: number, side: 'a' | 'b', cellsOpened: number, cellsAffected: number) => ({
      box: 'lower',
      frame,
      side,
      cellsOpened,
      cellsAffected,
    });
    const looked = (sign: string, places: ExaminationBody['signs'][number]['places']) => ({
      sign,
      outcome: 'seen' as const,
      count: null,
      amount: null,
      places,
    });
    const { evidence } = from({
      signs: [
        looked('col.coffee', [at(4, 'a', 12, 9), at(5, 'b', 10, 0)]),
        looked('post.melted', [at(4, 'a', 12, 5), at(4, 'b', 8, 3)]),
      ],
    });
    expect(evidence.look.cellsOpened).toBe(12 + 10 + 8);
    expect(evidence.signs['col.coffee']).toEqual({ outcome: 'seen', frames: 1 });
    const affected = evidence.frameCounts.map((one) => one.cellsAffected);
    expect(evidence.frameCounts).toHaveLength(9);
    expect(affected.filter((cells) => cells > 0)).toEqual([9 + 3]);
    checkEvidence(evidence);
  });

  test('takes a medicine of unknown date as given today', () => {
    const asked = (lastOn: string | null) => ({ asked: true, answer: 'yes' as const, lastOn, what: '' });
    expect(from({ medicines: asked('2027-04-24') }).evidence.circumstances.daysSinceMedicine).toBe(10);
    expect(from({ medicines: asked(null) }).evidence.circumstances.daysSinceMedicine).toBe(0);
    expect(from({}).evidence.circumstances).toMatchObject({ daysSinceMedicine: null, maskingDays: 60 });
  });
});
