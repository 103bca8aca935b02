import type { Proposal } from '@combside/record/entry';
import type { ApiaryBody } from '@combside/record/kinds/apiary';
import type { KeeperBody } from '@combside/record/kinds/keeper';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { registerGeoJson } from '../export/geojson.ts';
import { registerTable } from '../export/register-table.ts';
import type { ApiaryStanding, KeeperStanding, RegisterRowsHeld } from '../rows.ts';
import { guessColumns } from './columns.ts';
import { readGeoJson } from './geojson.ts';
import { type ImportSettings, planImport } from './plan-import.ts';
import { readLines } from './read-lines.ts';
import { readSeparatedText, writeSeparatedText } from './separated-text.ts';
import type { Table } from './table.ts';

const empty: RegisterRowsHeld = { keepers: [], apiaries: [] };
const settings: ImportSettings = { district: 'quillmoor', language: 'en', uncertaintyMetres: 100, reason: 'test.csv' };

function identifiers(start = 0): () => string {
  let made = start;
  return () => `01900000-0000-7000-8000-${String(++made).padStart(12, '0')}`;
}

function planned(table: Table, held = empty, options: Partial<ImportSettings> = {}) {
  const said = readLines(table, guessColumns(table.header), { dateOrder: null, today: '2027-05-04' });
  const plan = planImport({
    lines: said.lines,
    held,
    settings: { ...settings, ...options },
    newId: identifiers(held.apiaries.length + held.keepers.length),
  });
  return { ...plan, faults: [...said.faults, ...plan.faults] };
}

/** The register after the proposals, as the record's fold would leave it. */
function after(held: RegisterRowsHeld, proposals: readonly Proposal[]): RegisterRowsHeld {
  const keepers = new Map(held.keepers.map((row) => [row.id, row]));
  const apiaries = new Map(held.apiaries.map((row) => [row.id, row]));
  for (const { kind, about, body } of proposals) {
    const row = { id: about.id, standing: [about.id], mergedInto: null, notTheSame: [] };
    if (kind === 'keeper') keepers.set(about.id, { ...row, body: body as KeeperBody });
    if (kind === 'apiary') apiaries.set(about.id, { ...row, body: body as ApiaryBody });
  }
  return { keepers: [...keepers.values()], apiaries: [...apiaries.values()] };
}

const clean = [
  'Imker-Nr.;Name;Telefon;Standort;Breite;Länge;Völker;Bestätigt am',
  'QM-1;Ann Bell;030/1234567;Mühle;56,01;3,01;7;4.5.2026',
  'QM-1;Ann Bell;030/1234567;Furt;56,02;3,02;;',
  'QM-2;Ben Grau;;Hang;;;3;',
].join('\n');

test('a clean file is read with its decimal commas, and its keepers are entered once', () => {
  const plan = planned(readSeparatedText(clean));
  expect(plan.faults).toEqual([]);
  expect(plan.keepers).toEqual({ created: 2, changed: 0, same: 0 });
  expect(plan.sites).toEqual({ created: 3, changed: 0, same: 0 });
  const mill = plan.proposals.find(({ body }) => (body as ApiaryBody).name === 'Mühle')?.body as ApiaryBody;
  expect(mill).toMatchObject({
    position: { latitude: 56.01, longitude: 3.01, uncertaintyMetres: 100, how: 'imported' },
    coloniesRegistered: 7,
    lastConfirmedOn: '2026-05-04',
    keeper: plan.proposals.find(({ kind }) => kind === 'keeper')?.about.id,
  });
});

test('every record says from which file it came, beside its own entry', () => {
  const { proposals } = planned(readSeparatedText(clean));
  const entered = proposals.filter(({ kind }) => kind !== 'reason');
  expect(entered).toHaveLength(5);
  for (const one of entered) {
    const why = proposals.filter(({ about, kind }) => kind === 'reason' && about.id === one.about.id);
    expect(why.map(({ body }) => body)).toEqual([{ explains: one.id, text: 'test.csv' }]);
  }
  expect(planned(readSeparatedText(clean), empty, { reason: '' }).proposals).toHaveLength(5);
});

test('importing twice changes nothing', () => {
  const first = planned(readSeparatedText(clean));
  const again = planned(readSeparatedText(clean), after(empty, first.proposals));
  expect(again.proposals).toEqual([]);
  expect(again.sites).toEqual({ created: 0, changed: 0, same: 3 });
});

