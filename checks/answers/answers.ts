import ts from 'typescript';

/** One place where text from outside is taken for a type without being looked at. */
export interface Unparsed {
  readonly path: string;
  readonly line: number;
}

/**
 * Finds answers that are believed instead of parsed: `await answer.json() as Answer`, `JSON.parse(text) as Answer`, and
 * either of them given straight to a variable with a type. `as unknown` believes nothing.
 */
export function unparsedIn(path: string, text: string): Unparsed[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: Unparsed[] = [];
  const visit = (node: ts.Node): void => {
    const believed =
      ts.isAsExpression(node) || ts.isTypeAssertionExpression(node) || ts.isVariableDeclaration(node)
        ? node.type
        : undefined;
    const given = ts.isAsExpression(node) || ts.isTypeAssertionExpression(node) ? node.expression : initialiser(node);
    if (believed && believed.kind !== ts.SyntaxKind.UnknownKeyword && given && comesFromOutside(given)) {
      found.push({ path, line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function initialiser(node: ts.Node): ts.Expression | undefined {
  return ts.isVariableDeclaration(node) ? node.initializer : undefined;
}

function comesFromOutside(expression: ts.Expression): boolean {
  if (ts.isParenthesizedExpression(expression) || ts.isAwaitExpression(expression))
    return comesFromOutside(expression.expression);
  if (!ts.isCallExpression(expression) || !ts.isPropertyAccessExpression(expression.expression)) return false;
  const called = expression.expression;
  return called.name.text === 'json' || (called.name.text === 'parse' && called.expression.getText() === 'JSON');
}
