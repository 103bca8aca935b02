import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { examination } from '@combside/record/kinds/examination';
import { checkEvidence, type Evidence } from '@combside/science/diagnosis/evidence';
import { testIds } from '@combside/science/diagnosis/test-figures';
import { signs } from '@combside/science/signs/catalogue';
import { describe, expect, test } from 'vitest';
import { diagnose } from './diagnose.ts';
import { evidenceInput, readInput } from './diagnose-input.ts';
import { type Diagnosis, diagnosis } from './diagnose-output.ts';
import { diagnoseSchema } from './diagnose-schema.ts';

const docs = join(import.meta.dirname, '../../../docs');

async function run(args: readonly string[], input: unknown = {}) {
  const heard = { code: 0, out: '', err: '' };
  heard.code = await diagnose(args, {
    read: (path) => {
      if (path !== '-') return readFileSync(path, 'utf8');
      return typeof input === 'string' ? input : JSON.stringify(input);
    },
    out: (text) => {
      heard.out += `${text}\n`;
    },
    err: (text) => {
      heard.err += `${text}\n`;
    },
  });
  return heard;
}

const asJson = async (input: unknown, ...args: string[]) =>
  JSON.parse((await run(['--json', ...args], input)).out) as Diagnosis;

const look = {
  depth: 'full',
  framesHeld: 10,
  framesSeen: 10,
  sides: 'both',
  beesShaken: true,
  light: 'torch',
  hold: 'top bar toward the viewer',
  cellsOpened: 20,
  cellsSuspicious: 40,
  sealedBroodCombSides: 6,
};

const id = '01900000-0000-7000-8000-000000000001';
const asked = { asked: false, answer: null, lastOn: null, what: '' };
const examined = {
  visit: id,
  apiary: id,
  observedAt: '2027-05-04T09:30:00.000Z',
  hiveState: 'living',
  depth: 'full',
  claim: 'signs seen',
  boxes: [{ box: 'lower', framesHeld: 9, framesSeen: 9, sides: 'both' }],
  beesShaken: true,
  light: null,
  hold: null,
  sealedBroodCombSides: 5,
  signs: [{ sign: 'cap.sunken', outcome: 'seen', count: '11-100', amount: null, places: [] }],
  ropeTests: [],
  tests: [],
  finds: [],
  medicines: asked,
  combChanges: asked,
  measurements: [],
  remarks: '',
  photographs: [],
};

describe('combside diagnose', () => {
  test('prints what the schema says, for evidence of every kind of answer', async () => {
    const inputs = [
      { look: { depth: 'outside' } },
      { look },
      {
        look,
        signs: Object.fromEntries(signs.map((sign, i) => [sign.id, { outcome: i % 2 === 0 ? 'seen' : 'not seen' }])),
        ropeTests: [{ tissue: 'moist brown', stick: 'rough and dry', threadMillimetres: 25, snapsBack: true }],
        tests: testIds.map((test) => ({ test, result: 'positive', readOn: '2027-05-04', expires: '2028-01-01' })),
        frameCounts: [{ frame: '1', cellsAffected: 12 }],
        circumstances: {
          district: [{ disease: 'american-foulbrood', confirmed: 2, examined: 120, about: '2027' }],
          contactOfCase: true,
          priorChanges: [{ disease: 'chalkbrood', value: 0.3, reason: 'wet spring' }],
        },
        earlier: [{ daysAgo: 20, suspect: true }],
        suspicionStands: true,
      },
      { hive: 'stored combs', look, signs: { 'scale.hard_lower': { outcome: 'seen', count: 'over 100' } } },
    ];
    for (const input of inputs) {
      const found = await asJson(input);
      expect(diagnosis.parse(found)).toEqual(found);
      expect(found.assessment.diseases).toHaveLength(10);
      const strangers = JSON.stringify(found).match(/NaN|Infinity|null,"high"/);
      expect(strangers).toBeNull();
    }
  });

  test('reads an examination of the record, the version before too, and the rules of the pack make the suspicion', async () => {
    const found = await asJson(examined);
    expect(diagnosis.parse(found)).toEqual(found);
    expect(found).toMatchObject({ readAs: 'examination', result: 'signs seen', suspicionRule: null, setAside: [] });
    const { tests: _, ...versionOne } = examined;
    expect(await asJson(versionOne)).toEqual(found);
    const threaded = {
      ...examined,
      ropeTests: [
        {
          box: 'lower',
          frame: 4,
          side: 'a',
          tissue: 'moist brown',
          stick: 'rough and dry',
          threadMillimetres: 25,
          snapsBack: true,
          colour: 'coffee',
        },
      ],
    };
    const suspect = await asJson(threaded);
    expect(suspect.result).toBe('suspect');
    expect(suspect.suspicionRule?.condition).toBe('american-foulbrood');
    expect(suspect.assessment.next.first.map((one) => one.step)).toEqual([
      'close-the-hive',
      'move-nothing',
      'take-a-specimen',
      'clean-down',
      'notify',
    ]);
    const newer = { ...examined, signs: [{ ...examined.signs[0], sign: 'cap.iridescent' }] };
    expect((await asJson(newer)).setAside).toEqual(['cap.iridescent']);
  });

  test('reads the golden examinations', async () => {
    const golden = join(import.meta.dirname, '../../record/src/kinds/golden');
    for (let version = 1; version <= examination.version; version++) {
      const { entry } = JSON.parse(readFileSync(join(golden, `examination.${version}.json`), 'utf8'));
      expect((await asJson(entry.body)).readAs).toBe('examination');
    }
  });

  test('says the same in words, in both languages, with nothing left unsaid', async () => {
    for (const language of ['en', 'de']) {
      const { code, out } = await run(['--language', language], { look, signs: { 'cap.sunken': { outcome: 'seen' } } });
      expect(code).toBe(0);
      expect(out).not.toMatch(/\b(signs|reasoning|casework)\.[a-z]/);
      expect(out).not.toMatch(/healthy|gesund|\b100\s?%|\D0\s?%/);
    }
    const german = await run(['--language', 'de', '-'], { look });
    expect(german.out).toContain('Amerikanische Faulbrut');
  });

  test('refuses, naming each field, what is allowed there and what was given', async () => {
    const refused = async (input: unknown) => {
      const heard = await run(['-'], input);
      expect(heard).toMatchObject({ code: 1, out: '' });
      return heard.err;
    };
    expect(await refused({ look: { depth: 'deep' } })).toMatch(/^evidence\.look\.depth: .*"full".*, but was "deep"\n$/);
    expect(await refused({ look: { ...look, framesSeen: -1 } })).toMatch(/look\.framesSeen: .*>=0.*but was -1/);
    expect(await refused({ look: { ...look, framesSeen: 11 } })).toMatch(/look\.framesSeen is 11.*holds 10/);
    expect(await refused({ look, signs: { 'cap.sunken': { outcome: 'seen', amount: 'marked' } } })).toMatch(
      /signs\["cap\.sunken"\]\.amount.*no degree/,
    );
    const changes = [{ disease: 'chalkbrood', value: 1, reason: 'sure' }];
    expect(await refused({ look, circumstances: { priorChanges: changes } })).toMatch(
      /circumstances\.priorChanges\[0\]\.value: .*<1.*but was 1/,
    );
    const noSuchDay = [{ test: 'lateral-flow-afb', result: 'negative', readOn: '2027-02-29' }];
    expect(await refused({ look, tests: noSuchDay })).toMatch(/tests\[0\]\.readOn: .*calendar/);
    expect(await refused({ ...examined, claim: undefined })).toMatch(/^examination\.claim: .*but was left out/);
    expect(await refused({})).toMatch(/evidence\.look: .*but was left out/);
    expect(await refused([])).toMatch(/one object.*not \[\]/);
    expect(await refused('{')).toMatch(/standard input does not hold one JSON object/);
    expect((await run(['/nowhere.json'])).err).toMatch(/cannot read \/nowhere\.json/);
  });

  test('leaves with 2 and the usage when the command was not understood', async () => {
    for (const args of [['--deep'], ['--language', 'xx'], ['--pack', 'nowhere'], ['a', 'b']]) {
      const heard = await run(args);
      expect(heard.code).toBe(2);
      expect(heard.err).toContain('combside diagnose [FILE|-]');
    }
    expect(await run(['--help'])).toMatchObject({ code: 0, err: '' });
  });
});

