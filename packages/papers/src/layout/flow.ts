import type { Atom } from './atom.ts';
import { type Placed, type Tag, tag } from './placed.ts';
import { bottomEdge, margins, page } from './sheet.ts';

/** Pages as they fill from top to bottom: each block takes its height, and a new page when it does not fit. */
export class Flow {
  readonly pages: Placed[][] = [[]];
  readonly structure = tag('Document');
  /** Where the next thing stands, in points from the top of the page. */
  y: number = margins.top;

  /** The page that is being filled. */
  get page(): Placed[] {
    return this.pages.at(-1) as Placed[];
  }

  /** Height left on the page, in points. */
  get left(): number {
    return bottomEdge - this.y;
  }

  get atTop(): boolean {
    return this.page.length === 0;
  }

  newPage(): void {
    this.pages.push([]);
    this.y = margins.top;
  }

  /** Takes a new page unless `height` points are left on this one; an empty page cannot be bettered. */
  makeRoom(height: number): void {
    if (height > this.left && !this.atTop) this.newPage();
  }

  /** Leaves `height` points free, except at the top of a page. */
  space(height: number): void {
    if (!this.atTop) this.y += height;
  }

  /** Places an atom at the left margin, on a new page when it does not fit, and goes on below it. */
  put(atom: Atom): void {
    this.makeRoom(atom.height);
    atom.place(margins.left, this.y, this.page);
    this.y += atom.height;
  }

  /** Draws a line from margin to margin. */
  rule(weight: number): void {
    const { y } = this;
    this.page.push({ kind: 'rule', x1: margins.left, y1: y, x2: page.width - margins.right, y2: y, weight });
  }

  /** Enters a tag in the paper's structure, as the next thing that is read. */
  enter(type: Tag['type'], more?: Parameters<typeof tag>[1]): Tag {
    const entered = tag(type, more);
    this.structure.children.push(entered);
    return entered;
  }
}
