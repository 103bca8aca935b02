/** Something the pure floors may not touch, and in words what to do instead. */
export interface Ban {
  readonly name: string;
  readonly remedy: string;
}

const clock = 'take the instant as an argument (the edge reads the clock) and compute with @combside/calendar';
const timeZone = 'this reads the time zone of the machine: use the UTC member, or give the zone to Intl.DateTimeFormat';
const chance = 'take a seeded source of chance (science/random) or the identity as an argument';
const locale = 'leave text to words, and give the language explicitly; compare strings by code unit (< and >)';
const machine = 'take a port as an argument and let an edge (web, server, cli) provide it';
const backdoor = 'name what you need, so that this check can see it';

function bans(remedy: string, ...names: readonly string[]): Ban[] {
  return names.map((name) => ({ name, remedy }));
}

/** Global names the pure floors may not use, neither as values nor as types. */
export const bannedGlobals: readonly Ban[] = [
  ...bans(
    clock,
    'Date',
    'Temporal',
    'performance',
    'setTimeout',
    'setInterval',
    'setImmediate',
    'requestAnimationFrame',
  ),
  ...bans(chance, 'crypto'),
  ...bans(locale, 'Intl', 'navigator'),
  ...bans(
    machine,
    'process',
    'console',
    'fetch',
    'document',
    'window',
    'localStorage',
    'indexedDB',
    'Worker',
    'queueMicrotask',
  ),
  ...bans(machine, 'WeakRef', 'FinalizationRegistry', 'Atomics'),
  ...bans(backdoor, 'globalThis', 'global', 'self', 'eval', 'Function', 'Reflect', 'require'),
];

/** Member names the pure floors may not use on anything. */
export const bannedMembers: readonly Ban[] = [
  ...bans(
    locale,
    'localeCompare',
    'toLocaleString',
    'toLocaleDateString',
    'toLocaleTimeString',
    'toLocaleUpperCase',
    'toLocaleLowerCase',
  ),
  ...bans(
    timeZone,
    'getTimezoneOffset',
    'getFullYear',
    'getMonth',
    'getDate',
    'getDay',
    'getHours',
    'getMinutes',
    'getSeconds',
    'getYear',
    'setFullYear',
    'setMonth',
    'setDate',
    'setHours',
    'setMinutes',
    'setSeconds',
    'toDateString',
    'toTimeString',
  ),
];

/** Ways round the lists above, each found by the form of the syntax. */
export const bannedForms = {
  'math-random': { name: 'math-random', remedy: chance },
  'math-as-a-value': {
    name: 'math-as-a-value',
    remedy: 'write Math.name(...), so that Math.random cannot hide behind another name',
  },
  'date-without-instant': {
    name: 'date-without-instant',
    remedy: `write Date.UTC(...), Date.parse(text with an offset) or new Date(one instant): ${clock}`,
  },
  'date-kept': {
    name: 'date-kept',
    remedy:
      'ask new Date(instant) at once for toISOString(), getTime() or a getUTC member: kept, it can be written or compared in ' +
      'the time zone of the machine',
  },
  'intl-without-language': { name: 'intl-without-language', remedy: `write new Intl.Name(language, ...): ${locale}` },
  'intl-without-time-zone': {
    name: 'intl-without-time-zone',
    remedy: 'give timeZone in the options of Intl.DateTimeFormat, or it takes that of the machine',
  },
  'ambient-declaration': { name: 'ambient-declaration', remedy: `a declared global hides what is used: ${machine}` },
  'import-meta': { name: 'import-meta', remedy: machine },
  'computed-import': { name: 'computed-import', remedy: `write the path of import() as a plain string: ${backdoor}` },
} as const satisfies Record<string, Ban>;

/** Every ban. */
export const allBans: readonly Ban[] = [...bannedGlobals, ...bannedMembers, ...Object.values(bannedForms)];
