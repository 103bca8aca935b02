import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { filesOf } from '../tree.ts';

/** What is wrong between the bibliography and its readers. */
export interface Citations {
  /** `file: id` for each id that no entry of the bibliography answers. */
  readonly unknown: readonly string[];
  /** Ids of entries nobody uses; `file: id` for those of a rule pack's own list. */
  readonly unused: readonly string[];
  /** How many times an id was used. */
  readonly uses: number;
}

const bibliographyPath = 'packages/sources/src/bibliography.json';

/**
 * Follows every citation of a house. An id counts as used where it stands as a whole string in a source or a rule pack,
 * or in a comment after the word "source" or "sources". Tests do not count: a number in use needs its source where it
 * stands. A rule pack may carry a list of its own (`sources`, an object by id): it is judged by that list too.
 *
 * @param house folder that holds `packages/`
 * @throws SyntaxError when a JSON file cannot be read
 */
export function followCitations(house: string): Citations {
  const ids = new Set(Object.keys(JSON.parse(readFileSync(join(house, bibliographyPath), 'utf8'))));
  const used = new Set<string>();
  const unknown: string[] = [];
  const unusedOfPacks: string[] = [];
  let uses = 0;

  const use = (id: string) => {
    if (!ids.has(id)) return;
    used.add(id);
    uses += 1;
  };
  for (const path of filesOf(house, 'packages')) {
    if (path === bibliographyPath || !/^packages[/][^/]+[/]src[/]/.test(path) || isTestMaterial(path)) continue;
    const text = () => readFileSync(join(house, path), 'utf8');
    if (path.endsWith('.json')) {
      const pack: unknown = JSON.parse(text());
      const found = inJson(pack);
      const own = ownList(pack);
      found.strings.forEach(use);
      for (const id of found.cited) if (!ids.has(id) && !own.has(id)) unknown.push(`${path}: ${id}`);
      for (const id of own) if (!found.cited.includes(id)) unusedOfPacks.push(`${path}: ${id}`);
    } else if (/[.]tsx?$/.test(path)) {
      const found = inTypeScript(path, text());
      found.strings.forEach(use);
      // A map's layers name where they draw from in a field of the same name; that is no citation.
      const cites = !path.startsWith('packages/web/src/district/map/');
      for (const id of found.cited) if (cites && !ids.has(id)) unknown.push(`${path}: ${id}`);
    }
  }
  return {
    unknown: [...new Set(unknown)],
    unused: [...[...ids].filter((id) => !used.has(id)), ...unusedOfPacks],
    uses,
  };
}

/** Every string of a file, and those cited: the values of fields named `source` or `sources`. */
interface Found {
  readonly strings: string[];
  readonly cited: string[];
}

/** Tests, and what they compare with: figures made by other programs, golden entries, cases of rule packs. */
function isTestMaterial(path: string): boolean {
  return /[.]test[.]tsx?$|[/](reference|golden|cases|acceptance)[/]/.test(path);
}

/** Ids of a rule pack's own list of sources. */
function ownList(pack: unknown): Set<string> {
  const list = typeof pack === 'object' && pack !== null && 'sources' in pack ? pack.sources : undefined;
  return new Set(typeof list === 'object' && list !== null && !Array.isArray(list) ? Object.keys(list) : []);
}

function inJson(value: unknown, field = '', found: Found = { strings: [], cited: [] }): Found {
  if (typeof value === 'string') {
    found.strings.push(value);
    if (/^sources?$/.test(field)) found.cited.push(value);
  } else if (Array.isArray(value)) {
    for (const item of value) inJson(item, field, found);
  } else if (typeof value === 'object' && value !== null) {
    for (const [name, item] of Object.entries(value)) inJson(item, name, found);
  }
  return found;
}

function inTypeScript(path: string, text: string): Found {
  const source = ts.createSourceFile(
    path,
    text,
    ts.ScriptTarget.ES2023,
    true,
    path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );
  const found: Found = { strings: [], cited: [] };
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node)) found.strings.push(node.text);
    if (ts.isPropertyAssignment(node) && /^['"]?sources?['"]?$/.test(node.name.getText(source))) {
      const values = ts.isArrayLiteralExpression(node.initializer) ? node.initializer.elements : [node.initializer];
      for (const value of values) if (ts.isStringLiteralLike(value)) found.cited.push(value.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  for (const [comment] of text.matchAll(/[/][*][\s\S]*?[*][/]|[/][/].*$/gm)) {
    for (const [, cited = ''] of comment.matchAll(
      /\bsources?\b:?((?:[\s*]+|[,;(]|and\b|[A-Z0-9][A-Z0-9.-]*[A-Z0-9]\b)+)/gi,
    )) {
      found.strings.push(...cited.split(/[\s*,;()]+/));
    }
  }
  return found;
}
