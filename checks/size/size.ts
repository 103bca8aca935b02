import ts from 'typescript';

/** A function too long to be read at once is parted, or listed with its reason. */
export const mostLines = 150;

/** One function, from its first line to its last. */
export interface MeasuredFunction {
  readonly path: string;
  readonly name: string;
  readonly lines: number;
}

/**
 * Measures every function of a source text. The callback of a `describe` is not one: it is a list of tests, and each
 * test in it is measured by itself.
 */
export function functionsIn(path: string, text: string): MeasuredFunction[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const lineOf = (position: number): number => source.getLineAndCharacterOfPosition(position).line;
  const found: MeasuredFunction[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body && !isListOfTests(node)) {
      found.push({ path, name: nameOf(node), lines: lineOf(node.end) - lineOf(node.getStart()) + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function isListOfTests(node: ts.Node): boolean {
  return ts.isCallExpression(node.parent) && /^describe\b/.test(node.parent.expression.getText());
}

/** A function's own name, that of what it is given to, or the first words of the test it is. */
function nameOf(node: ts.SignatureDeclaration): string {
  if (node.name) return node.name.getText();
  const { parent } = node;
  if (ts.isVariableDeclaration(parent) || ts.isPropertyAssignment(parent)) return parent.name.getText();
  const [first] = ts.isCallExpression(parent) ? parent.arguments : [];
  return first && ts.isStringLiteralLike(first) ? first.text : 'a function without a name';
}

/** Why a long function may stay; the key is `path name`. */
export type Allowances = Readonly<Record<string, string>>;

/** Finds functions that are too long and not listed, and listings that allow nothing any more. */
export function tooLong(functions: readonly MeasuredFunction[], allowed: Allowances): string[] {
  const long = functions.filter(({ lines }) => lines > mostLines);
  const keyOf = ({ path, name }: MeasuredFunction): string => `${path} ${name}`;
  const keys = new Set(long.map(keyOf));
  return [
    ...long
      .filter((one) => !(keyOf(one) in allowed))
      .map((one) => `${keyOf(one)}: ${one.lines} lines: part it by what it does, to ${mostLines} at most`),
    ...Object.keys(allowed)
      .filter((key) => !keys.has(key))
      .map((key) => `${key}: is not too long any more: take it off the list in checks/size/allowed.ts`),
  ];
}
