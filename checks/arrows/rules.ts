import type { IForbiddenRuleType } from 'dependency-cruiser';

/** An import rule: what is forbidden, and in `comment` the remedy a person reads when it is broken. */
export type ArrowRule = IForbiddenRuleType & { readonly name: string; readonly comment: string };

/** Which packages each package may import, itself left out. The picture of ARCHITECTURE.md as data. */
const mayImport = {
  calendar: [],
  sources: [],
  words: [],
  science: ['sources', 'calendar'],
  record: ['calendar'],
  law: ['sources', 'calendar'],
  contract: ['record'],
  casework: ['sources', 'calendar', 'science', 'record', 'law'],
  papers: ['sources', 'words', 'calendar', 'science', 'record', 'law', 'casework'],
  web: ['sources', 'words', 'calendar', 'science', 'record', 'law', 'casework', 'papers', 'contract'],
  server: ['sources', 'words', 'calendar', 'science', 'record', 'law', 'casework', 'papers', 'contract'],
  cli: ['sources', 'words', 'calendar', 'science', 'record', 'law', 'casework', 'papers', 'contract', 'server'],
} as const;

export type PackageName = keyof typeof mayImport;

/** The packages of the house. */
export const packageNames = Object.keys(mayImport) as PackageName[];

/** Libraries without clock, chance, disk or network, which the pure floors may use. */
const pureLibraries = ['zod', 'canonicalize', '@stdlib/', '@lingui/', '@messageformat/parser', 'kdbush', 'flatbush'];

const pure = '^packages/(calendar|sources|words|science|record|law|casework|contract)/src/';
const test = '[.]test[.]tsx?$';
const acceptance = '/acceptance/';

function inside(...names: readonly string[]): string {
  return `^packages/(${names.join('|')})/`;
}

function packageRule(from: PackageName, name: string, comment: string): ArrowRule {
  return {
    name,
    comment,
    severity: 'error',
    from: { path: inside(from) },
    to: { path: '^packages/', pathNot: inside(from, ...mayImport[from]) },
  };
}

/** A science room that leans on named siblings, and on `distributions` and `random`, which serve all. */
function scienceRoom(room: string, siblings: readonly string[]): ArrowRule {
  return {
    name: `science-${room}-knows-only-its-neighbours`,
    comment:
      `The room science/${room} may lean on ${siblings.join(' and ')} (and distributions, random), on no other room. ` +
      'Pass what it needs as an argument, or join the two rooms one floor up, in casework.',
    severity: 'error',
    from: { path: `^packages/science/src/${room}/` },
    to: {
      path: '^packages/science/src/[^/]+/',
      pathNot: `^packages/science/src/(${[room, ...siblings, 'distributions', 'random'].join('|')})/`,
    },
  };
}

/** Science rooms with neighbours of their own; every other room is a stranger to all. */
const neighbours = {
  diagnosis: ['signs', 'brood'],
  comb: ['brood', 'signs'],
  spread: ['brood'],
  planning: ['sampling'],
  calculations: ['sampling', 'laboratory', 'brood', 'diagnosis', 'disposal'],
} as const;

/** The rooms of casework from the lowest up: each may lean on those before it, and all on the files beside them. */
const caseworkRooms = [
  'result',
  'register',
  'comb',
  'draft',
  'laboratory',
  'plan',
  'programme',
  'assess',
  'examine',
  'report',
  'demo',
] as const;

/** A casework room, or the files beside the rooms, that must not lean on what stands above. */
function caseworkRoom(name: string, from: string, above: readonly string[]): ArrowRule {
  return {
    name: `casework-${name}-leans-on-nothing-above`,
    comment:
      `In casework ${name} stands below ${above.join(', ')}: move what both need to the lower room ` +
      '(the order is in packages/casework/README.md), or pass it as an argument.',
    severity: 'error',
    from: { path: from, pathNot: [test, acceptance] },
    to: { path: `^packages/casework/src/(${above.join('|')})/` },
  };
}