test('sources are numbered where they are named, and listed once at the end for people to read', async () => {
  const { out } = await run([], { look, signs: { 'con.ropy': { outcome: 'seen', count: '1-10' } } });
  const [told = '', listed = ''] = out.split('\nSources\n');
  const numbers = [...told.matchAll(/ \[([\d, ]+)\]/g)].flatMap((match) => (match[1] ?? '').split(', ').map(Number));
  const lines = listed.trimEnd().split('\n');
  expect(lines.length).toBeGreaterThan(5);
  expect([...new Set(numbers)]).toEqual(lines.map((_, at) => at + 1));
  expect(lines.map((line, at) => line.startsWith(`  [${at + 1}] `))).not.toContain(false);
  expect(new Set(lines).size).toBe(lines.length);
  // A key of the bibliography tells a reader nothing.
  const bibliography = join(import.meta.dirname, '../../sources/src/bibliography.json');
  for (const key of Object.keys(JSON.parse(readFileSync(bibliography, 'utf8'))))
    expect(out, key).not.toMatch(new RegExp(`\\[[^\\]]*\\b${key}\\b[^\\]]*\\]`));
});

describe('what the docs say of it', () => {
  test('the schema is the one that checks', async () => {
    const kept = JSON.parse(readFileSync(join(docs, 'diagnose.schema.json'), 'utf8'));
    expect(kept, 'combside diagnose --schema > docs/diagnose.schema.json').toEqual(diagnoseSchema());
    expect(JSON.parse((await run(['--schema'])).out)).toEqual(kept);
  });

  test('the page names every field of evidence, and its example prints what stands below it', async () => {
    const page = readFileSync(join(docs, 'diagnose.md'), 'utf8');
    const fields = fieldsIn((diagnoseSchema().$defs as { evidence: Schema }).evidence);
    expect(fields.length).toBeGreaterThan(30);
    for (const field of fields) expect(page, `docs/diagnose.md says nothing of ${field}`).toMatch(`\`${field}\``);
    const example = /```json\n([^`]+)```/.exec(page)?.[1] ?? '';
    const printed = /```text\n([^`]+)```/.exec(page)?.[1] ?? '';
    expect(printed).toContain('American foulbrood');
    expect((await run([], example)).out.startsWith(printed.trimEnd())).toBe(true);
  });

  test('what the schema lets through, the reasoning takes', () => {
    const evidence: Evidence = evidenceInput.parse({ look });
    expect(() => checkEvidence(evidence)).not.toThrow();
    expect(readInput({ look })).toEqual({ as: 'evidence', evidence });
  });
});

interface Schema {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
}

/** Names of the fields of an object, and of the objects in it; ids of signs are keys, not fields. */
function fieldsIn(schema: Schema): string[] {
  return Object.entries(schema.properties ?? {}).flatMap(([name, inner]) =>
    name === 'signs' ? [name] : [name, ...fieldsIn(inner), ...(inner.items ? fieldsIn(inner.items) : [])],
  );
}
