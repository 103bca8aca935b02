import { sampleBodies } from '@combside/record/acceptance/golden-bodies';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import { expect, test } from 'vitest';
import { addNote } from './add-note.ts';
import { whatChanged } from './what-changed.ts';

const body: ExaminationBody = {
  ...(sampleBodies['examination.2']?.body as ExaminationBody),
  signs: [{ sign: 'cap.sunken', outcome: 'seen', count: '1-10', amount: null, places: [] }],
  finds: [],
};

test('two readings that say the same differ in nothing, whatever the order of their fields', () => {
  const turned = Object.fromEntries(Object.entries(body).reverse()) as unknown as ExaminationBody;
  expect(whatChanged(body, turned)).toEqual([]);
});

test('each part, sign and find that differs is told once, with both sayings', () => {
  const sign = body.signs[0] as ExaminationBody['signs'][number];
  const after: ExaminationBody = {
    ...body,
    remarks: 'other words',
    signs: [...body.signs.slice(1), { ...sign, sign: 'odour.ammonia' }],
    finds: [{ find: 'wax-moth', outcome: 'seen', amount: null }],
  };
  const changes = whatChanged(body, after);
  expect(changes).toContainEqual({ part: 'remarks', before: body.remarks, after: 'other words' });
  expect(changes).toContainEqual({ part: 'sign', sign: sign.sign, before: sign, after: null });
  expect(changes).toContainEqual(expect.objectContaining({ part: 'sign', sign: 'odour.ammonia', before: null }));
  expect(changes).toContainEqual({ part: 'find', find: 'wax-moth', before: null, after: after.finds[0] });
  expect(changes).toHaveLength(4);
});

test('a note needs words', () => {
  const about = { type: 'visit', id: '0192c80d-ca80-7e69-8868-7fc8dd220e7c' };
  expect(addNote(about, ' \n')).toMatchObject({ ok: false, reason: 'casework.refused.note-empty' });
  expect(addNote(about, 'x'.repeat(5001))).toMatchObject({ ok: false });
  expect(addNote(about, ' the gate sticks ')).toMatchObject({
    ok: true,
    proposals: [{ kind: 'note', about, body: { text: 'the gate sticks' } }],
  });
});