/** Every arrow of the house. Each has an offender of the same name in `offenders/`, which must be caught. */
export const rules: readonly ArrowRule[] = [
  packageRule(
    'calendar',
    'calendar-imports-nothing-of-ours',
    'Everybody counts days here, so the calendar stands on nothing: let the caller pass the day, or move the act to casework.',
  ),
  packageRule(
    'sources',
    'sources-imports-nothing-of-ours',
    'The bibliography is the lowest floor: move the logic to the package that needs it.',
  ),
  packageRule(
    'words',
    'words-imports-nothing-of-ours',
    'Words knows message ids and plain values only: let the caller pass the value, or repeat the id as a string.',
  ),
  packageRule(
    'record',
    'record-imports-only-calendar',
    'The record must be readable in twenty years without the rest, but for the calendar: keep ids as plain strings and check vocabulary in casework.',
  ),
  packageRule(
    'science',
    'science-imports-only-sources-and-calendar',
    'Science takes numbers and returns numbers: let casework translate the record into its arguments.',
  ),
  packageRule(
    'law',
    'law-imports-only-sources-and-calendar',
    'A rule pack sees facts, not entries: let casework make the facts and pass them in.',
  ),
  packageRule(
    'contract',
    'contract-imports-only-record',
    'A message carries entries and plain values: move computed things to casework, sentences to words.',
  ),
  packageRule(
    'casework',
    'casework-imports-only-the-floors-below',
    'Casework joins science, record and law and returns ids: let papers or a screen put them into words.',
  ),
  packageRule(
    'papers',
    'papers-imports-only-the-floors-below',
    'A paper is made from casework and words: let the screen, the server or the command line hand it over.',
  ),
  packageRule(
    'web',
    'web-imports-neither-server-nor-cli',
    'The screen and the server meet at the wire: put the message into contract.',
  ),
  packageRule(
    'server',
    'server-imports-neither-web-nor-cli',
    'The server and the screen meet at the wire: put the message into contract, the act into casework.',
  ),
  packageRule(
    'cli',
    'cli-imports-no-web',
    'The command line has no screen: take the act from casework or the paper from papers.',
  ),
  {
    name: 'cli-enters-the-server-by-its-entry-files',
    comment:
      'Of the server the command line knows only start.ts, check.ts and restore.ts: talk to a running server through contract.',
    severity: 'error',
    from: { path: inside('cli') },
    to: { path: inside('server'), pathNot: '^packages/server/src/(start|check|restore)[.]ts$' },
  },
  {
    name: 'web-halves-are-strangers',
    comment:
      'hive, district and classroom do not know one another: a thing two of them need is a control (web/ui) or an act (casework).',
    severity: 'error',
    from: { path: '^packages/web/src/(hive|district|classroom)/' },
    to: { path: '^packages/web/src/(hive|district|classroom)/', pathNot: '^packages/web/src/$1/' },
  },
  {
    name: 'web-ui-and-device-know-no-half',
    comment:
      'Controls and the device serve all three halves: pass what they need as a property or an argument, never import it from a half.',
    severity: 'error',
    from: { path: '^packages/web/src/(ui|device)/' },
    to: { path: '^packages/web/src/(hive|district|classroom)/' },
  },
  {
    name: 'science-rooms-are-strangers',
    comment:
      'A science room leans on no sibling but distributions and random: pass what it needs as an argument, or join the two in casework.',
    severity: 'error',
    from: {
      path: '^packages/science/src/([^/]+)/',
      pathNot: `^packages/science/src/(${Object.keys(neighbours).join('|')})/`,
    },
    to: { path: '^packages/science/src/[^/]+/', pathNot: '^packages/science/src/($1|distributions|random)/' },
  },
  ...Object.entries(neighbours).map(([room, siblings]) => scienceRoom(room, siblings)),
  caseworkRoom('shared', '^packages/casework/src/[^/]+$', caseworkRooms),
  ...caseworkRooms
    .slice(0, -1)
    .map((room, place) => caseworkRoom(room, `^packages/casework/src/${room}/`, caseworkRooms.slice(place + 1))),
  {
    name: 'server-parts-meet-at-the-store',
    comment:
      'http, accounts, photographs and jobs meet at the types of server/store: put the shared type there, and let start.ts hand one part to another.',
    severity: 'error',
    from: { path: '^packages/server/src/(http|accounts|photographs|comb-readings|jobs)/' },
    to: { path: '^packages/server/src/[^/]+/', pathNot: '^packages/server/src/($1|store|acceptance)/' },
  },
  {
    name: 'server-store-knows-no-part',
    comment: 'The store serves the other parts of the server and knows none: let start.ts pass in what it needs.',
    severity: 'error',
    from: { path: '^packages/server/src/store/' },
    to: { path: '^packages/server/src/[^/]+/', pathNot: '^packages/server/src/(store|acceptance)/' },
  },
  {
    name: 'drawings-are-pure-paths',
    comment:
      'papers/drawings returns paths that screens and papers render: take the paper, the font and the library out, pass numbers in.',
    severity: 'error',
    from: { path: '^packages/papers/src/drawings/', pathNot: test },
    to: { path: ['^packages/papers/src/', '(^|/)node_modules/'], pathNot: '^packages/papers/src/drawings/' },
  },
  {
    name: 'packages-meet-by-name',
    comment: 'Reach another package through its door, "@combside/<package>/<file>", never by a relative path.',
    severity: 'error',
    from: { path: '^packages/([^/]+)/' },
    to: { path: '^packages/', pathNot: '^packages/$1/', dependencyTypes: ['local'] },
  },
  {
    name: 'packages-stand-without-the-yard',
    comment:
      'checks, bench, scripts and docs look at the packages, never the other way round: move the shared file into a package.',
    severity: 'error',
    from: { path: '^packages/' },
    to: { path: '^(checks|bench|scripts|docs)/' },
  },
  {
    name: 'nobody-imports-tests',
    comment: "A test is nobody's door: move what both need into a file of its own beside it.",
    severity: 'error',
    from: { path: '^packages/' },
    to: { path: test },
  },
  {
    name: 'acceptance-suites-are-for-tests',
    comment: 'An acceptance suite is run by tests only: production code takes the port it tests.',
    severity: 'error',
    from: { path: '^packages/', pathNot: [test, acceptance, '/e2e/'] },
    to: { path: `^packages/.*${acceptance}` },
  },
  {
    name: 'pure-floors-touch-no-machine',
    comment:
      'The pure floors use no module of Node: take the port as an argument and let an edge (web, server, cli) provide it.',
    severity: 'error',
    from: { path: pure, pathNot: [test, acceptance] },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'pure-floors-lean-on-named-libraries',
    comment:
      `The pure floors use only libraries known to be free of clock, chance and machine (${pureLibraries.join(', ')}): ` +
      "read the new library's source, then add it to checks/arrows/rules.ts, or take it as a port.",
    severity: 'error',
    from: { path: pure, pathNot: [test, acceptance] },
    to: {
      path: '(^|/)node_modules/',
      pathNot: `(^|/)node_modules/(${pureLibraries.map((name) => (name.endsWith('/') ? name : `${name}/`)).join('|')})`,
    },
  },
  {
    name: 'no-cycles',
    comment: 'Two files that need each other are one file, or miss a third below both: move the shared part down.',
    severity: 'error',
    from: { path: '^packages/' },
    to: { circular: true },
  },
  {
    name: 'every-import-resolves',
    comment:
      'The import leads nowhere, so its arrow cannot be judged: mend the path (relative imports carry their extension).',
    severity: 'error',
    from: { path: '^packages/' },
    to: { path: '^([.]|@combside/)', couldNotResolve: true },
  },
];
