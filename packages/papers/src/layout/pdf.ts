import PDFDocument from 'pdfkit';
import type { Drawing } from '../drawings/drawing.ts';
import { inks, washes } from '../drawings/palette.ts';
import { layOut } from './lay-out.ts';
import type { PaperDefinition } from './paper-definition.ts';
import type { LaidOut, Placed, Tag } from './placed.ts';
import { page } from './sheet.ts';
import type { FontName, Letters } from './text-lines.ts';

/**
 * The letters of a paper as TrueType bytes, handed in by the edge that has them. The fallback is asked for only when a
 * letter is missing in the first two, such as Greek or Cyrillic.
 */
export interface PaperFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
  readonly fallback: () => Promise<{ readonly regular: Uint8Array; readonly bold: Uint8Array }>;
}

/** One pixel of line weight in a drawing, in points. */
const pointsPerPixel = 0.45;

/**
 * Writes a paper as PDF: PDF 1.7 marked PDF/A-2a, tagged (Document, H1 to H3, P, L, Table, Figure with alternative
 * text), language and title set, every font embedded. Conformance is declared; no validator has looked at it. The same
 * paper makes the same bytes.
 *
 * This module brings pdfkit with it (212 kB gzipped), so screens import it only when a paper is asked for.
 */
export async function renderPdf(paper: PaperDefinition, fonts: PaperFonts): Promise<Uint8Array> {
  const { document, letters } = await openDocument(paper, fonts);
  const chunks: Uint8Array[] = [];
  const finished = new Promise<void>((resolve, reject) => {
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    document.on('end', () => resolve());
    document.on('error', reject);
  });
  write(document, layOut(paper, letters));
  document.end();
  await finished;

  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}

/** Where everything will stand, measured with the real fonts and not written. */
export async function previewLayout(paper: PaperDefinition, fonts: PaperFonts): Promise<LaidOut> {
  const { letters } = await openDocument(paper, fonts);
  return layOut(paper, letters);
}

async function openDocument(
  paper: PaperDefinition,
  fonts: PaperFonts,
): Promise<{ document: PDFKit.PDFDocument; letters: Letters }> {
  const document = new PDFDocument({
    size: [page.width, page.height],
    margin: 0,
    autoFirstPage: false,
    pdfVersion: '1.7',
    subset: 'PDF/A-2a',
    tagged: true,
    lang: paper.language,
    displayTitle: true,
    // The types know only a path, but bytes are taken as well; without a font of ours Helvetica would come in unembedded.
    font: fonts.regular as unknown as string,
    info: {
      Title: paper.title,
      Author: paper.author,
      Creator: 'Combside',
      Producer: 'Combside with PDFKit',
      CreationDate: new Date(paper.instant),
      ModDate: new Date(paper.instant),
    },
  });
  const register = (name: FontName, bytes: Uint8Array): void => {
    document.registerFont(name, bytes as unknown as string);
  };
  register('regular', fonts.regular);
  register('bold', fonts.bold);

  const covers = coverageOf(document, 'regular');
  if ([...everyText(paper)].some((letter) => !covers(letter.codePointAt(0) as number))) {
    const fallback = await fonts.fallback();
    register('regular fallback', fallback.regular);
    register('bold fallback', fallback.bold);
  }

  const known = new Map<string, number>();
  const letters: Letters = {
    has: covers,
    width(text, font, size) {
      // Widths grow with the size, so one measurement of a word serves every size.
      const key = `${font} ${text}`;
      let width = known.get(key);
      if (width === undefined) {
        width = document.font(font).fontSize(1000).widthOfString(text);
        known.set(key, width);
      }
      return (width * size) / 1000;
    },
  };
  return { document, letters };
}

/** Whether a registered font has a letter. pdfkit keeps the opened font on the document and does not type it. */
function coverageOf(document: PDFKit.PDFDocument, font: FontName): (codePoint: number) => boolean {
  document.font(font);
  const opened = (document as unknown as { _font: { font: { hasGlyphForCodePoint(codePoint: number): boolean } } })
    ._font.font;
  const known = new Map<number, boolean>();
  return (codePoint) => {
    let has = known.get(codePoint);
    if (has === undefined) {
      // Control characters are never drawn, so they never call for another font.
      has = codePoint < 32 || codePoint === 0xad || opened.hasGlyphForCodePoint(codePoint);
      known.set(codePoint, has);
    }
    return has;
  };
}

function everyText(paper: PaperDefinition): string {
  const texts: string[] = [paper.header, paper.footer];
  JSON.stringify(paper.blocks, (_key, value) => {
    if (typeof value === 'string') texts.push(value);
    return value;
  });
  return texts.join('');
}

