import ts from 'typescript';

/** One place in a file. */
export interface Place {
  readonly path: string;
  readonly line: number;
}

/** Finds calls of the browser's own `fetch`: questions to the office that go past the one way to ask. */
export function rawQuestionsIn(path: string, text: string): Place[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: Place[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && /^(?:(?:globalThis|window|self)[.])?fetch$/.test(node.expression.getText())) {
      found.push({ path, line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/**
 * Finds answers that are believed instead of parsed: `await answer.json() as Answer`, `JSON.parse(text) as Answer`, and
 * either of them given straight to a variable with a type. `as unknown` believes nothing.
 */
export function unparsedIn(path: string, text: string): Place[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: Place[] = [];
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
