import { strToU8, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { readFile } from './read-file.ts';

/**
 * A small spreadsheet by hand, as ECMA-376 lays it out: inline texts, a number, a day by its style, an empty row; before
 * it an empty sheet, and behind it a second table.
 */
function spreadsheet(): Blob {
  const cell = (at: string, text: string) => `<c r="${at}" t="inlineStr"><is><t>${text}</t></is></c>`;
  const files = {
    '[Content_Types].xml': `<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
      <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
      <Default Extension="xml" ContentType="application/xml"/>
      <Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/></Types>`,
    '_rels/.rels': `<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
      <Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `<?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">
      <sheets><sheet name="Cover" sheetId="3" r:id="rId4"/><sheet name="Register" sheetId="1" r:id="rId1"/><sheet name="Old" sheetId="2" r:id="rId3"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
      <Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/>
      <Relationship Id="rId3" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet2.xml"/>
      <Relationship Id="rId4" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet3.xml"/>
      <Relationship Id="rId2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>`,
    'xl/styles.xml': `<?xml version="1.0"?><styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">
      <cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/></cellXfs></styleSheet>`,
    'xl/worksheets/sheet1.xml': `<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>
      <row r="1">${cell('A1', 'Apiary')}${cell('B1', 'Latitude')}${cell('C1', 'Confirmed on')}</row>
      <row r="3">${cell('A3', 'Mühle &amp; Bach')}<c r="B3"><v>5.60000012E1</v></c><c r="C3" s="1"><v>46146</v></c></row></sheetData></worksheet>`,
    'xl/worksheets/sheet2.xml': `<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>
      <row r="1">${cell('A1', 'Keeper')}</row><row r="2">${cell('A2', 'Ann')}</row></sheetData></worksheet>`,
    'xl/worksheets/sheet3.xml': `<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData/></worksheet>`,
  };
  return new Blob([zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])))]);
}

test('a spreadsheet is read as a table: texts, numbers, days, and the numbers of its rows', async () => {
  // Day 46146 of the spreadsheet's calendar: 25569 is 1 January 1970, and 4 May 2026 is 20577 days later.
  expect(await readFile(spreadsheet())).toEqual({
    encoding: 'sheet',
    sheets: ['Cover', 'Register', 'Old'],
    sheet: 'Register',
    table: {
      header: ['Apiary', 'Latitude', 'Confirmed on'],
      rows: [{ line: 3, cells: ['Mühle & Bach', '56.000001200', '2026-05-04'] }],
      faults: [],
    },
  });
});

test('of several sheets the one wished for is read, an empty one too, so that another can be chosen', async () => {
  expect(await readFile(spreadsheet(), 'Old')).toMatchObject({
    table: { header: ['Keeper'], rows: [{ line: 2, cells: ['Ann'] }] },
    sheet: 'Old',
  });
  expect(await readFile(spreadsheet(), 'Cover')).toMatchObject({ table: { header: [], rows: [] }, sheet: 'Cover' });
});

test('a file is read by what it holds, whatever its name', async () => {
  const json = '{"type":"Feature","geometry":null,"properties":{"apiary name":"Mill"}}';
  expect(await readFile(new Blob([`\uFEFF\n ${json}`]))).toMatchObject({ table: { rows: [{ line: 1 }] } });
  expect(await readFile(new Blob(['a;b\n1;2\n']))).toMatchObject({ table: { header: ['a', 'b'] }, encoding: 'UTF-8' });
});

test.each([
  ['nothing', new Blob([]), 'empty'],
  ['a spreadsheet of the old kind', new Blob([Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 1)]), 'old-spreadsheet'],
  ['an archive that is no spreadsheet', new Blob([zipSync({ 'a.txt': strToU8('x') })]), 'broken'],
  ['an archive cut off', new Blob([Uint8Array.of(0x50, 0x4b, 3, 4, 20)]), 'broken'],
])('%s is said to be so', async (_, file, why) => {
  expect(await readFile(file)).toBe(why);
});
