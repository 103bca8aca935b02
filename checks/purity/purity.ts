import ts from 'typescript';
import { type Ban, bannedForms, bannedGlobals, bannedMembers } from './bans.ts';

/** One place where a pure file touches clock, chance, locale or machine. */
export interface Impurity {
  readonly ban: string;
  readonly file: string;
  /** Line, counted from 1. */
  readonly line: number;
  readonly remedy: string;
}

/** What is allowed to which files. */
export interface Leave {
  /** To put numbers and days into words with Intl, when they name the language. */
  readonly toFormat: (file: string) => boolean;
  /** To count days with the parts of Date that know neither clock nor zone. */
  readonly toReckon: (file: string) => boolean;
}

const globals = new Map(bannedGlobals.map((ban) => [ban.name, ban]));
const members = new Map(bannedMembers.map((ban) => [ban.name, ban]));

/** Global names without clock, chance or machine, which a pure file may declare because the language library lacks them. */
const harmlessDeclarations = new Set(['TextEncoder', 'TextDecoder', 'structuredClone', 'URL']);

/**
 * Finds every use of a banned global, member or form. Names are resolved by the compiler, so that a parameter called
 * `process` or a field called `performance` is left in peace.
 *
 * @param files absolute paths of the sources to judge
 * @param options compiler options under which they are read
 * @returns impurities in order of file and line
 */