function write(document: PDFKit.PDFDocument, laid: LaidOut): void {
  // Structure elements are made first and filled as their pieces come by, on whichever page.
  const elements = new Map<Tag, ReturnType<PDFKit.PDFDocument['struct']>>();
  const make = (tag: Tag): ReturnType<PDFKit.PDFDocument['struct']> => {
    const element = document.struct(tag.type, {
      ...(tag.alternative ? { alt: tag.alternative } : {}),
      ...(tag.title ? { title: tag.title } : {}),
      ...(tag.scope ? { scope: tag.scope } : {}),
    } as Parameters<PDFKit.PDFDocument['struct']>[1]);
    elements.set(tag, element);
    return element;
  };
  const root = make(laid.structure);
  document.addStructure(root);

  // An element's pieces and its inner elements are added in reading order: children when their turn comes.
  const attached = new Set<Tag>([laid.structure]);
  const parents = new Map<Tag, Tag>();
  const link = (tag: Tag): void => {
    for (const child of tag.children) {
      parents.set(child, tag);
      link(child);
    }
  };
  link(laid.structure);
  const attach = (tag: Tag): ReturnType<PDFKit.PDFDocument['struct']> => {
    if (attached.has(tag)) return elements.get(tag) as ReturnType<PDFKit.PDFDocument['struct']>;
    const parent = parents.get(tag);
    if (!parent) throw new Error(`a ${tag.type} stands on the page but not in the structure of the paper`);
    const above = attach(parent);
    const element = make(tag);
    above.add(element);
    attached.add(tag);
    return element;
  };
  // Cells that hold nothing have no piece to bring them in, and a row without them would shift its columns.
  const attachAll = (tag: Tag): void => {
    for (const child of tag.children) {
      attach(child);
      attachAll(child);
    }
  };
  attachAll(laid.structure);

  for (const placed of laid.pages) {
    document.addPage();
    for (const group of groupsOf(placed)) {
      const tag = tagOf(group[0] as Placed);
      if (tag === null) {
        document.markContent('Artifact', { type: 'Layout' });
        for (const one of group) draw(document, one);
        document.endMarkedContent();
        continue;
      }
      const content = document.markStructureContent(tag.type);
      for (const one of group) draw(document, one);
      document.endMarkedContent();
      attach(tag).add(content);
    }
  }
  root.end();
}

const tagOf = (placed: Placed): Tag | null => (placed.kind === 'rule' ? null : placed.tag);

/** What stands next to one another under the same tag is marked once. */
function groupsOf(placed: readonly Placed[]): Placed[][] {
  const groups: Placed[][] = [];
  for (const one of placed) {
    const last = groups.at(-1);
    if (last && tagOf(last[0] as Placed) === tagOf(one)) last.push(one);
    else groups.push([one]);
  }
  return groups;
}

function draw(document: PDFKit.PDFDocument, placed: Placed): void {
  switch (placed.kind) {
    case 'text':
      document
        .font(placed.font)
        .fontSize(placed.size)
        .fillColor(placed.faint ? '#3F3B34' : inks.ink)
        .text(placed.text, placed.x, placed.baseline, { lineBreak: false, baseline: 'alphabetic' });
      break;
    case 'rule':
      document
        .lineWidth(placed.weight)
        .strokeColor(inks.ink)
        .moveTo(placed.x1, placed.y1)
        .lineTo(placed.x2, placed.y2)
        .stroke();
      break;
    case 'drawing':
      drawDrawing(document, placed.drawing, placed.x, placed.y, placed.width / placed.drawing.width);
      break;
  }
}

function drawDrawing(document: PDFKit.PDFDocument, drawing: Drawing, x: number, y: number, scale: number): void {
  document.save();
  document.translate(x, y).scale(scale);
  document.lineJoin('round').lineCap('round');
  for (const shape of drawing.shapes) {
    document.path(shape.d);
    const filled = shape.fill !== 'none';
    const stroked = shape.stroke !== 'none' && shape.weight > 0;
    if (stroked) {
      document.lineWidth((shape.weight * pointsPerPixel) / scale).strokeColor(paperColour(inks[shape.stroke]));
      if (shape.dash) {
        const [on, off] = shape.dash.map((length) => (length * pointsPerPixel) / scale);
        document.dash(on ?? 1, { space: off ?? on ?? 1 });
      }
    }
    if (filled) document.fillColor(paperColour(washes[shape.fill]));
    if (filled && stroked) document.fillAndStroke();
    else if (filled) document.fill();
    else if (stroked) document.stroke();
    if (shape.dash) document.undash();
  }
  for (const label of drawing.labels) {
    document.font('regular').fontSize(label.size).fillColor(inks.ink);
    const width = document.widthOfString(label.text);
    const left = label.anchor === 'middle' ? label.x - width / 2 : label.anchor === 'end' ? label.x - width : label.x;
    document.text(label.text, left, label.y, { lineBreak: false, baseline: 'alphabetic' });
  }
  document.restore();
}

/** The ground of a screen is paper-coloured; paper itself is white. */
function paperColour(colour: string): string {
  return colour === inks.paper ? '#FFFFFF' : colour;
}