test('a changed file changes what it says, replaces what stood there, and says why', () => {
  const held = after(empty, planned(readSeparatedText(clean)).proposals);
  const plan = planned(readSeparatedText(clean.replace(';7;', ';9;')), held);
  expect(plan.sites).toEqual({ created: 0, changed: 1, same: 2 });
  const [change, why] = plan.proposals;
  const mill = held.apiaries.find(({ body }) => body.name === 'Mühle');
  expect(change).toMatchObject({ about: { id: mill?.id }, replaces: mill?.standing, body: { coloniesRegistered: 9 } });
  expect(why).toMatchObject({ kind: 'reason', body: { explains: change?.id, text: 'test.csv' } });
});

test('an empty cell takes nothing out of the register', () => {
  const held = after(empty, planned(readSeparatedText(clean)).proposals);
  const plan = planned(readSeparatedText('Imker-Nr.;Name;Telefon\nQM-1;;\n'), held);
  expect(plan.faults).toEqual([]);
  expect(plan.proposals).toEqual([]);
});

describe('a faulty line says what, where and what to do', () => {
  const held = after(empty, planned(readSeparatedText(clean)).proposals);
  const site = held.apiaries[0] as ApiaryStanding;
  const contested = { ...held, apiaries: [{ ...site, standing: ['a', 'b'] }, ...held.apiaries.slice(1)] };
  const twins = {
    ...held,
    apiaries: [...held.apiaries, { ...site, id: identifiers(90)() }],
  };
  test.each([
    ['a number that is none', 'Apiary,Colonies\nMill,many\n', empty, 'number-not-read', 2, 2],
    ['half a colony', 'Apiary,Colonies\nMill,2.5\n', empty, 'number-not-whole', 2, 2],
    ['less than none', 'Apiary,Colonies\nMill,-1\n', empty, 'number-out-of-range', 2, 2],
    ['a latitude beyond the pole', 'Apiary,Lat,Lon\nMill,91,3\n', empty, 'number-out-of-range', 2, 2],
    ['half a position', 'Apiary,Lat,Lon\nMill,56,\n', empty, 'position-half', 2, 3],
    ['the place nobody measured', 'Apiary,Lat,Lon\nMill,0,0\n', empty, 'position-zero', 2, 2],
    ['a day that is none', 'Apiary,Confirmed\nMill,31.4.2026\n', empty, 'date-not-read', 2, 2],
    ['a day that could be two', 'Apiary,Confirmed\nMill,04/05/2026\n', empty, 'date-order-unknown', 2, 2],
    ['a day to come', 'Apiary,Confirmed\nMill,2027-05-05\n', empty, 'date-in-future', 2, 2],
    ['letters of another encoding', 'Apiary,Colonies\nM\uFFFDhle,1\n', empty, 'unreadable-letter', 2, 1],
    ['a trade nobody knows', 'Keeper,Trade\nAnn,baker\n', empty, 'word-unknown', 2, 2],
    ['a mail address that is none', 'Keeper,Mail\nAnn,ann at home\n', empty, 'mail-not-read', 2, 2],
    ['a name too long', `Apiary\n${'x'.repeat(201)}\n`, empty, 'too-long', 2, 1],
    ['a site without any name', 'Apiary,Colonies\n,4\n', empty, 'site-without-name', 2, null],
    ['a keeper without a name', 'Keeper,Telephone\n,123456789\n', empty, 'keeper-without-name', 2, null],
    [
      'a record that is not there',
      `Apiary record,Apiary\n${identifiers(77)()},Mill\n`,
      empty,
      'record-not-there',
      2,
      null,
    ],
    ['two lines that contradict', 'Site number,Apiary,Colonies\n1,Mill,4\n1,Mill,5\n', empty, 'twice-in-file', 3, null],
    ['a contested record', 'Apiary,Lat,Lon,Colonies\nMühle,56.01,3.01,8\n', contested, 'contested', 2, null],
    ['two records that fit', 'Apiary,Lat,Lon,Colonies\nMühle,56.01,3.01,8\n', twins, 'several-match', 2, null],
    ['cells beyond the header', 'Apiary\nMill,4\n', empty, 'cells-too-many', 2, 2],
  ] as const)('%s', (_, text, register, id, line, column) => {
    const plan = planned(readSeparatedText(text, ','), register);
    expect(plan.faults.map((one) => ({ id: one.id, line: one.line, column: one.column }))).toEqual([
      { id: `register.fault.${id}`, line, column },
    ]);
  });

  test('a site of another district is not taken over', () => {
    const plan = planned(readSeparatedText(clean.replace(';7;', ';9;')), held, { district: 'fellmoor' });
    expect(plan.faults.map(({ id }) => id)).toContain('register.fault.other-district');
    expect(plan.proposals.filter(({ kind }) => kind === 'apiary')).toEqual([]);
  });

  test('the sound half of a faulty line is not entered either', () => {
    const text = 'Keeper,Site number,Apiary,Colonies\nAnn,1,Mill,4\nBen,1,Mill,5\n';
    const plan = planned(readSeparatedText(text, ','));
    const entered = plan.proposals.filter(({ kind }) => kind !== 'reason');
    expect(entered.map(({ body }) => (body as KeeperBody).name)).toEqual(['Ann', 'Mill']);
  });
});

