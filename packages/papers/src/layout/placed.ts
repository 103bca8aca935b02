import type { Drawing } from '../drawings/drawing.ts';
import type { FontName } from './text-lines.ts';

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

/** One thing at its place on a page, in points from the upper left corner. */
export type Placed = PlacedText | PlacedDrawing | PlacedRule;

export interface LaidOut {
  readonly pages: readonly (readonly Placed[])[];
  readonly structure: Tag;
}

/** Makes a tag that holds nothing yet. */
export const tag = (type: Tag['type'], more: Omit<Partial<Tag>, 'type' | 'children'> = {}): Tag => ({
  type,
  children: [],
  ...more,
});