export function findImpurities(files: readonly string[], options: ts.CompilerOptions, leave: Leave): Impurity[] {
  const program = ts.createProgram({ rootNames: [...files], options });
  const checker = program.getTypeChecker();
  const wanted = new Set(files);
  const found: Impurity[] = [];

  for (const source of program.getSourceFiles()) {
    if (!wanted.has(source.fileName)) continue;
    const report = (node: ts.Node, ban: Ban) => {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
      found.push({ ban: ban.name, file: source.fileName, line: line + 1, remedy: ban.remedy });
    };
    const may = { format: leave.toFormat(source.fileName), reckon: leave.toReckon(source.fileName) };
    const visit = (node: ts.Node): void => {
      judge(node, report, (identifier) => isGlobal(identifier, checker, program), may);
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return found.sort((a, b) => (a.file === b.file ? a.line - b.line : a.file < b.file ? -1 : 1));
}

function judge(
  node: ts.Node,
  report: (node: ts.Node, ban: Ban) => void,
  isGlobalName: (identifier: ts.Identifier) => boolean,
  may: { readonly format: boolean; readonly reckon: boolean },
): void {
  if (ts.isIdentifier(node)) {
    const member = members.get(node.text);
    if (member) report(node, member);
    if (node.text === 'Math' && isGlobalName(node)) judgeMath(node, report);
    const global = globals.get(node.text);
    if (global && isGlobalName(node)) {
      if (node.text === 'Intl' && may.format) judgeIntl(node, report);
      else if (node.text === 'Date' && may.reckon) judgeDate(node, report);
      else report(node, global);
    }
  }
  if (ts.isElementAccessExpression(node) && ts.isStringLiteralLike(node.argumentExpression)) {
    const member = members.get(node.argumentExpression.text);
    if (member) report(node, member);
  }
  if (ts.isMetaProperty(node) && node.keywordToken === ts.SyntaxKind.ImportKeyword)
    report(node, bannedForms['import-meta']);
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    const [path] = node.arguments;
    if (!path || !ts.isStringLiteralLike(path)) report(node, bannedForms['computed-import']);
  }
  if (declaresAGlobal(node)) report(node, bannedForms['ambient-declaration']);
}

function judgeMath(node: ts.Identifier, report: (node: ts.Node, ban: Ban) => void): void {
  const parent = node.parent;
  if (!ts.isPropertyAccessExpression(parent) || parent.expression !== node)
    report(node, bannedForms['math-as-a-value']);
  else if (parent.name.text === 'random') report(node, bannedForms['math-random']);
}

function judgeDate(node: ts.Identifier, report: (node: ts.Node, ban: Ban) => void): void {
  const parent = node.parent;
  if (ts.isTypeReferenceNode(parent)) {
    report(node, bannedForms['date-kept']);
    return;
  }
  const isReading = ts.isPropertyAccessExpression(parent) && ['UTC', 'parse'].includes(parent.name.text);
  // With several arguments Date counts in the time zone of the machine.
  const isMaking = ts.isNewExpression(parent) && parent.arguments?.length === 1;
  if (!isReading && !isMaking) report(node, bannedForms['date-without-instant']);
  else if (isMaking && !isAskedAtOnce(parent)) report(node, bannedForms['date-kept']);
}

/** True for `new Date(x).toISOString()` and its like; a banned member is reported by its own name. */
function isAskedAtOnce(made: ts.Node): boolean {
  const access = made.parent;
  if (!ts.isPropertyAccessExpression(access)) return false;
  const name = access.name.text;
  return name === 'toISOString' || name === 'getTime' || name.startsWith('getUTC') || members.has(name);
}

function judgeIntl(node: ts.Identifier, report: (node: ts.Node, ban: Ban) => void): void {
  const access = node.parent;
  if (ts.isQualifiedName(access)) return;
  const made = access.parent;
  const isMade =
    ts.isPropertyAccessExpression(access) &&
    access.expression === node &&
    ts.isNewExpression(made) &&
    made.expression === access;
  const [language, options] = isMade ? (made.arguments ?? []) : [];
  if (!isMade || !language || language.getText() === 'undefined' || language.getText() === '[]') {
    report(node, bannedForms['intl-without-language']);
    return;
  }
  if (access.name.text !== 'DateTimeFormat') return;
  const namesZone =
    options !== undefined &&
    ts.isObjectLiteralExpression(options) &&
    options.properties.some((property) => property.name?.getText() === 'timeZone');
  if (!namesZone) report(node, bannedForms['intl-without-time-zone']);
}

function declaresAGlobal(node: ts.Node): boolean {
  if (ts.isModuleDeclaration(node)) return true;
  if (!ts.canHaveModifiers(node)) return false;
  if (!ts.getModifiers(node)?.some(({ kind }) => kind === ts.SyntaxKind.DeclareKeyword)) return false;
  if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return false;
  if (ts.isPropertyDeclaration(node)) return false;
  const names = ts.isVariableStatement(node)
    ? node.declarationList.declarations.map(({ name }) => name.getText())
    : ts.isClassDeclaration(node) || ts.isFunctionDeclaration(node)
      ? [node.name?.text ?? '']
      : [''];
  return !names.every((name) => harmlessDeclarations.has(name));
}

/** A name is global when nothing in our own or a library's modules declares it: only the language's own library, or nobody. */
function isGlobal(identifier: ts.Identifier, checker: ts.TypeChecker, program: ts.Program): boolean {
  if (isMemberName(identifier)) return false;
  const symbol = ts.isShorthandPropertyAssignment(identifier.parent)
    ? checker.getShorthandAssignmentValueSymbol(identifier.parent)
    : checker.getSymbolAtLocation(identifier);
  const declarations = symbol?.declarations ?? [];
  return declarations.every((declaration) => {
    const file = declaration.getSourceFile();
    return (
      program.isSourceFileDefaultLibrary(file) ||
      file.fileName.includes('/node_modules/@types/') ||
      declaresAGlobal(declaration)
    );
  });
}

/** True for `x` in `a.x`, `{ x: 1 }`, `interface { x: T }` and `declare x {}`: names that read no variable. */
function isMemberName(identifier: ts.Identifier): boolean {
  const { parent } = identifier;
  if (ts.isModuleDeclaration(parent)) return true;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === identifier;
  if (ts.isQualifiedName(parent)) return parent.right === identifier;
  if (ts.isBindingElement(parent)) return parent.propertyName === identifier;
  return (
    (ts.isPropertyAssignment(parent) ||
      ts.isPropertySignature(parent) ||
      ts.isPropertyDeclaration(parent) ||
      ts.isMethodDeclaration(parent) ||
      ts.isMethodSignature(parent)) &&
    parent.name === identifier
  );
}
