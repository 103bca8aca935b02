import type { Drawing } from '../drawings/drawing.ts';
import type {
  Block,
  Cell,
  Figure,
  PaperDefinition,
  PictureCell,
  SignatureLines,
  Statement,
  Table,
  Text,
} from './paper-definition.ts';
import { breakIntoLines, type FontName, type Line, type Measure } from './text-lines.ts';

/*
 * Finds the place of everything on A4 pages, from top to bottom. Nothing is measured twice and nothing is moved later:
 * each block asks whether it fits in what is left of the page, and takes a new page when it does not.
 */

/** A4 in points (ISO 216: 210 by 297 mm). */
export const page = { width: 595.28, height: 841.89 } as const;

/** 19 mm at the sides, so that a punch and a thumb find room. */
export const margins = { left: 54, right: 54, top: 54, bottom: 64 } as const;

export const lineWidth = page.width - margins.left - margins.right;

const sizes = { title: 20, section: 13, part: 11, body: 10, small: 8.5, large: 12.5 } as const;
const leading = 1.36;
const bottomEdge = page.height - margins.bottom;

/** Where in the structure of the paper something belongs: the tag it is marked with. */
export interface Tag {
  readonly type:
    | 'Document'
    | 'H1'
    | 'H2'
    | 'H3'
    | 'P'
    | 'Figure'
    | 'Caption'
    | 'L'
    | 'LI'
    | 'Lbl'
    | 'LBody'
    | 'Table'
    | 'TR'
    | 'TH'
    | 'TD';
  readonly alternative?: string;
  readonly title?: string;
  readonly scope?: 'Column' | 'Row';
  readonly children: Tag[];
}

export interface PlacedText {
  readonly kind: 'text';
  readonly text: string;
  readonly font: FontName;
  readonly size: number;
  readonly x: number;
  /** Of the line the letters stand on. */
  readonly baseline: number;
  readonly width: number;
  readonly faint: boolean;
  /** Null for what belongs to the page and not to the paper: repeated headers, footers. */
  readonly tag: Tag | null;
}

export interface PlacedDrawing {
  readonly kind: 'drawing';
  readonly drawing: Drawing;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly tag: Tag | null;
}

export interface PlacedRule {
  readonly kind: 'rule';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly weight: number;
}

export type Placed = PlacedText | PlacedDrawing | PlacedRule;

export interface LaidOut {
  readonly pages: readonly (readonly Placed[])[];
  readonly structure: Tag;
}

const tag = (type: Tag['type'], more: Omit<Partial<Tag>, 'type' | 'children'> = {}): Tag => ({
  type,
  children: [],
  ...more,
});

/** Something that takes up height and knows how to place itself. */
interface Atom {
  readonly height: number;
  readonly place: (x: number, y: number, into: Placed[]) => void;
}

