import { type Atom, howMany, lineAtom, linesHeight } from '../atom.ts';
import type { Flow } from '../flow.ts';
import type { Table } from '../paper-definition.ts';
import { type Tag, tag } from '../placed.ts';
import { bottomEdge, lineWidth, margins, sizes } from '../sheet.ts';
import { breakIntoLines, type Letters, type Line } from '../text-lines.ts';
import type { MeasuredBlock } from './measured-block.ts';
import { type MeasuredCell, measureCell } from './table-cell.ts';

const cellPadding = 4;
const below = 10;

/** Of its first row, a table asks for no more than this before it takes a new page. */
const mostOfFirstRow = 200;

interface MeasuredColumn {
  readonly x: number;
  /** Of what stands in it, without the padding. */
  readonly width: number;
  readonly title: readonly Line[];
}

interface MeasuredRow {
  readonly cells: readonly MeasuredCell[];
  readonly height: number;
}

interface MeasuredTable {
  readonly summary: string;
  readonly columns: readonly MeasuredColumn[];
  readonly headerHeight: number;
  readonly rows: readonly MeasuredRow[];
  /** Of the header and what of the first row should stand below it. */
  readonly beginning: number;
}

export function measureTable(table: Table, letters: Letters): MeasuredBlock {
  const columns = measureColumns(table, letters);
  const headerHeight =
    linesHeight(Math.max(...columns.map(({ title }) => title.length)), sizes.small) + 2 * cellPadding;
  const rows = table.rows.map((row): MeasuredRow => {
    const cells = row.map((cell, index) => measureCell(cell, columns[index]?.width ?? 0, letters));
    return { cells, height: Math.max(...cells.map(({ height }) => height)) + 2 * cellPadding };
  });
  const beginning = headerHeight + (rows[0] ? Math.min(rows[0].height, mostOfFirstRow) : 0);
  const measured: MeasuredTable = { summary: table.summary, columns, headerHeight, rows, beginning };
  return {
    kind: 'table',
    height: headerHeight + rows.reduce((sum, row) => sum + row.height, 0) + below,
    beginning,
    place: (flow) => {
      place(measured, flow);
    },
  };
}

function measureColumns(table: Table, letters: Letters): MeasuredColumn[] {
  const whole = table.columns.reduce((sum, column) => sum + column.width, 0);
  let x: number = margins.left;
  return table.columns.map((column) => {
    const share = (column.width / whole) * lineWidth;
    const width = share - 2 * cellPadding;
    const measured = { x, width, title: breakIntoLines(column.title, sizes.small, width, letters, true) };
    x += share;
    return measured;
  });
}

function place(table: MeasuredTable, flow: Flow): void {
  const own = flow.enter('Table', { title: table.summary });
  flow.makeRoom(table.beginning);
  const head = tag('TR');
  own.children.push(head);
  placeHeader(table, head, flow);
  for (const row of table.rows) {
    const entered = tag('TR');
    own.children.push(entered);
    placeRow(table, row, entered, flow);
  }
  flow.y += below;
}

/** The titles of the columns; repeated on a further page they belong to no row, and are not read again. */
function placeHeader({ columns, headerHeight }: MeasuredTable, row: Tag | null, flow: Flow): void {
  for (const { x, title } of columns) {
    const cell = row ? tag('TH', { scope: 'Column' }) : null;
    if (cell) row?.children.push(cell);
    let at = flow.y + cellPadding;
    for (const line of title) {
      lineAtom(line, sizes.small, cell).place(x + cellPadding, at, flow.page);
      at += linesHeight(1, sizes.small);
    }
  }
  flow.y += headerHeight;
  flow.rule(1);
}

function placeRow(table: MeasuredTable, row: MeasuredRow, entered: Tag, flow: Flow): void {
  let waiting = row.cells.map((cell, index) => {
    const belongs = index === 0 ? tag('TH', { scope: 'Row' }) : tag('TD');
    entered.children.push(belongs);
    return cell.atoms(belongs);
  });
  const onNextPage = (): void => {
    flow.newPage();
    placeHeader(table, null, flow);
  };
  const fitting = (): number[] => waiting.map((atoms) => howMany(atoms, flow.left - 2 * cellPadding));

  const wholePage = bottomEdge - margins.top - table.headerHeight;
  if (row.height > flow.left && row.height <= wholePage) onNextPage();
  // A row higher than a page goes on over the pages, line by line.
  while (waiting.some((atoms) => atoms.length > 0)) {
    let taken = fitting();
    if (taken.every((count) => count === 0)) {
      onNextPage();
      taken = fitting();
      // An atom higher than a page is placed all the same: it is only ever a drawing, and drawings are smaller.
      if (taken.every((count) => count === 0)) taken = waiting.map((atoms) => Math.min(1, atoms.length));
    }
    placeSlice(
      table,
      waiting.map((atoms, index) => atoms.slice(0, taken[index])),
      flow,
    );
    waiting = waiting.map((atoms, index) => atoms.slice(taken[index]));
  }
}

/** As much of a row as stands on one page. */
function placeSlice(table: MeasuredTable, cells: readonly (readonly Atom[])[], flow: Flow): void {
  let deepest = 0;
  cells.forEach((atoms, index) => {
    let at = flow.y + cellPadding;
    for (const atom of atoms) {
      atom.place((table.columns[index]?.x ?? 0) + cellPadding, at, flow.page);
      at += atom.height;
    }
    deepest = Math.max(deepest, at - flow.y - cellPadding);
  });
  flow.y += deepest + 2 * cellPadding;
  flow.rule(0.4);
}