test('a position far from all others of the file is a slip of the pen, exchanged coordinates are named as such', () => {
  const near = Array.from({ length: 6 }, (_, at) => `Site ${at},56.${at},3.${at}`);
  const file = ['Apiary,Lat,Lon', ...near, 'Swapped,3.1,56.1', 'Signless,-56.1,3.1'].join('\n');
  const plan = planned(readSeparatedText(file, ','));
  expect(plan.faults.map(({ id, line }) => [id, line])).toEqual([
    ['register.fault.position-swapped', 8],
    ['register.fault.position-far', 9],
  ]);
  expect(plan.sites.created).toBe(6);
});

describe('two people of one name', () => {
  const two = 'Keeper,Telephone,Apiary\nAnn Bell,0301111111,Mill\nAnn Bell,0302222222,Ford\n';
  test('stay two when their telephones differ', () => {
    expect(planned(readSeparatedText(two, ',')).keepers.created).toBe(2);
  });
  test('are found again by what tells them apart', () => {
    const held = after(empty, planned(readSeparatedText(two, ',')).proposals);
    expect(planned(readSeparatedText(two, ','), held).proposals).toEqual([]);
  });
});

const word = fc
  .string({ unit: fc.constantFrom(...`abcäß "',;=+-1 `), minLength: 1, maxLength: 10 })
  .filter((text) => text.trim() !== '');
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const register: fc.Arbitrary<RegisterRowsHeld> = fc
  .record({
    keepers: fc.array(
      fc.record({
        name: word,
        number: maybe(word),
        addressWords: fc.oneof(word, fc.constant('')),
        telephone: fc.oneof(word, fc.constant('')),
      }),
      { maxLength: 4 },
    ),
    sites: fc.array(
      fc.record({
        name: word,
        number: maybe(word),
        keeper: maybe(fc.nat(3)),
        addressWords: fc.oneof(word, fc.constant('')),
        position: maybe(
          fc.record({
            latitude: fc.double({ min: -89, max: 89, noNaN: true }).filter((value) => Math.abs(value) > 1e-5),
            longitude: fc.double({ min: -179, max: 179, noNaN: true }),
            uncertaintyMetres: fc.integer({ min: 1, max: 5000 }),
          }),
        ),
        coloniesRegistered: maybe(fc.nat(300)),
        lastConfirmedOn: maybe(fc.constantFrom('2026-05-04', '2020-02-29')),
      }),
      { maxLength: 6 },
    ),
  })
  .map(({ keepers, sites }) => {
    const newId = identifiers();
    const rows: KeeperStanding[] = keepers.map((one) => {
      const id = newId();
      return {
        ...{ id, standing: [id], mergedInto: null, notTheSame: [] },
        body: { ...one, email: '', language: 'en', trade: 'hobby' as const },
      };
    });
    const apiaries: ApiaryStanding[] = sites.map((one) => {
      const id = newId();
      const position = one.position && { ...one.position, how: 'measured on site' as const };
      const keeper = one.keeper === null ? null : (rows[one.keeper]?.id ?? null);
      return {
        ...{ id, standing: [id], mergedInto: null, notTheSame: [] },
        body: { ...one, keeper, position, district: 'quillmoor', plan: null },
      };
    });
    return { keepers: rows, apiaries };
  });

describe('what is exported and read in again changes nothing', () => {
  test.each([
    ['separated text', (table: string[][]) => readSeparatedText(writeSeparatedText(table, ';'), ';')],
    ['GeoJSON', (table: string[][]) => readGeoJson(registerGeoJson(table))],
  ] as const)('%s', (_, through) => {
    fc.assert(
      fc.property(register, (held) => {
        const plan = planned(through(registerTable(held)), held);
        expect(plan.faults).toEqual([]);
        expect(plan.proposals).toEqual([]);
        expect(plan.sites.same).toBe(held.apiaries.length);
      }),
      { seed: 20_270_504, numRuns: 300 },
    );
  });

  test('and read into an empty register, twice', () => {
    fc.assert(
      fc.property(register, (held) => {
        const table = registerTable(held).map((cells) => cells.filter((_, at) => at !== 0 && at !== 9));
        const text = writeSeparatedText(table);
        const first = planned(readSeparatedText(text, ','));
        const again = planned(readSeparatedText(text, ','), after(empty, first.proposals));
        expect(again.proposals).toEqual([]);
      }),
      { seed: 20_270_504, numRuns: 300 },
    );
  });
});
