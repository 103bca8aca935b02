import ts from 'typescript';

/** A place that writes into the record past the one way. */
export interface RawWrite {
  readonly line: number;
  readonly text: string;
}

/** The book's ways to add or change entries, which only the one way to write, and the exchange with the office, may call. */
const writes = new Set(['write']);

/**
 * Finds calls of a book's `write`: `book.write(...)`, `device.book.write(...)`, `(await openBook(...)).write(...)`, and
 * `write` taken out of a book to be called under its own name.
 *
 * @param name of the file, which says whether it holds JSX
 */
export function rawWrites(name: string, code: string): RawWrite[] {
  const file = ts.createSourceFile(name, code, ts.ScriptTarget.Latest, true);
  const found: RawWrite[] = [];
  const isBook = (node: ts.Node): boolean => /\b[Bb]ook\b|openBook/.test(node.getText(file));
  const report = (node: ts.Node) =>
    found.push({
      line: file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1,
      text: node.getText(file).split('\n')[0] ?? '',
    });
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node) && writes.has(node.name.text) && isBook(node.expression)) report(node);
    if (
      ts.isElementAccessExpression(node) &&
      ts.isStringLiteralLike(node.argumentExpression) &&
      writes.has(node.argumentExpression.text) &&
      isBook(node.expression)
    ) {
      report(node);
    }
    if (ts.isVariableDeclaration(node) && ts.isObjectBindingPattern(node.name) && node.initializer) {
      const takes = node.name.elements.some((one) => writes.has((one.propertyName ?? one.name).getText(file)));
      if (takes && isBook(node.initializer)) report(node);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}
