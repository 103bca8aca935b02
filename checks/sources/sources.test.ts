import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { followCitations } from './sources.ts';

describe('the citations of the house', () => {
  const citations = followCitations(join(import.meta.dirname, '../..'));

  test('all lead to the bibliography', () => expect(citations.unknown).toEqual([]));
  test('leave no entry of the bibliography unused', () => expect(citations.unused).toEqual([]));
  test('were seen', () => expect(citations.uses).toBeGreaterThan(50));
});

test('the offenders are caught: an unknown id in a source and in a rule pack, and an entry without a use', () => {
  const citations = followCitations(join(import.meta.dirname, 'offenders'));
  expect(citations.unknown).toEqual(['packages/law/src/pack.json: LAW-X', 'packages/science/src/scale.ts: NOBODY12']);
  expect(citations.unused).toEqual(['NEVER', 'ONLY-IN-A-TEST', 'packages/law/src/pack.json: own-idle']);
  expect(citations.uses).toBe(5);
});
