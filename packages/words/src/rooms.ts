import type { Language } from './language.ts';

/**
 * The catalogues, one per room of the house, each language fetched on its own: the phone loads the rooms and the one
 * language it uses. To add a room: write en/<room>.ts and de/<room>.ts, and add its line here.
 */
export const rooms = {
  always: { en: () => import('./en/always.ts'), de: () => import('./de/always.ts') },
  casework: { en: () => import('./en/casework.ts'), de: () => import('./de/casework.ts') },
  comb: { en: () => import('./en/comb.ts'), de: () => import('./de/comb.ts') },
  demo: { en: () => import('./en/demo.ts'), de: () => import('./de/demo.ts') },
  disposal: { en: () => import('./en/disposal.ts'), de: () => import('./de/disposal.ts') },
  district: { en: () => import('./en/district.ts'), de: () => import('./de/district.ts') },
  front: { en: () => import('./en/front.ts'), de: () => import('./de/front.ts') },
  papers: { en: () => import('./en/papers.ts'), de: () => import('./de/papers.ts') },
  hive: { en: () => import('./en/hive.ts'), de: () => import('./de/hive.ts') },
  check: { en: () => import('./en/check.ts'), de: () => import('./de/check.ts') },
  reasoning: { en: () => import('./en/reasoning.ts'), de: () => import('./de/reasoning.ts') },
  planning: { en: () => import('./en/planning.ts'), de: () => import('./de/planning.ts') },
  programme: { en: () => import('./en/programme.ts'), de: () => import('./de/programme.ts') },
  server: { en: () => import('./en/server.ts'), de: () => import('./de/server.ts') },
  register: { en: () => import('./en/register.ts'), de: () => import('./de/register.ts') },
  roadside: { en: () => import('./en/roadside.ts'), de: () => import('./de/roadside.ts') },
  questions: { en: () => import('./en/questions.ts'), de: () => import('./de/questions.ts') },
  signs: { en: () => import('./en/signs.ts'), de: () => import('./de/signs.ts') },
} as const;

/** A room that has words. */
export type Room = keyof typeof rooms;

type CatalogueOf<R extends Room> = Awaited<ReturnType<(typeof rooms)[R]['en']>>[R &
  keyof Awaited<ReturnType<(typeof rooms)[R]['en']>>];

// Worked out once, room by room: a type that looks ids up is compared by its rooms, which is quick and right.
type Ids = { readonly [R in Room]: keyof CatalogueOf<R> & string };

/** Every id of the given rooms (of all rooms, when none is given). English is the reference. */
export type WordId<R extends Room = Room> = Ids[R];

/**
 * Ids that differ in one place only, written with a `*` there: `signs.sign.*.name`. For a word that the record, the law or
 * a newer version chose: some id must fit the pattern, or it does not compile; the word itself may be one nobody here knows.
 */
export type WordPattern<R extends Room, Pattern extends string> = Pattern extends `${infer Before}*${infer After}`
  ? [Extract<WordId<R>, `${Before}${string}${After}`>] extends [never]
    ? never
    : Pattern
  : never;

/** Fetches the catalogue of one room in one language. */
export async function loadCatalogue(language: Language, room: Room): Promise<Readonly<Record<string, string>>> {
  const module: Readonly<Record<string, Readonly<Record<string, string>>>> = await rooms[room][language]();
  const catalogue = module[room];
  if (!catalogue) throw new RangeError(`words/src/${language}/${room}.ts does not export a constant "${room}"`);
  return catalogue;
}
