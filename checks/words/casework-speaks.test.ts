import { readdirSync } from 'node:fs';
import { claimSentences } from '@combside/casework/examine/nothing-seen';
import { cautionsFor, loneWorkCard, situations, stingCard } from '@combside/casework/examine/safety';
import { walkWords } from '@combside/casework/examine/walk';
import { findings } from '@combside/casework/findings';
import { refusals } from '@combside/casework/refusals';
import { hiveTypes } from '@combside/casework/register/hive-types';
import { nextStepIds } from '@combside/casework/report/next-step-ids';
import { resultWords } from '@combside/casework/result/results-by-gravity';
import { finds, measurements, powers, roles, visitReasons } from '@combside/casework/vocabulary';
import { dutyKinds, owers, promptnesses, ruleStandings } from '@combside/law/pack';
import { cleanDownBody } from '@combside/record/kinds/clean-down';
import { examinationBody, ropeTest, signLooked } from '@combside/record/kinds/examination';
import { languages } from '@combside/words/language';
import { loadCatalogue } from '@combside/words/rooms';
import { describe, expect, test } from 'vitest';

const under = (kind: string, words: readonly string[]) => words.map((word) => `casework.${kind}.${word}`);
/** The words a field of a record kind may hold, read from its shape, so that a new one is missed at once. */
const choices = (schema: unknown): string[] => {
  const inner = (schema as { unwrap?: () => unknown }).unwrap?.() ?? schema;
  return [...(inner as { options: readonly string[] }).options];
};

/** Warnings about the register are said on arrival and not named on paper. */
const notNamedOnPaper: ReadonlySet<string> = new Set([
  'casework.warning.not-confirmed-lately',
  'casework.warning.position-uncertain',
  'casework.warning.not-answered',
]);

/** Every id that casework or law may hand to a screen or a paper. */
const ids = [
  ...refusals,
  ...findings,
  ...claimSentences,
  ...nextStepIds,
  ...findings
    .filter((id) => id.startsWith('casework.warning.') && !notNamedOnPaper.has(id))
    .map((id) => id.replace('.warning.', '.warned.')),
  ...[...stingCard, ...loneWorkCard, ...situations.flatMap((one) => cautionsFor(one))].map((line) => line.id),
  ...under('result', [...resultWords, 'not opened']),
  ...under('walk', walkWords),
  ...under('depth', choices(examinationBody.shape.depth)),
  ...under('visit-reason', visitReasons),
  ...under('power', powers),
  ...under('role', roles),
  ...under('find', finds),
  ...under(
    'hive-type',
    hiveTypes.map((one) => one.id),
  ),
  ...under('measurement', Object.keys(measurements)),
  ...under(
    'unit',
    Object.values(measurements).map((one) => one.unit),
  ),
  ...under('hive-state', choices(examinationBody.shape.hiveState)),
  ...under('light', choices(examinationBody.shape.light)),
  ...under('hold', choices(examinationBody.shape.hold)),
  ...under('outcome', [...choices(signLooked.shape.outcome), 'not looked for']),
  ...under('count', choices(signLooked.shape.count)),
  ...under('amount', choices(signLooked.shape.amount)),
  ...under('tissue', choices(ropeTest.shape.tissue)),
  ...under('stick', choices(ropeTest.shape.stick)),
  ...under('colour', choices(ropeTest.shape.colour)),
  ...under('gloves', choices(cleanDownBody.shape.gloves)),
  ...under('tool', choices(cleanDownBody.shape.tool)),
  ...under('phone', choices(cleanDownBody.shape.phone)),
  ...under('duty', dutyKinds),
  ...under('owed-by', owers),
  ...under('promptness', promptnesses),
  ...under('standing', ruleStandings),
  ...under('duty-state', ['open', 'late', 'met', 'ended']),
];

describe.each(languages)('what casework says, in %s', (language) => {
  test('has words for every id', async () => {
    const catalogue = await loadCatalogue(language, 'casework');
    expect(ids.length).toBeGreaterThan(200);
    expect(ids.filter((id) => !Object.hasOwn(catalogue, id))).toEqual([]);
  });
});

test('no refusal or finding is listed that nobody gives', async () => {
  const { readFile } = await import('node:fs/promises');
  const folder = new URL('../../packages/casework/src/', import.meta.url);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !file.endsWith('.test.ts') && file !== 'refusals.ts' && file !== 'findings.ts',
  );
  const text = (await Promise.all(files.map((file) => readFile(new URL(file, folder), 'utf8')))).join('\n');
  expect([...refusals, ...findings].filter((id) => !text.includes(`'${id}'`))).toEqual([]);
});
