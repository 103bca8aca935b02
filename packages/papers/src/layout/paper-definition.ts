import type { Drawing } from '../drawings/drawing.ts';

/*
 * A paper as plain values: what is on it, in which order, not where. The layout (lay-out.ts) finds the places, the
 * renderer (pdf.ts) writes them. Definitions need neither.
 */

/** A piece of text in one weight. */
export interface Run {
  readonly text: string;
  readonly bold?: boolean;
}

export type Text = string | readonly Run[];

export type Block = Heading | Paragraph | Facts | Table | Figure | List | Statement | SignatureLines | Together;

export interface Heading {
  readonly kind: 'heading';
  readonly level: 1 | 2 | 3;
  readonly text: string;
}

export interface Paragraph {
  readonly kind: 'paragraph';
  readonly text: Text;
  readonly size?: 'body' | 'small' | 'large';
}

/** Names and what they are, one below the other. */
export interface Facts {
  readonly kind: 'facts';
  readonly facts: readonly { readonly name: string; readonly value: Text }[];
}

/** A table; its header is repeated on every page it reaches. Widths are shares of the line. */
export interface Table {
  readonly kind: 'table';
  /** What the table is, for those who hear the paper. */
  readonly summary: string;
  readonly columns: readonly { readonly title: string; readonly width: number }[];
  readonly rows: readonly (readonly Cell[])[];
}

export type Cell = Text | PictureCell;

/** A drawing in a cell, with text beside it when given. */
export interface PictureCell {
  readonly drawing: Drawing;
  readonly alternative: string;
  /** Width on the paper in points. */
  readonly width: number;
  readonly text?: Text;
}

export interface Figure {
  readonly kind: 'figure';
  readonly drawing: Drawing;
  /** The same in words, for those who cannot see it. */
  readonly alternative: string;
  readonly width: number;
  readonly caption?: string;
}

export interface List {
  readonly kind: 'list';
  readonly items: readonly Text[];
}

/** The one thing to read first: a mark and large words, in a frame. */
export interface Statement {
  readonly kind: 'statement';
  readonly mark: Drawing | null;
  readonly alternative: string;
  readonly lines: readonly Text[];
}

/** Lines to sign on, side by side, each with what was drawn there. */
export interface SignatureLines {
  readonly kind: 'signatures';
  readonly lines: readonly {
    readonly title: string;
    /** What was drawn; null leaves the line free for a pen. */
    readonly drawing: Drawing | null;
    readonly alternative: string;
    readonly below: string;
  }[];
}

/** Blocks that stay on one page when a page can hold them. */
export interface Together {
  readonly kind: 'together';
  readonly blocks: readonly Block[];
}

export interface PaperDefinition {
  readonly title: string;
  readonly author: string;
  /** BCP 47 tag of the paper's language. */
  readonly language: string;
  /** The moment the paper speaks of, milliseconds since 1970: written as its date, so that the same record makes the same bytes. */
  readonly instant: number;
  readonly blocks: readonly Block[];
  /** At the head of every page after the first. */
  readonly header: string;
  /** At the foot of every page. */
  readonly footer: string;
  readonly pageOf: (page: number, pages: number) => string;
}