/** Lays a paper out on pages. */
export function layOut(paper: PaperDefinition, measure: Measure): LaidOut {
  const structure = tag('Document');
  const pages: Placed[][] = [[]];
  let y: number = margins.top;

  const current = (): Placed[] => pages.at(-1) as Placed[];
  const newPage = (): void => {
    pages.push([]);
    y = margins.top;
  };
  const left = (): number => bottomEdge - y;
  const atTop = (): boolean => current().length === 0;
  const space = (height: number): void => {
    if (!atTop()) y += height;
  };
  const put = (atom: Atom, x = margins.left): void => {
    if (atom.height > left() && !atTop()) newPage();
    atom.place(x, y, current());
    y += atom.height;
  };

  const blockHeight = (block: Block): number => {
    switch (block.kind) {
      case 'heading': {
        const lines = breakIntoLines(block.text, headingSize(block.level), lineWidth, measure, true);
        return lines.length * headingSize(block.level) * 1.22 + headingSpace(block.level) + 4;
      }
      case 'paragraph':
        return paragraphLines(block.text, block.size ?? 'body').length * sizes[block.size ?? 'body'] * leading + 6;
      case 'facts':
        return block.facts.reduce((sum, fact) => sum + factHeight(fact), 0) + 6;
      case 'table': {
        const grid = columnsOf(block);
        return headerHeight(block, grid) + block.rows.reduce((sum, row) => sum + rowHeight(row, grid), 0) + 10;
      }
      case 'figure':
        return figureAtoms(block, tag('Figure')).reduce((sum, atom) => sum + atom.height, 0) + 10;
      case 'list':
        return block.items.reduce((sum, item) => sum + listLines(item).length * sizes.body * leading + 3, 0) + 5;
      case 'statement':
        return statementHeight(block) + 10;
      case 'signatures':
        return signatureHeight + 6;
      case 'together':
        return block.blocks.reduce((sum, inner) => sum + blockHeight(inner), 0);
    }
  };

  /** Height without which a heading would stand alone at the foot of a page: the beginning of what follows it. */
  const beginning = (block: Block | undefined): number => {
    if (!block) return 0;
    switch (block.kind) {
      case 'heading':
        return blockHeight(block);
      case 'table': {
        const grid = columnsOf(block);
        return headerHeight(block, grid) + (block.rows[0] ? Math.min(rowHeight(block.rows[0], grid), 200) : 0);
      }
      case 'facts':
        return block.facts.slice(0, 2).reduce((sum, fact) => sum + factHeight(fact), 0);
      case 'list':
        return block.items[0] ? listLines(block.items[0]).length * sizes.body * leading : 0;
      case 'paragraph': {
        // Up to four lines are not parted, so a heading before them needs them all.
        const height = sizes[block.size ?? 'body'] * leading;
        const lines = paragraphLines(block.text, block.size ?? 'body').length;
        return height * (lines <= 4 ? lines : 3);
      }
      case 'figure':
        return Math.min(blockHeight(block), blockHeight({ ...block, width: block.width * (2 / 3) }));
      case 'together':
        return Math.min(blockHeight(block), bottomEdge - margins.top - 60);
      default:
        return blockHeight(block);
    }
  };

  const paragraphLines = (text: Text, size: 'body' | 'small' | 'large'): Line[] =>
    breakIntoLines(text, sizes[size], lineWidth, measure);
  const listLines = (text: Text): Line[] => breakIntoLines(text, sizes.body, lineWidth - 14, measure);

  const lineAtom = (line: Line, size: number, belongs: Tag | null, faint = false, high = leading): Atom => ({
    height: size * high,
    place: (x, top, into) => {
      // Letters stand so that the space of the line is shared above and below: ascender .95, descender .29 of Atkinson.
      const baseline = top + (size * high) / 2 + size * 0.33;
      for (const piece of line) {
        into.push({
          kind: 'text',
          text: piece.text,
          font: piece.font,
          size,
          x: x + piece.x,
          baseline,
          width: piece.width,
          faint,
          tag: belongs,
        });
      }
    },
  });

  const pictureAtom = (picture: Pick<PictureCell, 'drawing' | 'width'>, belongs: Tag | null): Atom => {
    const height = (picture.width * picture.drawing.height) / picture.drawing.width;
    return {
      height,
      place: (x, top, into) => {
        into.push({ kind: 'drawing', drawing: picture.drawing, x, y: top, width: picture.width, height, tag: belongs });
      },
    };
  };

  const rule = (weight: number): void => {
    current().push({ kind: 'rule', x1: margins.left, y1: y, x2: page.width - margins.right, y2: y, weight });
  };

  // -- facts

  const nameWidth = lineWidth * 0.32;
  const factLines = (fact: { name: string; value: Text }): { names: Line[]; values: Line[] } => ({
    names: breakIntoLines(fact.name, sizes.body, nameWidth - 10, measure),
    values: breakIntoLines(fact.value, sizes.body, lineWidth - nameWidth, measure),
  });
  const factHeight = (fact: { name: string; value: Text }): number => {
    const { names, values } = factLines(fact);
    return Math.max(names.length, values.length) * sizes.body * leading + 2;
  };

  // -- tables

  const cellPadding = 4;
  const columnsOf = (table: Table): { x: number; width: number }[] => {
    const whole = table.columns.reduce((sum, column) => sum + column.width, 0);
    let x: number = margins.left;
    return table.columns.map((column) => {
      const width = (column.width / whole) * lineWidth;
      const at = { x, width: width - 2 * cellPadding };
      x += width;
      return at;
    });
  };
  type Grid = ReturnType<typeof columnsOf>;

  const titleLines = (table: Table, grid: Grid): Line[][] =>
    table.columns.map((column, index) =>
      breakIntoLines(column.title, sizes.small, grid[index]?.width ?? 0, measure, true),
    );
  const headerHeight = (table: Table, grid: Grid): number =>
    Math.max(...titleLines(table, grid).map((lines) => lines.length)) * sizes.small * leading + 2 * cellPadding;

  /** A cell as a column of atoms; a picture has its text beside it. */
  const cellAtoms = (cell: Cell, width: number, belongs: Tag): Atom[] => {
    if (typeof cell === 'string' || !('drawing' in cell)) {
      return breakIntoLines(cell, sizes.body, width, measure).map((line) => lineAtom(line, sizes.body, belongs));
    }
    const figure = tag('Figure', { alternative: cell.alternative });
    belongs.children.push(figure);
    const picture = pictureAtom(cell, figure);
    if (cell.text === undefined) return [picture];
    // A tag holds its text and its figure as two children, so the text gets a paragraph of its own.
    const paragraph = tag('P');
    belongs.children.push(paragraph);
    const indent = cell.width + 6;
    const lines = breakIntoLines(cell.text, sizes.body, width - indent, measure);
    const textHeight = lines.length * sizes.body * leading;
    const height = Math.max(picture.height, textHeight);
    return [
      {
        height,
        place: (x, top, into) => {
          // The text begins level with the cells beside it; a small mark stands level with its first line.
          picture.place(x, top + Math.max(0, (sizes.body * leading - picture.height) / 2), into);
          let at = top;
          for (const line of lines) {
            lineAtom(line, sizes.body, paragraph).place(x + indent, at, into);
            at += sizes.body * leading;
          }
        },
      },
    ];
  };
  const rowHeight = (row: readonly Cell[], grid: Grid): number =>
    Math.max(
      ...row.map((cell, index) =>
        cellAtoms(cell, grid[index]?.width ?? 0, tag('TD')).reduce((sum, atom) => sum + atom.height, 0),
      ),
    ) +
    2 * cellPadding;

  const placeHeader = (table: Table, grid: Grid, row: Tag | null): void => {
    const all = titleLines(table, grid);
    const height = headerHeight(table, grid);
    all.forEach((lines, index) => {
      const cell = row ? tag('TH', { scope: 'Column' }) : null;
      if (cell) row?.children.push(cell);
      let at = y + cellPadding;
      for (const line of lines) {
        lineAtom(line, sizes.small, cell).place((grid[index]?.x ?? 0) + cellPadding, at, current());
        at += sizes.small * leading;
      }
    });
    y += height;
    rule(1);
  };

  const placeTable = (table: Table): void => {
    const grid = columnsOf(table);
    const own = tag('Table', { title: table.summary });
    structure.children.push(own);
    if (
      headerHeight(table, grid) + (table.rows[0] ? Math.min(rowHeight(table.rows[0], grid), 200) : 0) > left() &&
      !atTop()
    )
      newPage();
    const head = tag('TR');
    own.children.push(head);
    placeHeader(table, grid, head);
    const wholePage = bottomEdge - margins.top - headerHeight(table, grid);

    for (const row of table.rows) {
      const tags = tag('TR');
      own.children.push(tags);
      const columns = row.map((cell, index) => {
        const belongs = index === 0 ? tag('TH', { scope: 'Row' }) : tag('TD');
        tags.children.push(belongs);
        return cellAtoms(cell, grid[index]?.width ?? 0, belongs);
      });
      const height = rowHeight(row, grid);
      if (height > left() && height <= wholePage) {
        newPage();
        placeHeader(table, grid, null);
      }
      // A row higher than a page goes on over the pages, line by line.
      let waiting = columns;
      while (waiting.some((atoms) => atoms.length > 0)) {
        const room = left() - 2 * cellPadding;
        let taken = waiting.map((atoms) => howMany(atoms, room));
        if (taken.every((count) => count === 0)) {
          newPage();
          placeHeader(table, grid, null);
          // An atom higher than a page is placed all the same: it is only ever a drawing, and drawings are smaller.
          if (waiting.every((atoms) => howMany(atoms, left() - 2 * cellPadding) === 0))
            taken = waiting.map((atoms) => Math.min(1, atoms.length));
          else continue;
        }
        let deepest = 0;
        waiting.forEach((atoms, index) => {
          let at = y + cellPadding;
          for (const atom of atoms.slice(0, taken[index])) {
            atom.place((grid[index]?.x ?? 0) + cellPadding, at, current());
            at += atom.height;
          }
          deepest = Math.max(deepest, at - y - cellPadding);
        });
        y += deepest + 2 * cellPadding;
        rule(0.4);
        waiting = waiting.map((atoms, index) => atoms.slice(taken[index]));
      }
    }
    y += 10;
  };

  // -- figures, statements, signatures

  const figureAtoms = (figure: Figure, belongs: Tag): Atom[] => {
    const caption = figure.caption ? breakIntoLines(figure.caption, sizes.small, lineWidth, measure) : [];
    const below = tag('Caption');
    if (caption.length > 0) belongs.children.push(below);
    return [pictureAtom(figure, belongs), ...caption.map((line) => lineAtom(line, sizes.small, below, true))];
  };

  /** A figure that does not fit is made smaller, down to two thirds, before a page is left half empty. */
  const shrunkToFit = (figure: Figure, above = 0): Figure => {
    const excess = blockHeight(figure) + above - left();
    if (excess <= 0) return figure;
    // Half a point more, so that rounding does not push it over after all.
    const smaller = figure.width - ((excess + 0.5) * figure.drawing.width) / figure.drawing.height;
    return smaller >= figure.width * (2 / 3) ? { ...figure, width: smaller } : figure;
  };

  const statementIndent = (block: Statement): number => (block.mark ? 46 : 0);
  const statementLines = (block: Statement): Line[][] =>
    block.lines.map((text, index) =>
      breakIntoLines(
        text,
        index === 0 ? sizes.large : sizes.body,
        lineWidth - 24 - statementIndent(block),
        measure,
        index === 0,
      ),
    );
  const statementHeight = (block: Statement): number => {
    const lines = statementLines(block).reduce(
      (sum, one, index) => sum + one.length * (index === 0 ? sizes.large : sizes.body) * leading + 2,
      0,
    );
    return Math.max(lines, block.mark ? 34 : 0) + 22;
  };

  const placeStatement = (block: Statement): void => {
    const height = statementHeight(block);
    if (height > left() && !atTop()) newPage();
    const top = y;
    const frame = (x1: number, y1: number, x2: number, y2: number): void => {
      current().push({ kind: 'rule', x1, y1, x2, y2, weight: 1.2 });
    };
    const rightEdge = page.width - margins.right;
    frame(margins.left, top, rightEdge, top);
    frame(rightEdge, top, rightEdge, top + height);
    frame(rightEdge, top + height, margins.left, top + height);
    frame(margins.left, top + height, margins.left, top);
    if (block.mark) {
      const figure = tag('Figure', { alternative: block.alternative });
      structure.children.push(figure);
      pictureAtom({ drawing: block.mark, width: 34 }, figure).place(margins.left + 12, top + 11, current());
    }
    y = top + 11;
    statementLines(block).forEach((lines, index) => {
      const paragraph = tag('P');
      structure.children.push(paragraph);
      const size = index === 0 ? sizes.large : sizes.body;
      for (const line of lines) {
        lineAtom(line, size, paragraph).place(margins.left + 12 + statementIndent(block), y, current());
        y += size * leading;
      }
      y += 2;
    });
    y = top + height + 10;
  };

  const signatureHeight = 104;
  const placeSignatures = (block: SignatureLines): void => {
    if (signatureHeight > left() && !atTop()) newPage();
    const gap = 24;
    const width = (lineWidth - gap * (block.lines.length - 1)) / Math.max(1, block.lines.length);
    const top = y;
    block.lines.forEach((line, index) => {
      const x = margins.left + index * (width + gap);
      const paragraph = tag('P');
      structure.children.push(paragraph);
      for (const title of breakIntoLines(line.title, sizes.small, width, measure, true).slice(0, 1)) {
        lineAtom(title, sizes.small, paragraph).place(x, top, current());
      }
      if (line.drawing) {
        const figure = tag('Figure', { alternative: line.alternative });
        structure.children.push(figure);
        pictureAtom({ drawing: line.drawing, width: Math.min(150, width) }, figure).place(x, top + 14, current());
      }
      current().push({ kind: 'rule', x1: x, y1: top + 68, x2: x + width, y2: top + 68, weight: 0.8 });
      let at = top + 71;
      const below = tag('P');
      structure.children.push(below);
      for (const one of breakIntoLines(line.below, sizes.small, width, measure)) {
        lineAtom(one, sizes.small, below).place(x, at, current());
        at += sizes.small * leading;
      }
    });
    y = top + signatureHeight + 6;
  };

  // -- the flow

  const placeBlocks = (blocks: readonly Block[]): void => {
    blocks.forEach((block, index) => {
      switch (block.kind) {
        case 'heading': {
          const size = headingSize(block.level);
          const lines = breakIntoLines(block.text, size, lineWidth, measure, true);
          const own = lines.length * size * 1.22 + 4;
          // A heading followed by a heading asks for what follows both.
          const after = blocks[index + 1];
          const further = after?.kind === 'heading' ? beginning(blocks[index + 2]) : 0;
          if (headingSpace(block.level) + own + beginning(after) + further > left() && !atTop()) newPage();
          space(headingSpace(block.level));
          const heading = tag(`H${block.level}`);
          structure.children.push(heading);
          for (const line of lines) put(lineAtom(line, size, heading, false, 1.22));
          y += 4;
          break;
        }
        case 'paragraph': {
          const paragraph = tag('P');
          structure.children.push(paragraph);
          const size = sizes[block.size ?? 'body'];
          const lines = paragraphLines(block.text, block.size ?? 'body');
          // Two lines at least stay together at either end of a page.
          const fits = Math.floor(left() / (size * leading));
          if (fits < lines.length && (fits < 2 || lines.length - fits < 2) && lines.length <= 4 && !atTop()) newPage();
          for (const line of lines) put(lineAtom(line, size, paragraph));
          y += 6;
          break;
        }
        case 'facts': {
          const table = tag('Table');
          structure.children.push(table);
          for (const fact of block.facts) {
            const row = tag('TR');
            const name = tag('TH', { scope: 'Row' });
            const value = tag('TD');
            row.children.push(name, value);
            table.children.push(row);
            const { names, values } = factLines(fact);
            // A short fact stays whole; a long one, such as remarks, goes on over the page line by line.
            const height = sizes.body * leading;
            if (factHeight(fact) > left() && factHeight(fact) < (bottomEdge - margins.top) / 3 && !atTop()) newPage();
            for (let at = 0; at < Math.max(names.length, values.length); at += 1) {
              if (height > left() && !atTop()) newPage();
              const [nameLine, valueLine] = [names[at], values[at]];
              if (nameLine) lineAtom(nameLine, sizes.body, name, true).place(margins.left, y, current());
              if (valueLine) lineAtom(valueLine, sizes.body, value).place(margins.left + nameWidth, y, current());
              y += height;
            }
            y += 2;
          }
          y += 6;
          break;
        }
        case 'table':
          placeTable(block);
          break;
        case 'figure': {
          const figure = tag('Figure', { alternative: block.alternative });
          structure.children.push(figure);
          const fitted = shrunkToFit(block);
          const height = blockHeight(fitted);
          if (height > left() && !atTop()) newPage();
          for (const atom of figureAtoms(fitted, figure)) put(atom);
          y += 10;
          break;
        }
        case 'list': {
          const list = tag('L');
          structure.children.push(list);
          for (const item of block.items) {
            const entry = tag('LI');
            const label = tag('Lbl');
            const body = tag('LBody');
            entry.children.push(label, body);
            list.children.push(entry);
            const lines = listLines(item);
            if (Math.min(lines.length, 3) * sizes.body * leading > left() && !atTop()) newPage();
            lines.forEach((line, at) => {
              const height = sizes.body * leading;
              if (height > left() && !atTop()) newPage();
              if (at === 0) {
                const dot = breakIntoLines('•', sizes.body, 14, measure)[0] ?? [];
                lineAtom(dot, sizes.body, label).place(margins.left + 2, y, current());
              }
              lineAtom(line, sizes.body, body).place(margins.left + 14, y, current());
              y += height;
            });
            y += 3;
          }
          y += 5;
          break;
        }
        case 'statement':
          placeStatement(block);
          break;
        case 'signatures':
          placeSignatures(block);
          break;
        case 'together': {
          const height = blockHeight(block);
          const figure = block.blocks.find((one) => one.kind === 'figure');
          const fits = height <= left() || (figure && shrunkToFit(figure, height - blockHeight(figure)) !== figure);
          if (!fits && height <= bottomEdge - margins.top && !atTop()) newPage();
          placeBlocks(block.blocks);
          break;
        }
      }
    });
  };

  placeBlocks(paper.blocks);
  if (pages.length > 1 && pages.at(-1)?.length === 0) pages.pop();

  pages.forEach((placed, index) => {
    const furniture = (text: string, x: number, top: number, alignRight: boolean): void => {
      const line = breakIntoLines(text, sizes.small, lineWidth, measure)[0] ?? [];
      const last = line.at(-1);
      const width = last ? last.x + last.width : 0;
      lineAtom(line, sizes.small, null, true).place(alignRight ? x - width : x, top, placed);
    };
    const foot = page.height - margins.bottom + 22;
    placed.push({
      kind: 'rule',
      x1: margins.left,
      y1: foot - 5,
      x2: page.width - margins.right,
      y2: foot - 5,
      weight: 0.4,
    });
    furniture(paper.footer, margins.left, foot, false);
    furniture(paper.pageOf(index + 1, pages.length), page.width - margins.right, foot, true);
    if (index > 0 && paper.header) furniture(paper.header, margins.left, margins.top - 26, false);
  });
  return { pages, structure };
}

function headingSize(level: 1 | 2 | 3): number {
  return [sizes.title, sizes.section, sizes.part][level - 1] ?? sizes.part;
}

function headingSpace(level: 1 | 2 | 3): number {
  return [0, 12, 8][level - 1] ?? 8;
}

/** How many atoms from the first on fit into a height. */
function howMany(atoms: readonly Atom[], room: number): number {
  let used = 0;
  let count = 0;
  for (const atom of atoms) {
    used += atom.height;
    if (used > room + 0.01) break;
    count += 1;
  }
  return count;
}

/** Everything that can be read on the pages in order, one line for each tag, without the page's own header and footer. */
export function readingText(laid: LaidOut): string {
  let text = '';
  let before: Tag | null = null;
  for (const one of laid.pages.flat()) {
    if (one.kind !== 'text' || one.tag === null) continue;
    if (before !== null && one.tag !== before) text += '\n';
    text += one.text;
    before = one.tag;
  }
  return text;
}
