/** One thing out of place, with its remedy in words. */
export interface Misplacement {
  readonly path: string;
  readonly remedy: string;
}

/**
 * Folders below `src/` that need no page: suites run by tests, entries that stay as they were sealed, the catalogues of one
 * language, a pack's cases, and what the page of a package says already (`src/` itself).
 */
const needsNoPage = /[/](acceptance|golden|fixtures|migrations|packs|reference|en|de)([/]|$)/;

const source = /[.](ts|tsx|mjs)$/;

/** A page of a room fits one screen. */
const longestPage = 60;

const emptyName = /^(utils?|helpers?|common|misc|managers?|services?|data)$/;
const emptyTail = /-(utils?|helpers?|common|misc|managers?|services?)$/;
const barrel = /^index[.][cm]?[jt]sx?$/;

/** Names of the place where this was written, which mean nothing to a reader. Written in halves, so as not to find themselves. */
const workplaceNames = [
  ['/wo', 'rk/'],
  ['shared/', 'reference'],
  ['shared/', 'design'],
  ['far', 'm-'],
  ['issue ', '#'],
  ['issues ', 'show'],
  ['/tmp/', 'brief'],
  ['house', '.md'],
  ['look', '.md'],
  ['stack', '.md'],
  ['model-', 'codebases'],
  ['brood-signs', '.md'],
  ['field-protocol', '.md'],
  ['outbreak', '.md'],
  ['lab-methods', '.md'],
  ['response-rules', '.md'],
  ['the-job', '.md'],
  ['statistics', '.md'],
  ['seed ', 'document'],
  ['sub', 'agent'],
].map((halves) => halves.join(''));

/**
 * Finds packages without their one-screen README, and rooms: every folder below `src/`, at any depth, with two source files
 * or more.
 *
 * @param paths every file of the house, relative
 * @param linesOf how many lines a file has
 */
export function roomsWithoutPage(paths: readonly string[], linesOf: (path: string) => number): Misplacement[] {
  const here = new Set(paths);
  const rooms = new Set<string>();
  const sources = new Map<string, number>();
  for (const path of paths) {
    const [packages, name = '', src, ...below] = path.split('/');
    if (packages !== 'packages') continue;
    rooms.add(`packages/${name}`);
    const folder = path.slice(0, path.lastIndexOf('/'));
    if (src !== 'src' || below.length < 2 || needsNoPage.test(folder)) continue;
    if (path.endsWith('/README.md')) rooms.add(folder);
    if (source.test(path)) sources.set(folder, (sources.get(folder) ?? 0) + 1);
  }
  for (const [folder, count] of sources) if (count > 1) rooms.add(folder);
  return [...rooms].sort().flatMap((room) => {
    const page = `${room}/README.md`;
    if (!here.has(page)) {
      return [
        { path: room, remedy: 'write its README.md: what it answers, what it deliberately does not, its sources' },
      ];
    }
    const lines = linesOf(page);
    if (lines > longestPage)
      return [{ path: page, remedy: `${lines} lines: keep the page of a room within ${longestPage}` }];
    if (lines < 3)
      return [{ path: page, remedy: 'says too little: what it answers, what it deliberately does not, its sources' }];
    return [];
  });
}

/** Finds files and folders whose name says nothing, and barrels. */
export function emptyNames(paths: readonly string[]): Misplacement[] {
  return paths
    .filter((path) => /^(packages|checks|bench|scripts)[/]/.test(path))
    .flatMap((path) => {
      const parts = path.split('/').slice(1);
      const file = parts.at(-1) ?? '';
      if (barrel.test(file))
        return [{ path, remedy: 'a barrel: let each file be its own door, and import it by its name' }];
      const empty = parts
        .map((part) => part.split('.')[0] ?? '')
        .find((part) => emptyName.test(part) || emptyTail.test(part));
      return empty ? [{ path, remedy: `"${empty}" says nothing: name the question the file answers` }] : [];
    });
}

/** Finds the workplace's own names in a text. */
export function workplaceNamesIn(path: string, text: string): Misplacement[] {
  return workplaceNames
    .filter((name) => text.includes(name))
    .map((name) => ({
      path,
      remedy: `mentions "${name}", which no reader can follow: say it in our own words, with its public source`,
    }));
}

/** Finds dependencies that are not pinned to one exact version; one may be known here by another name. */
export function looseVersions(
  path: string,
  manifest: Record<string, Record<string, string> | undefined>,
): Misplacement[] {
  return ['dependencies', 'devDependencies', 'optionalDependencies', 'overrides'].flatMap((shelf) =>
    Object.entries(manifest[shelf] ?? {})
      .filter(([, version]) => !/^(npm:(@[\w-]+[/])?[\w.-]+@)?\d+[.]\d+[.]\d+(-[\w.]+)?$/.test(version))
      .map(([name, version]) => ({ path, remedy: `${shelf}.${name} is "${version}": pin one exact version` })),
  );
}
